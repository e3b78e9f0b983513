import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { comparedAtMmHg } from './comparedAt.js';
import { gaugeResult } from './gaugeCheck.js';
import { DEFAULT_EQUIPMENT_RULES as RULES } from './rules.js';

/** A comparison at the pressures given, out by so many mmHg at each. */
const comparison = (at: readonly number[], out: readonly number[]) =>
  gaugeResult({
    of: 'comparison',
    reference: 'mercury column (invented)',
    points: at.map((referenceMmHg, index) => ({
      referenceMmHg,
      gaugeMmHg: referenceMmHg + (out[index] ?? 0),
    })),
  });
const codes = ({ why }: { why: readonly { code: string }[] }) => why.map(({ code }) => code);
const SCALE = [0, 50, 100, 150, 200, 250];

// Bedside handbook 3.9: within the zero box, else out of use; 3 mmHg.
describe('at rest a gauge', () => {
  test.each([
    [0, 'good'],
    [3, 'good'],
    [-3, 'good'],
    [3.5, 'failed'],
    [4, 'failed'],
    [-4, 'failed'],
  ])('that shows %s mmHg is %s', (restMmHg, verdict) => {
    expect(gaugeResult({ of: 'zero', restMmHg })).toMatchObject({ verdict, errorMmHg: restMmHg });
  });
});

describe('a comparison', () => {
  // Arch Intern Med 1970;125:1000 and 1991;151:1409: a gauge is out beyond 3 mmHg from the standard, either way.
  test.each([
    [[3, 3, 3, 3, 3, 3], 'good', 3, 0],
    [[0, -3, 0, 0, 0, 0], 'good', -3, 50],
    [[0, 0, 0, 4, 0, 0], 'failed', 4, 150],
    [[0, 0, 0, 0, -4, 0], 'failed', -4, 200],
    [[0, 0, 4, 0, -6, 0], 'failed', -6, 200],
  ] as const)('out by %j is %s', (out, verdict, errorMmHg, errorAtMmHg) => {
    expect(comparison(SCALE, out)).toMatchObject({ verdict, errorMmHg, errorAtMmHg });
  });

  test('says at each pressure by how much it is out, and in which direction', () => {
    expect(comparison(SCALE, [0, 0, 4, 0, -6, 0]).flags).toEqual([
      { code: 'gauge-reads-high', figures: { byMmHg: 4, atMmHg: 100, limitMmHg: 3 } },
      { code: 'gauge-reads-low', figures: { byMmHg: 6, atMmHg: 200, limitMmHg: 3 } },
    ]);
  });

  // Arch Intern Med 1991;151:1409: five pressure points.
  test('at fewer than five pressures says nothing good of a gauge, and a pressure read twice counts once', () => {
    expect(comparison([0, 60, 120, 160, 200], []).verdict).toBe('good');
    expect(comparison([0, 60, 120, 200], [])).toMatchObject({ verdict: 'incomplete' });
    expect(codes(comparison([0, 60, 120, 200, 200], []))).toEqual(['gauge-few-points']);
    expect(comparison([], []).verdict).toBe('incomplete');
  });

  // OIML R 16-1:2002 (from memory): steps of at most 50 mmHg.
  test('at the pressures that are offered is enough', () => {
    expect(comparedAtMmHg(RULES)).toEqual([0, 50, 100, 150, 200]);
    expect(comparison(comparedAtMmHg(RULES), []).verdict).toBe('good');
  });

  test('at the pressures that are offered is enough whatever the place asks for', () => {
    for (const fewestPoints of [1, 4, 6, 20])
      for (const toMmHg of [100, 100.5, 200, 300]) {
        const rules = { ...RULES, fewestPoints, toMmHg };
        const points = comparedAtMmHg(rules).map((mmHg) => ({ referenceMmHg: mmHg, gaugeMmHg: mmHg }));
        expect(gaugeResult({ of: 'comparison', reference: 'x', points }, rules).verdict).toBe('good');
      }
  });

  test('of few pressures condemns a gauge all the same', () => {
    expect(comparison([150], [8])).toMatchObject({ verdict: 'failed', errorMmHg: 8 });
  });

  // Limits of this project: from 60 mmHg or below to 200 or above.
  test.each([
    [[60, 90, 120, 160, 200], 'good'],
    [[61, 90, 120, 160, 200], 'incomplete'],
    [[60, 90, 120, 160, 199], 'incomplete'],
  ])('over %j is %s', (at, verdict) => {
    expect(comparison(at, []).verdict).toBe(verdict);
  });

  test('of a gauge that is out by the same everywhere has that for its worst and its mean', () => {
    fc.assert(
      fc.property(fc.integer({ min: -40, max: 40 }), (out) => {
        const result = comparison(SCALE, Array(SCALE.length).fill(out));
        expect(result).toMatchObject({ errorMmHg: out, meanErrorMmHg: out });
        expect(result.verdict).toBe(Math.abs(out) > 3 ? 'failed' : 'good');
      }),
    );
  });

  test('is not decided by the last digits of a subtraction', () => {
    expect(comparison(SCALE, [0, 0, 0, 3.0000000000001, 0, 0]).verdict).toBe('good');
  });
});

// OIML R 16-1:2002 (from memory): 4 mmHg/min.
describe('a leak test', () => {
  test.each([
    [200, 196, 60, 'good', 4],
    [200, 195, 60, 'failed', 5],
    [200, 180, 300, 'good', 4],
    [200, 179, 300, 'failed', 4.2],
    [200, 200, 60, 'good', 0],
    [200, 199, 59, 'incomplete', 60 / 59],
  ] as const)('from %s to %s mmHg in %s s is %s', (fromMmHg, toMmHg, seconds, verdict, perMinute) => {
    const result = gaugeResult({ of: 'leak', fromMmHg, toMmHg, seconds });
    expect(result.verdict).toBe(verdict);
    expect(result.leakMmHgPerMinute).toBeCloseTo(perMinute, 9);
  });
});

// A place that goes by another limit: the rule is its own on both sides of it.
test('the limits of the place count in the place of the published ones', () => {
  const strict = { ...RULES, mostRestMmHg: 2, mostErrorMmHg: 2, mostLeakMmHgPerMinute: 2, fewestPoints: 3 };
  const rest = (restMmHg: number) => gaugeResult({ of: 'zero', restMmHg }, strict);
  expect([rest(2).verdict, rest(2.5).verdict]).toEqual(['good', 'failed']);
  expect(rest(3).flags).toEqual([{ code: 'gauge-rest-out', figures: { errorMmHg: 3, limitMmHg: 2 } }]);
  const leak = (toMmHg: number) =>
    gaugeResult({ of: 'leak', fromMmHg: 200, toMmHg, seconds: 60 }, strict).verdict;
  expect([leak(198), leak(197)]).toEqual(['good', 'failed']);
  const three = (out: number) =>
    gaugeResult(
      {
        of: 'comparison',
        reference: 'x',
        points: [0, 100, 200].map((at) => ({ referenceMmHg: at, gaugeMmHg: at + out })),
      },
      strict,
    ).verdict;
  expect([three(2), three(3)]).toEqual(['good', 'failed']);
});

test('a fall and a repair are no checks', () => {
  expect(gaugeResult({ of: 'dropped' }).verdict).toBe('none');
  expect(gaugeResult({ of: 'repaired' }).verdict).toBe('none');
});
