import { NO_ROUND_FACTS } from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import { readEntry } from '../entry/readEntry.js';
import { recompute } from '../recompute/recompute.js';
import { H1, homeEvidence, inForceBy, keptReading, seriesContentOf } from '../testing/series.js';
import { frame, idOf, NO_PROTOCOL, placesOf } from '../testing/work.js';
import type { SeriesEvidence } from './series.js';
import { judgedReadings, valueOfSeries } from './seriesMade.js';

const ISH = inForceBy({ home: 'ish-2020', ambulatory: 'ish-2020' });
const entryOf = (content: object, more = {}) => frame('series', content, { round: idOf(500), ...more });

// Out-of-office handbook 19, H1 (invented series, computed independently): day 1 dropped.
test('a week at home is kept with what the protocol makes of it, and comes to the same again', () => {
  const content = seriesContentOf(homeEvidence(H1), ISH);
  expect(content.value).toMatchObject({ valid: true, used: 24, days: 6, high: true, category: 'high' });
  expect(content.value.mean.systolic).toBeCloseTo(136.5833, 4);
  expect(content.value.morning?.systolic).toBeCloseTo(139.0833, 4);
  expect(content.value.evening?.diastolic).toBeCloseTo(83.1667, 4);
  expect(content.value.dropped.map(({ index, code }) => [index, code])).toEqual(
    [1, 2, 3, 4].map((index) => [index, 'dropped-day']),
  );
  // 84.96 is under 85, and is not shown as on its other side; without a limit it is shown whole.
  expect(content.value.shown).toEqual({ systolic: '137', diastolic: '84.96' });
  expect(seriesContentOf(homeEvidence(H1)).value.shown).toEqual({ systolic: '137', diastolic: '85' });
  expect(content.computedBy).toMatchObject({ rule: 'home-2', preset: 'ish-2020' });
  const read = readEntry(entryOf(content));
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  expect(recompute(read.value, () => ISH)).toEqual({ state: 'same' });
  expect(recompute(read.value, () => null)).toEqual({ state: 'unknown-protocol' });
  expect(recompute(read.value, () => NO_PROTOCOL)).toMatchObject({
    state: 'differs',
    at: '/content/computedBy/preset',
  });
});

test('a value that is not what the readings give is found, and a rule of another program is not judged', () => {
  const content = seriesContentOf(homeEvidence(H1), ISH);
  const bent = { ...content, value: { ...content.value, used: 23 } };
  const other = { ...content, computedBy: { ...content.computedBy, rule: 'home-99' } };
  const state = (given: object) => {
    const read = readEntry(entryOf(given));
    if (!read.ok) throw new Error(JSON.stringify(read.refusals));
    return recompute(read.value, () => ISH);
  };
  expect(state(bent)).toMatchObject({ state: 'differs', at: '/content/value/used' });
  expect(state(other)).toEqual({ state: 'unknown-rule' });
});

// Conventions 8: intervals use instants; day and part of the day use the local time of the person.
test('the local day and minute come from the offset that each reading was written with', () => {
  const [late, early] = judgedReadings([
    keptReading('2026-10-25T01:30:00.000+01:00', '120/70 60'),
    keptReading('2026-10-25T01:30:00.000+00:00', '121/71 61'),
  ]);
  expect(late?.localDay).toBe(early?.localDay);
  expect([late?.minuteOfDay, early?.minuteOfDay]).toEqual([90, 90]);
  expect((early?.atMs ?? 0) - (late?.atMs ?? 0)).toBe(3_600_000);
  const [, behind] = judgedReadings([
    keptReading('2026-01-01T00:10:00Z', '120/70'),
    keptReading('2026-01-01T00:10:00-03:30', '120/70'),
  ]);
  expect(behind).toMatchObject({ index: 2, minuteOfDay: 10, pulse: null });
});

