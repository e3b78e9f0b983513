// @ts-expect-error: jstat ships no types
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { ownSds } from './components.js';

/** What of jStat (MIT) is used here. */
const peer = jstat as {
  anovafscore: (...groups: readonly number[][]) => number;
  variance: (values: readonly number[], isSample: boolean) => number;
  mean: (values: readonly number[]) => number;
};

test('own variation needs three days of two readings each: a day of one reading does not count as one', () => {
  const two = [
    [140, 142],
    [138, 137],
  ];
  expect(ownSds(two)).toBeNull();
  expect(ownSds([...two, [139]])).toBeNull();
  expect(ownSds([...two, [], [139, 139]])).not.toBeNull();
});

test('the parts are those of a one-way analysis of variance', () => {
  const days = [
    [132, 128, 131],
    [141, 139, 142],
    [126, 125, 129],
    [135, 137, 133],
  ];
  const own = ownSds(days);
  // By jStat: F = (reading + 3 day) / reading for days of three readings.
  const f = peer.anovafscore(...days);
  const reading = (own?.reading as number) ** 2;
  expect((reading + 3 * (own?.day as number) ** 2) / reading).toBeCloseTo(f, 9);
  const within = days.map((day) => peer.variance(day, true));
  expect(reading).toBeCloseTo(peer.mean(within), 9);
});
