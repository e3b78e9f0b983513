import { CHILD_FIGURES } from '../child/figures.js';
import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import { type AveragingRule, averagingRule } from './averagingRules.js';
import { ROUND_COMPARISONS as SIDE } from './comparisons.js';
import { type FullReading, fullReadings, type Reading } from './fullReadings.js';
import type { ReadingsRules } from './readingsRules.js';
import { isPressureSevere, type SevereLimits } from './severe.js';

/** What else is known when readings are judged. Null is "not known". */
export type ReadingsCircumstances = {
  /** Whether the pulse was felt to be irregular; a reading may say so too. */
  readonly irregular: boolean | null;
  /** For a child: from these on (its 90th centiles, or 120/80 if lower) a first reading is raised, mmHg. */
  readonly raisedFrom: { readonly systolic: number; readonly diastolic: number } | null;
  /** Null where the place judges no severe pressure. */
  readonly severe: SevereLimits | null;
  /** Very low or unwell: nobody waits for the next reading, nor rests the arm. Absent is no. */
  readonly atOnce?: boolean;
  /** The 95th centiles that alerts of a child go by, mmHg; absent or null is not known, or no child. */
  readonly p95?: { readonly systolic: number; readonly diastolic: number } | null;
  /** The person is unwell at whatever reading. Absent is no. */
  readonly unwell?: boolean;
};

export const UNKNOWN_READINGS_CIRCUMSTANCES: ReadingsCircumstances = {
  irregular: null,
  raisedFrom: null,
  severe: null,
};

/** Why another reading is needed, in the order in which it is told; `not-stable` is why none is asked for any more. */
export type FurtherReadingCode =
  | 'again-at-once'
  | 'more-readings'
  | 'more-readings-general'
  | 'raised-not-known'
  | 'irregular-more-readings'
  | 'differ-over'
  | 'differ-from'
  | 'severe-again'
  | 'not-stable';

/**
 * Whether to take another. `earliestAtSeconds` is on the clock of the readings, null if that is not known;
 * `waitSeconds` how long to leave the arm after the last one, null where none is needed.
 */
export type FurtherReading = {
  readonly isNeeded: boolean;
  /** As many as may be taken were, and two still differ too much. */
  readonly isUnstable: boolean;
  readonly why: readonly Flag<FurtherReadingCode>[];
  readonly earliestAtSeconds: number | null;
  readonly waitSeconds: number | null;
};

/**
 * Whether another reading of the same arm is needed, why, and from when. Only readings with both numbers count.
 *
 * A severe reading asks for one more after it. Taken to the letter, "any reading severe" would ask for five of
 * everybody whose pressure is severe and then call a steady one not stable; `recheckAfter` says when to look again.
 *
 * Where nobody may wait (`atOnce`) the next is due now, and at least one repeat is made; nothing then speaks of a rest.
 *
 * Source: bedside handbook 3.15 (at once) and 3.11 (one rule for the software, common practice), with the guideline's numbers of 3.10.
 */
export function furtherReading(
  readings: readonly Reading[],
  known: ReadingsCircumstances,
  rules: ReadingsRules,
): FurtherReading {
  const full = fullReadings(readings);
  const last = readings.at(-1);
  const endedAt = last?.atSeconds ?? null;
  const why = reasons(full, known, rules);
  const isAtStop = passes(full.length, SIDE.stopAtReadings, rules.stopAtReadings);
  const isUnstable = isAtStop && why.some(({ code }) => code === 'differ-over' || code === 'differ-from');
  const figures = { readings: full.length, stopAtReadings: rules.stopAtReadings };
  const stopped: Flag<FurtherReadingCode>[] = isUnstable ? [{ code: 'not-stable', figures }] : [];
  const isNeeded = !isAtStop && why.length > 0;
  const waitSeconds = known.atOnce === true ? 0 : rules.gapSeconds;
  return {
    isNeeded,
    isUnstable,
    why: isAtStop ? stopped : why,
    earliestAtSeconds: isNeeded && endedAt !== null ? endedAt + waitSeconds : null,
    waitSeconds: isNeeded ? waitSeconds : null,
  };
}

