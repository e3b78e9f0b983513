import { EMERGENCY_FEATURES, NOT_DONE_REASONS, PREPARATION, ROUND_SIGNS } from '@evenfall/clinical';
import { z } from 'zod';
import { id } from '../entry/id.js';
import { beginning, rest } from './beginning.js';
import { computedBy } from './computedBy.js';
import { roundFacts } from './roundFactsShape.js';
import { roundValue } from './roundValue.js';

const status = z.enum(['preliminary', 'final']);
const protocolVersion = z.string().max(80).nullable();
const note = z.string().max(1000).nullable();

const signs = z
  .array(
    z.union([
      z.object({ sign: z.enum(ROUND_SIGNS), entries: z.array(id).min(1) }).strict(),
      z
        .object({
          sign: z.enum(ROUND_SIGNS),
          notDone: z
            .object({ reason: z.enum(NOT_DONE_REASONS), text: z.string().max(500).nullable() })
            .strict()
            .refine(({ reason, text }) => reason !== 'other' || (text ?? '').trim() !== '', {
              path: ['text'],
              message: 'text-for-other',
            }),
        })
        .strict(),
    ]),
  )
  .min(1)
  .refine((given) => new Set(given.map(({ sign }) => sign)).size === given.length, {
    message: 'each-sign-once',
  });

/** Schema 1: rounds of pulse and breaths. */
export const firstRoundContent = z.object({ status, signs, protocolVersion, note }).strict();

/**
 * What was asked and seen besides the values, with the facts of the day. Null is not asked, not looked at. Features
 * are those the person has; none for "asked, and none".
 */
const evidence = z
  .object({
    exceptions: z.array(z.enum(PREPARATION)).nullable(),
    features: z.array(z.enum(EMERGENCY_FEATURES)).nullable(),
    unwell: z.boolean().nullable(),
    facts: roundFacts,
  })
  .strict();

const second = {
  status,
  signs,
  evidence: evidence.nullable(),
  value: roundValue.nullable(),
  computedBy: computedBy.nullable(),
  protocolVersion,
  note,
};

function isMadeTogether(round: { evidence: unknown; value: unknown; computedBy: unknown }): boolean {
  return (
    (round.evidence === null) === (round.value === null) &&
    (round.value === null) === (round.computedBy === null)
  );
}
const TOGETHER = { path: ['value'], message: 'evidence-and-value-together' };

/** Schema 2: rounds with what the protocol made of them. */
export const secondRoundContent = z.object(second).strict().refine(isMadeTogether, TOGETHER);

const third = { ...second, begun: beginning.nullable(), rest: rest.nullable() };

/** Schema 3: rounds with how they began and with the rest. */
export const thirdRoundContent = z.object(third).strict().refine(isMadeTogether, TOGETHER);

/**
 * The signing of one set of signs: which entries belong to it, and for each sign without one why it was not
 * done. `status` is `preliminary` for a learner's round until a supervisor countersigns. `value` is what the protocol
 * made of the entries named and of `evidence`, under the rule that `computedBy` names; all three are null in a round
 * that was signed before there was such a rule. `begun` and `rest` are null where nobody said. `isCuffAsked` says whether the
 * points of the cuff were asked; of a round of an older schema that is not known (null).
 */
export const roundContent = z
  .object({ ...third, isCuffAsked: z.boolean().nullable() })
  .strict()
  .refine(isMadeTogether, TOGETHER);
export type RoundContent = z.infer<typeof roundContent>;
export type RoundEvidence = z.infer<typeof evidence>;

/**
 * A round of an older schema in the newest shape: of schema 1 nothing was made, before 3 nobody said how it began, before 4
 * nobody whether the cuff went on.
 */
export function upgradeRound(content: unknown, from: number): unknown {
  if (from > 3) return content;
  const older = content as z.infer<
    typeof firstRoundContent | typeof secondRoundContent | typeof thirdRoundContent
  >;
  const made = from > 1 ? {} : { evidence: null, value: null, computedBy: null };
  const how = from > 2 ? {} : { begun: null, rest: null };
  return { ...older, ...made, ...how, isCuffAsked: null };
}
