import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { timesOf } from '../../fixtures/people.mjs';
import { parseTaps } from './parseTaps.js';
import { type TapResult, tapResult } from './tapResult.js';
import type { TapSource } from './taps.js';

function resultOf(seconds: readonly number[], source: TapSource = 'key', repair = true): TapResult {
  return tapResult({ of: 'pulse', source, seconds }, { repair });
}

test('13 taps from 0.00 to 10.00 s are 72.0 a minute', () => {
  // Bedside handbook 8, C010 (derived, 1.12). Only the first and the last tap count, so the others may lie anywhere.
  const seconds = [0, 0.9, 1.7, 2.4, 3.4, 4.1, 5, 5.9, 6.6, 7.5, 8.3, 9.2, 10];
  const result = resultOf(seconds);
  expect(result.perMinute).toBeCloseTo(72, 9);
  expect(result.beats).toBe(13);
});

test('one tap gives no rate, and that is no error', () => {
  // Bedside handbook 8, C011 (derived); docs/conventions.md section 5.
  expect(resultOf([3.2])).toEqual({
    perMinute: null,
    lowPerMinute: null,
    highPerMinute: null,
    beats: 1,
    repairs: [],
    meanIntervalMs: null,
    sdIntervalMs: null,
    cv: null,
    rmssdMs: null,
    nrmssd: null,
    turningPointRatio: null,
    shannonEntropy: null,
    tapJitterMs: null,
    rhythm: 'undecided',
    flags: [],
    why: [{ code: 'too-few', figures: { taps: 1, needs: 2 } }],
  });
});

test('two taps have a rate, and reasons for all that is null', () => {
  const result = resultOf([0, 0.75]);
  expect(result).toMatchObject({
    perMinute: 80,
    meanIntervalMs: 750,
    sdIntervalMs: null,
    rhythm: 'undecided',
  });
  expect(result.why.map(({ code }) => code)).toEqual([
    'too-few-for-statistics',
    'too-few-for-range',
    'too-few-for-jitter',
    'too-few-for-rhythm',
  ]);
});

describe('repair', () => {
  const missed = [0, 0.8, 1.6, 2.4, 4, 4.8, 5.6, 6.4, 7.2, 8];

  test('puts the rate right; without it the taps stand as read', () => {
    const repaired = resultOf(missed);
    expect(repaired).toMatchObject({ beats: 11, repairs: [{ index: 4, what: 'missed', added: 1 }] });
    expect(repaired.perMinute).toBeCloseTo(75, 9);
    const read = resultOf(missed, 'key', false);
    expect(read).toMatchObject({ beats: 10, repairs: [] });
    expect(read.perMinute).toBeCloseTo(67.5, 9);
  });

  test('a rate over 400 that only a repair makes is flagged', () => {
    // A tap every 0.14 s with five left out is 392 a minute as read and 429 with them: no heart is so fast.
    const fast = Array.from({ length: 60 }, (_, i) => i * 0.14).filter(
      (_, i) => ![12, 20, 33, 41, 54].includes(i),
    );
    const result = resultOf(fast);
    expect(result.perMinute).toBeGreaterThan(400);
    expect(result.flags).toContainEqual(
      expect.objectContaining({
        code: 'rate-impossible',
        figures: expect.objectContaining({ ceilingPerMinute: 400 }),
      }),
    );
  });
});

