import { expect, test } from 'vitest';
import { HOUR_MS, MINUTE_MS } from './clock.js';
import type { SeriesReading } from './seriesReading.js';
import { morningSurge } from './surge.js';
import { A1, readingAt } from './testing.js';

const [first] = A1;
// A1 begins at 09:00; bed at 23:00, waking at 07:00.
const nineMs = (first as SeriesReading).atMs;
const [bedMs, wakeMs] = [nineMs + 14 * HOUR_MS, nineMs + 22 * HOUR_MS];

// Out-of-office handbook 19, A1, printed: three of the definitions. The other ones of section 10 worked out by hand from the same
// readings; the slope by the sums of the textbook over the nine readings from 02:30 to 08:45.
test('A1: each rise by its definition', () => {
  const found = morningSurge(A1, bedMs, wakeMs);
  expect(found.sleepTrough).toBeCloseTo(27.6667, 4);
  expect(found.preWaking).toBe(19.5);
  expect(found.eveningFall).toBeCloseTo(18.6667, 4);
  // 07:15 against 06:30, which is just half an hour before waking.
  expect(found.rising).toBe(133 - 122);
  expect(found.fourReadings).toBeCloseTo(139 - (109 + 111 + 112) / 3, 10);
  expect(found.ratePerHour).toBeCloseTo(5.935018050541514, 10);
  // By night a reading an hour: none of its hours has two.
  expect(found.movingTrough).toBeNull();
  expect(found.troughAtEdge).toBe(false);
});

/** A night from 23:00 to 07:00 with a reading every half hour, and a morning; systolics in their order. */
const NIGHT = [120, 118, 114, 112, 110, 116, 108, 104, 112, 113, 114, 116, 118, 119, 120, 121];
const halfHourly = (night: readonly number[], morning: readonly number[]) =>
  [...night, ...morning].map((systolic, k) => {
    const minutes = 23 * 60 + 30 * k;
    const clock = `${String(Math.floor(minutes / 60) % 24).padStart(2, '0')}:${minutes % 60 === 0 ? '00' : '30'}`;
    return readingAt(k + 1, minutes >= 1440 ? 1 : 0, clock, `${systolic}/70 60`);
  });
const surgeOf = (readings: readonly SeriesReading[]) => {
  const from = (readings[0] as SeriesReading).atMs;
  return morningSurge(readings, from, from + 8 * HOUR_MS);
};

test('the lowest hour: of two readings that lie within it, both asleep', () => {
  // 108 and 104 make 106; the hour before them 112, the one after 108.
  expect(surgeOf(halfHourly(NIGHT, [130, 134, 138, 142])).movingTrough).toBe(136 - 106);
  // An hour that reaches past waking is no hour of sleep: from 06:30 on, 90 and whatever comes up, is left out.
  const late = [...NIGHT.slice(0, -1), 90];
  expect(surgeOf(halfHourly(late, [130, 134, 138, 142])).movingTrough).toBe(136 - (120 + 90) / 2);
});

test('a definition without its readings has no number, the others keep theirs', () => {
  const three = surgeOf(halfHourly(NIGHT, [130, 134, 138]));
  expect(three).toMatchObject({ fourReadings: null, rising: 130 - 121, movingTrough: 134 - 106 });
  const none = surgeOf(halfHourly(NIGHT, []));
  expect(none).toMatchObject({ sleepTrough: null, rising: null, movingTrough: null, ratePerHour: null });
});

test('four readings after waking are of the morning: none is later than four hours', () => {
  const night = halfHourly(NIGHT, [130, 134, 138, 142]);
  const after = (hours: readonly number[]) =>
    night.map((one, k) =>
      k < 16
        ? one
        : { ...one, atMs: (night[0] as SeriesReading).atMs + (8 + (hours[k - 16] as number)) * HOUR_MS },
    );
  // The three lowest asleep are 104, 108 and 110. Four hours are a decision of this project.
  expect(surgeOf(after([1, 2, 3, 4])).fourReadings).toBeCloseTo(136 - (104 + 108 + 110) / 3, 10);
  expect(surgeOf(after([1, 2, 3, 4.01])).fourReadings).toBeNull();
  expect(surgeOf(after([3, 6, 9, 12])).fourReadings).toBeNull();
});

test('one reading asleep is no trough', () => {
  const one = surgeOf(halfHourly(NIGHT, [130, 134, 138, 142]).filter((_, k) => k === 0 || k > 15));
  expect(one).toMatchObject({ sleepTrough: null, eveningFall: null, troughAtEdge: false, preWaking: null });
  const two = surgeOf(halfHourly(NIGHT, [130, 134, 138, 142]).filter((_, k) => k < 2 || k > 15));
  expect(two).toMatchObject({ sleepTrough: 136 - 119, troughAtEdge: true });
});

test('who got up over half an hour after the last reading lying has no rise on getting up', () => {
  const readings = halfHourly(NIGHT, [130, 134, 138, 142]);
  const later = readings.map((one, k) => (k < 16 ? one : { ...one, atMs: one.atMs + 31 * MINUTE_MS }));
  expect(surgeOf(later).rising).toBeNull();
  const upAtOnce = readings.map((one, k) => (k < 16 ? one : { ...one, atMs: one.atMs + 30 * MINUTE_MS }));
  expect(surgeOf(upAtOnce).rising).toBe(130 - 121);
  // The last reading lying was an hour before.
  expect(surgeOf(readings.filter((_, k) => k !== 15)).rising).toBeNull();
});

test('the rate of a straight rise is its slope', () => {
  // From the trough at 02:30, 5 mmHg each half hour.
  const night = Array.from({ length: 16 }, (_, k) => (k < 7 ? 120 : 100 + 5 * (k - 7)));
  const morning = Array.from({ length: 4 }, (_, k) => 145 + 5 * k);
  expect(surgeOf(halfHourly(night, morning)).ratePerHour).toBeCloseTo(10, 10);
});
