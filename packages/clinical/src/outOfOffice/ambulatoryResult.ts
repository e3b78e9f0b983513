import { isChild } from '../category/isChild.js';
import type { Flag } from '../contract/flag.js';
import type { SidedLimit } from '../contract/shownPressure.js';
import { passes } from '../contract/threshold.js';
import { mean } from '../statistics/mean.js';
import { sampleSd } from '../statistics/sampleSd.js';
import type { AmbulatoryRules, Period } from './ambulatoryRules.js';
import { type ArtefactCode, artefactOf, farFromMean } from './artefacts.js';
import { DAY_HOURS, HOUR_MS } from './clock.js';
import { type Cosinor, cosinor } from './cosinor.js';
import { type DipClass, dipClass, dipPercent } from './dipping.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import type { ByMeasure } from './homeResult.js';
import { hourlyMeans } from './hourly.js';
import { excessArea, loadPercent, timeLoadPercent } from './load.js';
import { type DayNight, type DayNightBy, dayNightBy, periodHours, periodOf, sleepOf } from './periods.js';
import { closedMean, hoursWeightedMean, trapezoidMean } from './seriesMeans.js';
import { inTimeOrder, type Measure, type SeriesReading, valuesOf } from './seriesReading.js';
import { type Stiffness, stiffnessIndex } from './stiffness.js';
import { morningSurge, type Surge } from './surge.js';
import { type TimedValues, timedValues } from './timedValue.js';
import {
  averageRealVariability,
  cvPercent,
  type Segments,
  timeWeightedVariability,
  weightedSd,
  withoutGaps,
} from './variability.js';

/** Name of this rule; one that gives another result for the same readings has another name. */
export const AMBULATORY_RULE = 'ambulatory-1';

export type EditCode = ArtefactCode | 'failed' | 'duplicate' | 'after-24-hours' | 'rejected';
export type Edited = { readonly index: number } & Flag<EditCode>;

export type AmbulatoryReasonCode =
  | 'no-readings'
  | 'too-few-percent'
  | 'too-few-day'
  | 'too-few-night'
  | 'too-few-asleep-for-class'
  | 'no-limit'
  | 'child'
  | 'pregnancy';

/** The class of one recording is weak evidence. Source: out-of-office handbook 9. */
const CLASS_IS_WEAK: Flag<AmbulatoryFlagCode> = {
  code: 'class-is-weak',
  figures: { changesPercent: F.dipClassChangesPercent.value },
};

/** What is known of the person and the recording, and decided by hand about single readings (by `index`). */
export type AmbulatoryCircumstances = {
  readonly ageYears: number | null;
  readonly isPregnant: boolean;
  /** How many readings the recorder was set to take; null is not known, then those that came are counted. */
  readonly scheduled: number | null;
  readonly dayNight: DayNight;
  /** Whether readings later than 24 hours after the first are used too. */
  readonly isAllUsed: boolean;
  readonly rejected: ReadonlySet<number>;
  readonly restored: ReadonlySet<number>;
};

/** What readings of one period come to. */
export type PeriodResult = {
  readonly n: number;
  readonly mean: ByMeasure;
  readonly sd: ByMeasure;
  readonly least: ByMeasure;
  readonly most: ByMeasure;
  /** Of each reading, then averaged: systolic minus diastolic, and diastolic and a third of that. */
  readonly pulsePressure: number | null;
  readonly meanArterial: number | null;
  /** Systolic times pulse of each reading, then averaged. */
  readonly doubleProduct: number | null;
};

export type PressurePair = { readonly systolic: number | null; readonly diastolic: number | null };

/** Percent of readings, and of time, at or over the limit of the period; area over it in mmHg h. */
export type Load = {
  readonly limit: PressurePair;
  readonly percent: PressurePair;
  readonly timePercent: PressurePair;
  readonly excessArea: PressurePair;
};

export type AmbulatoryFlagCode =
  | 'few-for-variability'
  | 'longest-gap'
  | 'same-time-other-value'
  | 'recording-longer'
  | 'class-is-weak';

