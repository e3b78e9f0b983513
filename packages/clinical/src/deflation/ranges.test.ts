import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { observed } from '../../fixtures/observer.mjs';
import { generator } from '../../fixtures/people.mjs';
import { UNKNOWN_RUN_CIRCUMSTANCES } from './circumstances.js';
import { gaugeRead } from './graduation.js';
import { parseRun } from './parseRun.js';
import { DEFAULT_RUN_RULES, type GaugeReading } from './rules.js';
import { type RunResult, runResult } from './runResult.js';

function resultOf(input: object, gaugeReading: GaugeReading = 'nearest', irregular = false): RunResult {
  const parsed = parseRun(input);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
  const deflation = { ...DEFAULT_RUN_RULES.deflation, gaugeReading };
  const rhythmFelt = irregular ? 'irregular' : null;
  return runResult(
    parsed.value,
    { ...UNKNOWN_RUN_CIRCUMSTANCES, rhythmFelt },
    { ...DEFAULT_RUN_RULES, deflation },
  );
}

/** A run at an even rate: from 40 above the first sound to the last. */
function even(mmHgPerSecond: number, pulsePerMinute: number, gaugeStepMmHg = 2) {
  return {
    method: 'auscultation',
    gaugeStepMmHg,
    pulsePerMinute,
    peak: { mmHg: 190, atSeconds: 0 },
    moments: [
      { what: 'first sound', mmHg: 150, atSeconds: 40 / mmHgPerSecond },
      { what: 'last sound', mmHg: 90, atSeconds: 100 / mmHgPerSecond },
    ],
  };
}

test.each([
  // Bedside handbook 3.6 (derived), the table of the largest error of a perfect listener; C038 and C039.
  [2, 60, 2],
  [2, 50, 2.4],
  [2, 100, 1.2],
  [3, 60, 3],
  [3, 50, 3.6],
  [3, 100, 1.8],
  [5, 60, 5],
  [5, 50, 6],
  [5, 100, 3],
  [10, 60, 10],
  [10, 50, 12],
  [10, 100, 6],
])('%d mmHg/s at %d a minute: the systolic may be under-read by %d', (rate, pulse, most) => {
  const { systolicRange, dropPerBeatMmHg } = resultOf(even(rate, pulse));
  expect(systolicRange?.[0]).toBe(149);
  expect(systolicRange?.[1]).toBeCloseTo(150 + most + 1, 9);
  expect(dropPerBeatMmHg).toBeCloseTo(most, 9);
});

test('the diastolic range is that of the conventions with room for the gauge in the rate', () => {
  // docs/conventions.md section 6: [D - F - g, D + g]; F = 2, g = 1, 60 mmHg in 24 s at 75 a minute.
  const { diastolicRange } = resultOf(even(2.5, 75));
  expect(diastolicRange?.[0]).toBeCloseTo(90 - 2 - 1 - (2 * 60) / 75 / 24, 9);
  expect(diastolicRange?.[1]).toBe(91);
});

test('a gauge read to the mark above: -2g and 0 in place of -g and +g', () => {
  const { systolicRange, diastolicRange } = resultOf(even(2.5, 75), 'mark-above');
  expect(systolicRange).toEqual([148, 152]);
  expect(diastolicRange?.[1]).toBe(90);
});

test('not below 0, and about the number heard also where sounds go on to zero', () => {
  const run = even(2.5, 75);
  const moments = [
    run.moments[0],
    { what: 'muffled', mmHg: 60, atSeconds: 52 },
    { what: 'last sound', mmHg: 0, atSeconds: 76 },
  ];
  expect(resultOf({ ...run, moments }).diastolicRange).toEqual([0, 1]);
});

test('an irregular pulse makes any range too narrow, and says so where there is one', () => {
  expect(resultOf(even(2, 75), 'nearest', true).flags.map(({ code }) => code)).toContain('range-too-narrow');
  const untimed = {
    ...even(2, 75),
    peak: null,
    moments: even(2, 75).moments.map(({ what, mmHg }) => ({ what, mmHg })),
  };
  expect(resultOf(untimed, 'nearest', true).flags).toEqual([]);
});

describe('a perfect observer of a steady pulse', () => {
  test.each(['nearest', 'mark-above'] as const)('the ranges hold the truth, %s', (gaugeReading) => {
    const read = (mmHg: number, step: number) => gaugeRead(mmHg, step, gaugeReading);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2 ** 31 }), (seed) => {
        const draw = observed(generator(seed), { read });
        fc.pre(draw !== null);
        const { systolicRange, diastolicRange } = resultOf(draw.input, gaugeReading);
        for (const [range, truth] of [
          [systolicRange, draw.truth.systolic],
          [diastolicRange, draw.truth.diastolic],
        ] as const) {
          if (range === null) continue;
          expect(range[0]).toBeLessThanOrEqual(truth);
          expect(range[1]).toBeGreaterThanOrEqual(truth);
        }
      }),
      { numRuns: 3000 },
    );
  });

  test('most runs have both ranges', () => {
    const read = (mmHg: number, step: number) => gaugeRead(mmHg, step, 'nearest');
    const chance = generator(7);
    const results = Array.from({ length: 500 }, () => observed(chance, { read, rate: [2, 3] }))
      .filter((draw) => draw !== null)
      .map(({ input }) => resultOf(input));
    const both = results.filter((one) => one.systolicRange !== null && one.diastolicRange !== null);
    expect(both.length / results.length).toBeGreaterThan(0.9);
  });

  test('on average half a beat is lost', () => {
    // Bedside handbook 3.6 (derived): C038 and C039, the mean is half of the largest.
    for (const [rate, pulse, mean] of [
      [3, 60, 1.5],
      [10, 50, 6],
    ] as const) {
      const chance = generator(11);
      const lost: number[] = [];
      for (let i = 0; i < 4000; i++) {
        const draw = observed(chance, { read: (mmHg) => mmHg, rate: [rate, rate], pulse: [pulse, pulse] });
        const heardAt = draw?.input.moments[0]?.mmHg;
        // A first sound on the first beat after the peak may not be the first.
        if (draw === null || heardAt === undefined) continue;
        if (draw.input.peak.mmHg - draw.truth.systolic < (rate * 60) / pulse) continue;
        lost.push(draw.truth.systolic - heardAt);
      }
      expect(lost.reduce((sum, one) => sum + one, 0) / lost.length).toBeCloseTo(mean, 0);
      expect(Math.max(...lost)).toBeLessThanOrEqual(2 * mean + 1e-9);
    }
  });
});
