import { randomBytes } from 'node:crypto';
import { argon2id, argon2Verify } from 'hash-wasm';
import { SIGN_IN } from './figures.js';

/** One at a time: hashing takes the whole processor, and nobody may hold up the charts by guessing. */
let last: Promise<unknown> = Promise.resolve();
let waiting = 0;

/** Too many pass phrases wait to be checked. */
export class Busy extends Error {}

/**
 * The hash of a pass phrase or PIN, with its salt and parameters in the text (PHC string).
 *
 * Errors: `Busy`.
 */
export function hashOf(secret: string): Promise<string> {
  return inTurn(() =>
    argon2id({
      password: kept(secret),
      salt: randomBytes(16),
      memorySize: SIGN_IN.memoryKiB,
      iterations: SIGN_IN.passes,
      parallelism: SIGN_IN.lanes,
      hashLength: 32,
      outputType: 'encoded',
    }),
  );
}

let nobodys: Promise<string> | null = null;

/**
 * Whether a secret is the one that was hashed. With no hash (nobody has that name, no PIN was chosen) the answer is no and
 * takes as long.
 *
 * Errors: `Busy`.
 */
export async function isSecret(secret: string, hash: string | null): Promise<boolean> {
  nobodys ??= hashOf(randomBytes(16).toString('hex'));
  const against = hash ?? (await nobodys);
  const is = await inTurn(() => argon2Verify({ password: kept(secret), hash: against }));
  return is && hash !== null;
}

/** As it is typed on any keyboard: one form of each letter (Unicode NFKC). */
function kept(secret: string): string {
  return secret.normalize('NFKC');
}

function inTurn<T>(work: () => Promise<T>): Promise<T> {
  if (waiting >= SIGN_IN.waitingAtMost) return Promise.reject(new Busy());
  waiting += 1;
  const mine = last.then(work).finally(() => {
    waiting -= 1;
  });
  last = mine.catch(() => undefined);
  return mine;
}