describe('a dangerous reading', () => {
  const conditions = (typed: string, more: Partial<SeriesEvidence> = {}) =>
    valueOfSeries(homeEvidence([keptReading('2026-07-01T08:00:00+01:00', typed)], more), ISH).actNow.map(
      ({ condition }) => condition,
    );
  const facts = (given: Partial<Omit<SeriesEvidence['facts'], 'arms'>>) => ({
    facts: { ...NO_ROUND_FACTS, arms: [], ...given },
  });

  // Bedside handbook 3.16: severe from 180 or 120 on; at home nobody was there to ask, so that it alerts by itself.
  test.each([
    ['179/119', []],
    ['180/100', ['severe-away']],
    ['150/120', ['severe-away']],
    ['91/60 70', []],
    ['90/60 70', ['very-low-pressure']],
    ['128/76 131', ['very-fast-pulse']],
  ])('%s raises %j', (typed, expected) => {
    expect(conditions(typed)).toEqual(expected);
  });

  test('with a danger sign is told as that, and with none was asked all the same', () => {
    expect(conditions('186/112', { features: ['fit'] })).toEqual(['severe-with-fit']);
    expect(conditions('186/112', { features: [] })).toEqual(['severe-away']);
  });

  // Bedside handbook 3.16 (pregnancy 160/110), 6.4 (a child 30 above the 95th centile): also where no category is given.
  test('alerts in pregnancy and in a child, where no category can be given', () => {
    const pregnant = facts({ isPregnant: true });
    expect(conditions('159/109', pregnant)).toEqual([]);
    expect(conditions('160/100', pregnant)).toEqual(['severe-in-pregnancy']);
    expect(conditions('150/110', pregnant)).toEqual(['severe-in-pregnancy']);
    const child = facts({ ageMonths: 72, sex: 'f', heightCm: 115 });
    expect(conditions('170/90', child)).toEqual(['child-crisis']);
    expect(conditions('104/60', child)).toEqual([]);
    const value = valueOfSeries(homeEvidence(H1, pregnant), ISH);
    expect(value).toMatchObject({ valid: true, high: null, category: null });
    expect(value.why.map(({ code }) => code)).toEqual(['pregnancy']);
  });

  test('alerts also in a row that was refused, and where a hand took it out', () => {
    const refused = [
      { line: 9, got: '32.7.2026;210;130', code: 'not-a-time', systolic: 210, diastolic: 130 },
    ];
    expect(conditions('128/76', { refused })).toEqual(['severe-away']);
    const evidence = homeEvidence([...H1, keptReading('2026-07-05T08:00:00+01:00', '214/128')]);
    const out = { rejected: new Set([29]), restored: new Set<number>() };
    const { actNow, used } = valueOfSeries(evidence, ISH, out);
    expect([used, actNow.map(({ condition }) => condition)]).toEqual([24, ['severe-away']]);
  });
});

// Out-of-office handbook 20: before its diary says when the person slept, the clock does; a diary that says it wins.
test('a recording is divided by the diary where there is one', () => {
  const at = (hour: number) => `2026-07-01T${String(hour).padStart(2, '0')}:00:00+01:00`;
  const readings = Array.from({ length: 24 }, (_, hour) =>
    keptReading(at(hour), hour < 6 ? '112/66 58' : '136/84 72'),
  );
  const recording = (more: Partial<SeriesEvidence>) =>
    valueOfSeries(homeEvidence(readings, { of: 'ambulatory', ...more }), ISH);
  expect(recording({}).dayNightBy).toBe('clock');
  const slept = recording({ asleep: { from: 0, to: 360 }, scheduled: 24 });
  expect(slept).toMatchObject({
    dayNightBy: 'diary',
    used: 24,
    day: { systolic: 136 },
    night: { systolic: 112 },
    morning: null,
    days: null,
    counts: { scheduled: 24, day: 18, night: 6, percent: 100 },
  });
  expect(slept.dip?.systolicPercent).toBeCloseTo(100 * (1 - 112 / 136), 9);
  // Measured half as often by day, the mean is that over time, by hand (6.5 x 112 + 17.5 x 136) / 24, not that of 15 readings.
  const sparse = readings.filter((_, hour) => hour < 6 || hour % 2 === 0);
  const over = valueOfSeries(homeEvidence(sparse, { of: 'ambulatory' }), ISH);
  expect(over.mean.systolic).toBeCloseTo(129.5, 9);
  expect(over.shown.systolic).toBe('129.5');
});