/**
 * What a recording over 24 hours comes to under a rule set. Nothing is rounded; a difference says in its name which
 * minus which. `edited` names every reading that is not used, with the rule that fired.
 */
export type AmbulatoryResult = {
  readonly valid: boolean;
  readonly why: readonly Flag<AmbulatoryReasonCode>[];
  readonly counts: {
    readonly scheduled: number;
    readonly kept: number;
    readonly day: number;
    readonly night: number;
    readonly percent: number | null;
  };
  readonly dayNightBy: DayNightBy;
  readonly hours: { readonly day: number; readonly night: number };
  readonly edited: readonly Edited[];
  readonly day: PeriodResult;
  readonly night: PeriodResult;
  readonly all: PeriodResult;
  readonly whole: {
    readonly arithmetic: ByMeasure;
    readonly hoursWeighted: ByMeasure;
    readonly trapezoid: ByMeasure;
    readonly closed: ByMeasure;
    readonly hourly: ByMeasure;
  };
  readonly cvPercent: ByMeasure;
  readonly arv: ByMeasure;
  readonly arvTimeWeighted: ByMeasure;
  /** Steps over a longer gap than 2 h left out. */
  readonly arvWithoutGaps: ByMeasure;
  readonly arvDay: ByMeasure;
  readonly arvNight: ByMeasure;
  readonly weightedSd: ByMeasure;
  readonly dip: {
    readonly systolicPercent: number | null;
    readonly diastolicPercent: number | null;
    readonly class: DipClass | null;
  };
  readonly surge: Surge | null;
  readonly load: { readonly day: Load | null; readonly night: Load | null };
  readonly cosinor: {
    readonly [M in Measure]: { readonly one: Cosinor | null; readonly two: Cosinor | null };
  };
  readonly stiffness: Stiffness | null;
  readonly longestGapHours: number | null;
  /** The mean of each period that the rule set holds against its limits, and what that says. */
  readonly judged: { readonly [P in Period]: { readonly mean: PressurePair; readonly high: boolean | null } };
  readonly high: boolean | null;
  readonly pattern: AmbulatoryPattern | null;
  readonly flags: readonly Flag<AmbulatoryFlagCode>[];
};

/** Which periods are high; words say "consistent with", never a diagnosis. */
export type AmbulatoryPattern =
  | 'none-high'
  | 'day-and-night-high'
  | 'day-alone-high'
  | 'night-alone-high'
  | 'whole-alone-high';

/**
 * Analyses one recording. Readings may come in any order; a blank pressure is a measurement that failed.
 *
 * Errors: none; an empty recording answers with nulls.
 * Source: out-of-office handbook 5 to 15, 20.
 */
