import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sampleSd } from '../statistics/sampleSd.js';
import { HOUR_MS, MINUTE_MS } from './clock.js';
import { dayPartOf, sittingsOf } from './homeDays.js';
import { homeResult, NOTHING_BY_HAND } from './homeResult.js';
import { DEFAULT_HOME_RULES, type HomeRules } from './homeRules.js';
import { type SeriesReading, valuesOf } from './seriesReading.js';
import { H1, readingAt } from './testing.js';

const at = (limit: number) => ({ comparison: '>=' as const, limit });
const DAY_ONE_OUT: HomeRules = {
  ...DEFAULT_HOME_RULES,
  highSystolic: at(135),
  highDiastolic: at(85),
  scheme: 'high-or-not',
};
const NOTHING_OUT: HomeRules = { ...DAY_ONE_OUT, droppedDays: 0 };

const home = (readings: readonly SeriesReading[], rules: HomeRules) =>
  homeResult(readings, NOTHING_BY_HAND, rules);

// Source of H1 and H2: out-of-office handbook 19 (invented series, computed independently), to the printed digits.
test('H1: all readings, and with the first day left out', () => {
  const all = home(H1, NOTHING_OUT);
  expect(all.used).toBe(28);
  expect(all.mean.systolic).toBeCloseTo(138.1071, 4);
  expect(all.mean.diastolic).toBeCloseTo(85.8214, 4);
  expect(all.mean.pulse).toBeCloseTo(74.3571, 4);
  expect(all.sd.systolic).toBeCloseTo(4.9691, 4);
  expect(all.sd.diastolic).toBeCloseTo(3.0918, 4);
  expect(all.morning).toMatchObject({ pulse: 73 });
  expect(all.morning.systolic).toBeCloseTo(140.6429, 4);
  expect(all.evening.diastolic).toBeCloseTo(84, 10);
  expect(all.morningMinusEvening.systolic).toBeCloseTo(5.0714, 4);

  const later = home(H1, DAY_ONE_OUT);
  expect(later).toMatchObject({ valid: true, used: 24, days: 6, high: true, category: 'high' });
  expect(later.dropped.map(({ index, code }) => [index, code])).toEqual([
    [1, 'dropped-day'],
    [2, 'dropped-day'],
    [3, 'dropped-day'],
    [4, 'dropped-day'],
  ]);
  expect(later.mean.systolic).toBeCloseTo(136.5833, 4);
  expect(later.mean.diastolic).toBeCloseTo(84.9583, 4);
  expect(later.mean.pulse).toBeCloseTo(73.6667, 4);
  expect(later.sd.systolic).toBeCloseTo(3.1885, 4);
  expect(later.sd.diastolic).toBeCloseTo(2.2161, 4);
  expect(later.morning.systolic).toBeCloseTo(139.0833, 4);
  expect(later.morning.diastolic).toBeCloseTo(86.75, 10);
  expect(later.evening.systolic).toBeCloseTo(134.0833, 4);
  expect(later.evening.diastolic).toBeCloseTo(83.1667, 4);
  expect(later.morningMinusEvening.systolic).toBeCloseTo(5, 10);
  // 84.96 is not at 85 and is not shown as 85.
  expect(later.shown).toEqual({ systolic: '137', diastolic: '84.96' });
});

test('H1: from day to day', () => {
  const { dayMeans, dayToDay } = home(H1, NOTHING_OUT);
  expect(dayMeans.map(({ systolic }) => systolic)).toEqual([147.25, 137, 135.5, 138.5, 134.5, 136.5, 137.5]);
  expect(dayToDay.sd.systolic).toBeCloseTo(4.2374, 4);
  expect(dayToDay.cvPercent.systolic).toBeCloseTo(3.0682, 4);
  expect(dayToDay.arv.systolic).toBeCloseTo(3.625, 10);
  expect(dayToDay.standardError.systolic).toBeCloseTo(1.6016, 4);
  expect(dayToDay.mostMinusLeast.systolic).toBe(12.75);
  const later = home(H1, DAY_ONE_OUT).dayToDay;
  expect(later.sd.systolic).toBeCloseTo(1.4289, 4);
  expect(later.cvPercent.systolic).toBeCloseTo(1.0462, 4);
  expect(later.arv.systolic).toBeCloseTo(2.3, 10);
  expect(later.standardError.systolic).toBeCloseTo(0.5833, 4);
  expect(later.mostMinusLeast.systolic).toBe(4);
});

