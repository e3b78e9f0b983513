import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { AmbulatoryCircumstances } from './ambulatoryCircumstances.js';
import { ambulatoryResult } from './ambulatoryResult.js';
import { DEFAULT_AMBULATORY_RULES } from './ambulatoryRules.js';
import { DAY_MINUTES, MINUTE_MS } from './clock.js';
import { homeParts } from './homeParts.js';
import { homeResult, NOTHING_BY_HAND } from './homeResult.js';
import { DEFAULT_HOME_RULES } from './homeRules.js';
import type { DayNight } from './periods.js';
import { MEASURES, type SeriesReading } from './seriesReading.js';

// What must hold of any series, whatever its numbers: arithmetic, no fact of the trade.

const HOME = { ...DEFAULT_HOME_RULES, droppedDays: 0, leastDays: null, leastReadings: null };
const RECORDING = { ...DEFAULT_AMBULATORY_RULES, editing: 'minimal' as const };
const DIARY: DayNight = { by: 'asleep-range', asleep: { from: 23 * 60, to: 7 * 60 } };
const known = (dayNight: DayNight): AmbulatoryCircumstances => ({
  ageYears: null,
  isPregnant: false,
  scheduled: null,
  dayNight,
  isAllUsed: false,
  rejected: new Set(),
  restored: new Set(),
});

const rows = (mostMinutes: number) =>
  fc.array(
    fc.record({
      minute: fc.integer({ min: 0, max: mostMinutes }),
      systolic: fc.integer({ min: 100, max: 180 }),
      pressure: fc.integer({ min: 25, max: 60 }),
      pulse: fc.integer({ min: 45, max: 110 }),
      asleep: fc.boolean(),
    }),
    { minLength: 1, maxLength: 60 },
  );

type Row = { minute: number; systolic: number; pressure: number; pulse: number; asleep: boolean };

/** Readings of rows; from a minute on the clock is moved by so many. */
function readingsOf(
  list: readonly Row[],
  change = { from: Number.POSITIVE_INFINITY, by: 0 },
): SeriesReading[] {
  return list.map(({ minute, systolic, pressure, pulse, asleep }, k) => {
    const local = minute + (minute >= change.from ? change.by : 0);
    return {
      index: k + 1,
      atMs: minute * MINUTE_MS,
      localDay: Math.floor(local / DAY_MINUTES),
      minuteOfDay: ((local % DAY_MINUTES) + DAY_MINUTES) % DAY_MINUTES,
      systolic,
      diastolic: systolic - pressure,
      pulse,
      asleep,
      part: null,
      site: 'upper-arm',
    };
  });
}

const shuffledRows = (mostMinutes: number) =>
  rows(mostMinutes).chain((list) => {
    const readings = readingsOf(list);
    return fc.tuple(
      fc.constant(readings),
      fc.shuffledSubarray(readings, { minLength: readings.length, maxLength: readings.length }),
    );
  });

test('in whatever order the rows come, the answer is the same', () => {
  fc.assert(
    fc.property(shuffledRows(7 * DAY_MINUTES), ([readings, shuffled]) => {
      const result = homeResult(readings, NOTHING_BY_HAND, DEFAULT_HOME_RULES);
      expect(homeResult(shuffled, NOTHING_BY_HAND, DEFAULT_HOME_RULES)).toEqual(result);
      const parts = homeParts(readings, result.dropped, DEFAULT_HOME_RULES);
      const again = homeParts(shuffled, result.dropped, DEFAULT_HOME_RULES);
      expect(again.morning.days).toBe(parts.morning.days);
      near(again.morning.sd.systolic, parts.morning.sd.systolic);
    }),
  );
  fc.assert(
    fc.property(shuffledRows(DAY_MINUTES), ([readings, shuffled]) => {
      const before = ambulatoryResult(readings, known(DIARY), RECORDING);
      expect(ambulatoryResult(shuffled, known(DIARY), RECORDING)).toEqual(before);
    }),
  );
});

