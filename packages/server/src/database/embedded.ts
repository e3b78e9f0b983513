import { randomBytes } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { type AccountPolicy, type DatabaseAccount, databaseAccount } from './account/account.js';
import { writeOwned } from './account/ownedFile.js';
import { findBinaries } from './binaries/findBinaries.js';
import type { Endpoint } from './cluster/endpoint.js';
import { dataFolder, type Purpose } from './folder/defaultFolder.js';
import { newWith, requireRecord } from './folder/existingRecord.js';
import type { FolderLayout } from './folder/layout.js';
import { prepareFolder } from './folder/prepareFolder.js';
import { socketFolder } from './folder/socketFolder.js';
import { type Keeper, keep } from './keeper/keeper.js';

export type EmbeddedOptions = {
  /** Reads `EVENFALL_DATA`, `EVENFALL_PG_BIN` and `EVENFALL_ACCOUNT`; the default is the process's own. */
  readonly env?: NodeJS.ProcessEnv;
  /** A clinic's records (the default) or the invented one's; each has its own folder. */
  readonly purpose?: Purpose;
  /** The data folder; wins over `EVENFALL_DATA`. */
  readonly folder?: string;
  /** Who runs PostgreSQL where this program runs as root; see `accountPolicy` for the default. */
  readonly account?: AccountPolicy;
  /** Only a record that is there already: a folder without one is refused. */
  readonly existing?: boolean;
  /** How the server is reached; the default is a socket, and the loopback on Windows. */
  readonly endpoint?: Endpoint['kind'];
};

/** The named account if there is one, else an unprivileged one for the demo, else nothing: then root is refused. */
export function accountPolicy(options: EmbeddedOptions): AccountPolicy | null {
  if (options.account !== undefined) return options.account;
  const named = (options.env ?? process.env).EVENFALL_ACCOUNT;
  if (named !== undefined && named !== '') return { kind: 'named', account: named };
  return options.purpose === 'demo' ? { kind: 'throwaway' } : null;
}

/** Finds account, folder and PostgreSQL, and keeps the folder. Errors: `DatabaseProblem`. */
export async function keepFolder(
  options: EmbeddedOptions & { readonly onLost: (problem: unknown) => void },
): Promise<Keeper> {
  const { env = process.env, purpose = 'clinic' } = options;
  const account = await databaseAccount(accountPolicy(options));
  const root = dataFolder({ purpose, account, env, folder: options.folder });
  if (options.existing === true) await requireRecord(root);
  const made = await newWith(root);
  const layout = await prepareFolder(root, purpose, account);
  const binaries = await findBinaries(account, env);
  const sockets = await socketFolder(layout, account);
  const kind = options.endpoint ?? (process.platform === 'win32' ? 'loopback' : 'socket');
  const endpoint: Endpoint = kind === 'socket' ? { kind, folder: sockets } : await loopback(layout, account);
  return keep({ layout, account, binaries, endpoint, socketFolder: sockets, made, onLost: options.onLost });
}

async function loopback(layout: FolderLayout, account: DatabaseAccount): Promise<Endpoint> {
  const kept = (await readFile(layout.password, 'utf8').catch(() => '')).trim();
  const password = kept === '' ? randomBytes(24).toString('base64url') : kept;
  if (kept === '') await writeOwned(layout.password, `${password}\n`, account);
  return { kind: 'loopback', port: await freePort(), password };
}

/** A port nothing listens on now. Another program may still take it first; the start then says so. */
export function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address !== null ? address.port : 0));
    });
  });
}
