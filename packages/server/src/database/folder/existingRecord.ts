import { access, rm } from 'node:fs/promises';
import { dirname } from 'node:path';
import { nearestExisting } from '../account/reach.js';
import { DatabaseProblem, errorCode } from '../problem.js';
import { folderLayout } from './layout.js';

/**
 * Refuses a folder that holds no record: a mistyped name must not make one. A folder that may not be looked into is left
 * to be refused by its own name.
 *
 * Errors: `no-record`.
 */
export async function requireRecord(root: string): Promise<void> {
  const { label, cluster } = folderLayout(root);
  for (const part of [label, cluster]) {
    const code = await access(part).then(() => '', errorCode);
    if (code !== 'ENOENT' && code !== 'ENOTDIR') continue;
    throw new DatabaseProblem('no-record', { field: 'EVENFALL_DATA', got: root, names: { folder: root } });
  }
}

/** What a record made in a folder would add to the machine: the topmost folder that is new, or the parts within one. */
export async function newWith(root: string): Promise<readonly string[]> {
  const existing = await nearestExisting(root).catch(() => null);
  if (existing === null) return []; // making it will be refused, with a reason
  if (existing !== root) return [topmostNew(root, existing)];
  const { root: _, ...parts } = folderLayout(root);
  const there = await Promise.all(Object.values(parts).map((part) => access(part).then(() => true, () => false))); // biome-ignore format: one thought
  return there.includes(true) ? [] : Object.values(parts);
}

function topmostNew(path: string, existing: string): string {
  return dirname(path) === existing ? path : topmostNew(dirname(path), existing);
}

/** Takes away what {@link newWith} said, once nothing of it is in use. */
export async function removeNew(paths: readonly string[]): Promise<void> {
  for (const path of paths) await rm(path, { recursive: true, force: true, maxRetries: 5 });
}
