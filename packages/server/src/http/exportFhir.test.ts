import type { Bundle, FhirResource } from 'fhir/r4.js';
import { Kysely } from 'kysely';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { wrongInBundle } from '../../../exchange/testing/validate.js';
import { migrate } from '../database/migrations/index.js';
import type { Tables } from '../database/schema.js';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { fillDemo } from '../demo/fillDemo.js';
import { listPersons } from '../store/listPersons.js';
import { openSite } from '../store/site.js';
import { createApi } from './app.js';

const SITE = { id: '01950000-0000-7000-8000-000000000001', name: 'Demo (invented)', invented: true };
const NOW = new Date('2026-11-25T10:00:00Z');

// Interoperability handbook 12: schema, profile rules and units, over everything that the invented clinic holds.
describe('every chart of the demo as a bundle', () => {
  let database: TestDatabase;
  let send: (path: string) => Promise<Response>;
  let people: readonly string[];
  beforeAll(async () => {
    database = await openMemory();
    const db = new Kysely<Tables>({ dialect: database.dialect });
    await migrate(db);
    await openSite(db, SITE);
    await fillDemo(db, SITE.id, NOW);
    const app = createApi({
      db,
      site: () => SITE,
      siteChanged: async () => undefined,
      program: 'evenfall test',
      now: () => NOW,
      ticks: () => 0,
      log: () => undefined,
      fault: (error) => {
        throw error;
      },
    });
    send = async (path) => await app.request(`http://localhost${path}`, { headers: { host: 'localhost' } });
    people = (await listPersons(db, SITE.id, 'care')).map(({ id }) => id);
  }, 60_000);
  afterAll(() => database.close());

  test('passes the schema, the profiles and the units, with and without who it is', async () => {
    let observations = 0;
    expect(people.length).toBeGreaterThan(10);
    for (const person of people) {
      for (const identity of ['with', 'without']) {
        const path = `/api/books/care/persons/${person}/export?as=fhir&identity=${identity}`;
        const came = await send(path);
        expect(came.headers.get('content-type')).toBe('application/fhir+json; charset=utf-8');
        expect(came.headers.get('content-disposition')).toContain(`evenfall-INVENTED-${person}.fhir.json`);
        const bundle = (await came.json()) as Bundle<FhirResource>;
        expect(wrongInBundle(bundle)).toEqual([]);
        observations += (bundle.entry ?? []).filter(
          ({ resource }) => resource?.resourceType === 'Observation',
        ).length;
      }
    }
    expect(observations).toBeGreaterThan(100);
  }, 120_000);
});