describe('taps in general', () => {
  // No gap is a pause: none is over 4.6 times another. On a grid of a millisecond, so that moving and scaling leave ties what they were.
  const intervals = fc.array(fc.integer({ min: 440, max: 2000 }), { minLength: 1, maxLength: 60 });

  test('an earlier or later zero of the clock changes nothing', () => {
    fc.assert(
      fc.property(intervals, fc.integer({ min: -100_000, max: 100_000_000 }), (list, zeroMs) => {
        const seconds = timesOf(list).map((ms) => ms / 1000);
        const moved = timesOf(list).map((ms) => (ms + zeroMs) / 1000);
        alike(resultOf(moved), resultOf(seconds), 1);
      }),
    );
  });

  // Without repair: whether a slip is told from a tapper's scatter depends on the scatter, which is in ms.
  test('twice as slow is half the rate and twice every time; shares stay', () => {
    fc.assert(
      fc.property(intervals, (list) => {
        const seconds = timesOf(list).map((ms) => ms / 1000);
        const slow = timesOf(list).map((ms) => (2 * ms) / 1000);
        const [once, twice] = [resultOf(seconds, 'key', false), resultOf(slow, 'key', false)];
        expect(twice.perMinute).toBeCloseTo((once.perMinute as number) / 2, 9);
        for (const share of ['cv', 'nrmssd', 'turningPointRatio', 'shannonEntropy'] as const) {
          near(twice[share], once[share], 1);
        }
        for (const time of ['meanIntervalMs', 'sdIntervalMs', 'rmssdMs', 'tapJitterMs'] as const) {
          near(twice[time], once[time], 2);
        }
      }),
    );
  });

  test('the rate lies in its interval; what needs no order does not change when read backwards', () => {
    fc.assert(
      fc.property(intervals, (list) => {
        const result = resultOf(
          timesOf(list).map((ms) => ms / 1000),
          'key',
          false,
        );
        const back = resultOf(
          timesOf([...list].reverse()).map((ms) => ms / 1000),
          'key',
          false,
        );
        expect(back.perMinute).toBeCloseTo(result.perMinute as number, 9);
        near(back.sdIntervalMs, result.sdIntervalMs, 1);
        near(back.rmssdMs, result.rmssdMs, 1);
        near(back.turningPointRatio, result.turningPointRatio, 1);
        near(back.highPerMinute, result.highPerMinute, 1);
        if (result.lowPerMinute === null) expect(list.length).toBeLessThan(5);
        else {
          expect(result.lowPerMinute).toBeLessThanOrEqual(result.perMinute as number);
          expect(result.highPerMinute).toBeGreaterThanOrEqual(result.perMinute as number);
        }
      }),
    );
  });

  test('no number is ever NaN or infinite, and every null has its own reason', () => {
    const wild = fc.array(fc.double({ min: 0.001, max: 60, noNaN: true }), { maxLength: 50 });
    fc.assert(
      fc.property(wild, fc.constantFrom<TapSource>('touch', 'key'), fc.boolean(), (list, source, repair) => {
        const result = resultOf(timesOf(list), source, repair);
        expect(JSON.parse(JSON.stringify(result))).toEqual(result);
        const said: string[] = result.why.map(({ code }) => code);
        for (const [key, value] of Object.entries(result)) {
          if (value === null) expect(REASONS[key]?.filter((code) => said.includes(code))).toHaveLength(1);
        }
        if (result.rhythm === 'undecided') {
          expect(REASONS.rhythm?.filter((code) => said.includes(code))).toHaveLength(1);
        }
      }),
    );
  });

  test('taps far closer than the step of their clock have a range that is a number', () => {
    const { lowPerMinute, highPerMinute } = resultOf([0, 1e-5, 2e-5, 3e-5, 4e-5, 5e-5], 'file', false);
    expect(lowPerMinute).toBe(0);
    expect(highPerMinute).toBe(Number.MAX_VALUE);
  });

  test('no rate is infinite, and none over 400 goes without a flag, however close the taps', () => {
    const close = fc.array(fc.integer({ min: -12, max: 1 }), { minLength: 1, maxLength: 12 });
    const steps = fc.record({ close, lead: fc.constantFrom(1, 4) });
    const source = fc.constantFrom<TapSource>('touch', 'key', 'file');
    fc.assert(
      fc.property(steps, source, fc.boolean(), ({ close, lead }, source, repair) => {
        const seconds = timesOf(close.map((power) => lead * 10 ** power));
        const rising = seconds.filter((time, i) => i === 0 || time > (seconds[i - 1] as number));
        const result = tapResult({ of: 'pulse', source, seconds: rising }, { repair });
        for (const rate of [result.perMinute, result.lowPerMinute, result.highPerMinute]) {
          if (rate !== null) expect(rate).toBeLessThan(Number.POSITIVE_INFINITY);
        }
        const isFlagged = result.flags.some(({ code }) => code === 'rate-impossible');
        expect(isFlagged).toBe((result.perMinute ?? 0) > 400);
        const read = parseTaps({ of: 'pulse', source, seconds: rising });
        if (read.ok && result.repairs.every(({ added }) => added === 0)) expect(isFlagged).toBe(false);
      }),
    );
  });

  test.each([[[0, 1e-10]], [[0, 1e-5, 1e-4]]])('taps of a touch screen at %j are one beat', (seconds) => {
    for (const repair of [true, false]) {
      expect(resultOf(seconds, 'touch', repair)).toMatchObject({
        perMinute: null,
        beats: 1,
        flags: [{ code: 'touch-bounces', figures: { removed: seconds.length - 1 } }],
      });
    }
  });
});

const TOO_FEW = ['too-few', 'too-few-for-statistics', 'tapping-paused'];

/** The reasons that each result can have for being null; `rhythm` for being undecided. */
const REASONS: Readonly<Record<string, readonly string[]>> = {
  perMinute: ['too-few', 'tapping-paused'],
  meanIntervalMs: ['too-few', 'tapping-paused'],
  lowPerMinute: ['too-few', 'tapping-paused', 'too-few-for-range'],
  highPerMinute: ['too-few', 'tapping-paused', 'too-few-for-range'],
  tapJitterMs: ['too-few', 'tapping-paused', 'too-few-for-jitter', 'jitter-cannot-be-told'],
  sdIntervalMs: TOO_FEW,
  cv: TOO_FEW,
  rmssdMs: TOO_FEW,
  nrmssd: TOO_FEW,
  turningPointRatio: TOO_FEW,
  shannonEntropy: TOO_FEW,
  rhythm: ['too-few', 'tapping-paused', 'too-few-for-rhythm', 'rhythm-not-clear', 'many-missed'],
};

function near(value: number | null, wanted: number | null, times: number): void {
  if (wanted === null) expect(value).toBeNull();
  else expect(Math.abs((value as number) - wanted * times)).toBeLessThanOrEqual(1e-6 * (1 + wanted * times));
}

function alike(result: TapResult, wanted: TapResult, times: number): void {
  expect(result.repairs).toEqual(wanted.repairs);
  expect(result.rhythm).toBe(wanted.rhythm);
  expect(result.flags.map(({ code }) => code)).toEqual(wanted.flags.map(({ code }) => code));
  for (const [key, value] of Object.entries(wanted)) {
    if (typeof value === 'number' || value === null) {
      near(result[key as keyof TapResult] as number | null, value, times);
    }
  }
}
