import { createHash, randomBytes, randomUUID } from 'node:crypto';
import { link, rename, rm } from 'node:fs/promises';
import { createServer, type RequestListener, request, type Server } from 'node:http';
import { join } from 'node:path';
import type { DatabaseAccount } from '../account/account.js';
import { giveSocket } from '../account/ownedFile.js';
import { DatabaseProblem, errorCode } from '../problem.js';

/** Who keeps a folder: its process, and the address of its pages once it serves any. */
export type Holder = { readonly pid: number; readonly address: string | null };

/** What a control socket says of itself: nobody there, its holder, or a holder that does not answer. */
export type Answer =
  | { readonly state: 'free' }
  | { readonly state: 'held'; readonly holder: Holder; readonly token: string | null }
  | { readonly state: 'silent' };

/** The socket by which other programs on this machine talk to the keeper; holding it is the folder's lock. */
export type ControlSocket = {
  readonly path: string;
  /** Answers everything but `GET /keeper`; until it is set, everything is answered 503. */
  serve(listener: RequestListener): void;
  /** Whether the path still leads here; false where another program has replaced it. */
  isOurs(): Promise<boolean>;
  close(): Promise<void>;
};

/** Tells which of two sockets at one path answered, also within one process. */
const TOKEN_HEADER = 'x-keeper';

const LONGEST_ANSWER_MS = 2_000;
const ATTEMPTS = 5;

/** Where the control socket of a socket folder lies; a named pipe on Windows. */
export function controlSocketPath(socketFolder: string): string {
  if (process.platform !== 'win32') return join(socketFolder, 'evenfall.sock');
  return `\\\\.\\pipe\\evenfall-${createHash('sha256').update(socketFolder).digest('hex').slice(0, 20)}`;
}

/**
 * Takes the control socket, which the system takes away with the process, however that ends. A socket left by
 * a killed one is told by that nobody answers at it, and replaced.
 *
 * Errors: `folder-in-use` with the process and address of the holder, where it answers.
 */
export async function takeControlSocket(
  path: string,
  account: DatabaseAccount,
  holder: () => Holder,
): Promise<ControlSocket> {
  const token = randomUUID();
  let listener: RequestListener = (_request, response) => void response.writeHead(503).end();
  const server = createServer((incoming, response) => {
    if (incoming.method !== 'GET' || incoming.url !== '/keeper') return listener(incoming, response);
    response.writeHead(200, { 'content-type': 'application/json', [TOKEN_HEADER]: token });
    response.end(JSON.stringify(holder()));
  });
  for (let attempt = 1; !(await listens(server, path)); attempt += 1) {
    const answer = await askKeeper(path);
    if (answer.state !== 'free' || attempt === ATTEMPTS) throw inUse(path, answer);
    await removeStale(path);
  }
  await giveSocket(path, account);
  const isOurs = async () => {
    const answer = await askKeeper(path);
    return answer.state === 'held' && answer.token === token;
  };
  if (!(await isOurs())) {
    const answer = await askKeeper(path);
    await closeServer(server);
    throw inUse(path, answer);
  }
  return {
    path,
    serve: (next) => {
      listener = next;
    },
    isOurs,
    close: () => closeServer(server),
  };
}

/** Asks whoever holds the socket who it is. */
export function askKeeper(path: string, longestMs = LONGEST_ANSWER_MS): Promise<Answer> {
  return new Promise((resolve) => {
    const asking = request(
      { socketPath: path, path: '/keeper', agent: false, timeout: longestMs },
      (response) => {
        let text = '';
        response.setEncoding('utf8');
        response.on('data', (part: string) => {
          text += part;
        });
        response.on('end', () => resolve(answerIn(text, response.headers[TOKEN_HEADER])));
        response.on('error', () => resolve({ state: 'silent' }));
      },
    );
    asking.on('timeout', () => asking.destroy(new Error('no answer')));
    asking.on('error', (error) => {
      resolve({ state: ['ECONNREFUSED', 'ENOENT'].includes(errorCode(error)) ? 'free' : 'silent' });
    });
    asking.end();
  });
}

function answerIn(text: string, token: string | string[] | undefined): Answer {
  try {
    const { pid, address } = JSON.parse(text) as { pid?: unknown; address?: unknown };
    if (typeof pid !== 'number') return { state: 'silent' };
    const holder = { pid, address: typeof address === 'string' ? address : null };
    return { state: 'held', holder, token: typeof token === 'string' ? token : null };
  } catch {
    return { state: 'silent' };
  }
}

function listens(server: Server, path: string): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const failed = (error: Error) => {
      if (errorCode(error) === 'EADDRINUSE') resolve(false);
      else reject(error);
    };
    server.once('error', failed);
    server.listen(path, () => {
      server.off('error', failed);
      resolve(true);
    });
  });
}

/**
 * Between asking and removing, another program may have taken the path. So the socket is first moved aside and
 * asked again there; a living one is put back.
 */
async function removeStale(path: string): Promise<void> {
  const aside = `${path}.${randomBytes(3).toString('hex')}`;
  try {
    await rename(path, aside);
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return; // another program removed it first
    throw error;
  }
  const answer = await askKeeper(aside);
  if (answer.state !== 'free') await link(aside, path).catch(() => undefined);
  await rm(aside, { force: true });
  if (answer.state !== 'free') throw inUse(path, answer);
}

/** The refusal a second keeper of a folder gets. */
export function inUse(path: string, answer: Answer): DatabaseProblem {
  const held = answer.state === 'held' ? answer.holder : null;
  return new DatabaseProblem('folder-in-use', {
    field: 'EVENFALL_DATA',
    got: path,
    figures: held === null ? {} : { pid: held.pid },
    names: held === null || held.address === null ? { path } : { path, address: held.address },
  });
}

function closeServer(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}
