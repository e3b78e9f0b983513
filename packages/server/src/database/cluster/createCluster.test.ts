import { mkdir, readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { packaged17 } from '../testing/otherPostgres.js';
import { testCluster } from '../testing/testCluster.js';
import { makeTestFolder, removeTestFolder } from '../testing/testFolder.js';
import { createCluster } from './createCluster.js';
import type { Cluster } from './postmaster.js';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 }); // a cluster takes a second to make, on a busy machine several

let outer: string;
beforeEach(async () => {
  outer = await makeTestFolder();
});
afterEach(() => removeTestFolder(outer));

function create({ layout, binaries, endpoint, account }: Cluster): Promise<void> {
  return createCluster(layout, binaries, endpoint, account);
}

test('what a crash left half-made is removed, and a whole cluster stands in its place', async () => {
  const cluster = await testCluster(outer);
  await mkdir(join(cluster.layout.root, 'pg.new-0a1b', 'base'), { recursive: true });
  await writeFile(join(cluster.layout.root, 'pg.new-0a1b', 'PG_VERSION'), '18\n');
  await create(cluster);
  const names = await readdir(cluster.layout.root);
  expect(names.sort()).toEqual(['evenfall.json', 'log', 'pg', 'run']);
  expect(await readdir(cluster.layout.cluster)).toContain('PG_VERSION');
});

test('a cluster whose making fails leaves nothing that a later start takes for one', async () => {
  const cluster = await testCluster(outer);
  const initdb = join(outer, 'initdb');
  await writeFile(initdb, '#!/bin/sh\nmkdir "$(echo "$1" | cut -d= -f2)"; echo disk full >&2; exit 1\n', {
    mode: 0o755,
  });
  const failing = create({ ...cluster, binaries: { ...cluster.binaries, initdb } });
  await expect(failing).rejects.toMatchObject({ code: 'create-failed', names: { log: 'disk full' } });
  expect(await readdir(cluster.layout.root)).not.toContain('pg');
  await create(cluster);
  expect(await readdir(cluster.layout.cluster)).toContain('PG_VERSION');
});

test('a folder of another major is refused with both majors, and not touched', async () => {
  const { folder } = await packaged17();
  const old = await testCluster(outer, { EVENFALL_PG_BIN: folder });
  await create(old);
  const before = await readdir(old.layout.cluster);
  await expect(create(await testCluster(outer))).rejects.toMatchObject({
    code: 'folder-other-major',
    figures: { folderMajor: 17, binariesMajor: 18 },
  });
  expect(await readdir(old.layout.cluster)).toEqual(before);
});

test('a folder in the place of the cluster that is none is refused, an empty one is used', async () => {
  const cluster = await testCluster(outer);
  await mkdir(cluster.layout.cluster);
  await writeFile(join(cluster.layout.cluster, 'postgresql.conf'), '');
  await expect(create(cluster)).rejects.toMatchObject({ code: 'folder-damaged' });
  await rm(join(cluster.layout.cluster, 'postgresql.conf'));
  await create(cluster);
  expect(await readdir(cluster.layout.cluster)).toContain('PG_VERSION');
});
