import { Kysely } from 'kysely';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { migrate } from '../database/migrations/index.js';
import type { Tables } from '../database/schema.js';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { openSite, readSite } from './site.js';

describe('the site of a record', () => {
  let database: TestDatabase;
  let db: Kysely<Tables>;
  const site = (number: number, invented = false) => ({
    id: `01950000-0000-7000-8000-00000000000${number}`,
    name: `Clinic ${number} (invented)`,
    invented,
  });
  beforeAll(async () => {
    database = await openMemory();
    db = new Kysely<Tables>({ dialect: database.dialect });
    await migrate(db);
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  test('is made once, however many start at the same time, and is the same for all of them', async () => {
    expect(await readSite(db)).toBeNull();
    const opened = await Promise.all([1, 2, 3, 4].map((number) => openSite(db, site(number))));
    expect(new Set(opened.map(({ id }) => id)).size).toBe(1);
    expect(await db.selectFrom('site').select('id').execute()).toHaveLength(1);
    expect(await openSite(db, site(5))).toEqual(await readSite(db));
  });

  test('is never opened for the other purpose', async () => {
    await expect(openSite(db, site(6, true))).rejects.toMatchObject({ code: 'site-other-purpose' });
    expect(await readSite(db)).toMatchObject({ invented: false });
  });
});
