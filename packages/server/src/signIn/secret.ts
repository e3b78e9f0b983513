import { randomBytes } from 'node:crypto';
import { argon2id, argon2Verify } from 'hash-wasm';
import { SIGN_IN } from './figures.js';

/** Whose place in the queue it is: of somebody who is signed in on their device, or of whoever asks from outside. */
export type Lane = 'known' | 'stranger';

/** One at a time: hashing takes the whole processor, and nobody may hold up the charts by guessing. */
let last: Promise<unknown> = Promise.resolve();
const waiting: Record<Lane, number> = { known: 0, stranger: 0 };

/** Too many pass phrases wait to be checked. */
export class Busy extends Error {}

/**
 * Does what takes a secret when its turn comes. Strangers who guess take no place of those who are signed in. `work` may
 * not wait for another turn.
 *
 * Errors: `Busy`, before any of it was done: what counts tries stands in `work`.
 */
export function inTurn<T>(lane: Lane, work: () => Promise<T>): Promise<T> {
  if (waiting[lane] >= SIGN_IN.waitingAtMost) return Promise.reject(new Busy());
  waiting[lane] += 1;
  const mine = last.then(work).finally(() => {
    waiting[lane] -= 1;
  });
  last = mine.catch(() => undefined);
  return mine;
}

/**
 * The hash of a pass phrase or PIN, with its salt and parameters in the text (PHC string).
 *
 * Errors: `Busy`.
 */
export function hashOf(secret: string): Promise<string> {
  return inTurn('known', () => hash(secret));
}

function hash(secret: string): Promise<string> {
  return argon2id({
    password: kept(secret),
    salt: randomBytes(16),
    memorySize: SIGN_IN.memoryKiB,
    iterations: SIGN_IN.passes,
    parallelism: SIGN_IN.lanes,
    hashLength: 32,
    outputType: 'encoded',
  });
}

let nobodys: Promise<string> | null = null;

/**
 * Whether a secret is the one that was hashed. With no hash (nobody has that name, no PIN was chosen) the answer is no and
 * takes as long. Called in turn.
 */
export async function isSecret(secret: string, hashed: string | null): Promise<boolean> {
  nobodys ??= hash(randomBytes(16).toString('hex'));
  const against = hashed ?? (await nobodys);
  const is = await argon2Verify({ password: kept(secret), hash: against });
  return is && hashed !== null;
}

/** As it is typed on any keyboard: one form of each letter (Unicode NFKC). */
function kept(secret: string): string {
  return secret.normalize('NFKC');
}
