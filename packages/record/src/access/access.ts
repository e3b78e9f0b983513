import type { AccountRole } from './accountRole.js';

/** Who acts, as the sign-in says: the agent that their entries name, and what they may do. */
export type Access = { readonly agent: string; readonly roles: readonly AccountRole[] };

/** Whether one of the roles is there. */
export function hasRole({ roles }: Access, ...wanted: readonly AccountRole[]): boolean {
  return wanted.some((role) => roles.includes(role));
}
