import { mkdir, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { makeTestFolder, removeTestFolder } from '../testing/testFolder.js';
import { newWith, removeNew, requireRecord } from './existingRecord.js';

async function outer(): Promise<string> {
  const folder = await makeTestFolder();
  onTestFinished(() => removeTestFolder(folder));
  return folder;
}

/** What a record leaves in its folder, as far as a look from outside goes. */
async function recordIn(root: string): Promise<void> {
  await mkdir(join(root, 'pg'), { recursive: true });
  await writeFile(join(root, 'evenfall.json'), '{}');
}

test('a folder without a record is refused by name, whatever else is or is not there', async () => {
  const folder = await outer();
  await recordIn(join(folder, 'here'));
  await mkdir(join(folder, 'empty'));
  await mkdir(join(folder, 'label'));
  await writeFile(join(folder, 'label', 'evenfall.json'), '{}');
  await writeFile(join(folder, 'file'), '');
  await requireRecord(join(folder, 'here'));
  for (const name of ['empty', 'label', 'nowhere', 'nowhere/at/all', 'file', 'file/below'].map((one) =>
    join(folder, one),
  )) {
    await expect(requireRecord(name), name).rejects.toMatchObject({ code: 'no-record', got: name });
  }
  expect((await readdir(folder)).sort()).toEqual(['empty', 'file', 'here', 'label']);
});

test('what a new record would add is its topmost new folder, its parts in an empty one, nothing where one is', async () => {
  const folder = await outer();
  expect(await newWith(join(folder, 'a', 'b', 'data'))).toEqual([join(folder, 'a')]);
  expect(await newWith(join(folder, 'data'))).toEqual([join(folder, 'data')]);
  const parts = await newWith(folder);
  expect(parts).toContain(join(folder, 'pg'));
  await recordIn(folder);
  await writeFile(join(folder, '.DS_Store'), '');
  await removeNew(parts);
  expect(await readdir(folder)).toEqual(['.DS_Store']);
  await recordIn(folder);
  expect(await newWith(folder)).toEqual([]);
  await writeFile(join(folder, 'file'), '');
  expect(await newWith(join(folder, 'file', 'below'))).toEqual([]);
});
