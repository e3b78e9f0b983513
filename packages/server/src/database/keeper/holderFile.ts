import { readFile, rm } from 'node:fs/promises';
import type { DatabaseAccount } from '../account/account.js';
import { writeOwned } from '../account/ownedFile.js';
import { folderLayout } from '../folder/layout.js';
import { askKeeper, type Holder } from './controlSocket.js';

/** What the folder says of its keeper. It is a hint where to ask, never a lock: it outlives a killed keeper. */
export type HolderNote = Holder & { readonly controlSocket: string };

export async function writeHolder(path: string, note: HolderNote, account: DatabaseAccount): Promise<void> {
  await writeOwned(path, `${JSON.stringify(note)}\n`, account);
}

export async function readHolder(path: string): Promise<HolderNote | null> {
  try {
    const note = JSON.parse(await readFile(path, 'utf8')) as Partial<HolderNote>;
    if (typeof note.pid !== 'number' || typeof note.controlSocket !== 'string') return null;
    return { pid: note.pid, address: note.address ?? null, controlSocket: note.controlSocket };
  } catch {
    return null;
  }
}

export async function removeHolder(path: string): Promise<void> {
  await rm(path, { force: true });
}

/** The living keeper of a data folder, for a program that wants to go through it; null where there is none. */
export async function findKeeper(dataFolder: string): Promise<HolderNote | null> {
  const note = await readHolder(folderLayout(dataFolder).holder);
  if (note === null) return null;
  const answer = await askKeeper(note.controlSocket);
  if (answer.state === 'free') return null;
  return answer.state === 'held' ? { ...answer.holder, controlSocket: note.controlSocket } : note;
}