// Out-of-office handbook 3, point 7: with sittings of unequal size the mean of their means is not that of the readings.
test('a rule set that averages sittings first: three readings of one weigh as much as one of another', () => {
  const days = [...H1.slice(0, 2), { ...(H1[1] as SeriesReading), atMs: (H1[1] as SeriesReading).atMs + 60_000, index: 3 }, H1[2] as SeriesReading]; // biome-ignore format: two sittings
  // 152/94, 148/92, 148/92 in the morning and 146/90 in the evening, by hand: (448/3 + 146)/2 and (278/3 + 90)/2.
  const given = days.map((one, k) => ({ ...one, index: k + 1, part: null }));
  const readings = home(given, NOTHING_OUT);
  const sittings = home(given, { ...NOTHING_OUT, averaged: 'sittings' });
  expect(readings.mean.systolic).toBeCloseTo(594 / 4, 10);
  expect(sittings.mean.systolic).toBeCloseTo(147.6667, 4);
  expect(sittings.mean.diastolic).toBeCloseTo(91.3333, 4);
  expect(sittings.morning.systolic).toBeCloseTo(149.3333, 4);
  expect(sittings.dayMeans.map(({ systolic, readings: n }) => [Math.round(100 * (systolic ?? 0)), n])).toEqual([[14767, 4]]); // biome-ignore format: one day
  expect(sittings.sd).toEqual(readings.sd);
  expect([sittings.used, sittings.flags.filter(({ code }) => code === 'sittings-first')]).toEqual([
    4,
    [{ code: 'sittings-first', figures: { sittings: 2 } }],
  ]);
  expect(readings.flags).toEqual(sittings.flags.filter(({ code }) => code !== 'sittings-first'));
});

test('H1: the first two of each sitting are all of them; without the first of each, the second', () => {
  expect(home(H1, { ...DAY_ONE_OUT, sittingUse: 'first-two' }).used).toBe(24);
  const second = home(H1, { ...DAY_ONE_OUT, sittingUse: 'without-first' });
  expect(second.used).toBe(12);
  expect(second.mean.systolic).toBeCloseTo(135.3333, 4);
  expect(second.mean.diastolic).toBeCloseTo(84.0833, 4);
  expect(second.sd.systolic).toBeCloseTo(2.7414, 4);
});

test('H1: morning and evening each for itself: the evenings alone are not high', () => {
  const jsh = home(H1, { ...NOTHING_OUT, judged: 'each-part', leastDays: at(5) });
  expect(jsh).toMatchObject({ high: true, valid: true });
  const evenings = H1.filter((one) => dayPartOf(one, NOTHING_OUT) === 'evening' && one.localDay > 0);
  const rules = { ...NOTHING_OUT, judged: 'each-part' as const };
  // 134.0833/83.1667: low as far as known; the mornings are not, so nothing is said.
  expect(home(evenings, rules)).toMatchObject({ high: null, category: null });
});

test('H2: a mean of 134.58/84.50 is under 135/85 and is shown with the decimal that says so', () => {
  const typed = '136/86 134/84 135/85 133/83 137/86 134/84 135/85 133/84 136/85 134/84 135/85 133/83'.split(
    ' ',
  );
  const readings = typed.map((one, k) =>
    readingAt(k + 1, k >> 2, ['07:00', '07:01', '19:00', '19:01'][k % 4] as string, `${one} 70`),
  );
  const found = home(readings, { ...NOTHING_OUT, leastDays: at(3) });
  expect(found.mean.systolic).toBeCloseTo(134.5833, 4);
  expect(found.mean.diastolic).toBeCloseTo(84.5, 10);
  expect(found).toMatchObject({ high: false, category: 'not-high' });
  expect(found.shown).toEqual({ systolic: '134.6', diastolic: '84.5' });
});

test('a limit is reached at it, by either number alone', () => {
  const at135 = [135, 135].map((mmHg, k) => readingAt(k + 1, k, '08:00', `${mmHg}/70 60`));
  const few = { ...NOTHING_OUT, leastDays: null, leastReadings: null };
  expect(home(at135, few).high).toBe(true);
  const under = [135, 134].map((mmHg, k) => readingAt(k + 1, k, '08:00', `${mmHg}/84 60`));
  expect(home(under, few).high).toBe(false);
  const diastolic = [85, 85].map((mmHg, k) => readingAt(k + 1, k, '08:00', `120/${mmHg} 60`));
  expect(home(diastolic, few).high).toBe(true);
});

