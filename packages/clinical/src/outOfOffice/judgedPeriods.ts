import type { SidedLimit } from '../contract/shownPressure.js';
import { passes } from '../contract/threshold.js';
import type { AmbulatoryRules, Period } from './ambulatoryRules.js';
import { type ByMeasure, forEachMeasure, type PressurePair } from './byMeasure.js';
import type { PeriodResult } from './periodResult.js';

/** Every mean over the whole recording. */
export type WholeMeans = {
  readonly arithmetic: ByMeasure;
  readonly hoursWeighted: ByMeasure;
  readonly trapezoid: ByMeasure;
  readonly closed: ByMeasure;
  readonly hourly: ByMeasure;
};

/** The mean of each period that the rule set holds against its limits, and what that says. */
export type JudgedPeriods = {
  readonly [P in Period]: { readonly mean: PressurePair; readonly high: boolean | null };
};

/** Which periods are high; words say "consistent with", never a diagnosis. */
export type AmbulatoryPattern =
  | 'none-high'
  | 'day-and-night-high'
  | 'day-alone-high'
  | 'night-alone-high'
  | 'whole-alone-high';

/** Each period held against its limits. */
export function judgedPeriods(
  whole: WholeMeans,
  day: PeriodResult,
  night: PeriodResult,
  rules: AmbulatoryRules,
): JudgedPeriods {
  const overTime = forEachMeasure((m) => whole.closed[m] ?? whole.trapezoid[m]);
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
export function anyOf(answers: readonly (boolean | null)[]): boolean | null {
  if (answers.includes(true)) return true;
  return answers.includes(false) ? false : null;
}

/** Which periods are high together. */
export function patternOf({ whole, day, night }: JudgedPeriods): AmbulatoryPattern | null {
  if (day.high === null || night.high === null) return null;
  if (day.high && night.high) return 'day-and-night-high';
  if (day.high) return 'day-alone-high';
  if (night.high) return 'night-alone-high';
  return whole.high === true ? 'whole-alone-high' : 'none-high';
}
