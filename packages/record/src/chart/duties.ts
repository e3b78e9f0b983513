import { type InForce, NOTHING_CHOSEN } from '../content/inForce.js';
import type { RoundValueKept } from '../content/roundValue.js';
import type { StoredEntry } from '../entry/entry.js';
import { laterBy } from '../entry/stamp.js';
import { type ChartRound, projectChart } from './projectChart.js';
import { valueStanding } from './valueStanding.js';

/** An act-now of a signed round that nobody has closed. */
export type OpenActNow = RoundValueKept['actNow'][number] & { readonly round: string };

/** A repeat that is due: not before `fromAt`, by `byAt` at the latest (null where no source gives one). RFC 3339. */
export type DueRecheck = {
  readonly round: string;
  readonly code: string;
  readonly fromAt: string;
  readonly byAt: string | null;
};

/** What somebody still has to do about a person. */
export type Duties = {
  readonly actNow: readonly OpenActNow[];
  readonly rechecks: readonly DueRecheck[];
  /** Learners' rounds that no supervisor has agreed to. */
  readonly toCountersign: readonly string[];
};

/** The rules of a protocol version; null for one that is not known. */
export type RulesOf = (version: string | null) => InForce | null;

/** The general rules, by which every alert is on: what stands where the rules of a version are not at hand. */
export const GENERAL_RULES: RulesOf = () => NOTHING_CHOSEN;

/**
 * What is still to be done, from a person's entries: an act-now stays until whom was told, when and what was said back
 * is kept; a recheck until the pressure is taken again. What was amended after signing is judged as it stands now, so
 * that a slip put right raises the alert it hid, or takes back the one it made.
 */
export function projectDuties(entries: readonly StoredEntry[], rulesOf: RulesOf = GENERAL_RULES): Duties {
  const rounds = projectChart(entries).rounds.filter(({ isInError }) => !isInError);
  const times = rounds.map(pressureAt);
  const lastPressureMs = Math.max(...times.map((at) => (at === null ? 0 : Date.parse(at))));
  return {
    actNow: rounds.flatMap((round) => openIn(round, rulesOf)),
    rechecks: rounds.flatMap((round) => {
      const at = pressureAt(round);
      // Taken again since: the newest pressure says what is due.
      return at === null || Date.parse(at) < lastPressureMs ? [] : dueIn(round, at, rulesOf);
    }),
    toCountersign: rounds.filter(({ isPreliminary }) => isPreliminary).map(({ id }) => id),
  };
}

/** The alerts of a round that nothing closed. */
export function openIn(round: ChartRound, rulesOf: RulesOf): OpenActNow[] {
  const closed = new Set(round.closed.flatMap(({ content }) => content.conditions));
  return (valueStanding(round, rulesOf)?.actNow ?? [])
    .filter(({ condition }) => !closed.has(condition))
    .map((alert) => ({ ...alert, round: round.id }));
}

function dueIn(round: ChartRound, at: string, rulesOf: RulesOf): DueRecheck[] {
  const after = (seconds: number) => laterBy(at, seconds);
  return (valueStanding(round, rulesOf)?.rechecks ?? []).map(({ code, fromSeconds, withinSeconds }) => ({
    round: round.id,
    code,
    fromAt: after(fromSeconds),
    byAt: withinSeconds === null ? null : after(withinSeconds),
  }));
}

/** When the last pressure of a round was taken, with the offset it was taken under; null without one. */
function pressureAt({ values }: ChartRound): string | null {
  return values
    .flatMap(({ current }) => current)
    .filter(({ kind }) => kind === 'run')
    .map(({ measuredAt }) => measuredAt.at)
    .reduce<string | null>(
      (last, at) => (last === null || Date.parse(at) > Date.parse(last) ? at : last),
      null,
    );
}