test('too few readings or days: the mean stands, and no category', () => {
  // NICE: four days; with the first left out, twelve readings on three (out-of-office handbook 2).
  const rules = { ...DAY_ONE_OUT, leastDays: at(4), leastReadings: at(12) };
  expect(home(H1.slice(0, 16), rules)).toMatchObject({ valid: true, used: 12, why: [] });
  const three = home(H1.slice(0, 12), rules);
  expect(three).toMatchObject({ valid: false, used: 8, high: null, category: null });
  expect(three.mean.systolic).toBeCloseTo(136.25, 10);
  expect(three.why.map(({ code }) => code)).toEqual(['too-few-readings', 'too-few-days']);
  expect(home([], rules)).toMatchObject({
    valid: false,
    used: 0,
    mean: { systolic: null, diastolic: null, pulse: null },
    why: [{ code: 'no-readings' }],
  });
  expect(
    home(H1.slice(4, 5), { ...NOTHING_OUT, leastDays: null, leastReadings: null }).sd.systolic,
  ).toBeNull();
});

test('a child or a pregnancy has no label, whatever the numbers', () => {
  for (const [known, code] of [
    [{ ageYears: 17 }, 'child'],
    [{ isPregnant: true }, 'pregnancy'],
  ] as const) {
    const found = homeResult(H1, { ...NOTHING_BY_HAND, ...known }, DAY_ONE_OUT);
    expect(found).toMatchObject({ valid: true, high: null, category: null });
    expect(found.why.map((one) => one.code)).toEqual([code]);
  }
  expect(homeResult(H1, { ...NOTHING_BY_HAND, ageYears: 18 }, DAY_ONE_OUT).high).toBe(true);
});

test('the day begins at 04:00, and a day one that began in the evening is left out whole', () => {
  const night = [
    readingAt(1, 0, '20:00', '150/90 70'),
    readingAt(2, 1, '03:59', '140/90 70'),
    readingAt(3, 1, '04:00', '130/80 70'),
  ];
  expect(home(night, DAY_ONE_OUT).dropped.map(({ index }) => index)).toEqual([1, 2]);
  expect(night.map((one) => dayPartOf(one, DAY_ONE_OUT))).toEqual(['evening', 'evening', 'morning']);
  const noon = ['11:59', '12:00', '15:59', '16:00'].map((clock, k) => readingAt(k, 0, clock, '130/80 70'));
  expect(noon.map((one) => dayPartOf(one, DAY_ONE_OUT))).toEqual(['morning', 'other', 'other', 'evening']);
  expect(dayPartOf({ ...(noon[1] as SeriesReading), part: 'morning' }, DAY_ONE_OUT)).toBe('morning');
});

test('a sitting ends where the next reading is half an hour later', () => {
  const readings = ['07:00', '07:29', '07:59', '08:28'].map((clock, k) =>
    readingAt(k + 1, 0, clock, '130/80 70'),
  );
  expect(sittingsOf(readings, DAY_ONE_OUT).map((one) => one.length)).toEqual([2, 2]);
});

test('the wrist is never averaged with the arm, and by itself only where the rules say so', () => {
  const wrist = H1.map((one) => (one.index % 2 === 0 ? { ...one, site: 'wrist' as const } : one));
  for (const averagesWrist of [false, true]) {
    const found = home(wrist, { ...NOTHING_OUT, averagesWrist });
    expect(found.used).toBe(14);
    expect(found.dropped.every(({ code }) => code === 'wrist')).toBe(true);
  }
  const alone = H1.map((one) => ({ ...one, site: 'wrist' as const }));
  expect(home(alone, NOTHING_OUT).used).toBe(0);
  expect(home(alone, { ...NOTHING_OUT, averagesWrist: true }).used).toBe(28);
});

test('the same reading twice counts once; the same time with other numbers stays and is said', () => {
  const [first] = H1 as [SeriesReading];
  const twice = home([...H1, { ...first, index: 29 }], NOTHING_OUT);
  expect(twice.used).toBe(28);
  expect(twice.dropped).toEqual([{ index: 29, code: 'duplicate', figures: { ofIndex: 1 } }]);
  const other = home([...H1, { ...first, index: 29, systolic: 151 }], NOTHING_OUT);
  expect(other.used).toBe(29);
  expect(other.flags.map(({ code }) => code)).toContain('same-time-other-value');
});

