import type { RoundValueKept } from '../content/roundValue.js';
import { laterBy } from '../entry/offset.js';
import { chartedPressure } from './chartedPressure.js';
import type { ChartRound } from './projectChart.js';
import { type RulesOf, signingOf, valuesStanding } from './valueStanding.js';

/** A repeat that is due: not before `fromAt`, by `byAt` at the latest (null where no source gives one). RFC 3339. */
export type DueRecheck = {
  readonly round: string;
  readonly code: string;
  readonly fromAt: string;
  readonly byAt: string | null;
};

/** The pressure of a round that was judged: when the last one was taken, and the last with both numbers. */
type Judged = {
  readonly round: ChartRound;
  readonly values: readonly RoundValueKept[];
  readonly last: Taken | null;
  readonly lastFull: Taken | null;
};
type Taken = { readonly at: string; readonly ms: number };

/**
 * The repeats that are due from rounds that stand. One ends when the pressure is taken again: at the upper arm, in a
 * round that was judged, with a diastolic where the earlier one had it; and a learner's reading that nobody has
 * countersigned ends none of a reading that stands.
 */
export function rechecksOf(rounds: readonly ChartRound[], rulesOf: RulesOf): DueRecheck[] {
  const judged = rounds.map((round) => judge(round, rulesOf));
  const qualified = judged.filter(({ round }) => !round.isPreliminary);
  const newest = { any: newestIn(judged), qualified: newestIn(qualified) };
  return judged.flatMap((one) => {
    const { round, values, last, lastFull } = one;
    const later = round.isPreliminary ? newest.any : newest.qualified;
    const from = last ?? unmeasured(round);
    if (from === null || from.ms < (lastFull === null ? later.lastMs : later.lastFullMs)) return [];
    return dueOf(round, values, from.at);
  });
}

function judge(round: ChartRound, rulesOf: RulesOf): Judged {
  const values = valuesStanding(round, rulesOf);
  // What nobody signed, or nothing was made of, was judged by nobody and ends no recheck.
  const signed =
    values.length === 0 ? [] : round.values.filter(({ original }) => !round.unsigned.includes(original.id));
  let last: Taken | null = null;
  let lastFull: Taken | null = null;
  for (const { original, current } of signed) {
    for (const entry of current) {
      const pressure = chartedPressure(entry);
      if (pressure === null || !pressure.isAveraged) continue;
      const taken = takenAt(entry.measuredAt.at, original.recordedAt);
      last = laterOf(last, taken);
      if (pressure.diastolicUsed !== null) lastFull = laterOf(lastFull, taken);
    }
  }
  return { round, values, last, lastFull };
}

/** When a value was taken, by the clock where it was: a clock that is ahead cannot have measured after the server had the value. */
function takenAt(measuredAt: string, recordedAt: string): Taken {
  const [measured, recorded] = [Date.parse(measuredAt), Date.parse(recordedAt)];
  if (measured <= recorded) return { at: measuredAt, ms: measured };
  return { at: laterBy(measuredAt, (recorded - measured) / 1000), ms: recorded };
}

/** Somebody unwell is looked at again though no pressure was taken: from the signing. */
function unmeasured(round: ChartRound): Taken | null {
  const signing = signingOf(round);
  return signing === null ? null : takenAt(signing.measuredAt.at, signing.recordedAt);
}

function laterOf(one: Taken | null, other: Taken): Taken {
  return one === null || other.ms > one.ms ? other : one;
}

function newestIn(judged: readonly Judged[]): { readonly lastMs: number; readonly lastFullMs: number } {
  let lastMs = Number.NEGATIVE_INFINITY;
  let lastFullMs = Number.NEGATIVE_INFINITY;
  for (const { last, lastFull } of judged) {
    lastMs = Math.max(lastMs, last?.ms ?? lastMs);
    lastFullMs = Math.max(lastFullMs, lastFull?.ms ?? lastFullMs);
  }
  return { lastMs, lastFullMs };
}

function dueOf(round: ChartRound, values: readonly RoundValueKept[], at: string): DueRecheck[] {
  const after = (seconds: number) => laterBy(at, seconds);
  const due = values.flatMap(({ rechecks }) => rechecks);
  return due
    .filter(({ code }, index) => due.findIndex((one) => one.code === code) === index)
    .map(({ code, fromSeconds, withinSeconds }) => ({
      round: round.id,
      code,
      fromAt: after(fromSeconds),
      byAt: withinSeconds === null ? null : after(withinSeconds),
    }));
}
