import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Repair, repairTaps, unrepairedTaps } from './repair.js';
import { tappingPause } from './tappingPause.js';
import { tapResult } from './tapResult.js';

function timesOf(intervals: readonly number[]): number[] {
  const seconds = [0];
  for (const interval of intervals) seconds.push((seconds.at(-1) as number) + interval);
  return seconds;
}

const taps = (intervals: readonly number[]) =>
  ({ of: 'pulse', source: 'key', seconds: timesOf(intervals) }) as const;
const steady = (count: number) => Array.from({ length: count }, () => 1);

describe('a pause of the tapping', () => {
  test('gives no rate and says where it is and how long', () => {
    const result = tapResult(taps([...steady(9), 14, ...steady(10)]), { repair: true });
    expect(result).toMatchObject({ perMinute: null, lowPerMinute: null, rhythm: 'undecided' });
    expect(result.why).toEqual([
      { code: 'tapping-paused', figures: { seconds: 14, afterTap: 10, limitSeconds: 4.6 } },
    ]);
  });

  test('begins over what a repair may still fill, on both sides of the limit', () => {
    const at = (gap: number) => tappingPause(unrepairedTaps(taps([...steady(5), gap, ...steady(5)])));
    expect(at(4.6)).toBeNull();
    expect(at(4.601)).toMatchObject({ seconds: 4.601, afterTap: 6 });
    const missed = repairTaps(taps([...steady(12), 4, ...steady(12)]));
    expect(missed.repairs).toEqual([{ index: 13, what: 'missed', added: 3 }] satisfies Repair[]);
    expect(tappingPause(missed)).toBeNull();
  });

  test('is looked for from the second interval on', () => {
    expect(tappingPause(unrepairedTaps(taps([14])))).toBeNull();
    expect(tappingPause(unrepairedTaps(taps([0.8, 14])))).toMatchObject({ seconds: 14, afterTap: 2 });
  });

  test('put anywhere into taps of a steady or a wholly irregular pulse never leaves a rate', () => {
    // Intervals that vary by a quarter or more, as bedside handbook 1.11 has them of a wholly irregular pulse.
    const interval = fc.double({ min: 0.55, max: 1.45, noNaN: true });
    const pulse = fc.oneof(
      fc.integer({ min: 2, max: 40 }).map(steady),
      fc.array(interval, { minLength: 2, maxLength: 40 }),
    );
    const pause = fc.double({ min: 6.8, max: 600, noNaN: true });
    fc.assert(
      fc.property(pulse, fc.nat(), pause, fc.boolean(), (intervals, place, seconds, repair) => {
        const broken = intervals.toSpliced(place % (intervals.length + 1), 0, seconds);
        const result = tapResult(taps(broken), { repair });
        expect(result.perMinute).toBeNull();
        expect(result.why.map(({ code }) => code)).toEqual(['tapping-paused']);
        expect(tapResult(taps(intervals), { repair }).perMinute).not.toBeNull();
      }),
    );
  });
});
