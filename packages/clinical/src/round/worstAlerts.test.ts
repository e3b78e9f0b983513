import { describe, expect, test } from 'vitest';
import { NO_ROUND_FACTS } from './roundFacts.js';
import type { RoundInput } from './roundInput.js';
import type { RoundReading } from './roundReading.js';
import { ROUND_RULES, roundResult } from './roundResult.js';
import { DEFAULT_ROUND_RULES } from './roundRules.js';
import { reading } from './testing.js';

function figuresOf(
  taken: readonly Partial<RoundReading>[],
  { rule, ...more }: Partial<RoundInput> & { rule?: (typeof ROUND_RULES)[number] } = {},
) {
  const input: RoundInput = {
    readings: taken.map((one, at) => ({ ...reading({ id: `r${at}`, ...one }), irregular: null })),
    pulse: null,
    breaths: null,
    isFeltIrregular: null,
    temperature: null,
    oxygen: null,
    consciousness: null,
    heightCm: null,
    weightKg: null,
    features: null,
    unwell: null,
    facts: { ...NO_ROUND_FACTS, ageMonths: 600 },
    ...more,
  };
  return roundResult(input, DEFAULT_ROUND_RULES, rule).actNow.flatMap(({ condition, figures }) =>
    // The score has no number of a reading: its alerts name their points.
    condition.startsWith('early-warning') ? [] : [[condition, figures]],
  );
}

const LYING = [
  { systolic: 88, diastolic: 52, posture: 'lie' },
  { systolic: 86, diastolic: 50, posture: 'lie' },
] as const;

// Very low is a systolic of 90 or under: bedside handbook 5.2; severe from 180/120 on: 3.16.
describe('an alert names the worst reading that meets it', () => {
  test('the lowest systolic of a low one, and that somebody felt unwell on their feet', () => {
    expect(figuresOf(LYING)).toEqual([['very-low-pressure', { systolic: 86, veryLowSystolic: 90 }]]);
    const stood = { systolic: 70, diastolic: 40, posture: 'stand', uprightMinutes: 1 } as const;
    expect(figuresOf([...LYING, { ...stood, isUnwellUpright: true }])).toEqual([
      ['very-low-pressure', { systolic: 70, veryLowSystolic: 90, unwellUpright: 1 }],
    ]);
    expect(figuresOf([...LYING, { ...stood, isUnwellUpright: false }])).toEqual([
      ['very-low-pressure', { systolic: 70, veryLowSystolic: 90 }],
    ]);
  });

  // Bedside handbook 3.14 (stop: faint, unsteady: lie down, chart, report) and 3.15 (do not wait).
  test('somebody who felt unwell on their feet, at the lowest pressure there, whatever it was; not of old rules', () => {
    const lying = { systolic: 140, diastolic: 80, posture: 'lie' } as const;
    const stood = { systolic: 118, diastolic: 72, posture: 'stand', uprightMinutes: 1 } as const;
    const fell = {
      ...stood,
      systolic: 112,
      diastolic: 70,
      uprightMinutes: 3,
      isUnwellUpright: true,
    } as const;
    expect(figuresOf([lying, stood])).toEqual([]);
    expect(figuresOf([lying, { ...stood, isUnwellUpright: false }])).toEqual([]);
    expect(figuresOf([lying, { ...stood, isUnwellUpright: true }, fell])).toEqual([
      ['unwell-upright', { systolic: 112, diastolic: 70 }],
    ]);
    for (const rule of ROUND_RULES.slice(0, 3)) expect(figuresOf([lying, fell], { rule })).toEqual([]);
  });

  test('the highest of a severe one', () => {
    const severe = [
      { systolic: 182, diastolic: 100 },
      { systolic: 196, diastolic: 112 },
      { systolic: 184, diastolic: 124 },
    ];
    expect(figuresOf(severe, { features: ['fit'] })).toEqual([
      ['severe-with-fit', { systolic: 196, diastolic: 112 }],
    ]);
  });

  test('the first one under the rule of old entries, which are made again as they were', () => {
    expect(ROUND_RULES[0]).toBe('round-1');
    expect(figuresOf(LYING, { rule: 'round-1' })).toEqual([
      ['very-low-pressure', { systolic: 88, veryLowSystolic: 90 }],
    ]);
  });
});
