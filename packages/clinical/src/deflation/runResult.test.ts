import { describe, expect, test } from 'vitest';
import { type RunCircumstances, UNKNOWN_RUN_CIRCUMSTANCES } from './circumstances.js';
import { parseRun } from './parseRun.js';
import { DEFAULT_RUN_RULES, type DeflationRules, type InflationRules } from './rules.js';
import { type RunResult, runResult } from './runResult.js';

type Options = {
  readonly circumstances?: Partial<RunCircumstances>;
  readonly inflation?: Partial<InflationRules>;
  readonly deflation?: Partial<DeflationRules>;
};

function resultOf(input: object, { circumstances, inflation, deflation }: Options = {}): RunResult {
  const parsed = parseRun(input);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
  const rules = {
    inflation: { ...DEFAULT_RUN_RULES.inflation, ...inflation },
    deflation: { ...DEFAULT_RUN_RULES.deflation, ...deflation },
  };
  return runResult(parsed.value, { ...UNKNOWN_RUN_CIRCUMSTANCES, ...circumstances }, rules);
}

const codes = ({ flags }: RunResult) => flags.map(({ code }) => code);
const reasons = ({ why }: RunResult) => why.map(({ code }) => code);
const figures = (result: RunResult, code: string) => result.flags.find((one) => one.code === code)?.figures;

/** Sounds at a pressure and a time; a time left out is not known. */
const first = (mmHg: number, atSeconds?: number) => ({ what: 'first sound', mmHg, atSeconds });
const muffled = (mmHg: number, atSeconds?: number) => ({ what: 'muffled', mmHg, atSeconds });
const last = (mmHg: number, atSeconds?: number) => ({ what: 'last sound', mmHg, atSeconds });
const back = (mmHg: number, atSeconds?: number) => ({ what: 'pulse back', mmHg, atSeconds });
const heard = (...moments: object[]) => ({ method: 'auscultation', moments });

/** 2.5 mmHg/s all the way, at 75 a minute: 2 mmHg a beat. */
const EVEN = {
  method: 'auscultation',
  gaugeStepMmHg: 2,
  pulsePerMinute: 75,
  palpated: { lostMmHg: 150, backMmHg: 146 },
  peak: { mmHg: 180, atSeconds: 0 },
  moments: [first(148, 12.8), last(92, 35.2)],
};

test('a timed run, key by key in the order of the issue', () => {
  const result = resultOf(EVEN);
  expect(result).toMatchObject({
    systolic: 148,
    diastolic: 92,
    muffled: null,
    diastolicUsed: 92,
    marginMmHg: 30,
    flags: [],
    why: [],
    method: 'auscultation',
    gap: null,
  });
  expect(result.deflationRateMmHgPerSecond).toBeCloseTo(2.5, 9);
  expect(result.earlyDeflationRateMmHgPerSecond).toBeCloseTo(2.5, 9);
  expect(result.dropPerBeatMmHg).toBeCloseTo(2, 9);
  expect(Object.keys(result)).toEqual([
    'systolic',
    'diastolic',
    'muffled',
    'diastolicUsed',
    'systolicRange',
    'diastolicRange',
    'deflationRateMmHgPerSecond',
    'earlyDeflationRateMmHgPerSecond',
    'dropPerBeatMmHg',
    'marginMmHg',
    'flags',
    'why',
    'method',
    'gap',
  ]);
});

