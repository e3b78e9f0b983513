import { isChild } from '../category/isChild.js';
import type { Flag } from '../contract/flag.js';
import type { SidedLimit } from '../contract/shownPressure.js';
import { passes } from '../contract/threshold.js';
import type { AmbulatoryCircumstances } from './ambulatoryCircumstances.js';
import type { AmbulatoryRules } from './ambulatoryRules.js';
import { type ByMeasure, type ForEachMeasure, forEachMeasure, ofEachMeasure } from './byMeasure.js';
import { DAY_HOURS } from './clock.js';
import { type DipClass, dipClass, dipPercent } from './dipping.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import { meanOfHours } from './hourly.js';
import {
  type AmbulatoryPattern,
  anyOf,
  type JudgedPeriods,
  judgedPeriods,
  patternOf,
  type WholeMeans,
} from './judgedPeriods.js';
import { periodColumns } from './periodColumns.js';
import { type Load, periodLoad } from './periodLoad.js';
import { type PeriodResult, periodResult } from './periodResult.js';
import { type DayNightBy, dayNightBy, type PeriodOf, periodHours, periodOf, sleepOf } from './periods.js';
import { type Curves, recordingCurves } from './recordingCurves.js';
import { type Edited, isNotScheduled, recordingKept } from './recordingKept.js';
import { closedMean, hoursWeightedMean, trapezoidMean } from './seriesMeans.js';
import { type SeriesReading, valuesOf } from './seriesReading.js';
import { type Spread, spreadOf } from './spread.js';
import { type Stiffness, stiffnessIndex } from './stiffness.js';
import { morningSurge, type Surge } from './surge.js';
import { coveredHours, longestGap, plainStep, type TimedValues, withoutGaps } from './timedValue.js';
import { averageRealVariability, cvPercent, timeWeightedVariability, weightedSd } from './variability.js';

/** Name of this rule; one that gives another result for the same readings has another name. */
export const AMBULATORY_RULE = 'ambulatory-2';

/**
 * Rules by which a kept value is made again. `ambulatory-1` counted gaps in parts of hours, so that one of exactly three
 * passed or not by when it began; it had a trough of one reading asleep, and four readings however late they came.
 */
export type AmbulatoryRuleName = typeof AMBULATORY_RULE | 'ambulatory-1';

export type AmbulatoryReasonCode =
  | 'no-readings'
  | 'too-few-percent'
  | 'schedule-not-known'
  | 'too-few-day'
  | 'too-few-night'
  | 'too-long-empty'
  | 'too-few-asleep-for-class'
  | 'no-limit'
  | 'child'
  | 'pregnancy';

/** The class of one recording is weak evidence. Source: out-of-office handbook 9. */
const CLASS_IS_WEAK: Flag<AmbulatoryFlagCode> = {
  code: 'class-is-weak',
  figures: { changesPercent: F.dipClassChangesPercent.value },
};

export type AmbulatoryFlagCode =
  | 'few-for-variability'
  | 'longest-gap'
  | 'same-time-other-value'
  | 'recording-longer'
  | 'started-by-hand'
  | 'class-is-weak';

/**
 * What a recording over 24 hours comes to under a rule set. Nothing is rounded; a difference says in its name which
 * minus which. `edited` names every reading that is not used, with the rule that fired.
 */
export type AmbulatoryResult = {
  readonly valid: boolean;
  readonly why: readonly Flag<AmbulatoryReasonCode>[];
  readonly counts: {
    /** Those that came, where nobody said how many were planned. */
    readonly scheduled: number;
    readonly isPlanSaid: boolean;
    readonly kept: number;
    /** Of those kept, how many the person started by hand. */
    readonly byHand: number;
    readonly day: number;
    readonly night: number;
    /** Of those that the recorder was set to take. */
    readonly percent: number | null;
  };
  readonly dayNightBy: DayNightBy;
  readonly hours: { readonly day: number; readonly night: number };
  readonly edited: readonly Edited[];
  readonly day: PeriodResult;
  readonly night: PeriodResult;
  readonly all: PeriodResult;
  readonly whole: WholeMeans;
  readonly cvPercent: ByMeasure;
  readonly arv: ByMeasure;
  readonly arvTimeWeighted: ByMeasure;
  /** Steps over a longer gap than 2 h left out. */
  readonly arvWithoutGaps: ByMeasure;
  readonly arvDay: ByMeasure;
  readonly arvNight: ByMeasure;
  readonly weightedSd: ByMeasure;
  readonly spread: Spread;
  readonly dip: {
    readonly systolicPercent: number | null;
    readonly diastolicPercent: number | null;
    readonly class: DipClass | null;
  };
  readonly surge: Surge | null;
  readonly load: { readonly day: Load | null; readonly night: Load | null };
  readonly cosinor: ForEachMeasure<Curves>;
  readonly stiffness: Stiffness | null;
  readonly longestGapHours: number | null;
  readonly judged: JudgedPeriods;
  readonly high: boolean | null;
  readonly pattern: AmbulatoryPattern | null;
  readonly flags: readonly Flag<AmbulatoryFlagCode>[];
};

