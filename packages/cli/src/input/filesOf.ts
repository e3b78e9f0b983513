import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { STANDARD_INPUT } from './readInput.js';

/**
 * What was named on the command line, as files. One file (or `-`) is one answer; several, or a folder, are one
 * answer each, in order of path (by code unit, so that every machine has the same order).
 */
export type Named =
  | { readonly kind: 'one'; readonly file: string }
  | { readonly kind: 'several'; readonly files: readonly string[]; readonly emptyFolders: readonly string[] };

/** Looks into folders, all the way down; files whose name starts with a dot are left out. */
export async function filesOf(operands: readonly string[]): Promise<Named> {
  const [only] = operands;
  const folders = await Promise.all(operands.map(isFolder));
  if (operands.length === 1 && only !== undefined && folders[0] === false) return { kind: 'one', file: only };
  const files: string[] = [];
  const emptyFolders: string[] = [];
  for (const [at, operand] of operands.entries()) {
    const within = folders[at] === true ? await filesIn(operand) : [operand];
    if (within.length === 0) emptyFolders.push(operand);
    files.push(...within);
  }
  return { kind: 'several', files: files.sort(), emptyFolders };
}

async function isFolder(name: string): Promise<boolean> {
  if (name === STANDARD_INPUT) return false;
  // What cannot be looked at is no folder; reading it then says why.
  return stat(name).then(
    (found) => found.isDirectory(),
    () => false,
  );
}

async function filesIn(folder: string): Promise<string[]> {
  const files: string[] = [];
  for (const entry of await readdir(folder, { withFileTypes: true })) {
    if (entry.name.startsWith('.')) continue;
    const path = join(folder, entry.name);
    const isWithin = entry.isSymbolicLink() ? await isFolder(path) : entry.isDirectory();
    if (isWithin) files.push(...(await filesIn(path)));
    else files.push(path);
  }
  return files;
}