export function ambulatoryResult(
  readings: readonly SeriesReading[],
  known: AmbulatoryCircumstances,
  rules: AmbulatoryRules,
): AmbulatoryResult {
  const { kept, edited } = keptOf(readings, known, rules);
  const { dayNight } = known;
  const periods = kept.map((one) => periodOf(one, dayNight));
  const dayReadings = kept.filter((_, k) => periods[k] === 'day');
  const nightReadings = kept.filter((_, k) => periods[k] === 'night');
  const startMs = kept[0]?.atMs ?? 0;
  const series = mapped((measure) => timedValues(kept, measure, startMs));
  const runs = mapped((measure) => runsOf(kept, periods, measure, startMs));
  const hours = periodHours(kept, dayNight);
  const [day, night, all] = [periodResult(dayReadings), periodResult(nightReadings), periodResult(kept)];
  const scheduled = known.scheduled ?? readings.length - edited.filter(isNotScheduled).length;
  const percent = scheduled === 0 ? null : (100 * kept.length) / scheduled;
  const counts = { scheduled, kept: kept.length, day: day.n, night: night.n, percent };
  const whole = {
    arithmetic: all.mean,
    hoursWeighted: mapped((m) => hoursWeightedMean(day.mean[m], night.mean[m], hours.day, hours.night)),
    trapezoid: mapped((m) => trapezoidMean(series[m])),
    closed: mapped((m) => (coveredOf(series[m]) < F.cosinorLeastHours.value ? null : closedMean(series[m]))),
    hourly: mapped((m) => mean(hourlyMeans(kept, m).map((one) => one.mean))),
  };
  const short = shortOf(counts, rules);
  const judged = judgedOf(whole, day, night, rules);
  const barred = barredOf(known);
  const isValid = short.length === 0;
  const asked = rules.judged.map((period) => judged[period].high);
  const high = barred.length > 0 || !isValid ? null : anyOf(asked);
  const hasClass =
    night.mean.systolic !== null &&
    day.mean.systolic !== null &&
    night.n >= (rules.leastNight?.limit ?? F.leastNightReadings.value);
  const sleep = sleepOf(kept, dayNight);
  const longestGapHours = longestGap(series.systolic.hours);
  return {
    valid: isValid,
    why: [
      ...short,
      ...(hasClass || night.n === 0 ? [] : [classReason(night.n, rules)]),
      ...barred,
      ...(asked.every((one) => one === null) && isValid ? [{ code: 'no-limit' as const, figures: {} }] : []),
    ],
    counts,
    dayNightBy: dayNightBy(dayNight),
    hours,
    edited,
    day,
    night,
    all,
    whole,
    cvPercent: mapped((m) => cvPercent(series[m].values)),
    arv: mapped((m) => averageRealVariability([series[m]])),
    arvTimeWeighted: mapped((m) => timeWeightedVariability([series[m]])),
    arvWithoutGaps: mapped((m) => averageRealVariability(withoutGaps(series[m], F.longestStepHours.value))),
    arvDay: mapped((m) => averageRealVariability(runs[m].day)),
    arvNight: mapped((m) => averageRealVariability(runs[m].night)),
    weightedSd: mapped((m) => weightedSd(day.sd[m], night.sd[m], hours.day, hours.night)),
    dip: {
      systolicPercent: dipPercent(day.mean.systolic, night.mean.systolic),
      diastolicPercent: dipPercent(day.mean.diastolic, night.mean.diastolic),
      class: hasClass ? dipClass(day.mean.systolic as number, night.mean.systolic as number) : null,
    },
    surge: sleep === null ? null : morningSurge(kept, sleep.bedMs, sleep.wakeMs),
    load: {
      day: loadOf(runs, 'day', dayReadings, rules.daySystolic, rules.dayDiastolic, startMs),
      night: loadOf(runs, 'night', nightReadings, rules.nightSystolic, rules.nightDiastolic, startMs),
    },
    cosinor: mapped((m) => curvesOf(kept, series[m], m)),
    stiffness: rules.reportsStiffness ? stiffnessOf(kept) : null,
    longestGapHours,
    judged,
    high,
    pattern: barred.length > 0 || !isValid ? null : patternOf(judged),
    flags: [...flagsOf(kept, edited, longestGapHours), ...(hasClass ? [CLASS_IS_WEAK] : [])],
  };
}

/** What a rule, an error of the recorder or a hand takes out; each once, with its first reason. */
function keptOf(
  readings: readonly SeriesReading[],
  known: AmbulatoryCircumstances,
  rules: AmbulatoryRules,
): { kept: SeriesReading[]; edited: Edited[] } {
  const edited: Edited[] = [];
  const edit = (index: number, code: EditCode, figures: Flag['figures'] = {}): void => {
    edited.push({ index, code, figures });
  };
  const ordered = inTimeOrder(readings);
  const endMs = (ordered[0]?.atMs ?? 0) + F.usedHours.value * HOUR_MS;
  let kept: SeriesReading[] = [];
  for (const reading of ordered) {
    const { index, systolic, diastolic } = reading;
    const twin = twinOf(kept, reading);
    const artefact = known.restored.has(index) ? null : artefactOf(reading, rules.editing);
    if (known.rejected.has(index)) edit(index, 'rejected');
    else if (systolic === null && diastolic === null) edit(index, 'failed');
    else if (!known.isAllUsed && reading.atMs >= endMs) edit(index, 'after-24-hours');
    else if (twin !== undefined) edit(index, 'duplicate', { ofIndex: twin.index });
    else if (artefact !== null) edit(index, artefact);
    else kept.push(reading);
  }
  if (rules.editingSds !== null) {
    const far = farOf(kept, known, rules.editingSds.limit);
    for (const index of far) edit(index, 'far-from-mean', { sds: rules.editingSds.limit });
    kept = kept.filter(({ index }) => !far.has(index));
  }
  return { kept, edited: edited.sort((a, b) => a.index - b.index) };
}

