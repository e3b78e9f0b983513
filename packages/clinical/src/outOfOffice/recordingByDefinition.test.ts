import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type AmbulatoryResult, ambulatoryResult } from './ambulatoryResult.js';
import { type AmbulatoryRules, DEFAULT_AMBULATORY_RULES } from './ambulatoryRules.js';
import { HOUR_MS, MINUTE_MS } from './clock.js';
import type { DayNight, PeriodOf } from './periods.js';
import { MEASURES, type Measure, type SeriesReading } from './seriesReading.js';

// Every statistic of a recording against its definition in out-of-office handbook 9 to 15, written here as plainly as it can
// be said, on random recordings: gaps, blanks, doubles, readings of one instant, a night on which the clock changes, no night.

const at = (limit: number) => ({ comparison: '>=' as const, limit });
const RULES: AmbulatoryRules = {
  ...DEFAULT_AMBULATORY_RULES,
  daySystolic: at(135),
  dayDiastolic: at(85),
  nightSystolic: at(120),
  nightDiastolic: at(70),
  editing: 'minimal',
  reportsStiffness: true,
};
const LIMITS = { day: { systolic: 135, diastolic: 85 }, night: { systolic: 120, diastolic: 70 } };
const START_MS = Date.UTC(2025, 2, 8, 14);
const DAY_MS = 24 * HOUR_MS;

type Step = {
  readonly minutes: number;
  readonly systolic: number;
  readonly pressure: number;
  readonly pulse: number;
  readonly blank: 'pulse' | 'systolic' | 'diastolic' | null;
  readonly isTwice: boolean;
  readonly asleep: boolean | null;
};
const stepWith = (minutes: fc.Arbitrary<number>) =>
  fc.record<Step>({
    minutes,
    systolic: fc.integer({ min: 90, max: 190 }),
    pressure: fc.integer({ min: 20, max: 60 }),
    pulse: fc.integer({ min: 45, max: 110 }),
    blank: fc.oneof(
      { weight: 9, arbitrary: fc.constant(null) },
      { weight: 1, arbitrary: fc.constantFrom('pulse' as const, 'systolic' as const, 'diastolic' as const) },
    ),
    isTwice: fc.boolean(),
    asleep: fc.constantFrom(true, false, null),
  });
/** Whole days as recorders make them, and whatever else may come. */
const recordingSteps = fc.oneof(
  fc.array(stepWith(fc.constantFrom(15, 20, 30, 60)), { minLength: 50, maxLength: 80, size: 'max' }),
  fc.array(stepWith(fc.constantFrom(0, 7, 15, 20, 30, 60, 200, 300)), { maxLength: 40 }),
);
const dayNight = fc.constantFrom<DayNight>(
  { by: 'asleep-range', asleep: { from: 23 * 60, to: 7 * 60 } },
  { by: 'asleep-range', asleep: { from: 7 * 60 + 50, to: 8 * 60 } },
  { by: 'asleep-marks' },
  { by: 'clock', day: { from: 540, to: 1260 }, night: { from: 60, to: 360 } },
);

/** New York on the night of 2025-03-09: at 07:00 UTC the clock goes from UTC-5 to UTC-4. */
function recordingOf(steps: readonly Step[], isChange: boolean): SeriesReading[] {
  const readings: SeriesReading[] = [];
  let atMs = START_MS;
  for (const one of steps) {
    const isLater = isChange && atMs >= Date.UTC(2025, 2, 9, 7);
    const localMs = atMs - (isLater ? 4 : 5) * HOUR_MS;
    const reading: SeriesReading = {
      index: readings.length + 1,
      atMs,
      localDay: Math.floor(localMs / DAY_MS),
      minuteOfDay: (localMs % DAY_MS) / MINUTE_MS,
      systolic: one.blank === 'systolic' ? null : one.systolic,
      diastolic: one.blank === 'diastolic' ? null : one.systolic - one.pressure,
      pulse: one.blank === 'pulse' ? null : one.pulse,
      asleep: one.asleep,
      part: null,
      site: 'upper-arm',
    };
    readings.push(reading);
    if (one.isTwice && one.minutes === 20) readings.push({ ...reading, index: readings.length + 1 });
    atMs += one.minutes * MINUTE_MS;
  }
  return readings;
}

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const meanOf = (values: readonly number[]) => (values.length === 0 ? null : sum(values) / values.length);
function sdOf(values: readonly number[]): number | null {
  const centre = meanOf(values);
  if (centre === null || values.length < 2) return null;
  return Math.sqrt(sum(values.map((one) => (one - centre) ** 2)) / (values.length - 1));
}
const known = (one: number | null): one is number => one !== null;
const less = (a: number | null, b: number | null) => (a === null || b === null ? null : a - b);