function reasons(
  full: readonly FullReading[],
  known: ReadingsCircumstances,
  rules: ReadingsRules,
): Flag<FurtherReadingCode>[] {
  const why = tooFewReasons(full, known, rules);
  const apart = differing(full, rules);
  if (apart !== null) why.push(apart);
  const last = full.at(-1);
  const isNew = !full
    .slice(0, -1)
    .some((one) => known.severe !== null && isPressureSevere(one, known.severe));
  if (last !== undefined && known.severe !== null && isNew && isPressureSevere(last, known.severe)) {
    const { systolic, diastolic } = last;
    why.push({ code: 'severe-again', figures: { systolic, diastolic } });
  }
  if (known.atOnce !== true) return why;
  // Whatever else asks for another says "rest the arm": nobody very low or unwell is told so.
  return full.length > 1 && why.length === 0 ? [] : [{ code: 'again-at-once', figures: {} }];
}

/** That there are too few: one reason, with the number that counts. An irregular pulse may need more than the rule. */
function tooFewReasons(
  full: readonly FullReading[],
  known: ReadingsCircumstances,
  rules: ReadingsRules,
): Flag<FurtherReadingCode>[] {
  const rule = averagingRule(rules.rule);
  const why: Flag<FurtherReadingCode>[] = [];
  const isTooFew = full.length < leastReadings(full, known, rule);
  const figures = { readings: full.length };
  const { irregularReadings: needs } = rules;
  if (isIrregular(full, known) && passes(full.length, SIDE.irregularReadings, needs) && needs >= rule.least) {
    why.push({ code: 'irregular-more-readings', figures: { ...figures, needs } });
  } else if (isTooFew) {
    const code = rules.isGeneral === true ? 'more-readings-general' : 'more-readings';
    why.push({ code, figures: { ...figures, needs: rule.least } });
  }
  if (isTooFew && rule.oneEnough.when === 'not-raised' && full.length > 0 && known.raisedFrom === null) {
    why.push({ code: 'raised-not-known', figures: {} });
  }
  return why;
}

/** Whether the pulse is known to be irregular, from the round or from any reading. */
export function isIrregular(readings: readonly Reading[], known: ReadingsCircumstances): boolean {
  return known.irregular === true || readings.some(({ irregular }) => irregular === true);
}

/**
 * Fewest readings for a value. One is enough where the guideline says so of the first, and as long as every reading
 * that was taken all the same would have been enough by itself.
 */
export function leastReadings(
  full: readonly FullReading[],
  { raisedFrom }: ReadingsCircumstances,
  { oneEnough, least }: AveragingRule,
): number {
  const below =
    oneEnough.when === 'below'
      ? oneEnough
      : oneEnough.when === 'not-raised'
        ? raisedLimits(raisedFrom)
        : null;
  if (below === null || full.length === 0) return least;
  const isEnough = full.every(
    ({ systolic, diastolic }) =>
      passes(systolic, SIDE.oneEnoughSystolic, below.systolic) &&
      passes(diastolic, SIDE.oneEnoughDiastolic, below.diastolic),
  );
  return isEnough ? 1 : least;
}

/** The 90th centiles of a child, or 120/80 where that is lower. Source: AAP 2017, definitions (bedside handbook 6.2). */
function raisedLimits(raisedFrom: ReadingsCircumstances['raisedFrom']): ReadingsCircumstances['raisedFrom'] {
  if (raisedFrom === null) return null;
  return {
    systolic: Math.min(raisedFrom.systolic, CHILD_FIGURES.aapElevatedSystolic.value),
    diastolic: Math.min(raisedFrom.diastolic, CHILD_FIGURES.aapStage1Diastolic.value),
  };
}

/** The reason that the last two differ too much; null if they do not, or if there are not two. */
function differing(
  full: readonly FullReading[],
  { difference }: ReadingsRules,
): Flag<FurtherReadingCode> | null {
  const [before, last] = full.slice(-2);
  if (difference === null || before === undefined || last === undefined) return null;
  const systolicMmHg = Math.abs(last.systolic - before.systolic);
  const diastolicMmHg = Math.abs(last.diastolic - before.diastolic);
  const { comparison, limit: limitMmHg } = difference;
  if (!passes(Math.max(systolicMmHg, diastolicMmHg), comparison, limitMmHg)) return null;
  const code = comparison === '>' ? 'differ-over' : 'differ-from';
  return { code, figures: { systolicMmHg, diastolicMmHg, limitMmHg } };
}
