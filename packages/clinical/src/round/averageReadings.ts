import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import { mean } from '../statistics/mean.js';
import { type AveragingMethod, averagingRule } from './averagingRules.js';
import { type FullReading, fullReadings, type Reading } from './fullReadings.js';
import {
  type FurtherReadingCode,
  furtherReading,
  isIrregular,
  leastReadings,
  type ReadingsCircumstances,
} from './furtherReading.js';
import type { ReadingsRules } from './readingsRules.js';

/** What a reader of the average must know: a reading without a diastolic is left out; an irregular pulse takes all. */
export type AverageFlagCode = 'no-diastolic-left-out' | 'irregular-takes-all';

/** Why there is no average. */
export type AverageReasonCode = 'too-few' | 'no-two-close';

/**
 * The pressure that a round goes by, mmHg and not rounded; null with its reason in `why`. `used` are the readings
 * it was made of, from 1 in the order given; `needs` says what to do next, empty when the rule is satisfied.
 */
export type ReadingsAverage = {
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly used: readonly number[];
  readonly needs: readonly Flag<FurtherReadingCode>[];
  readonly flags: readonly Flag<AverageFlagCode>[];
  readonly why: readonly Flag<AverageReasonCode>[];
};

/** The version of the rules of this folder, as kept beside each value they make. */
export const AVERAGE_RULE = 'average-1';

/**
 * The average that a guideline makes of the readings of one arm, site and posture (see `readingsToAverage`), in
 * the order in which they were taken.
 *
 * With too few for the rule both are null. A value is given although another reading is needed because two differ:
 * it is what there is until then. Readings of an irregular pulse are all averaged, at least three of them, unless the
 * protocol says otherwise (bedside handbook 3.13).
 *
 * Errors: none. Source: bedside handbook 3.10, 3.11 and 3.13.
 *
 * @example averageReadings([152/94, 146/90, 144/88], known, readingsRulesOf('esc-2024')) // 145/89, used [2, 3]
 */
export function averageReadings(
  readings: readonly Reading[],
  known: ReadingsCircumstances,
  rules: ReadingsRules,
): ReadingsAverage {
  const full = fullReadings(readings);
  const rule = averagingRule(rules.rule);
  const takesAll = rules.irregularAverage === 'all' && isIrregular(full, known);
  const least = isIrregular(full, known)
    ? Math.max(rules.irregularReadings, rule.least)
    : leastReadings(full, known, rule);
  const flags: Flag<AverageFlagCode>[] = [];
  const leftOut = readings.length - full.length;
  if (leftOut > 0) flags.push({ code: 'no-diastolic-left-out', figures: { leftOut } });
  const needs = furtherReading(readings, known, rules).why;
  if (full.length < least) {
    const why: Flag<AverageReasonCode>[] = [
      { code: 'too-few', figures: { readings: full.length, needs: least } },
    ];
    return { systolic: null, diastolic: null, used: [], needs, flags, why };
  }
  const used = takesAll ? full : chosen(full, rule.method, rules);
  if (used.length === 0) {
    const why: Flag<AverageReasonCode>[] = [{ code: 'no-two-close', figures: { readings: full.length } }];
    return { systolic: null, diastolic: null, used: [], needs, flags, why };
  }
  if (takesAll) flags.push({ code: 'irregular-takes-all', figures: { readings: used.length } });
  return {
    systolic: mean(used.map(({ systolic }) => systolic)),
    diastolic: mean(used.map(({ diastolic }) => diastolic)),
    used: used.map(({ index }) => index),
    needs,
    flags,
    why: [],
  };
}

/** The readings that make the value; none where no two in a row are close enough. */
function chosen(
  full: readonly FullReading[],
  method: AveragingMethod,
  rules: ReadingsRules,
): readonly FullReading[] {
  switch (method) {
    case 'mean-of-all':
      return full;
    case 'mean-of-last-two':
      return full.slice(-2);
    case 'mean-of-close-pair':
      return lastClosePair(full, rules);
    case 'lower-of-last-two':
      return full.slice(-2).sort(byHeight).slice(0, 1);
  }
}

function lastClosePair(full: readonly FullReading[], { difference }: ReadingsRules): readonly FullReading[] {
  for (let end = full.length; end >= 2; end -= 1) {
    const pair = full.slice(end - 2, end);
    const [before, last] = pair as [FullReading, FullReading];
    const apart = Math.max(
      Math.abs(last.systolic - before.systolic),
      Math.abs(last.diastolic - before.diastolic),
    );
    if (difference === null || !passes(apart, difference.comparison, difference.limit)) return pair;
  }
  return [];
}

/** By systolic, then diastolic; of two equal ones the later stands first. Source: bedside handbook 3.10, common practice. */
function byHeight(a: FullReading, b: FullReading): number {
  return a.systolic - b.systolic || a.diastolic - b.diastolic || b.index - a.index;
}
