import { randomBytes } from 'node:crypto';
import { access, link, open, rename, rm } from 'node:fs/promises';
import { type Refusal, refusal } from '@evenfall/clinical';
import { isUnreadable } from '../input/readInput.js';

/** A file that is to be made, and the option that named it. */
export type NewFile = { readonly field: string; readonly path: string; readonly bytes: Uint8Array };

/** Whether a path is free, as a refusal if it is not. */
export async function takenPath(field: string, path: string, isReplaced: boolean): Promise<Refusal[]> {
  if (isReplaced || !(await exists(path))) return [];
  return [refusal(field, 'repeated', 'new-file', path)];
}

/**
 * Writes a file whole or not at all. What is there is replaced only where that was asked for, also if it came to be there in between.
 * A refusal where it cannot be written.
 */
export async function writeNewFile({ field, path, bytes }: NewFile, isReplaced: boolean): Promise<Refusal[]> {
  // A name nobody can have put there before, made anew: a planted file or link is never written to.
  const part = `${path}.${randomBytes(6).toString('hex')}.part`;
  try {
    const file = await open(part, 'wx', 0o600);
    try {
      await file.write(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    if (isReplaced) await rename(part, path);
    else {
      await link(part, path);
      await rm(part);
    }
    return [];
  } catch (fault) {
    await rm(part, { force: true });
    if (isTaken(fault)) return [refusal(field, 'repeated', 'new-file', path)];
    if (isUnreadable(fault)) return [refusal(field, 'contradicts', 'writable-file', path)];
    throw fault;
  }
}

function isTaken(fault: unknown): boolean {
  return (fault as NodeJS.ErrnoException).code === 'EEXIST';
}

async function exists(path: string): Promise<boolean> {
  return await access(path).then(
    () => true,
    () => false,
  );
}