describe('rates', () => {
  test.each([
    // Bedside handbook 8, C040 and C041 (derived; found, AAP 2017).
    ['C040', 130, 12, 2.5, []],
    ['C041', 120, 8, 5, ['too-fast']],
    // Both sides of 2 and of 3.
    ['2.0', 140, 10, 2, []],
    ['under 2', 140, 10.01, 20 / 10.01, ['too-slow']],
    ['3.0', 130, 10, 3, []],
    ['over 3', 130, 9.99, 30 / 9.99, ['too-fast']],
  ])('%s: 160 to %d in %d s', (_id, mmHg, seconds, rate, flags) => {
    const result = resultOf(heard(first(160, 0), last(mmHg, seconds)));
    expect(result.deflationRateMmHgPerSecond).toBeCloseTo(rate, 9);
    expect(codes(result)).toEqual(flags);
  });

  test('early and mean are judged apart', () => {
    const run = { ...heard(first(150, 10), last(90, 34)), peak: { mmHg: 190, atSeconds: 0 } };
    expect(codes(resultOf(run))).toEqual(['early-too-fast']);
    expect(figures(resultOf(run), 'early-too-fast')).toEqual({
      mmHgPerSecond: 4,
      slowestMmHgPerSecond: 2,
      fastestMmHgPerSecond: 3,
    });
    const slow = { ...run, peak: { mmHg: 168, atSeconds: 0 } };
    expect(codes(resultOf(slow))).toEqual(['early-too-slow']);
  });

  test('a second between two moments is needed', () => {
    // docs/conventions.md section 6.
    expect(resultOf(heard(first(150, 0), last(140, 1))).deflationRateMmHgPerSecond).toBe(10);
    const close = resultOf(heard(first(150, 0), last(140, 0.99)));
    expect(close.deflationRateMmHgPerSecond).toBeNull();
    expect(reasons(close)).toContain('moments-too-close');
  });

  test('without times there is no rate, and it says so', () => {
    const result = resultOf({ ...EVEN, moments: [first(148), last(92)] });
    expect(result).toMatchObject({
      deflationRateMmHgPerSecond: null,
      earlyDeflationRateMmHgPerSecond: null,
      dropPerBeatMmHg: null,
      systolicRange: null,
      diastolicRange: null,
      marginMmHg: 30,
    });
    expect(reasons(result)).toEqual(['not-timed']);
  });

  test('without a pulse there are rates and no ranges', () => {
    const result = resultOf({ ...EVEN, pulsePerMinute: null });
    expect(result).toMatchObject({ dropPerBeatMmHg: null, systolicRange: null, diastolicRange: null });
    expect(result.deflationRateMmHgPerSecond).toBeCloseTo(2.5, 9);
    expect(reasons(result)).toEqual(['no-pulse']);
  });

  test('without a peak the mean rate stands alone', () => {
    const result = resultOf({ ...EVEN, peak: null });
    expect(result).toMatchObject({
      earlyDeflationRateMmHgPerSecond: null,
      systolicRange: null,
      marginMmHg: null,
    });
    expect(result.diastolicRange).not.toBeNull();
    expect(reasons(result)).toEqual(['no-peak']);
  });

  test('at a slow or irregular pulse the beat is judged, and slow is no fault', () => {
    // Bedside handbook 3.6: 2 mmHg per beat (found, Korean guideline 2013; slow pulse from memory).
    const run = (pulsePerMinute: number, seconds: number) => ({
      ...heard(first(150, 0), last(100, seconds)),
      pulsePerMinute,
    });
    expect(codes(resultOf(run(50, 25)))).toEqual([]);
    expect(codes(resultOf(run(49, 25)))).toEqual(['too-fast-per-beat']);
    expect(codes(resultOf(run(40, 50)))).toEqual([]);
    expect(codes(resultOf(run(40, 37.5)))).toEqual([]);
    expect(codes(resultOf(run(40, 37.4)))).toEqual(['too-fast-per-beat']);
    const irregular = { circumstances: { rhythmFelt: 'irregular' } } as const;
    expect(codes(resultOf(run(60, 20), irregular))).toEqual(['too-fast-per-beat', 'range-too-narrow']);
    expect(codes(resultOf(run(60, 20)))).toEqual([]);
    expect(codes(resultOf(run(60, 20), { deflation: { perBeatWhen: 'always' } }))).toEqual([
      'too-fast-per-beat',
    ]);
    expect(codes(resultOf(run(40, 20), { deflation: { perBeatWhen: 'never' } }))).toEqual([]);
  });
});

test('a display is not to be relied on where the rhythm was felt irregular (NICE NG136; bedside handbook 3.13)', () => {
  const run = { ...heard(first(148), last(92)), method: 'device' };
  const irregular = { circumstances: { rhythmFelt: 'irregular' } } as const;
  const regular = { circumstances: { rhythmFelt: 'regular' } } as const;
  expect(codes(resultOf(run, irregular))).toContain('device-with-irregular');
  expect(codes(resultOf(run, regular))).not.toContain('device-with-irregular');
  expect(codes(resultOf(run))).not.toContain('device-with-irregular');
  expect(codes(resultOf(heard(first(148), last(92)), irregular))).not.toContain('device-with-irregular');
});

