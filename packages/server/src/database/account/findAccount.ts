import { execFile } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { promisify } from 'node:util';
import type { Account } from './account.js';

const run = promisify(execFile);

/** Names the usual tools accept; anything else is no account, and never reaches a command line. */
const ACCOUNT_NAME = /^[A-Za-z_][A-Za-z0-9_.-]{0,63}\$?$/;

/** Looks an account up by name: the password file, then the name service, then `id`. Null where unknown. */
export async function findAccount(name: string): Promise<Account | null> {
  if (!ACCOUNT_NAME.test(name)) return null;
  const local = await readFile('/etc/passwd', 'utf8').catch(() => '');
  return accountIn(local, name) ?? accountIn(await answer('getent', ['passwd', name]), name) ?? askId(name);
}

/** The account's line of a password file; null where it has none. */
export function accountIn(passwd: string, name: string): Account | null {
  for (const line of passwd.split('\n')) {
    const [account, , uid, gid, , home] = line.split(':');
    if (account !== name || !isId(uid) || !isId(gid)) continue;
    return {
      name,
      uid: Number(uid),
      gid: Number(gid),
      home: home === undefined || home === '' ? null : home,
    };
  }
  return null;
}

/** macOS keeps its people in a directory service that neither of the above reads. */
async function askId(name: string): Promise<Account | null> {
  const [uid, gid] = [(await answer('id', ['-u', name])).trim(), (await answer('id', ['-g', name])).trim()];
  if (!isId(uid) || !isId(gid)) return null;
  const home = await answer('dscl', ['.', '-read', `/Users/${name}`, 'NFSHomeDirectory']);
  return {
    name,
    uid: Number(uid),
    gid: Number(gid),
    home: /NFSHomeDirectory:\s*(\/.+)/.exec(home)?.[1] ?? null,
  };
}

async function answer(program: string, args: readonly string[]): Promise<string> {
  return run(program, [...args]).then(
    ({ stdout }) => stdout,
    () => '',
  );
}

function isId(text: string | undefined): text is string {
  return text !== undefined && /^\d+$/.test(text);
}