/** Near enough: sums in another order differ in their last digits. */
function near(actual: number | null | undefined, wanted: number | null, what: string): void {
  if (wanted === null) expect(actual, what).toBeNull();
  else expect(Math.abs((actual as number) - wanted), what).toBeLessThan(1e-6 * (1 + Math.abs(wanted)));
}

test('each statistic is what its definition says, on any recording', () => {
  const seen = { curves: 0, surges: 0, nights: 0, doubles: 0 };
  fc.assert(
    fc.property(recordingSteps, fc.boolean(), dayNight, (steps, isChange, by) => {
      const given = recordingOf(steps, isChange);
      // The order in which they come says nothing.
      const found = ambulatoryResult(
        [...given].reverse(),
        { ageYears: null, isPregnant: false, scheduled: null, dayNight: by, isAllUsed: false, rejected: new Set(), restored: new Set() }, // biome-ignore format: one thought
        RULES,
      );
      const kept = keptOf(given);
      expect(found.edited.map(({ index }) => index)).toEqual(given.filter((one) => !kept.includes(one)).map(({ index }) => index)); // biome-ignore format: one thought
      const periods = kept.map((one) => periodByDefinition(one, by));
      for (const measure of MEASURES) compareMeasure(found, kept, periods, measure);
      compareLoads(found, kept, periods);
      compareReadings(found, kept, periods);
      const edges = found.surge === null ? null : compareSurge(found, kept, by);
      seen.curves += found.cosinor.systolic.two === null ? 0 : 1;
      seen.surges += edges === null ? 0 : 1;
      seen.nights += found.night.n === 0 ? 0 : 1;
      seen.doubles += found.edited.some(({ code }) => code === 'duplicate') ? 1 : 0;
    }),
    { numRuns: 400 },
  );
  // Nothing of this may go unlooked at.
  for (const count of Object.values(seen)) expect(count).toBeGreaterThan(20);
});

/** Both pressures blank never happens here; a double is the same instant and numbers; a day is 24 hours. */
function keptOf(given: readonly SeriesReading[]): SeriesReading[] {
  return given.filter((one, k) => {
    const isTwice = given.slice(0, k).some((other) => other.atMs === one.atMs && MEASURES.every((m) => other[m] === one[m])); // biome-ignore format: one thought
    return !isTwice && one.atMs < START_MS + DAY_MS;
  });
}

function periodByDefinition({ asleep, minuteOfDay }: SeriesReading, by: DayNight): PeriodOf {
  const within = ({ from, to }: { from: number; to: number }) =>
    from < to ? from <= minuteOfDay && minuteOfDay < to : from <= minuteOfDay || minuteOfDay < to;
  if (by.by === 'asleep-marks') return asleep === null ? 'neither' : asleep ? 'night' : 'day';
  if (by.by === 'asleep-range') return within(by.asleep) ? 'night' : 'day';
  return within(by.day) ? 'day' : within(by.night) ? 'night' : 'neither';
}

const hour = (one: SeriesReading) => (one.atMs - START_MS) / HOUR_MS;
type Timed = { readonly hour: number; readonly value: number; readonly reading: SeriesReading };

function timed(readings: readonly SeriesReading[], measure: Measure): Timed[] {
  return readings.flatMap((reading) => {
    const value = reading[measure];
    return value === null ? [] : [{ hour: hour(reading), value, reading }];
  });
}

/** Of the values on their times, by least squares. */
function slopeOf(list: readonly Timed[]): number | null {
  const [x, y] = [meanOf(list.map((one) => one.hour)), meanOf(list.map(({ value }) => value))];
  if (x === null || y === null) return null;
  const squares = sum(list.map((one) => (one.hour - x) ** 2));
  return squares === 0 ? null : sum(list.map((one) => (one.hour - x) * (one.value - y))) / squares;
}

/** Neighbours of a measure between which no reading of another period lies. */
function stepsWithin(
  kept: readonly SeriesReading[],
  periods: readonly PeriodOf[],
  measure: Measure,
  period: PeriodOf,
) {
  const own = timed(kept.filter((_, k) => periods[k] === period), measure); // biome-ignore format: one thought
  return own.slice(1).flatMap((after, k) => {
    const before = own[k] as Timed;
    const [from, to] = [kept.indexOf(before.reading), kept.indexOf(after.reading)];
    return periods.slice(from, to).every((one) => one === period) ? [{ before, after, gap: after.hour - before.hour }] : []; // biome-ignore format: one thought
  });
}