describe('sounds', () => {
  test('a gap heard is kept, and is no fault of the numbers', () => {
    // Bedside handbook 3.5: 186/94, gap 186-152.
    const result = resultOf(heard(first(186), last(186), first(152), last(94)));
    expect(result).toMatchObject({ systolic: 186, diastolic: 94, gap: { fromMmHg: 186, toMmHg: 152 } });
    expect(codes(result)).toEqual(['gap-heard']);
  });

  test('sounds gone and back within one graduation are a gap too', () => {
    const result = resultOf(heard(first(150), last(120), first(120), last(90)));
    expect(result.gap).toEqual({ fromMmHg: 120, toMmHg: 120 });
  });

  test('the last of several last sounds is the diastolic', () => {
    expect(resultOf(heard(first(140), last(96), last(92))).diastolic).toBe(92);
  });

  test('to zero: C045', () => {
    // Bedside handbook 8, C045 (from memory; for children found, AAP 2017).
    const result = resultOf(heard(first(118), muffled(62), last(0)));
    expect(result).toMatchObject({ systolic: 118, muffled: 62, diastolic: 0, diastolicUsed: 62 });
    expect(codes(result)).toEqual(['to-zero']);
  });

  test.each([
    // docs/conventions.md section 6: under 10 with muffled present.
    [9, 62, 62, ['to-zero']],
    [10, 62, 10, ['implausible-diastolic']],
    [0, null, null, ['to-zero', 'zero-without-muffled']],
    [2, null, 2, ['to-zero', 'implausible-diastolic']],
  ])('last sound at %d, muffled at %s: %s is used', (lastAt, muffledAt, used, flags) => {
    const middle = muffledAt === null ? [] : [muffled(muffledAt)];
    const result = resultOf(heard(first(118), ...middle, last(lastAt)), { deflation: { gaugeStepMmHg: 1 } });
    expect(result.diastolicUsed).toBe(used);
    expect(codes(result).filter((code) => code !== 'off-graduation')).toEqual(flags);
  });

  test('a diastolic of 0 without muffling cannot be used', () => {
    expect(reasons(resultOf(heard(first(118), last(0))))).toContain('zero-without-muffled');
  });
});

describe('palpation', () => {
  test('122/P: one number, and what it cannot give', () => {
    const result = resultOf({
      method: 'palpation',
      pulsePerMinute: 75,
      palpated: { lostMmHg: 126 },
      peak: { mmHg: 152, atSeconds: 0 },
      moments: [back(122, 12)],
    });
    expect(result).toMatchObject({
      systolic: 122,
      diastolic: null,
      muffled: null,
      diastolicUsed: null,
      diastolicRange: null,
      deflationRateMmHgPerSecond: 2.5,
      earlyDeflationRateMmHgPerSecond: 2.5,
      dropPerBeatMmHg: 2,
      systolicRange: [121, 125],
      marginMmHg: 26,
    });
    expect(codes(result)).toEqual(['palpated-only']);
    expect(reasons(result)).toEqual(['no-diastolic-by-palpation']);
  });
});

test('numbers off a display: origin kept, no graduation, no rates, no ranges', () => {
  const result = resultOf({ ...EVEN, method: 'device', moments: [first(117), last(73)] });
  expect(result).toMatchObject({ method: 'device', systolic: 117, diastolic: 73, systolicRange: null });
  expect(codes(result)).toEqual([]);
  expect(reasons(result)).toEqual(['read-from-display']);
});

test('C042: 117/73 by ear is asked about', () => {
  // Bedside handbook 8, C042 (derived, 3.9).
  const result = resultOf(heard(first(117), last(73)));
  expect(figures(result, 'off-graduation')).toEqual({ systolic: 117, diastolic: 73, gaugeStepMmHg: 2 });
  expect(codes(resultOf({ ...heard(first(117), last(73)), gaugeStepMmHg: 1 }))).toEqual([]);
  expect(figures(resultOf(heard(first(118), last(73))), 'off-graduation')).toEqual({
    diastolic: 73,
    gaugeStepMmHg: 2,
  });
});

test.each([
  // No source: limits of this project, both sides.
  [50, 38, []],
  [48, 36, ['implausible-systolic']],
  [260, 146, []],
  [262, 148, ['implausible-systolic']],
  [120, 30, []],
  [120, 28, ['implausible-diastolic']],
  [220, 150, []],
  [220, 152, ['implausible-diastolic']],
  [120, 110, []],
  [120, 112, ['implausible-pulse-pressure']],
  [200, 80, []],
  [200, 78, ['implausible-pulse-pressure']],
])('%d/%d: %j', (systolic, diastolic, flags) => {
  expect(codes(resultOf(heard(first(systolic), last(diastolic))))).toEqual(flags);
});
