import type { ChartRound, Countersigned } from './projectChart.js';
import { signingOf } from './valueStanding.js';

/** Whether the last supervisor who said anything of a signing, as it stands, did not rely on it. */
export function isNotReliedOn(countersigned: readonly Countersigned[], signing: string): boolean {
  const last = countersigned.at(-1);
  return last !== undefined && last.content.signing === signing && !last.content.agrees;
}

/** What the last supervisor wrote who looked at a round and did not rely on it; null for any other round. */
export function notReliedOn(round: ChartRound): Countersigned | null {
  const signing = signingOf(round);
  if (round.isInError || signing === null || !isNotReliedOn(round.countersigned, signing.id)) return null;
  return round.countersigned.at(-1) ?? null;
}
