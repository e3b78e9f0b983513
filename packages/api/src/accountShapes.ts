import { accountRole, accountRoles, agent, id } from '@evenfall/record';
import { z } from 'zod';

/** What is typed to sign in: a short name, not that of anybody in the charts. Letters, digits, `.`, `-` and `_`. */
export const signInName = z
  .string()
  .trim()
  .min(2)
  .max(64)
  .refine((name) => /^[\p{L}\p{N}._-]*$/u.test(name), { message: 'sign-in-name' });

/** A secret as it is typed; how long it may be is said where one is chosen. */
const secret = z.string().min(1).max(512);

/** Whoever may act on a device: who acts now, or whose pass phrase was given there not too long ago. */
export const signedIn = z.object({
  account: id,
  agent,
  signIn: z.string(),
  roles: z.array(accountRole),
  /** False while the first pass phrase, which somebody else chose, still stands: another is chosen before anything else. */
  isOwnPhrase: z.boolean(),
  hasPin: z.boolean(),
});
export type SignedInHere = z.infer<typeof signedIn>;

export const signInState = z.object({
  /** False where there are no accounts: everybody at this machine may act, and says who they are. */
  needed: z.boolean(),
  /** Who acts; null for nobody, or while the device is locked. */
  current: signedIn.nullable(),
  /** Who may take the device over by PIN. */
  here: z.array(signedIn.pick({ account: true, agent: true, hasPin: true })),
  /** Of the accounts that were asked about, those that are closed. */
  closed: z.array(id),
  /** Minutes without a request after which a PIN is asked for. */
  idleMinutes: z.number(),
  /** Hours after which a pass phrase is asked for again; a device without network opens to whoever was signed in no longer than that. */
  wholeHours: z.number(),
});
export type SignInState = z.infer<typeof signInState>;

/** Room for every account that a device could have kept something of. */
const MOST_KEPT = 50;

/** Accounts of which a device keeps something, by id, with commas between: it asks which of them are closed. */
export const keptAccounts = z.object({
  kept: z
    .string()
    .regex(new RegExp(`^[0-9a-f-]{36}(,[0-9a-f-]{36}){0,${MOST_KEPT - 1}}$`))
    .optional(),
});

export const signInWith = z
  .object({ signIn: z.string().trim().min(1).max(200), passPhrase: secret })
  .strict();
export const takeOverWith = z.object({ account: id, pin: secret }).strict();
export const ownPassPhrase = z.object({ old: secret, passPhrase: secret }).strict();
export const ownPin = z.object({ passPhrase: secret, pin: secret.nullable() }).strict();
export const nothing = z.object({}).strict();

export const account = z.object({
  id,
  agent,
  signIn: z.string(),
  roles: z.array(accountRole),
  isOwnPhrase: z.boolean(),
  hasPin: z.boolean(),
  madeAt: z.iso.datetime(),
  closedAt: z.iso.datetime().nullable(),
});
export type AccountRow = z.infer<typeof account>;

export const newAccount = z
  .object({ id, agent, signIn: signInName, roles: accountRoles, passPhrase: secret })
  .strict();
export const accountChange = z
  .object({ roles: accountRoles.optional(), isClosed: z.boolean().optional(), passPhrase: secret.optional() })
  .strict();