/**
 * Analyses one recording. Readings may come in any order; a blank pressure is a measurement that failed. One that the
 * person started by hand is a reading like the others, and is not of the schedule that the percent is of.
 *
 * @param rule by which gaps are counted; the rises of `ambulatory-1` are in no kept value, and are made as now
 * Errors: none; an empty recording answers with nulls.
 * Source: out-of-office handbook 5 to 15, 20.
 */
export function ambulatoryResult(
  readings: readonly SeriesReading[],
  known: AmbulatoryCircumstances,
  rules: AmbulatoryRules,
  rule: AmbulatoryRuleName = AMBULATORY_RULE,
): AmbulatoryResult {
  const { kept, edited } = recordingKept(readings, known, rules);
  const { dayNight } = known;
  const periods: PeriodOf[] = [];
  const dayReadings: SeriesReading[] = [];
  const nightReadings: SeriesReading[] = [];
  for (let k = 0; k < kept.length; k++) {
    const reading = kept[k] as SeriesReading;
    const period = periodOf(reading, dayNight);
    periods.push(period);
    if (period === 'day') dayReadings.push(reading);
    else if (period === 'night') nightReadings.push(reading);
  }
  const columns = periodColumns(kept, periods);
  const series = columns.whole;
  const hours = periodHours(kept, dayNight);
  const day = periodResult(dayReadings, columns.day);
  const night = periodResult(nightReadings, columns.night);
  const all = periodResult(kept, series);
  const byHand = readings.filter(isByHand);
  const scheduled = known.scheduled ?? leftToCount(readings, edited, byHand);
  const keptByHand = kept.filter(isByHand).length;
  const percent = scheduled === 0 ? null : (100 * (kept.length - keptByHand)) / scheduled;
  const isPlanSaid = known.scheduled !== null;
  const counts = {
    ...{ scheduled, isPlanSaid, kept: kept.length, byHand: keptByHand },
    ...{ day: day.n, night: night.n, percent },
  };
  const whole = {
    arithmetic: all.mean,
    hoursWeighted: forEachMeasure((m) =>
      hoursWeightedMean(day.mean[m], night.mean[m], hours.day, hours.night),
    ),
    trapezoid: ofEachMeasure(series, trapezoidMean),
    closed: ofEachMeasure(series, (one) =>
      coveredHours(one.hours) < F.cosinorLeastHours.value ? null : closedMean(one),
    ),
    hourly: ofEachMeasure(series, ({ clockHours, values }) => meanOfHours(clockHours, values)),
  };
  const longestGapHours = longestGap(series.systolic.hours, rule === 'ambulatory-1' ? plainStep : undefined);
  const short = shortOf(counts, longestGapHours, rules);
  const judged = judgedPeriods(whole, day, night, rules);
  const barred = barredOf(known);
  const isValid = short.length === 0;
  const asked = rules.judged.map((period) => judged[period].high);
  const high = barred.length > 0 || !isValid ? null : anyOf(asked);
  const hasClass =
    night.mean.systolic !== null &&
    day.mean.systolic !== null &&
    night.n >= (rules.leastNight?.limit ?? F.leastNightReadings.value);
  const sleep = sleepOf(kept, dayNight);
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
    cvPercent: forEachMeasure((m) => cvPercent(all.mean[m], all.sd[m])),
    arv: ofEachMeasure(series, averageRealVariability),
    arvTimeWeighted: ofEachMeasure(series, timeWeightedVariability),
    arvWithoutGaps: ofEachMeasure(series, (one) =>
      averageRealVariability(withoutGaps(one, F.longestStepHours.value)),
    ),
    arvDay: ofEachMeasure(columns.day, averageRealVariability),
    arvNight: ofEachMeasure(columns.night, averageRealVariability),
    weightedSd: forEachMeasure((m) => weightedSd(day.sd[m], night.sd[m], hours.day, hours.night)),
    spread: spreadOf(series, all),
    dip: {
      systolicPercent: dipPercent(day.mean.systolic, night.mean.systolic),
      diastolicPercent: dipPercent(day.mean.diastolic, night.mean.diastolic),
      class: hasClass ? dipClass(day.mean.systolic as number, night.mean.systolic as number) : null,
    },
    surge: sleep === null ? null : morningSurge(kept, sleep.bedMs, sleep.wakeMs),
    load: {
      day: periodLoad(columns.day, day.n, rules.daySystolic, rules.dayDiastolic),
      night: periodLoad(columns.night, night.n, rules.nightSystolic, rules.nightDiastolic),
    },
    cosinor: recordingCurves(kept, series),
    stiffness: rules.reportsStiffness ? stiffnessOf(kept, series) : null,
    longestGapHours,
    judged,
    high,
    pattern: barred.length > 0 || !isValid ? null : patternOf(judged),
    flags: [
      ...(byHand.length === 0
        ? []
        : [{ code: 'started-by-hand' as const, figures: { readings: byHand.length, used: keptByHand } }]),
      ...flagsOf(kept, edited, longestGapHours),
      ...(hasClass ? [CLASS_IS_WEAK] : []),
    ],
  };
}

