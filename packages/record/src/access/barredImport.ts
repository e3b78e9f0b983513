import { type Refusal, refusal } from '@evenfall/clinical';
import { type Access, hasRole } from './access.js';
import type { AccountRole } from './accountRole.js';

const OF_RECORD: readonly AccountRole[] = ['owner'];
const REPORTED: readonly AccountRole[] = ['clinician', 'supervisor'];

/**
 * What of a file a signed-in account may not bring in: entries of an Evenfall stand in the names of those who made them,
 * so that only an owner, who answers for the accounts, may; values of others are kept in one's own name, by whoever may
 * keep the kind `reported`.
 *
 * @param adds how many entries the file would add, of either sort
 * @returns refusals at `/file`. Source: decision of this project.
 */
export function barredImport(
  adds: { readonly ofRecord: number; readonly reported: number },
  access: Access,
): Refusal[] {
  const barred = (count: number, allowed: readonly AccountRole[]) =>
    count === 0 || hasRole(access, ...allowed)
      ? []
      : [refusal('/file', 'contradicts', 'kind-of-role', null, { choices: [...allowed] })];
  return [...barred(adds.ofRecord, OF_RECORD), ...barred(adds.reported, REPORTED)];
}