test('of three that are the same the first is named by both others; the same numbers of the wrist are no double', () => {
  const first = H1[0] as SeriesReading;
  const other = { ...first, index: 31, pulse: 66 };
  const again = [29, 30].map((index) => ({ ...first, index }));
  const ofWrist = { ...first, index: 32, site: 'wrist' as const };
  const { dropped } = home([...H1, ...again, other, ofWrist], NOTHING_OUT);
  expect(dropped.map(({ index, code, figures }) => [index, code, figures])).toEqual([
    [29, 'duplicate', { ofIndex: 1 }],
    [30, 'duplicate', { ofIndex: 1 }],
    [32, 'wrist', {}],
  ]);
});

test('a reading taken out by hand is left out, one put back is averaged again', () => {
  const known = { ...NOTHING_BY_HAND, rejected: new Set([28]), restored: new Set([1]) };
  const found = homeResult(H1, known, DAY_ONE_OUT);
  expect(found.used).toBe(24);
  expect(found.dropped.map(({ index, code }) => [index, code])).toEqual([
    [2, 'dropped-day'],
    [3, 'dropped-day'],
    [4, 'dropped-day'],
    [28, 'rejected'],
  ]);
});

const series = fc
  .array(
    fc.record({
      minute: fc.integer({ min: 0, max: 10 * 24 * 60 }),
      systolic: fc.option(fc.integer({ min: 80, max: 220 })),
      diastolic: fc.option(fc.integer({ min: 40, max: 79 })),
      pulse: fc.option(fc.integer({ min: 40, max: 150 })),
      isWrist: fc.boolean(),
    }),
    { maxLength: 60 },
  )
  .map((rows) =>
    rows.map(
      ({ minute, isWrist, ...numbers }, k): SeriesReading => ({
        ...numbers,
        index: k + 1,
        atMs: minute * MINUTE_MS,
        localDay: Math.floor(minute / 1440),
        minuteOfDay: minute % 1440,
        asleep: null,
        part: null,
        site: isWrist ? 'wrist' : 'upper-arm',
      }),
    ),
  );

test('every reading is used or listed as left out, once, and their order changes nothing', () => {
  fc.assert(
    fc.property(series, fc.constantFrom('all', 'first-two', 'without-first'), (readings, sittingUse) => {
      const rules = { ...DAY_ONE_OUT, sittingUse } as HomeRules;
      const found = home(readings, rules);
      const listed = found.dropped.map(({ index }) => index);
      expect(new Set(listed).size).toBe(listed.length);
      expect(found.used + listed.length).toBe(readings.length);
      expect(home([...readings].reverse(), rules)).toEqual(found);
    }),
  );
});

test('what is added to every pressure is added to every mean, and to no SD', () => {
  fc.assert(
    fc.property(series, fc.integer({ min: -20, max: 20 }), (readings, added) => {
      const shifted = readings.map((one) => ({
        ...one,
        systolic: one.systolic === null ? null : one.systolic + added,
      }));
      const [before, after] = [home(readings, NOTHING_OUT), home(shifted, NOTHING_OUT)];
      if (before.mean.systolic === null) expect(after.mean.systolic).toBeNull();
      else {
        expect(after.mean.systolic).toBeCloseTo(before.mean.systolic + added, 8);
        if (before.sd.systolic !== null) expect(after.sd.systolic).toBeCloseTo(before.sd.systolic, 8);
      }
    }),
  );
});

test('on the night on which the clock goes back, an hour is an hour', () => {
  // T1 of the out-of-office handbook 19: 2025-11-02T01:30-04:00 and T01:30-05:00 are one hour apart, no double.
  const first = Date.parse('2025-11-02T01:30:00-04:00');
  const second = Date.parse('2025-11-02T01:30:00-05:00');
  expect(second - first).toBe(HOUR_MS);
  const one = { ...(H1[0] as SeriesReading), atMs: first, localDay: 20394, minuteOfDay: 90 };
  const found = home([one, { ...one, index: 2, atMs: second }], NOTHING_OUT);
  expect(found.used).toBe(2);
  expect(sittingsOf([one, { ...one, index: 2, atMs: second }], NOTHING_OUT)).toHaveLength(2);
  expect(valuesOf(H1, 'pulse')).toHaveLength(28);
  expect(sampleSd([1])).toBeNull();
});
