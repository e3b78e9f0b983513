import { dayAfter } from './calendar.js';
import type { GaugeVerdict } from './gaugeCheck.js';
import { GAUGE_CHECKS, type GaugeCheckOf, type GaugeEvent, type GaugeType } from './gaugeLog.js';
import { DEFAULT_EQUIPMENT_RULES, type EquipmentRules } from './rules.js';

/** Something that was done with a gauge: on which local day (`YYYY-MM-DD`), at which instant (ms), and what it came to. */
export type GaugeDone = {
  readonly of: GaugeCheckOf | GaugeEvent;
  readonly verdict: GaugeVerdict;
  readonly day: string;
  readonly atMs: number;
};

/**
 * How one check of a gauge stands. `failed` until the same check is good again or the gauge was repaired; `never` where
 * none was good since it was here or since it was repaired; `disturbed` since it was dropped; `overdue` from the day
 * after the last on which it holds.
 */
export type CheckState = 'good' | 'overdue' | 'disturbed' | 'never' | 'failed';

export type CheckStanding = {
  readonly of: GaugeCheckOf;
  readonly state: CheckState;
  /** The last day on which the last good check holds; null where there is none. */
  readonly dueDay: string | null;
  /** The day on which it was last good, whatever happened since; null for never. */
  readonly lastGoodDay: string | null;
};

/** `failed`: out of use. `due`: a check is overdue, was never made, or was undone by a fall. */
export type GaugeState = 'good' | 'due' | 'failed';

/**
 * Readings in doubt: taken after the last good check of what failed (null for every reading before) and before the
 * gauge was repaired or the same check was good again (null while neither is).
 */
export type GaugeDoubt = {
  readonly of: GaugeCheckOf;
  readonly afterMs: number | null;
  readonly failedMs: number;
  readonly untilMs: number | null;
};

export type GaugeStanding = {
  readonly state: GaugeState;
  /** In the order of {@link GAUGE_CHECKS}. */
  readonly checks: readonly CheckStanding[];
  /** Every time that a check failed, in order of the failing; a repair ends one and does not undo it. */
  readonly doubts: readonly GaugeDoubt[];
};

/**
 * How a gauge stands on a day, from everything that was done with it, in any order. A check keeps the verdict of its
 * day; how long it holds goes by the rules that are in force now.
 */
export function gaugeStanding(
  type: GaugeType,
  done: readonly GaugeDone[],
  today: string,
  rules: EquipmentRules = DEFAULT_EQUIPMENT_RULES,
): GaugeStanding {
  const inOrder = [...done].sort((a, b) => a.atMs - b.atMs);
  const judged = GAUGE_CHECKS.map((of) =>
    checkStanding(of, inOrder, today, (day) => lastDay(of, type, day, rules)),
  );
  const checks = judged.map(({ standing }) => standing);
  const doubts = judged.flatMap((one) => one.doubts).sort((a, b) => a.failedMs - b.failedMs);
  const state = checks.some((one) => one.state === 'failed')
    ? 'failed'
    : checks.every((one) => one.state === 'good')
      ? 'good'
      : 'due';
  return { state, checks, doubts };
}

function checkStanding(
  of: GaugeCheckOf,
  done: readonly GaugeDone[],
  today: string,
  lastDayOf: (day: string) => string,
) {
  let state: CheckState = 'never';
  let good: GaugeDone | null = null;
  let open: GaugeDoubt | null = null;
  const doubts: GaugeDoubt[] = [];
  const close = (untilMs: number) => {
    if (open !== null) doubts.push({ ...open, untilMs });
    open = null;
  };
  for (const one of done) {
    if (one.of === of && one.verdict === 'good') {
      close(one.atMs);
      good = one;
      state = 'good';
    } else if (one.of === of && one.verdict === 'failed') {
      open ??= { of, afterMs: good?.atMs ?? null, failedMs: one.atMs, untilMs: null };
      state = 'failed';
    } else if (one.of === 'repaired') {
      close(one.atMs);
      state = 'never';
    } else if (one.of === 'dropped' && state === 'good') state = 'disturbed';
  }
  if (open !== null) doubts.push(open);
  const dueDay = good === null || state === 'never' ? null : lastDayOf(good.day);
  if (state === 'good' && dueDay !== null && today > dueDay) state = 'overdue';
  const standing: CheckStanding = { of, state, dueDay, lastGoodDay: good?.day ?? null };
  return { standing, doubts };
}

/** The last day on which a good check holds. */
function lastDay(of: GaugeCheckOf, type: GaugeType, day: string, rules: EquipmentRules): string {
  if (of === 'zero') return dayAfter(day, { days: rules.zeroDays });
  if (of === 'leak') return dayAfter(day, { months: rules.leakMonths });
  const isLong = type === 'mercury' || type === 'automatic';
  return dayAfter(day, { months: isLong ? rules.mercuryComparisonMonths : rules.comparisonMonths });
}