function compareMeasure(
  found: AmbulatoryResult,
  kept: readonly SeriesReading[],
  periods: readonly PeriodOf[],
  m: Measure,
): void {
  const whole = timed(kept, m);
  const values = whole.map(({ value }) => value);
  const of = (period: PeriodOf) => timed(kept.filter((_, k) => periods[k] === period), m).map(({ value }) => value); // biome-ignore format: one thought
  for (const [name, list] of [
    ['all', values],
    ['day', of('day')],
    ['night', of('night')],
  ] as const) {
    near(found[name].mean[m], meanOf(list), `${name} mean ${m}`);
    near(found[name].sd[m], sdOf(list), `${name} sd ${m}`);
    near(found[name].least[m], list.length === 0 ? null : Math.min(...list), `${name} least ${m}`);
    near(found[name].most[m], list.length === 0 ? null : Math.max(...list), `${name} most ${m}`);
  }
  const [mean, sd] = [meanOf(values), sdOf(values)];
  near(found.cvPercent[m], mean === null || sd === null ? null : (100 * sd) / mean, `cv ${m}`);
  const weighted = (day: number | null, night: number | null) => {
    const { day: d, night: n } = found.hours;
    return day === null || night === null || d + n === 0 ? null : (d * day + n * night) / (d + n);
  };
  near(found.whole.hoursWeighted[m], weighted(meanOf(of('day')), meanOf(of('night'))), `weighted ${m}`);
  near(found.weightedSd[m], weighted(sdOf(of('day')), sdOf(of('night'))), `weighted sd ${m}`);

  const pairs = whole.slice(1).map((after, k) => ({ before: whole[k] as Timed, after, gap: (after.reading.atMs - (whole[k] as Timed).reading.atMs) / 3_600_000 })); // biome-ignore format: one thought
  const size = ({ before, after }: { before: Timed; after: Timed }) => Math.abs(after.value - before.value);
  const area = sum(pairs.map(({ before, after, gap }) => (gap * (before.value + after.value)) / 2));
  const span = sum(pairs.map(({ gap }) => gap));
  near(found.whole.trapezoid[m], span === 0 ? mean : area / span, `trapezoid ${m}`);
  const [first, last] = [whole[0], whole.at(-1)];
  const closed = first === undefined || last === undefined || span < 20 ? null : (area + ((24 - span) * (first.value + last.value)) / 2) / 24; // biome-ignore format: one thought
  near(found.whole.closed[m], closed, `closed ${m}`);
  near(found.arv[m], meanOf(pairs.map(size)), `arv ${m}`);
  const steps = meanOf(pairs.map((one) => size(one) ** 2));
  near(found.spread.rmssd[m], steps === null ? null : Math.sqrt(steps), `rmssd ${m}`);
  near(found.spread.populationSd[m], mean === null ? null : Math.sqrt(sum(values.map((one) => (one - mean) ** 2)) / values.length), `sd by n ${m}`); // biome-ignore format: one formula
  const slope = slopeOf(whole);
  const isLine = slope !== null && values.length >= 3;
  near(found.spread.sdAboutTrend[m], isLine ? sdOf(whole.map((one) => one.value - slope * one.hour)) : null, `sd about a trend ${m}`); // biome-ignore format: one thought
  const [least, most] = [found.all.least[m], found.all.most[m]];
  near(found.spread.mostMinusLeast[m], less(most, least), `range ${m}`);
  near(found.spread.mostMinusMean[m], less(most, mean), `peak ${m}`);
  near(found.spread.meanMinusLeast[m], less(mean, least), `trough ${m}`);
  near(found.arvTimeWeighted[m], span === 0 ? null : sum(pairs.map((one) => one.gap * size(one))) / span, `arv by time ${m}`); // biome-ignore format: one thought
  near(
    found.arvWithoutGaps[m],
    meanOf(pairs.filter(({ gap }) => gap <= 2).map(size)),
    `arv without gaps ${m}`,
  );
  near(found.arvDay[m], meanOf(stepsWithin(kept, periods, m, 'day').map(size)), `arv day ${m}`);
  near(found.arvNight[m], meanOf(stepsWithin(kept, periods, m, 'night').map(size)), `arv night ${m}`);
  const clock = ({ reading }: Timed) => Math.floor(reading.minuteOfDay / 60);
  const hourly = [...new Set(whole.map(clock))].map((one) => meanOf(whole.filter((other) => clock(other) === one).map(({ value }) => value)) as number); // biome-ignore format: one thought
  near(found.whole.hourly[m], meanOf(hourly), `hourly ${m}`);
  if (m === 'systolic') near(found.longestGapHours, pairs.length === 0 ? null : Math.max(...pairs.map(({ gap }) => gap)), 'longest gap'); // biome-ignore format: one thought

  const isEnough = values.length >= 12 && Math.max(...pairs.map(({ gap }) => gap)) <= 4 && span >= 20;
  for (const [which, harmonics] of [
    ['one', 1],
    ['two', 2],
  ] as const) {
    const fit = found.cosinor[m][which];
    if (!isEnough) {
      expect(fit).toBeNull();
      continue;
    }
    if (fit !== null && first !== undefined) compareCurve(fit, whole, first.reading.minuteOfDay / 60 - first.hour, harmonics); // biome-ignore format: one thought
  }
}