function isByHand({ startedByHand }: SeriesReading): boolean {
  return startedByHand === true;
}

/** How many came of a schedule that nobody said: without doubles, what lies beyond the first day, and what a hand started. */
function leftToCount(
  readings: readonly SeriesReading[],
  edited: readonly Edited[],
  byHand: readonly SeriesReading[],
): number {
  const apart = new Set(byHand.map(({ index }) => index));
  for (const one of edited) if (isNotScheduled(one)) apart.add(one.index);
  return readings.length - apart.size;
}

function shortOf(
  { percent, kept, day, night }: AmbulatoryResult['counts'],
  hours: number | null,
  { leastPercent, leastDay, leastNight, longestEmptyHours: longest }: AmbulatoryRules,
): Flag<AmbulatoryReasonCode>[] {
  if (kept === 0) return [{ code: 'no-readings', figures: {} }];
  const why: Flag<AmbulatoryReasonCode>[] = [];
  const isShort = (value: number, limit: SidedLimit | null): limit is SidedLimit =>
    limit !== null && !passes(value, limit.comparison, limit.limit);
  // Where every reading was started by hand, what the schedule came to is not known, and never passes for all of it.
  if (percent === null && leastPercent !== null)
    why.push({ code: 'schedule-not-known', figures: { leastPercent: leastPercent.limit } });
  if (percent !== null && isShort(percent, leastPercent)) {
    why.push({ code: 'too-few-percent', figures: { percent, leastPercent: leastPercent.limit } });
  }
  if (isShort(day, leastDay)) {
    why.push({ code: 'too-few-day', figures: { readings: day, least: leastDay.limit } });
  }
  if (isShort(night, leastNight)) {
    why.push({ code: 'too-few-night', figures: { readings: night, least: leastNight.limit } });
  }
  if (hours !== null && longest !== null && passes(hours, longest.comparison, longest.limit)) {
    why.push({ code: 'too-long-empty', figures: { hours, longest: longest.limit } });
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

function stiffnessOf(
  kept: readonly SeriesReading[],
  { systolic, diastolic }: ForEachMeasure<TimedValues>,
): Stiffness | null {
  // Where both stand at the same times, every reading has both.
  const isWhole = systolic.hours === diastolic.hours;
  const pairs = isWhole ? [] : kept.filter((one) => one.systolic !== null && one.diastolic !== null);
  const systolics = isWhole ? systolic.values : valuesOf(pairs, 'systolic');
  const diastolics = isWhole ? diastolic.values : valuesOf(pairs, 'diastolic');
  if (systolics.length < F.stiffnessLeastReadings.value) return null;
  const found = stiffnessIndex(systolics, diastolics);
  return found !== null && found.r ** 2 >= F.stiffnessLeastR2.value ? found : null;
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
