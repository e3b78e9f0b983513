import { homedir } from 'node:os';
import { isAbsolute, posix, resolve, win32 } from 'node:path';
import type { DatabaseAccount } from '../account/account.js';

/** Whose records a folder holds; the invented clinic never shares a folder with a real one. */
export type Purpose = 'clinic' | 'demo';

export type FolderChoice = {
  readonly purpose: Purpose;
  readonly account: DatabaseAccount;
  /** Named by the caller (`--data`); wins over everything and is taken as it is. */
  readonly folder?: string | undefined;
  readonly env?: NodeJS.ProcessEnv;
  readonly platform?: NodeJS.Platform;
};

/**
 * Where the records of a purpose lie: the folder named by the caller, else `EVENFALL_DATA` (with `-demo` after
 * it for the demo), else the platform's usual place in the account's home, outside any checkout:
 *
 * - Linux and others: `$XDG_DATA_HOME/evenfall`, `~/.local/share/evenfall`
 * - macOS: `~/Library/Application Support/Evenfall`
 * - Windows: `%LOCALAPPDATA%\Evenfall`
 *
 * An account without a home (`nobody`, for root's demo) gets a place of the whole machine that it can reach:
 * `/var/lib/evenfall`, `/Library/Application Support/Evenfall`.
 */
export function dataFolder(choice: FolderChoice): string {
  const { purpose, account, env = process.env, platform = process.platform } = choice;
  if (choice.folder !== undefined && choice.folder !== '') return resolve(choice.folder);
  const suffix = purpose === 'demo' ? '-demo' : '';
  const named = env.EVENFALL_DATA;
  if (named !== undefined && named !== '') return `${resolve(named)}${suffix}`;
  return `${usualPlace(account, env, platform)}${suffix}`;
}

function usualPlace(account: DatabaseAccount, env: NodeJS.ProcessEnv, platform: NodeJS.Platform): string {
  const home = account.home;
  if (platform === 'win32') {
    return win32.join(env.LOCALAPPDATA ?? win32.join(home ?? homedir(), 'AppData', 'Local'), 'Evenfall');
  }
  if (platform === 'darwin') {
    return posix.join(home ?? '/', 'Library', 'Application Support', 'Evenfall');
  }
  // The variable speaks for whoever runs this program, not for an account that root runs PostgreSQL as.
  const xdg = account.isSelf ? env.XDG_DATA_HOME : undefined;
  if (xdg !== undefined && isAbsolute(xdg)) return posix.join(xdg, 'evenfall');
  return home === null ? '/var/lib/evenfall' : posix.join(home, '.local', 'share', 'evenfall');
}