/** Of a least-squares fit what is left over stands at right angles to every wave; errors and test follow from it. */
function compareCurve(
  fit: NonNullable<AmbulatoryResult['cosinor']['pulse']['one']>,
  whole: readonly Timed[],
  toLocal: number,
  harmonics: 1 | 2,
): void {
  const angle = (time: number, j: number) => (2 * Math.PI * (j + 1) * time) / 24;
  const curve = (time: number) =>
    fit.mesor + sum(fit.harmonics.map(({ beta, gamma }, j) => beta * Math.cos(angle(time, j)) + gamma * Math.sin(angle(time, j)))); // biome-ignore format: one formula
  expect(fit.harmonics).toHaveLength(harmonics);
  const times = whole.map((one) => one.hour + toLocal);
  const rest = whole.map(({ value }, k) => value - curve(times[k] as number));
  const size = Math.sqrt(sum(rest.map((one) => one ** 2)) * whole.length) + 1;
  expect(Math.abs(sum(rest)) / size).toBeLessThan(1e-8);
  for (let j = 0; j < harmonics; j++) {
    expect(Math.abs(sum(rest.map((one, k) => one * Math.cos(angle(times[k] as number, j))))) / size).toBeLessThan(1e-8); // biome-ignore format: one formula
    expect(Math.abs(sum(rest.map((one, k) => one * Math.sin(angle(times[k] as number, j))))) / size).toBeLessThan(1e-8); // biome-ignore format: one formula
  }
  const centre = meanOf(whole.map(({ value }) => value)) as number;
  const total = sum(whole.map(({ value }) => (value - centre) ** 2));
  const sse = sum(rest.map((one) => one ** 2));
  near(fit.sse, sse, 'sse');
  near(fit.r2, 1 - sse / total, 'r2');
  near(fit.f, (total - sse) / (2 * harmonics) / (sse / (whole.length - 1 - 2 * harmonics)), 'f');
  const minutes = Array.from({ length: 1440 }, (_, minute) => curve(minute / 60));
  near(fit.highest.value, Math.max(...minutes), 'highest');
  near(fit.lowest.value, Math.min(...minutes), 'lowest');
  near(curve(fit.highest.hour), Math.max(...minutes), 'hour of the highest');
  near(curve(fit.lowest.hour), Math.min(...minutes), 'hour of the lowest');
}

function compareLoads(
  found: AmbulatoryResult,
  kept: readonly SeriesReading[],
  periods: readonly PeriodOf[],
): void {
  for (const period of ['day', 'night'] as const) {
    for (const m of ['systolic', 'diastolic'] as const) {
      const limit = LIMITS[period][m];
      const own = timed(kept.filter((_, k) => periods[k] === period), m); // biome-ignore format: one thought
      const share = own.map((one, k) => ((own[k + 1] ?? one).hour - (own[k - 1] ?? one).hour) / 2);
      const isOver = ({ value }: Timed) => value >= limit;
      const load = found.load[period];
      near(load?.percent[m], own.length === 0 ? null : (100 * own.filter(isOver).length) / own.length, `load ${m}`); // biome-ignore format: one thought
      const time = sum(share);
      near(load?.timePercent[m], time === 0 ? null : (100 * sum(share.filter((_, k) => isOver(own[k] as Timed)))) / time, `load by time ${m}`); // biome-ignore format: one thought
      const over = ({ value }: Timed) => Math.max(0, value - limit);
      const area = sum(stepsWithin(kept, periods, m, period).map(({ before, after, gap }) => (gap * (over(before) + over(after))) / 2)); // biome-ignore format: one thought
      near(load?.excessArea[m], periods.includes(period) ? area : null, `area ${m}`);
    }
  }
}