/** The same reading among those of its instant, which stand last. */
function twinOf(kept: readonly SeriesReading[], reading: SeriesReading): SeriesReading | undefined {
  for (let k = kept.length - 1; k >= 0 && kept[k]?.atMs === reading.atMs; k--) {
    const one = kept[k] as SeriesReading;
    if (isTwin(one, reading)) return one;
  }
  return undefined;
}

function isTwin(a: SeriesReading, b: SeriesReading): boolean {
  return a.atMs === b.atMs && a.systolic === b.systolic && a.diastolic === b.diastolic && a.pulse === b.pulse;
}

/** Asleep and awake each for itself, once. */
function farOf(kept: readonly SeriesReading[], known: AmbulatoryCircumstances, sds: number): Set<number> {
  const far = new Set<number>();
  for (const period of ['day', 'night', 'neither'] as const) {
    const inside = kept.filter((one) => periodOf(one, known.dayNight) === period);
    for (const measure of ['systolic', 'diastolic'] as const) {
      const having = inside.filter((one) => one[measure] !== null);
      for (const at of farFromMean(valuesOf(having, measure), sds)) {
        const { index } = having[at] as SeriesReading;
        if (!known.restored.has(index)) far.add(index);
      }
    }
  }
  return far;
}

/** A double and what lies beyond the first day were never on the schedule. */
function isNotScheduled({ code }: Edited): boolean {
  return code === 'duplicate' || code === 'after-24-hours';
}

type Mapped<T> = { readonly [M in Measure]: T };

function mapped<T>(of: (measure: Measure) => T): Mapped<T> {
  return { systolic: of('systolic'), diastolic: of('diastolic'), pulse: of('pulse') };
}

function periodResult(readings: readonly SeriesReading[]): PeriodResult {
  const values = mapped((measure) => valuesOf(readings, measure));
  const ofPairs = (of: (systolic: number, diastolic: number) => number) => {
    const found: number[] = [];
    for (const { systolic, diastolic } of readings) {
      if (systolic !== null && diastolic !== null) found.push(of(systolic, diastolic));
    }
    return mean(found);
  };
  const products: number[] = [];
  for (const { systolic, pulse } of readings) {
    if (systolic !== null && pulse !== null) products.push(systolic * pulse);
  }
  return {
    n: readings.length,
    mean: mapped((measure) => mean(values[measure])),
    sd: mapped((measure) => sampleSd(values[measure])),
    least: mapped((measure) => extremeOf(values[measure], Math.min)),
    most: mapped((measure) => extremeOf(values[measure], Math.max)),
    pulsePressure: ofPairs((systolic, diastolic) => systolic - diastolic),
    meanArterial: ofPairs((systolic, diastolic) => diastolic + (systolic - diastolic) / THIRDS),
    doubleProduct: mean(products),
  };
}

/** The least or the most of any number of values; null of none. */
function extremeOf(values: readonly number[], pick: (a: number, b: number) => number): number | null {
  return values.length === 0 ? null : values.reduce((a, b) => pick(a, b));
}

/** The mean arterial pressure is a third of the pulse pressure over diastolic. Source: out-of-office handbook 1. */
const THIRDS = 3;

