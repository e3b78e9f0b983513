import { ROUND_RULE, type RoundRuleId, roundResult } from '@evenfall/clinical';
import type { Entry } from '../entry/entry.js';
import type { Beginning, RestKept } from './beginning.js';
import type { InForce } from './inForce.js';
import type { RoundContent, RoundEvidence } from './round.js';
import { roundInputOf } from './roundInputOf.js';
import type { RoundValueKept } from './roundValue.js';

/** What is signed besides the values: which they are, what was asked and seen, and how the round began. */
export type RoundSigned = Pick<RoundContent, 'status' | 'signs' | 'note'> & {
  /** Absent for nobody said. */
  readonly begun?: Beginning | null;
  readonly rest?: RestKept | null;
  readonly isCuffAsked?: boolean | null;
  readonly evidence: RoundEvidence;
};

/**
 * The content of a signing, its value made from the entries it names by the rules in force.
 *
 * @param entries the entries that the signs name, in any order; others are not looked at
 */
export function chartRound(
  signed: RoundSigned,
  entries: readonly Entry[],
  inForce: InForce,
  program: string,
): RoundContent {
  const { status, signs, evidence, note, begun = null, rest = null, isCuffAsked = null } = signed;
  const { presets, presetVersion } = inForce;
  return {
    status,
    signs: signs.map((sign) => ('entries' in sign ? { ...sign, entries: [...sign.entries] } : { ...sign })),
    evidence: copied(evidence),
    value: valueOfRound(signs, evidence, entries, inForce),
    computedBy: { program, rule: ROUND_RULE, preset: presets.readings ?? null, presetVersion },
    protocolVersion: presetVersion,
    note,
    begun: copied(begun),
    rest: copied(rest),
    isCuffAsked,
  };
}

/**
 * What the protocol makes of the entries that the signs of a round name, in the order in which they were taken.
 *
 * @param rule the version under which it is made: of what is kept, the one it was made under
 */
export function valueOfRound(
  signs: RoundContent['signs'],
  evidence: RoundEvidence,
  entries: readonly Entry[],
  { roundRules }: InForce,
  rule: RoundRuleId = ROUND_RULE,
): RoundValueKept {
  const named = new Set(signs.flatMap((sign) => ('entries' in sign ? sign.entries : [])));
  const taken = entries
    .filter(({ id }) => named.has(id))
    .sort((a, b) => a.sequence - b.sequence || (a.id < b.id ? -1 : 1));
  return copied<unknown>(roundResult(roundInputOf(taken, evidence), roundRules, rule)) as RoundValueKept;
}

/** Plain data that shares nothing with what it was made from. */
function copied<Plain>(plain: Plain): Plain {
  return JSON.parse(JSON.stringify(plain)) as Plain;
}