function compareReadings(
  found: AmbulatoryResult,
  kept: readonly SeriesReading[],
  periods: readonly PeriodOf[],
): void {
  for (const name of ['all', 'day', 'night'] as const) {
    const own = kept.filter((_, k) => name === 'all' || periods[k] === name);
    expect(found[name].n).toBe(own.length);
    const both = own.map(({ systolic: s, diastolic: d, pulse: p }) => ({
      pressure: less(s, d),
      arterial: s === null || d === null ? null : (s + 2 * d) / 3,
      product: s === null || p === null ? null : s * p,
    }));
    near(found[name].pulsePressure, meanOf(both.map((one) => one.pressure).filter(known)), 'pulse pressure');
    near(found[name].meanArterial, meanOf(both.map((one) => one.arterial).filter(known)), 'mean arterial');
    near(found[name].doubleProduct, meanOf(both.map((one) => one.product).filter(known)), 'double product');
  }
}

/** Of a diary's times alone: then bed and waking are what the clock beside the readings says. */
function compareSurge(found: AmbulatoryResult, kept: readonly SeriesReading[], by: DayNight): true | null {
  if (by.by !== 'asleep-range' || by.asleep.from !== 23 * 60) return null;
  const nights = kept.filter((one) => periodByDefinition(one, by) === 'night');
  const before = kept[kept.indexOf(nights[0] as SeriesReading) - 1];
  const after = kept[kept.indexOf(nights.at(-1) as SeriesReading) + 1];
  // Recordings begin at 09:00 or 10:00 and last a day at most, so that there is one night in them.
  if (before === undefined || after === undefined) return null;
  const bed = (nights[0] as SeriesReading).atMs - ((((nights[0] as SeriesReading).minuteOfDay + 60) % 1440) * MINUTE_MS); // biome-ignore format: one thought
  const wake = after.atMs - (after.minuteOfDay - 420) * MINUTE_MS;
  const systolics = (from: number, to: number) => kept.filter(({ atMs }) => from <= atMs && atMs < to).map(({ systolic }) => systolic).filter(known); // biome-ignore format: one thought
  const asleep = systolics(bed, wake);
  const lowest = asleep.indexOf(Math.min(...asleep));
  const trough = asleep.length < 2 ? null : meanOf(asleep.filter((_, k) => Math.abs(k - lowest) <= 1));
  const risen = meanOf(systolics(wake, wake + 2 * HOUR_MS));
  near(found.surge?.sleepTrough, less(risen, trough), 'rise from the trough');
  near(found.surge?.preWaking, less(risen, meanOf(systolics(wake - 2 * HOUR_MS, wake))), 'rise about waking');
  near(found.surge?.eveningFall, less(meanOf(systolics(bed - 2 * HOUR_MS, bed)), trough), 'fall of the evening'); // biome-ignore format: one thought
  const pressures = kept.filter(({ systolic }) => systolic !== null);
  const [lying, up] = [
    pressures.findLast(({ atMs }) => atMs < wake),
    pressures.find(({ atMs }) => atMs >= wake),
  ];
  const isNear = lying !== undefined && up !== undefined && wake - lying.atMs <= 30 * MINUTE_MS && up.atMs - wake <= 30 * MINUTE_MS; // biome-ignore format: one thought
  near(found.surge?.rising, isNear ? less(up.systolic, lying.systolic) : null, 'rise on getting up');
  const hours = pressures.filter(({ atMs }) => atMs >= bed && atMs + HOUR_MS <= wake).map(({ atMs }) => systolics(atMs, atMs + HOUR_MS)).filter(({ length }) => length >= 2); // biome-ignore format: one thought
  const lowestHour = hours.length === 0 ? null : Math.min(...hours.map((one) => meanOf(one) as number));
  near(found.surge?.movingTrough, less(risen, lowestHour), 'rise from the lowest hour');
  // Within four hours of waking, that hour's end with it.
  const four = systolics(wake, wake + 4 * HOUR_MS + 1).slice(0, 4);
  const three = [...asleep].sort((a, b) => a - b).slice(0, 3);
  near(found.surge?.fourReadings, four.length < 4 || three.length < 3 ? null : less(meanOf(four), meanOf(three)), 'rise of four readings'); // biome-ignore format: one thought
  const from = pressures.findIndex(({ atMs }) => atMs >= bed) + lowest;
  const stretch = asleep.length === 0 ? [] : timed(pressures.slice(from).filter(({ atMs }) => atMs < wake + 2 * HOUR_MS), 'systolic'); // biome-ignore format: one thought
  near(
    found.surge?.ratePerHour,
    risen === null || stretch.length < 3 ? null : slopeOf(stretch),
    'rate of the rise',
  );
  return true;
}
