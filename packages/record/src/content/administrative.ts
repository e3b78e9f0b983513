import { z } from 'zod';

/** Which identifiers a person was entered with; their values live apart, in the identity. */
export const IDENTIFIERS = ['name', 'birthDate', 'number'] as const;

/** A person exists. Two identifiers or more. */
export const personContent = z.object({ identifiers: z.array(z.enum(IDENTIFIERS)).min(2) }).strict();

/** An identity was corrected: which parts, never their values. */
export const identityCorrectedContent = z.object({ changed: z.array(z.enum(IDENTIFIERS)).min(1) }).strict();

/** An identity was erased. The entries stay, without a name. */
export const identityErasedContent = z.object({ reason: z.string().min(1).max(500) }).strict();

/** The old value stays and is shown as an error. What it was an error about stands in `amends`. */
export const enteredInErrorContent = z.object({ note: z.string().max(1000).nullable() }).strict();

/** The protocol in force from now on; null for none. */
export const protocolChosenContent = z.object({ version: z.string().max(80).nullable() }).strict();
