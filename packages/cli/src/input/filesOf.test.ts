import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { filesOf } from './filesOf.js';

let folder = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'evenfall-files-'));
  await mkdir(join(folder, 'b'));
  await mkdir(join(folder, 'empty'));
  for (const name of ['c.txt', 'B.txt', 'b/a.txt', '.hidden']) await writeFile(join(folder, name), '1\n');
});
afterAll(() => rm(folder, { recursive: true }));

test('one file, or standard input, is one answer; whether it exists is seen when it is read', async () => {
  expect(await filesOf(['-'])).toEqual({ kind: 'one', file: '-' });
  expect(await filesOf(['no-such'])).toEqual({ kind: 'one', file: 'no-such' });
});

test('a folder is several, in order of path, all the way down, without hidden files', async () => {
  expect(await filesOf([folder])).toEqual({
    kind: 'several',
    files: [join(folder, 'B.txt'), join(folder, 'b/a.txt'), join(folder, 'c.txt')],
    emptyFolders: [],
  });
});

test('several operands are put in order of path too', async () => {
  expect(await filesOf(['z', 'a', '-'])).toEqual({
    kind: 'several',
    files: ['-', 'a', 'z'],
    emptyFolders: [],
  });
});

test('a folder without files is told', async () => {
  const empty = join(folder, 'empty');
  expect(await filesOf([empty])).toEqual({ kind: 'several', files: [], emptyFolders: [empty] });
});
