import { valueOfRound } from '../content/chartRound.js';
import type { InForce } from '../content/inForce.js';
import type { RoundContent } from '../content/round.js';
import type { RoundValueKept } from '../content/roundValue.js';
import type { Entry, StoredEntry } from '../entry/entry.js';
import type { ChartRound } from './projectChart.js';

type Signing = StoredEntry & { readonly kind: 'round' };

/** The signing of a round that stands; null for a round that arrived without one. */
export function signingOf({ signed }: ChartRound): Signing | null {
  const standing = signed?.current.at(-1) ?? signed?.original;
  return standing?.kind === 'round' ? standing : null;
}

/** Whether a value of a round was amended after it was signed, so that what was made of it is no longer what it comes to. */
export function isAmendedSince({ values }: ChartRound): boolean {
  return values.some(({ standing }) => standing !== 'as-signed');
}

/**
 * What a round comes to as its values stand now: as signed, or made again where one was amended since. The signed
 * value stays in its entry. Null where nothing was ever made of it.
 *
 * @param rulesOf the rules of the protocol version that the signing names; null takes what was signed
 */
export function valueStanding(
  round: ChartRound,
  rulesOf: (version: string | null) => InForce | null,
): RoundValueKept | null {
  const content: Partial<RoundContent> = signingOf(round)?.content ?? {};
  const { value, evidence, signs, protocolVersion } = content;
  if (value == null || evidence == null || signs === undefined) return null;
  if (!isAmendedSince(round)) return value;
  const rules = rulesOf(protocolVersion ?? null);
  if (rules === null) return value;
  // An amendment stands in the place of what it amends: under its id, and at its place in the work.
  const entries = round.values.flatMap(({ original, current }): Entry[] => {
    const now = current.at(-1);
    return now === undefined ? [] : [{ ...now, id: original.id, sequence: original.sequence }];
  });
  return valueOfRound(signs, evidence, entries, rules);
}
