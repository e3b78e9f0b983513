import { existsSync } from 'node:fs';
import { userInfo } from 'node:os';
import { DatabaseProblem } from '../problem.js';
import { findAccount } from './findAccount.js';

/** An account of the operating system. `uid` and `gid` are -1 on Windows. */
export type Account = {
  readonly name: string;
  readonly uid: number;
  readonly gid: number;
  readonly home: string | null;
};

/** Who runs PostgreSQL when this program runs as root: PostgreSQL itself refuses to. */
export type AccountPolicy =
  | { readonly kind: 'throwaway' }
  | { readonly kind: 'named'; readonly account: string };

/** The account PostgreSQL runs as. `isSelf` is false where root has to change to it. */
export type DatabaseAccount = Account & { readonly isSelf: boolean };

/** `nobody` on Debian and most Linux systems; used where the account has no line of its own. */
const NOBODY_ID = 65534;

/** The account this program runs as. */
export function ownAccount(): Account {
  const { username, uid, gid, homedir } = userInfo();
  return { name: username, uid, gid, home: homedir };
}

/**
 * Chooses the account for PostgreSQL and its data. An ordinary user is always its own; root names one for real
 * data, and gets an unprivileged one for throw-away data.
 *
 * Errors: `account-needed`, `account-unknown`, `account-is-root`, `account-other`.
 */
export async function databaseAccount(
  policy: AccountPolicy | null,
  self: Account = ownAccount(),
): Promise<DatabaseAccount> {
  if (self.uid !== 0) return ordinaryAccount(policy, self);
  if (policy === null) throw accountNeeded();
  if (policy.kind === 'throwaway') {
    const nobody = await findAccount('nobody');
    return { ...(nobody ?? { name: 'nobody', uid: NOBODY_ID, gid: NOBODY_ID }), home: null, isSelf: false };
  }
  const found = await findAccount(policy.account);
  if (found === null) {
    throw new DatabaseProblem('account-unknown', { field: '--account', got: policy.account });
  }
  if (found.uid === 0) {
    throw new DatabaseProblem('account-is-root', { field: '--account', got: policy.account });
  }
  return { ...found, home: homeThatExists(found.home), isSelf: false };
}

/** Accounts of services name a home that nobody ever made (`/nonexistent`); it is not for us to make it. */
function homeThatExists(home: string | null): string | null {
  return home !== null && existsSync(home) ? home : null;
}

function ordinaryAccount(policy: AccountPolicy | null, self: Account): DatabaseAccount {
  if (policy?.kind === 'named' && policy.account !== self.name) {
    throw new DatabaseProblem('account-other', {
      field: '--account',
      expected: self.name,
      got: policy.account,
      names: { account: self.name },
    });
  }
  return { ...self, isSelf: true };
}

function accountNeeded(): DatabaseProblem {
  const suggested = process.env.SUDO_USER;
  const account = suggested === undefined || suggested === '' || suggested === 'root' ? 'NAME' : suggested;
  return new DatabaseProblem('account-needed', {
    field: '--account',
    expected: 'the account that is to own the data',
    got: 'root',
    names: { account, type: `--account ${account}`, variable: `EVENFALL_ACCOUNT=${account}` },
  });
}

/** What `spawn` needs to run something as the account; nothing where it is this program's own. */
export function spawnAs(account: DatabaseAccount): { uid?: number; gid?: number } {
  return account.isSelf ? {} : { uid: account.uid, gid: account.gid };
}
