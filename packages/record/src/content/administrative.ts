import { z } from 'zod';
import { CLASS_IDENTIFIERS } from '../person/classIdentity.js';

/** Which identifiers a person was entered with; their values live apart, in the identity. */
export const IDENTIFIERS = ['name', 'birthDate', 'number'] as const;

/** A person exists, by two identifiers or more: schema 1, before the class book had people of its own. */
export const firstPersonContent = z.object({ identifiers: z.array(z.enum(IDENTIFIERS)).min(2) }).strict();

/** A person exists: by two identifiers or more, or in the class book by a pseudonym and nothing else. */
export const personContent = z
  .object({ identifiers: z.array(z.enum([...IDENTIFIERS, ...CLASS_IDENTIFIERS])) })
  .strict()
  .refine(({ identifiers }) => isPseudonym(identifiers) || isTwoOrMore(identifiers), {
    path: ['identifiers'],
    message: 'two-identifiers-or-pseudonym',
  });

/** Whether a person is known by a pseudonym and nothing else. */
export function isPseudonym(identifiers: readonly string[]): boolean {
  return identifiers.join() === CLASS_IDENTIFIERS.join();
}

function isTwoOrMore(identifiers: readonly string[]): boolean {
  const named: readonly string[] = IDENTIFIERS;
  return identifiers.length > 1 && identifiers.every((one) => named.includes(one));
}

/** An identity was corrected: which parts, never their values. */
export const identityCorrectedContent = z.object({ changed: z.array(z.enum(IDENTIFIERS)).min(1) }).strict();

/** An identity was erased. The entries stay, without a name. */
export const identityErasedContent = z.object({ reason: z.string().min(1).max(500) }).strict();

/** The old value stays and is shown as an error. What it was an error about stands in `amends`. */
export const enteredInErrorContent = z.object({ note: z.string().max(1000).nullable() }).strict();

/** The protocol in force from now on; null for none. */
export const protocolChosenContent = z.object({ version: z.string().max(80).nullable() }).strict();