/** Stretches of day and of night, none of which is bridged by what lies between. */
function runsOf(
  kept: readonly SeriesReading[],
  periods: readonly string[],
  measure: Measure,
  startMs: number,
): { readonly day: Segments; readonly night: Segments } {
  const runs: {
    day: { hours: number[]; values: number[] }[];
    night: { hours: number[]; values: number[] }[];
  } = {
    day: [],
    night: [],
  };
  let before = '';
  kept.forEach((reading, k) => {
    const period = periods[k] as string;
    if (period === 'day' || period === 'night') {
      if (period !== before) runs[period].push({ hours: [], values: [] });
      const value = reading[measure];
      const run = runs[period].at(-1);
      if (value !== null && run !== undefined) {
        run.hours.push((reading.atMs - startMs) / HOUR_MS);
        run.values.push(value);
      }
    }
    before = period;
  });
  return runs;
}

function coveredOf({ hours }: TimedValues): number {
  return hours.length === 0 ? 0 : (hours.at(-1) as number) - (hours[0] as number);
}

function shortOf(
  { percent, kept, day, night }: AmbulatoryResult['counts'],
  { leastPercent, leastDay, leastNight }: AmbulatoryRules,
): Flag<AmbulatoryReasonCode>[] {
  if (kept === 0) return [{ code: 'no-readings', figures: {} }];
  const why: Flag<AmbulatoryReasonCode>[] = [];
  const isShort = (value: number, limit: SidedLimit | null): limit is SidedLimit =>
    limit !== null && !passes(value, limit.comparison, limit.limit);
  if (percent !== null && isShort(percent, leastPercent)) {
    why.push({ code: 'too-few-percent', figures: { percent, leastPercent: leastPercent.limit } });
  }
  if (isShort(day, leastDay)) {
    why.push({ code: 'too-few-day', figures: { readings: day, least: leastDay.limit } });
  }
  if (isShort(night, leastNight)) {
    why.push({ code: 'too-few-night', figures: { readings: night, least: leastNight.limit } });
  }
  return why;
}

function classReason(readings: number, { leastNight }: AmbulatoryRules): Flag<AmbulatoryReasonCode> {
  const least = leastNight?.limit ?? F.leastNightReadings.value;
  return { code: 'too-few-asleep-for-class', figures: { readings, least } };
}

function barredOf({ ageYears, isPregnant }: AmbulatoryCircumstances): Flag<AmbulatoryReasonCode>[] {
  const why: Flag<AmbulatoryReasonCode>[] = [];
  if (ageYears !== null && isChild(ageYears)) why.push({ code: 'child', figures: { ageYears } });
  if (isPregnant) why.push({ code: 'pregnancy', figures: {} });
  return why;
}

function judgedOf(
  whole: AmbulatoryResult['whole'],
  day: PeriodResult,
  night: PeriodResult,
  rules: AmbulatoryRules,
): AmbulatoryResult['judged'] {
  const overTime = mapped((m) => whole.closed[m] ?? whole.trapezoid[m]);
  const chosen = {
    'over-time': overTime,
    arithmetic: whole.arithmetic,
    'hours-weighted': whole.hoursWeighted,
  };
  const held = (mean: ByMeasure, systolic: SidedLimit | null, diastolic: SidedLimit | null) => ({
    mean: { systolic: mean.systolic, diastolic: mean.diastolic },
    high: anyOf([isHigh(mean.systolic, systolic), isHigh(mean.diastolic, diastolic)]),
  });
  return {
    whole: held(chosen[rules.wholeMean], rules.wholeSystolic, rules.wholeDiastolic),
    day: held(day.mean, rules.daySystolic, rules.dayDiastolic),
    night: held(night.mean, rules.nightSystolic, rules.nightDiastolic),
  };
}

function isHigh(mmHg: number | null, limit: SidedLimit | null): boolean | null {
  return mmHg === null || limit === null ? null : passes(mmHg, limit.comparison, limit.limit);
}

/** True if any is; false only where all that are known say so and one is known; null else. */
function anyOf(answers: readonly (boolean | null)[]): boolean | null {
  if (answers.includes(true)) return true;
  return answers.includes(false) ? false : null;
}

function patternOf({ whole, day, night }: AmbulatoryResult['judged']): AmbulatoryPattern | null {
  if (day.high === null || night.high === null) return null;
  if (day.high && night.high) return 'day-and-night-high';
  if (day.high) return 'day-alone-high';
  if (night.high) return 'night-alone-high';
  return whole.high === true ? 'whole-alone-high' : 'none-high';
}

