import { z } from 'zod';

/**
 * What an account may do. `owner` makes and closes accounts, chooses the protocol and erases identities; `clinician` takes
 * and charts signs; `supervisor` countersigns, teaches a class and chooses the protocol; `learner` takes signs that stay
 * preliminary. Source: decision of this project.
 */
export const ACCOUNT_ROLES = ['owner', 'clinician', 'supervisor', 'learner'] as const;
export const accountRole = z.enum(ACCOUNT_ROLES);
export type AccountRole = z.infer<typeof accountRole>;

/** At least one role, each once. */
export const accountRoles = z
  .array(accountRole)
  .min(1)
  .refine((roles) => new Set(roles).size === roles.length, { message: 'each-role-once' });
