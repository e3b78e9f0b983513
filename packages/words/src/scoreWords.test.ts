import {
  earlyWarning,
  type Flag,
  glasgowTotal,
  meanPressure,
  modifiedShockIndex,
  parseScoreInputs,
  parseSign,
  parseStandingTest,
  pulsePressure,
  type ScoreId,
  type ScoreInputs,
  sepsisScreen,
  shockIndex,
  signResult,
  standingResult,
} from '@evenfall/clinical';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { english } from './english/index.js';
import { wordsFor } from './words.js';

const words = wordsFor('en');

/** The sentences of flags, each of which must have one of its own. */
function said(flags: readonly Flag[]): string[] {
  const sentences = flags.map(words.detail);
  for (const sentence of sentences) {
    expect(sentence).not.toMatch(/no sentence for/);
    expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
  }
  return sentences;
}

function inputsOf(of: ScoreId, input: object): ScoreInputs {
  const parsed = parseScoreInputs(of, input);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
  return parsed.value;
}

const rate = fc.option(fc.double({ min: 0, max: 220, noNaN: true }), { nil: undefined });
const systolic = fc.option(fc.double({ min: 60, max: 260, noNaN: true }), { nil: undefined });

describe('every flag, alert, reason and response has a sentence that can be said', () => {
  test('early-warning scores, whole and in part', () => {
    const input = fc.record(
      {
        respirations: rate,
        oxygenSaturation: fc.integer({ min: 60, max: 100 }),
        onOxygen: fc.boolean(),
        scale: fc.constantFrom(1, 2),
        systolic,
        pulse: rate,
        consciousness: fc.constantFrom('alert', 'voice'),
        temperature: fc.integer({ min: 300, max: 420 }).map((tenths) => tenths / 10),
        age: fc.integer({ min: 16, max: 100 }),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(input, (given) => {
        const { alerts, flags, why, response, checks } = earlyWarning(inputsOf('early-warning', given));
        const answers = [response, checks].flatMap((one) => (one === null ? [] : [one]));
        said([...alerts, ...flags, ...why, ...answers]);
      }),
      { numRuns: 1000, seed: 30 },
    );
  });

  test('derived values, screens and the Glasgow total', () => {
    const input = fc.record({
      systolic: fc.integer({ min: 60, max: 260 }),
      below: fc.integer({ min: 5, max: 200 }),
      pulse: fc.integer({ min: 20, max: 220 }),
    });
    fc.assert(
      fc.property(input, ({ systolic: top, below, pulse }) => {
        const pair = { systolic: top, diastolic: Math.max(0, top - below) };
        for (const { flags, why } of [
          meanPressure(inputsOf('mean-pressure', pair)),
          pulsePressure(inputsOf('pulse-pressure', pair)),
          shockIndex(inputsOf('shock-index', { systolic: top, pulse })),
          modifiedShockIndex(inputsOf('modified-shock-index', { ...pair, pulse })),
          meanPressure(inputsOf('mean-pressure', { systolic: top })),
        ])
          said([...flags, ...why]);
      }),
      { numRuns: 500, seed: 31 },
    );
    for (const given of [{}, { eyes: 1, verbal: 'NT', motor: 1 }, { eyes: 1, verbal: 1, motor: 1 }]) {
      const { alerts, why } = glasgowTotal(inputsOf('glasgow', given));
      expect(said([...alerts, ...why])).not.toEqual([]);
    }
    for (const given of [{ respirations: 30, systolic: 90 }, {}]) {
      const { alerts, flags, why } = sepsisScreen(inputsOf('sepsis-screen', given));
      expect(said([...alerts, ...flags, ...why])).not.toEqual([]);
    }
  });

  test('standing tests', () => {
    const numbers = fc.record({
      systolic: fc.option(fc.integer({ min: 90, max: 220 })),
      diastolic: fc.option(fc.integer({ min: 30, max: 89 })),
      pulse: fc.option(fc.integer({ min: 40, max: 160 })),
    });
    const flag = fc.option(fc.boolean());
    const input = fc.record({
      from: fc.constantFrom('lying', 'sitting'),
      baseline: numbers,
      first: numbers,
      later: numbers,
      minutes: fc.integer({ min: 1, max: 12 }),
      symptoms: flag,
      supineHypertension: flag,
      sinusRhythm: flag,
      pacemaker: flag,
      rateSlowingDrug: flag,
    });
    fc.assert(
      fc.property(input, ({ first, later, minutes, symptoms, ...more }) => {
        const readings = [
          { minutes: 0, ...first, symptoms },
          { minutes, ...later },
        ];
        const parsed = parseStandingTest({ ...more, readings });
        if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
        const { flags, why } = standingResult(parsed.value);
        said([...flags, ...why]);
      }),
      { numRuns: 1000, seed: 32 },
    );
  });

  test('signs', () => {
    const known = { ageMonths: 2, feltPulsePerMinute: 90, minutesSinceDrinkOrSmoke: 3 };
    for (const input of [
      { of: 'temperature', celsius: 43, site: 'oral' },
      { of: 'temperature', celsius: 27, site: 'rectal' },
      { of: 'oxygen-saturation', percent: 60, onOxygen: false, pulsePerMinute: 120 },
      { of: 'pain', tool: 'numeric', score: 8 },
      { of: 'pain', tool: 'verbal', word: 'severe' },
      { of: 'consciousness', level: 'pain', glasgow: { eyes: 1, verbal: 'NT', motor: 1 } },
      { of: 'weight', kg: 400, how: 'stated' },
      { of: 'height', cm: 250, how: 'stated' },
    ]) {
      const parsed = parseSign(input);
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
      expect(said(signResult(parsed.value, known).flags)).not.toEqual([]);
    }
  });
});

describe('a sentence shows a number on its own side of its limit', () => {
  const by = fc.double({ min: -6, max: 0, noNaN: true }).map((exponent) => 10 ** exponent);

  test.each([
    ['mean-pressure-low', 65, -1],
    ['shock-index-raised', 0.9, 1],
    ['modified-shock-index-low', 0.7, -1],
    ['modified-shock-index-high', 1.3, 1],
    ['age-shock-index-high', 50, 1],
    ['paediatric-shock-index-high', 1.22, 1],
  ] as const)('%s', (code, limit, side) => {
    fc.assert(
      fc.property(by, (distance) => {
        const figures = { value: limit + side * Math.max(distance, 1e-6), limit, age: 7 };
        const numbers = (words.detail({ code, figures }).match(/\d+(\.\d+)?/g) ?? []).map(Number);
        const shown = numbers[0] ?? Number.NaN;
        expect(Math.sign(shown - limit)).toBe(side);
        expect(numbers).toContain(limit);
      }),
    );
  });
});

test('what is from memory asks for the local protocol', () => {
  // CONTRIBUTING: one not re-read is marked from memory, and drives no alert before a clinician has confirmed it.
  const { flags } = meanPressure(inputsOf('mean-pressure', { systolic: 60, diastolic: 40 }));
  expect(said(flags).join(' ')).toMatch(/Confirm this limit with your local protocol/);
  const parsed = parseSign({ of: 'temperature', celsius: 38, site: 'oral' });
  if (!parsed.ok) throw new Error('refused');
  const known = { ageMonths: null, feltPulsePerMinute: null, minutesSinceDrinkOrSmoke: null };
  expect(said(signResult(parsed.value, known).flags).join(' ')).toMatch(
    /Confirm this limit with your local protocol/,
  );
});

test('the early-warning score is called by its plain name and acknowledges the College', () => {
  const { 'early-warning': title } = english.titles.score;
  expect(title).toMatch(/Royal College of Physicians.*acknowledgement/);
  expect(JSON.stringify(Object.keys(english.details)) + title).not.toMatch(/NEWS/);
});