function loadOf(
  runs: Mapped<{ readonly day: Segments; readonly night: Segments }>,
  period: 'day' | 'night',
  readings: readonly SeriesReading[],
  systolic: SidedLimit | null,
  diastolic: SidedLimit | null,
  startMs: number,
): Load | null {
  if (systolic === null || diastolic === null) return null;
  const limits = { systolic, diastolic };
  const pair = (of: (measure: 'systolic' | 'diastolic', limit: SidedLimit) => number | null) => ({
    systolic: of('systolic', limits.systolic),
    diastolic: of('diastolic', limits.diastolic),
  });
  return {
    limit: { systolic: systolic.limit, diastolic: diastolic.limit },
    percent: pair((m, { comparison, limit }) => loadPercent(valuesOf(readings, m), comparison, limit)),
    timePercent: pair((m, { comparison, limit }) =>
      timeLoadPercent(timedValues(readings, m, startMs), comparison, limit),
    ),
    excessArea: pair((m, { limit }) => (readings.length === 0 ? null : excessArea(runs[m][period], limit))),
  };
}

/** The fitted curves where there are readings enough, none far apart, over most of a day. Source: out-of-office handbook 15. */
function curvesOf(
  kept: readonly SeriesReading[],
  { hours, values }: TimedValues,
  measure: Measure,
): { readonly one: Cosinor | null; readonly two: Cosinor | null } {
  const gap = longestGap(hours);
  const isEnough =
    values.length >= F.cosinorLeastReadings.value &&
    gap !== null &&
    gap <= F.cosinorLongestGapHours.value &&
    coveredOf({ hours, values }) >= F.cosinorLeastHours.value;
  if (!isEnough) return { one: null, two: null };
  // Hours from the first reading's own local midnight: time that passed, also where the clock changes.
  const first = kept.find((one) => one[measure] !== null) as SeriesReading;
  const fromMidnight = first.minuteOfDay / 60 - (hours[0] as number);
  const local = hours.map((hour) => hour + fromMidnight);
  return { one: cosinor(local, values, 1), two: cosinor(local, values, 2) };
}

function stiffnessOf(kept: readonly SeriesReading[]): Stiffness | null {
  const pairs = kept.filter(({ systolic, diastolic }) => systolic !== null && diastolic !== null);
  if (pairs.length < F.stiffnessLeastReadings.value) return null;
  const found = stiffnessIndex(valuesOf(pairs, 'systolic'), valuesOf(pairs, 'diastolic'));
  return found !== null && found.r ** 2 >= F.stiffnessLeastR2.value ? found : null;
}

function longestGap(hours: readonly number[]): number | null {
  let longest: number | null = null;
  for (let k = 1; k < hours.length; k++) {
    const gap = (hours[k] as number) - (hours[k - 1] as number);
    if (longest === null || gap > longest) longest = gap;
  }
  return longest;
}

function flagsOf(
  kept: readonly SeriesReading[],
  edited: readonly Edited[],
  longestGapHours: number | null,
): Flag<AmbulatoryFlagCode>[] {
  const flags: Flag<AmbulatoryFlagCode>[] = [];
  const least = F.variabilityReadings.value;
  if (kept.length < least)
    flags.push({ code: 'few-for-variability', figures: { readings: kept.length, least } });
  if (longestGapHours !== null && longestGapHours > F.longestStepHours.value) {
    flags.push({ code: 'longest-gap', figures: { hours: longestGapHours } });
  }
  const again = kept.filter((one, k) => k > 0 && kept[k - 1]?.atMs === one.atMs).length;
  if (again > 0) flags.push({ code: 'same-time-other-value', figures: { readings: again } });
  const later = edited.filter(({ code }) => code === 'after-24-hours').length;
  if (later > 0) flags.push({ code: 'recording-longer', figures: { readings: later, hours: DAY_HOURS } });
  return flags;
}
