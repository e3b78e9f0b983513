import { worstAlerts } from '@evenfall/clinical';
import { isCovered } from '../content/actNowClosed.js';
import type { RoundValueKept } from '../content/roundValue.js';
import type { StoredEntry } from '../entry/entry.js';
import { firstDifference } from '../recompute/nearly.js';
import { type DueDiary, diariesOut } from './chartDiaries.js';
import { type ChartedSeries, chartSeries, type OpenSeriesAlert } from './chartSeries.js';
import { GENERAL_RULES } from './generalRules.js';
import { type ChartRound, type Closed, projectChart, signingsOf } from './projectChart.js';
import { type DueRecheck, rechecksOf } from './rechecks.js';
import { type RulesOf, valuesStanding } from './valueStanding.js';

/** An act-now of a signed round, or of a series, that nobody has closed. */
export type OpenActNow = RoundValueKept['actNow'][number] & {
  readonly round: string;
  /** The series that it is of, by its entry; absent of a round. */
  readonly series?: string;
};

/** What somebody still has to do about a person. */
export type Duties = {
  readonly actNow: readonly OpenActNow[];
  readonly rechecks: readonly DueRecheck[];
  /** Learners' rounds, and rounds of their series, of which no supervisor has said anything yet that still holds. */
  readonly toCountersign: readonly string[];
  /** Diaries that are out, whether or not they are due back yet; the first due first. */
  readonly diaries: readonly DueDiary[];
  /** The last day of the newest readings from away (`YYYY-MM-DD`, local); null where there are none. */
  readonly awayUntil: string | null;
};

/**
 * What is still to be done, from a person's entries: an act-now stays until whom was told, when and what was said back
 * is kept; a recheck until the pressure is taken again. What was amended after signing is judged as it stands now, so
 * that a slip put right raises the alert it hid, or takes back the one it made.
 */
export function projectDuties(entries: readonly StoredEntry[], rulesOf: RulesOf = GENERAL_RULES): Duties {
  return dutiesOf(projectChart(entries).rounds, entries, rulesOf);
}

/** What is still to be done, from the rounds of a person's chart and from all entries. */
export function dutiesOf(
  charted: readonly ChartRound[],
  entries: readonly StoredEntry[],
  rulesOf: RulesOf,
): Duties {
  const rounds = charted.filter(({ isInError }) => !isInError);
  const series = chartSeries(entries, rulesOf);
  return {
    actNow: [...rounds.flatMap((round) => openIn(round, rulesOf)), ...openInSeries(series)],
    rechecks: rechecksOf(rounds, rulesOf),
    toCountersign: [
      ...rounds.filter(({ isToCountersign }) => isToCountersign).map(({ id }) => id),
      ...series.filter(({ isToCountersign }) => isToCountersign).map(({ round }) => round),
    ],
    diaries: diariesOut(entries),
    awayUntil: series.find(({ isInError, until }) => !isInError && until !== '')?.until ?? null,
  };
}

/** The alerts of series that nobody closed. */
function openInSeries(series: readonly ChartedSeries[]): readonly OpenSeriesAlert[] {
  return series.flatMap(({ open }) => open);
}

/** The alerts of a round that nothing closed. */
export function openIn(round: ChartRound, rulesOf: RulesOf): OpenActNow[] {
  return alertsIn(round, rulesOf)
    .filter((alert) => !round.closed.some((closing) => isClosedBy(closing, alert, round, rulesOf)))
    .map((alert) => ({ ...alert, round: round.id }));
}

type Alert = RoundValueKept['actNow'][number];

/** Each condition once, with the figures of the worst reading of the round that meets it. */
function alertsIn(round: ChartRound, rulesOf: RulesOf): readonly Alert[] {
  return worstAlerts(valuesStanding(round, rulesOf).flatMap(({ actNow }) => actNow));
}

/**
 * Whether somebody was told of an alert as it stands: what was amended after the telling, to other figures, was told
 * to nobody, and what was no alert then could not be closed.
 */
function isClosedBy(closing: Closed, alert: Alert, round: ChartRound, rulesOf: RulesOf): boolean {
  if (!closing.content.conditions.includes(alert.condition)) return false;
  const entries = [...signingsOf(round), ...round.values].flatMap(({ story }) => story);
  const before = entries.filter((entry) => isCovered(closing, entry));
  if (before.length === entries.length) return true;
  const { onDay } = round;
  const then = projectChart(before).rounds.flatMap((was) =>
    was.isInError ? [] : alertsIn({ ...was, onDay }, rulesOf),
  );
  return then.some(
    ({ condition, figures }) =>
      condition === alert.condition && firstDifference(figures, alert.figures) === null,
  );
}
