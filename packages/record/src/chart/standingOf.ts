import type { AccountRole } from '../access/accountRole.js';
import type { StoredEntry } from '../entry/entry.js';
import type { Role } from '../entry/role.js';
import type { Agent } from '../person/agent.js';

/** Who acts, and what their account says that they are; null or absent where they have none. */
export type AgentStanding = Agent & { readonly standing?: AccountRole | null };

/** What somebody is called for an act. */
export type ActStanding = Role | AccountRole;

/**
 * In what standing somebody did something in a chart. Learners and clinicians act in one kept role, `observer`: what was
 * signed says itself which of them it was, of anything else their account does; in a class and in practice everybody is
 * an observer.
 *
 * @returns null where nobody knows
 */
export function standingOf(entry: StoredEntry, agents: readonly AgentStanding[]): ActStanding | null {
  if (entry.role !== 'observer') return entry.role;
  if (entry.book !== 'care') return 'observer';
  const standing = agents.find(({ id }) => id === entry.agent)?.standing ?? null;
  if (entry.kind !== 'round' && entry.kind !== 'series') return standing;
  if (entry.content.status === 'preliminary') return 'learner';
  return standing === null || standing === 'learner' ? 'clinician' : standing;
}

/** The first of an account's roles by what somebody does at the bedside. */
export function standingByRoles(roles: readonly AccountRole[]): AccountRole | null {
  return (
    (['clinician', 'supervisor', 'learner', 'owner'] as const).find((one) => roles.includes(one)) ?? null
  );
}
