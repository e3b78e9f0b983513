import { ARM_FACTS, CUFF_SCHEME_IDS, SIDES } from '@evenfall/clinical';
import { z } from 'zod';
import { id } from '../entry/id.js';
import { PERSON_FACTS } from './factNames.js';

const mmHg = z.number().min(0).max(300);
const day = z.iso.date();

/** Facts by what must be known with them. */
const about = z.discriminatedUnion('fact', [
  z.object({ fact: z.enum([...ARM_FACTS, 'higher-arm']), side: z.enum(SIDES) }).strict(),
  /** Completed weeks on the day `from`; null if not known. */
  z.object({ fact: z.literal('pregnancy'), weeks: z.number().int().min(0).max(45).nullable() }).strict(),
  z.object({ fact: z.enum(PERSON_FACTS).exclude(['pregnancy']) }).strict(),
  z.object({ fact: z.literal('gap'), fromMmHg: mmHg, toMmHg: mmHg }).strict(),
  z
    .object({
      fact: z.literal('usual-cuff'),
      scheme: z.enum(CUFF_SCHEME_IDS),
      cuff: z.string().min(1).max(40),
    })
    .strict(),
  /** The second scale of oxygen saturation needs a prescriber by name. Source: bedside handbook 4.2. */
  z.object({ fact: z.literal('oxygen-scale-2'), prescriber: z.string().trim().min(1).max(200) }).strict(),
  /** Which reference tables apply. */
  z.object({ fact: z.literal('reference-sex'), sex: z.enum(['f', 'm']) }).strict(),
]);

/**
 * Something known of a person that bears on their signs, with the first and the last day on which it holds, both
 * included (`YYYY-MM-DD`, local); null is no end in sight. It is shown before a reading and never hidden.
 */
export const factContent = z
  .object({ about, from: day, until: day.nullable(), text: z.string().max(500).nullable() })
  .strict()
  .refine(({ from, until }) => until === null || until >= from, {
    path: ['until'],
    message: 'not-before-from',
  })
  .refine(({ about: given }) => given.fact !== 'gap' || given.fromMmHg > given.toMmHg, {
    path: ['about', 'toMmHg'],
    message: 'gap-falling',
  });
export type FactContent = z.infer<typeof factContent>;

/** The last day of a fact that had no end, or a later one. */
export const factEndedContent = z.object({ fact: id, until: day }).strict();
export type FactEndedContent = z.infer<typeof factEndedContent>;
