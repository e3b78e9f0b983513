import { existsSync } from 'node:fs';
import { rm, stat } from 'node:fs/promises';
import { userInfo } from 'node:os';
import { dirname, join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { databaseAccount } from '../account/account.js';
import { makeOwnedFolder } from '../account/ownedFile.js';
import { findBinaries } from '../binaries/findBinaries.js';
import { type OpenDatabase, openDatabase } from '../openDatabase.js';
import { buildChildKeeper, type ChildKeeper, killChild, startChildKeeper } from '../testing/childKeeper.js';
import { makeTestFolder, removeTestFolder } from '../testing/testFolder.js';
import { findKeeper } from './holderFile.js';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 }); // a cluster takes a second to make, on a busy machine several

let programFolder: string;
let program: string;
let env: { EVENFALL_PG_BIN: string };
let outer: string;
let folder: string;
const children: ChildKeeper[] = [];

beforeAll(async () => {
  programFolder = await makeTestFolder();
  program = await buildChildKeeper(programFolder);
  const account = await databaseAccount({ kind: 'throwaway' });
  env = { EVENFALL_PG_BIN: dirname((await findBinaries(account, {})).postgres) };
});
afterAll(() => removeTestFolder(programFolder));
beforeEach(async () => {
  outer = await makeTestFolder();
  folder = join(outer, 'data');
});
afterEach(async () => {
  for (const child of children.splice(0)) await killChild(child);
  // What a killed child left running is stopped by the next to keep the folder.
  if (existsSync(join(folder, 'pg', 'postmaster.pid'))) await (await open().catch(() => null))?.close();
  await removeTestFolder(outer);
});

const open = (): Promise<OpenDatabase> => openDatabase({ env, folder, account: { kind: 'throwaway' } });

async function startChild(rows = 0, as: Parameters<typeof startChildKeeper>[2] = null): Promise<ChildKeeper> {
  const child = await startChildKeeper(program, { folder, env, rows }, as);
  children.push(child);
  return child;
}

async function rowsIn(database: OpenDatabase): Promise<number> {
  const { rows } = await database.pool.query<{ n: number }>('select count(*)::int as n from kept');
  return rows[0]?.n ?? -1;
}

function postgresOf(child: ChildKeeper): number {
  if (child.answer.state !== 'keeping') throw new Error(`the child was refused: ${child.answer.code}`);
  return child.answer.postgresPid;
}

test('a second program on the folder is refused with the number of the first', async () => {
  const database = await open();
  expect((await startChild()).answer).toEqual({
    state: 'refused',
    code: 'folder-in-use',
    figures: { pid: process.pid },
  });
  await expect(open()).rejects.toMatchObject({ code: 'folder-in-use', figures: { pid: process.pid } });
  await database.keeper?.setAddress('http://127.0.0.1:4000');
  await expect(open()).rejects.toMatchObject({ names: { address: 'http://127.0.0.1:4000' } });
  expect(await findKeeper(folder)).toMatchObject({ pid: process.pid, address: 'http://127.0.0.1:4000' });
  await database.close();
  expect(await findKeeper(folder)).toBeNull();
});

test('when only Node was killed, its server is found, stopped and started again with every row', async () => {
  const child = await startChild(5);
  const orphan = postgresOf(child);
  await killChild(child);
  process.kill(orphan, 0); // it does run on
  const database = await open();
  expect(await rowsIn(database)).toBe(5);
  expect(database.keeper?.postgresPid()).not.toBe(orphan);
  await database.close();
});

test('when everything was killed, the next start needs no hand and every row is there', async () => {
  const child = await startChild(5);
  process.kill(-postgresOf(child), 'SIGKILL');
  await killChild(child);
  const database = await open();
  expect(await rowsIn(database)).toBe(5);
  await database.close();
});

test('a server that is killed alone is started again under the same keeper', async () => {
  const database = await open();
  const first = database.keeper?.postgresPid() ?? 0;
  await database.pool.query('create table kept (n int)');
  process.kill(first, 'SIGKILL');
  const deadline = Date.now() + 10_000;
  while (database.keeper?.postgresPid() === first && Date.now() < deadline) await sleep(50);
  expect(await rowsIn(database)).toBe(0);
  expect(database.keeper?.postgresPid()).not.toBe(first);
  expect((await startChild()).answer).toMatchObject({ state: 'refused', code: 'folder-in-use' });
  await database.close();
});

test('when a worker crashes, the server throws everybody out and the keeper marks it again', async () => {
  const database = await open();
  const { rows } = await database.pool.query<{ pid: number }>('select pg_backend_pid() as pid');
  process.kill(rows[0]?.pid ?? 0, 'SIGKILL');
  const kept = () =>
    database.pool
      .query("select count(*)::int as marks from pg_locks where locktype = 'advisory' and granted")
      .then(({ rows: [row] }) => row.marks as number)
      .catch(() => -1);
  await sleep(100);
  for (const deadline = Date.now() + 10_000; (await kept()) !== 1 && Date.now() < deadline; await sleep(50));
  expect(await kept()).toBe(1);
  await database.close();
});

test('a keeper whose sockets lie elsewhere, for another temp folder, is not taken for dead', async () => {
  folder = join(outer, 'a'.repeat(60), 'b'.repeat(60), 'data');
  const database = await open();
  const before = process.env.TMPDIR;
  process.env.TMPDIR = outer;
  const second = open();
  await expect(second).rejects.toMatchObject({ code: 'folder-in-use', figures: { pid: process.pid } });
  if (before === undefined) delete process.env.TMPDIR;
  else process.env.TMPDIR = before;
  expect((await database.pool.query('select 1 as one')).rows).toEqual([{ one: 1 }]);
  await database.close();
});

test('a running keeper is respected even by a program that sees neither its socket nor its note', async () => {
  const database = await open();
  await rm(database.keeper?.controlSocketPath ?? '');
  await rm(join(folder, 'keeper.json'));
  await expect(open()).rejects.toMatchObject({ code: 'folder-in-use' });
  expect((await database.pool.query('select 1 as one')).rows).toEqual([{ one: 1 }]);
  await database.close();
});

test('an ordinary user keeps a folder of its own', async () => {
  const ordinary = await databaseAccount({ kind: 'throwaway' });
  const home = join(outer, 'home');
  await makeOwnedFolder(home, ordinary);
  folder = join(home, 'data');
  const child = await startChild(3, ordinary);
  expect(child.answer).toMatchObject({ state: 'keeping', uid: ordinary.uid });
  expect((await stat(folder)).uid).toBe(ordinary.uid);
  expect(userInfo().uid === 0 ? ordinary.uid : userInfo().uid).toBe(ordinary.uid);
});