test('nothing of another shape is a series, and none stands in no round', () => {
  const content = seriesContentOf(homeEvidence(H1), ISH);
  const places = (given: object, more = {}) => placesOf(readEntry(entryOf(given, more)));
  expect(places(content)).toEqual([]);
  expect(places(content, { round: null })).toEqual(['/round']);
  expect(places({ ...content, readings: [] })).toEqual(['/content/readings']);
  const [first, ...rest] = content.readings;
  expect(places({ ...content, readings: [{ ...first, systolic: 301 }, ...rest] })).toEqual([
    '/content/readings/0/systolic',
  ]);
  expect(places({ ...content, readings: [{ ...first, systolic: 300 }, ...rest] })).toEqual([]);
  expect(places({ ...content, asleep: { from: 60, to: 60 } })).toEqual(['/content/asleep/to']);
});

test('a series of schema 1 reads as final, without flags, naps and rows put right; of schema 2 it must say so; neither says what a hand started', () => {
  const { status: _status, nap: _nap, readings, ...rest } = seriesContentOf(homeEvidence(H1));
  const second = readings.map(({ startedByHand: _s, ...one }) => one);
  const first = second.map(({ irregular: _i, clock: _c, mended: _m, ...one }) => one);
  const read = (content: object, schema: number) =>
    readEntry(frame('series', content, { schema, round: idOf(5) }));
  const newest = { ...rest, status: 'final', nap: null, readings };
  const ofFirst = read({ ...rest, readings: first }, 1);
  expect(ofFirst.ok && ofFirst.value.content).toEqual(newest);
  const ofSecond = read({ ...newest, readings: second }, 2);
  expect(ofSecond.ok && ofSecond.value.content).toEqual(newest);
  expect(read({ ...rest, readings: first }, 2).ok).toBe(false);
  expect(read({ ...newest, readings: second }, 3).ok).toBe(false);
  expect(read(newest, 3).ok).toBe(true);
  expect(read(newest, 2).ok).toBe(false);
});

// Out-of-office handbook 5: they count as readings and are not part of the schedule.
test('what a hand started is kept, and is in no percent of the schedule', () => {
  const readings = Array.from({ length: 12 }, (_, hour) =>
    keptReading(`2026-07-01T${String(2 * hour).padStart(2, '0')}:00:00+01:00`, '136/84 72', {
      startedByHand: hour < 3 ? true : null,
    }),
  );
  const made = valueOfSeries(homeEvidence(readings, { of: 'ambulatory', scheduled: 10 }), ISH);
  expect(made.counts).toMatchObject({ scheduled: 10, percent: 90 });
  expect(made.used).toBe(12);
  expect(made.flags).toContainEqual({ code: 'started-by-hand', figures: { readings: 3, used: 3 } });
});

// Out-of-office handbook 7 (decision): a nap is a third state, neither awake nor asleep.
test('readings within a nap are of neither period, and its hours are of none', () => {
  const readings = Array.from({ length: 24 }, (_, hour) =>
    keptReading(`2026-07-01T${String(hour).padStart(2, '0')}:00:00+01:00`, '136/84 72'),
  );
  const counts = (more: Partial<SeriesEvidence>) => {
    const slept = { of: 'ambulatory' as const, asleep: { from: 0, to: 360 }, scheduled: 24, ...more };
    const { day, night } = valueOfSeries(homeEvidence(readings, slept), ISH).counts ?? {};
    return [day, night];
  };
  const [day = 0, night] = counts({});
  // From 14:00, included, to 16:00, excluded: the readings of 14 and 15 hours.
  const [dayLess = 0, nightSame] = counts({ nap: { from: 14 * 60, to: 16 * 60 } });
  expect([dayLess, nightSame]).toEqual([day - 2, night]);
});
