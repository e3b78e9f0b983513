import { type Refusal, refusal } from '@evenfall/clinical';
import type { KindName } from '../content/kinds.js';
import type { EntryFrame } from '../entry/entry.js';
import type { Role } from '../entry/role.js';
import { type Access, hasRole } from './access.js';
import type { AccountRole } from './accountRole.js';

type About = Pick<EntryFrame, 'kind' | 'book' | 'agent' | 'role' | 'content'>;

/** Kinds that only some accounts may make; the others may be made by whoever takes signs. */
const RESERVED: Readonly<Partial<Record<KindName, readonly AccountRole[]>>> = {
  'protocol-chosen': ['owner', 'supervisor'],
  'identity-erased': ['owner'],
  'identity-corrected': ['owner', 'clinician', 'supervisor'],
  countersigned: ['supervisor'],
  equipment: ['owner', 'clinician', 'supervisor'],
  'equipment-ended': ['owner', 'clinician', 'supervisor'],
  'gauge-logged': ['owner', 'clinician', 'supervisor'],
  reported: ['clinician', 'supervisor'],
  'series-decided': ['clinician', 'supervisor'],
  'class-session': ['supervisor'],
  'class-session-ended': ['supervisor'],
  'kept-by-agreement': ['supervisor'],
  scenario: ['clinician', 'supervisor'],
};

/** Whoever takes signs of people. */
const TAKING: readonly AccountRole[] = ['clinician', 'supervisor', 'learner'];

/** Roles of whoever answers for others. */
const SUPERVISING: readonly Role[] = ['supervisor', 'teacher', 'assessor'];

/**
 * What a signed-in account may not keep: an entry in the name of somebody else, of a kind or in a role that is not theirs,
 * and, for whoever is only learning, a round or a series of a patient that is not preliminary. In the class book a reading may name
 * any agent without an account of their own, for learners share a device; whoever begins, ends, keeps or supervises does
 * so in their own name there too.
 *
 * @param hasAccount whether an agent signs in themselves, or did
 * @returns refusals by place: `/agent`, `/kind`, `/role`, `/content/status`. Source: decision of this project.
 */
export function barredEntry(
  { kind, book, agent, role, content }: About,
  access: Access,
  hasAccount: (agent: string) => boolean,
): Refusal[] {
  const isOwn = agent === access.agent;
  const isShared = book === 'class' && RESERVED[kind] === undefined && !SUPERVISING.includes(role);
  if (!isOwn && (!isShared || hasAccount(agent)))
    return [refusal('/agent', 'contradicts', 'agent-signed-in', agent)];
  const allowed = RESERVED[kind] ?? TAKING;
  if (!hasRole(access, ...allowed))
    return [refusal('/kind', 'contradicts', 'kind-of-role', kind, { choices: [...allowed] })];
  if (SUPERVISING.includes(role) && !hasRole(access, 'supervisor'))
    return [refusal('/role', 'contradicts', 'role-of-account', role, { choices: ['supervisor'] })];
  const isSigning = kind === 'round' || kind === 'series';
  if (isLearning(access) && book === 'care' && isSigning && content.status !== 'preliminary')
    return [refusal('/content/status', 'contradicts', 'preliminary-of-learner', content.status)];
  return [];
}

/**
 * What whoever is only learning may not correct of a patient: what somebody else charted, which would then stand unchecked
 * in its place.
 *
 * @param agentOf who charted a kept entry; undefined for one that comes with this one, or is nobody's
 * @returns a refusal at `/amends/entry`. Source: decision of this project.
 */
export function barredAmending(
  { book, amends }: Pick<EntryFrame, 'book' | 'amends'>,
  access: Access,
  agentOf: (entry: string) => string | undefined,
): Refusal[] {
  if (amends === null || book !== 'care' || !isLearning(access)) return [];
  return (agentOf(amends.entry) ?? access.agent) === access.agent
    ? []
    : [refusal('/amends/entry', 'contradicts', 'own-entry-of-learner', amends.entry)];
}

function isLearning(access: Access): boolean {
  return !hasRole(access, 'clinician', 'supervisor');
}
