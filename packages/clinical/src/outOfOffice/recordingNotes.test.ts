import { expect, test } from 'vitest';
import { presetProtocol } from '../protocol/presetProtocol.js';
import { ambulatoryRules } from '../protocol/rules.js';
import { MINUTE_MS } from './clock.js';
import { periodCounts } from './periodCounts.js';
import type { DayNight } from './periods.js';
import type { Edited } from './recordingKept.js';
import { recordingNotes } from './recordingNotes.js';
import type { SeriesReading } from './seriesReading.js';
import { A1, readingAt } from './testing.js';

const DIARY: DayNight = { by: 'asleep-range', asleep: { from: 23 * 60, to: 7 * 60 } };
/** The rules of a preset; of no preset, those without any limit. */
function rulesOf(id: string | null) {
  const found = presetProtocol({ ambulatory: id ?? 'means-alone-over-24-hours' });
  if (!found.ok) throw new Error(String(id));
  return ambulatoryRules(found.value);
}
const NO_LIMITS = rulesOf(null);

const codes = (readings: readonly SeriesReading[], preset: string | null, edited: readonly Edited[] = []) =>
  recordingNotes(readings, edited, DIARY, rulesOf(preset)).map(({ code }) => code);

/** A reading every so many minutes from 09:00 on. */
function every(minutes: number, n: number): SeriesReading[] {
  return Array.from({ length: n }, (_, k) => {
    const minute = 9 * 60 + k * minutes;
    const clock = `${Math.floor(minute / 60) % 24}:${minute % 60}`;
    return { ...readingAt(k + 1, Math.floor(minute / 1440), clock, '130/80 70') };
  });
}

// Out-of-office handbook 5: Hypertension Canada (CHEP 2017) asks for 24 hours; no other row does. How long a recording lasted, one
// usual step after its last reading, is a decision of this project.
test('Hypertension Canada asks for 24 hours', () => {
  expect(codes(every(30, 48), 'hypertension-canada')).toEqual([]);
  expect(codes(every(30, 47), 'hypertension-canada')).toEqual(['under-a-day']);
  expect(recordingNotes(every(30, 47), [], DIARY, rulesOf('hypertension-canada'))[0]?.figures).toEqual({
    hours: 23.5,
    least: 24,
  });
  expect(codes(every(30, 47), 'esc-2024')).toEqual([]);
  expect(codes(every(30, 47), null)).toEqual([]);
  expect(codes(every(30, 1), 'hypertension-canada')).toEqual([]);
  expect(codes([], 'hypertension-canada')).toEqual([]);
  // A recorder that is some seconds late each time has lasted a day all the same.
  const late = every(30, 48).map((one, k) => ({ ...one, atMs: one.atMs - k * 500 }));
  expect(codes(late, 'hypertension-canada')).toEqual([]);
  // A failed measurement at the end was of the recording; a double of the last reading is not.
  const failed = every(30, 48).map((one, k) =>
    k === 47 ? { ...one, systolic: null, diastolic: null } : one,
  );
  expect(codes(failed, 'hypertension-canada', [{ index: 48, code: 'failed', figures: {} }])).toEqual([]);
  const again = every(30, 48).map((one, k) => (k === 47 ? { ...one, atMs: one.atMs - 30 * MINUTE_MS } : one));
  expect(codes(again, 'hypertension-canada', [{ index: 48, code: 'duplicate', figures: {} }])).toEqual([
    'under-a-day',
  ]);
});

test('a place sets the hours that it asks for itself, or none', () => {
  const codesUnder = (leastHours: ReturnType<typeof rulesOf>['leastHours']) =>
    recordingNotes(every(30, 47), [], DIARY, { leastHours }).map(({ code }) => code);
  expect(codesUnder({ comparison: '>=', limit: 23.5 })).toEqual([]);
  expect(codesUnder({ comparison: '>=', limit: 24 })).toEqual(['under-a-day']);
  expect(codesUnder(null)).toEqual([]);
});

// Out-of-office handbook 5: at most 30 minutes throughout for a profile (Thijs 1994).
test('readings further apart than 30 minutes are said, by day and by night', () => {
  expect(recordingNotes(A1, [], DIARY, NO_LIMITS)).toEqual([
    { code: 'far-apart-by-night', figures: { minutes: 60, most: 30 } },
  ]);
  expect(codes(every(31, 46), null)).toEqual(['far-apart-by-day', 'far-apart-by-night']);
  expect(codes(every(30, 48), null)).toEqual([]);
  // The step from the evening into the night is of neither.
  expect(codes([readingAt(1, 0, '22:00', '130/80'), readingAt(2, 0, '23:30', '120/70')], null)).toEqual([]);
});

// Out-of-office handbook 20: use what exists for each mean and show both n.
test('each number is counted for itself in each period', () => {
  const some = A1.map((one) => ({
    ...one,
    diastolic: one.index <= 3 || one.index === 30 ? null : one.diastolic,
    pulse: one.index === 1 ? null : one.pulse,
  }));
  const edited = [{ index: 2 }];
  expect(periodCounts(some, edited, DIARY)).toEqual({
    whole: { systolic: 39, diastolic: 36, pulse: 38 },
    day: { systolic: 31, diastolic: 29, pulse: 30 },
    night: { systolic: 8, diastolic: 7, pulse: 8 },
  });
});

// Out-of-office handbook 20: of somebody who works nights only their diary tells the night. A file whose marks tell it refuses hours
// by the clock; where nothing tells it, that is said.
test('hours of the clock are no night of somebody who slept by day', () => {
  const clock: DayNight = { by: 'clock', day: { from: 540, to: 1260 }, night: { from: 60, to: 360 } };
  const codesBy = (readings: readonly SeriesReading[], by: DayNight) =>
    recordingNotes(readings, [], by, NO_LIMITS).map(({ code }) => code);
  expect(codesBy(every(30, 48), clock)).toEqual(['night-by-clock']);
  expect(codesBy(every(30, 48), DIARY)).toEqual([]);
  expect(codesBy([], clock)).toEqual([]);
});
