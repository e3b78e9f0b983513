import {
  NO_ROUND_FACTS,
  overrideFields,
  presetProtocol,
  protocolDocument,
  protocolVersion,
} from '@evenfall/clinical';
import {
  chartRound,
  type EntryFrame,
  type Identity,
  inForceUnder,
  type Latest,
  PROGRAM,
  projectLatest,
  readEntry,
} from '@evenfall/record';
import fc from 'fast-check';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { HESTER, TestClinic } from '../testing/clinic.js';
import { LATEST_PROJECTION, listPersons, rebuildLatest } from './listPersons.js';
import { entriesOf } from './persons.js';
import { readSite } from './site.js';

describe('the list of people', () => {
  let database: TestDatabase;
  let clinic: TestClinic;
  let site: string;
  beforeAll(async () => {
    database = await openMemory();
    clinic = await TestClinic.open(database);
    site = (await readSite(clinic.db))?.id ?? '';
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  const listed = async (person: string) =>
    (await listPersons(clinic.db, site, 'care')).find(({ id }) => id === person)?.latest;

  /** What the entries alone say, whatever the projection holds. */
  const told = async (person: string) =>
    projectLatest((await entriesOf(clinic.db, { site, book: 'care', person })).entries);

  const rowOf = (person: string) =>
    clinic.db.selectFrom('latest').selectAll().where('person', '=', person).executeTakeFirst();

  async function planted(person: string, content: Latest, projection: number): Promise<void> {
    await clinic.db
      .updateTable('latest')
      .set({ content: JSON.stringify(content), projection } as never)
      .where('person', '=', person)
      .execute();
  }

  const WRONG: Latest = {
    pulse: {
      entry: v7(),
      perMinute: 299,
      others: [],
      byHand: false,
      measuredAt: '2026-11-25T09:00:00Z',
      contested: false,
      preliminary: false,
    },
    breaths: null,
    pressure: null,
    actNow: 0,
    actNowFirst: null,
    recheck: null,
    toCountersign: 0,
    diary: null,
    diaries: [],
    awayUntil: null,
  };

  test('is by name, whatever the case, and those without one come last', async () => {
    const named = async (name: string) =>
      await clinic.addPerson({ ...HESTER, name } as Identity, 'simulated');
    const ids = [await named('bram'), await named('Zoë'), await named('Ada'), await named('Carl')];
    const entry = clinic.frame('identity-erased', ids[2] ?? '', { reason: 'asked' }, { book: 'simulated' });
    await clinic.send('DELETE', `/api/books/simulated/persons/${ids[2]}/identity`, { entry });
    const people = await listPersons(clinic.db, site, 'simulated');
    expect(people.map(({ identity }) => identity?.name ?? null)).toEqual(['bram', 'Carl', 'Zoë', null]);
    expect(people.at(-1)).toMatchObject({
      id: ids[2],
      identity: null,
      latest: { pulse: null, breaths: null },
    });
  });

  test('shows the newest version of an identity', async () => {
    const person = await clinic.addPerson(HESTER, 'simulated');
    const right = { ...HESTER, name: 'Hester Quill (invented)' };
    const entry = clinic.frame('identity-corrected', person, { changed: ['name'] }, { book: 'simulated' });
    await clinic.send('PUT', `/api/books/simulated/persons/${person}/identity`, { identity: right, entry });
    const people = await listPersons(clinic.db, site, 'simulated');
    expect(people.find(({ id }) => id === person)).toMatchObject({ identity: right });
  });

  test('rebuilds what an older program projected, from the entries alone', async () => {
    const person = await clinic.addPerson();
    await clinic.sign(clinic.pulse(person, 19, 15));
    const right = await listed(person);
    expect(right?.pulse?.perMinute).toBe(76);
    await planted(person, WRONG, LATEST_PROJECTION - 1);
    expect(await listed(person)).toEqual(right);
    expect(await rowOf(person)).toMatchObject({ projection: LATEST_PROJECTION, content: right, entries: 2 });
  });

  test('reads what this program projected and does not compute it anew', async () => {
    const person = await clinic.addPerson();
    await listed(person);
    await planted(person, WRONG, LATEST_PROJECTION);
    expect(await listed(person)).toEqual(WRONG);
    expect(await rebuildLatest(clinic.db, site, 'care')).toBe(0);
  });

  test('forgets a projection with every write that could change it, and with no other', async () => {
    const [one, other] = [await clinic.addPerson(), await clinic.addPerson()];
    await listPersons(clinic.db, site, 'care');
    await clinic.sign(clinic.pulse(one, 19, 15));
    expect([await rowOf(one), await rowOf(other)]).toEqual([undefined, expect.anything()]);
    expect(await rebuildLatest(clinic.db, site, 'care')).toBe(1);
  });

  test('judges an amended round by the protocol it was signed under, whichever is in force', async () => {
    const preset = presetProtocol({ actNow: 'acc-aha-2017' });
    const decided = { section: 'actNow', key: 'veryLowSystolic', value: 105 };
    const protocol = preset.ok ? overrideFields(preset.value, [decided]) : preset;
    if (!protocol.ok) throw new Error(JSON.stringify(protocol.refusals));
    const version = protocolVersion(protocol.value);
    await clinic.send('POST', '/api/protocols', { content: protocolDocument(protocol.value) });
    const inForce = inForceUnder(protocol.value, version);
    const person = await clinic.addPerson();
    const round = v7();
    const byEar = (systolic: number) => ({
      method: 'auscultation',
      moments: [
        { what: 'first sound', mmHg: systolic },
        { what: 'last sound', mmHg: 60 },
      ],
    });
    const run = clinic.pressure(person, byEar(118), { round }, inForce);
    const read = readEntry(run);
    if (!read.ok) throw new Error(JSON.stringify(read.refusals));
    const signed = {
      status: 'final' as const,
      signs: [{ sign: 'pressure' as const, entries: [run.id] }],
      evidence: { exceptions: null, features: null, unwell: null, facts: { ...NO_ROUND_FACTS, arms: [] } },
      note: null,
    };
    const content = chartRound(signed, [read.value], inForce, PROGRAM);
    const signing = clinic.frame('round', person, content, { round, schema: 4 });
    expect((await clinic.sign(run, signing)).status).toBe(201);
    expect((await listed(person))?.actNow).toBe(0);
    // 104: very low in this place, and not by the general rules; no protocol is in force.
    const put = clinic.pressure(person, byEar(104), clinic.amending(run), inForce);
    expect((await clinic.sign(put)).status).toBe(201);
    expect((await listed(person))?.actNow).toBe(1);
    expect((await told(person)).actNow).toBe(0);
  });

  test('shows after any writes what the entries alone say', async () => {
    const write = fc.record({
      what: fc.constantFrom('pulse', 'taps', 'amend', 'error', 'list', 'refused'),
      who: fc.nat(1),
      n: fc.integer({ min: 15, max: 99 }),
      which: fc.nat(),
      minute: fc.integer({ min: 0, max: 59 }),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(write, { minLength: 1, maxLength: 12 }), async (writes) => {
        const people = [await clinic.addPerson(), await clinic.addPerson()];
        const kept = new Map<string, EntryFrame[]>(people.map((person) => [person, []]));
        for (const { what, who, n, which, minute } of writes) {
          const person = people[who] ?? '';
          const own = kept.get(person) ?? [];
          const at = `2026-11-25T09:${String(minute).padStart(2, '0')}:00+00:00`;
          const more = { measuredAt: { at, zone: 'UTC', asEntered: null } };
          const old = own[which % Math.max(own.length, 1)];
          if (what === 'list') await listPersons(clinic.db, site, 'care');
          else if (what === 'refused') await clinic.sign({ ...clinic.pulse(person, n, 30), agent: v7() });
          else if (what === 'error' && old !== undefined)
            await clinic.sign(clinic.frame('entered-in-error', person, { note: null }, clinic.amending(old)));
          else {
            const frame =
              what === 'taps'
                ? clinic.taps(person, [0, 60 / n, 120 / n], more)
                : clinic.pulse(
                    person,
                    n,
                    30,
                    what === 'amend' && old !== undefined ? clinic.amending(old) : more,
                  );
            if ((await clinic.sign(frame)).status === 201) own.push(frame);
          }
        }
        for (const person of people) expect(await listed(person)).toEqual(await told(person));
      }),
      { numRuns: 12 },
    );
    expect(clinic.faults).toEqual([]);
  }, 60_000);
});