test('a constant added to every number moves every mean by it, and no spread, step or difference at all', () => {
  fc.assert(
    fc.property(rows(DAY_MINUTES), fc.integer({ min: -15, max: 15 }), (list, added) => {
      const readings = readingsOf(list);
      const moved = readings.map((one) => ({
        ...one,
        systolic: (one.systolic ?? 0) + added,
        diastolic: (one.diastolic ?? 0) + added,
        pulse: (one.pulse ?? 0) + added,
      }));
      const [a, b] = [readings, moved].map((one) => ambulatoryResult(one, known(DIARY), RECORDING));
      if (a === undefined || b === undefined) throw new Error('two answers');
      for (const m of MEASURES) {
        for (const mean of ['arithmetic', 'hoursWeighted', 'trapezoid', 'closed', 'hourly'] as const)
          near(b.whole[mean][m], plus(a.whole[mean][m], added));
        near(b.day.mean[m], plus(a.day.mean[m], added));
        near(b.night.mean[m], plus(a.night.mean[m], added));
        for (const still of [
          'arv',
          'arvTimeWeighted',
          'arvWithoutGaps',
          'arvDay',
          'arvNight',
          'weightedSd',
        ] as const)
          near(b[still][m], a[still][m]);
        for (const sd of ['all', 'day', 'night'] as const) near(b[sd].sd[m], a[sd].sd[m]);
        for (const spread of ['populationSd', 'rmssd', 'sdAboutTrend', 'mostMinusLeast'] as const)
          near(b.spread[spread][m], a.spread[spread][m]);
      }
      // The numerator of the fall: percent times the mean by day.
      near(
        times(b.dip.systolicPercent, b.day.mean.systolic),
        times(a.dip.systolicPercent, a.day.mean.systolic),
      );
      near(b.surge?.preWaking ?? null, a.surge?.preWaking ?? null);
      near(b.surge?.sleepTrough ?? null, a.surge?.sleepTrough ?? null);

      const [c, d] = [readings, moved].map((one) => homeResult(one, NOTHING_BY_HAND, HOME));
      if (c === undefined || d === undefined) throw new Error('two answers');
      for (const m of MEASURES) {
        for (const mean of ['mean', 'morning', 'evening'] as const) near(d[mean][m], plus(c[mean][m], added));
        for (const still of ['sd', 'morningMinusEvening'] as const) near(d[still][m], c[still][m]);
        for (const still of ['sd', 'arv', 'standardError'] as const)
          near(d.dayToDay[still][m], c.dayToDay[still][m]);
      }
    }),
  );
});

test('a clock that is moved in the night changes no time that passed, and no number made of it', () => {
  const change = fc.record({
    from: fc.integer({ min: 0, max: DAY_MINUTES }),
    by: fc.constantFrom(-60, 60, 30, -120),
  });
  fc.assert(
    fc.property(rows(DAY_MINUTES), change, (list, moved) => {
      // Who slept when is by marks, so that both have the same periods.
      const of = (readings: SeriesReading[]) =>
        ambulatoryResult(readings, known({ by: 'asleep-marks' }), RECORDING);
      const [still, changed] = [of(readingsOf(list)), of(readingsOf(list, moved))];
      const timed = ({ whole, arv, arvTimeWeighted, arvWithoutGaps, weightedSd, spread, surge, load, hours, longestGapHours, counts }: typeof still) => ({ trapezoid: whole.trapezoid, closed: whole.closed, hoursWeighted: whole.hoursWeighted, arv, arvTimeWeighted, arvWithoutGaps, weightedSd, spread, surge, load, hours, longestGapHours, counts }); // biome-ignore format: two lists
      expect(timed(changed)).toEqual(timed(still));
    }),
  );
});

function near(actual: number | null, wanted: number | null): void {
  if (wanted === null || actual === null) expect(actual).toBe(wanted);
  else expect(Math.abs(actual - wanted)).toBeLessThan(1e-6);
}
const plus = (a: number | null, b: number) => (a === null ? null : a + b);
const times = (a: number | null, b: number | null) => (a === null || b === null ? null : a * b);
