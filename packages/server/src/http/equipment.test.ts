import { type GaugeLog, overrideFields, type Protocol, presetProtocol } from '@evenfall/clinical';
import {
  chartGaugeLog,
  type EntryFrame,
  type InForce,
  inForceUnder,
  NOTHING_CHOSEN,
  PROGRAM,
  placeEquipment,
  type StoredEntry,
} from '@evenfall/record';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { HESTER, TestClinic } from '../testing/clinic.js';

const NAMED = { what: 'gauge', name: 'Gauge 3', type: 'aneroid', room: 'Room 2', serial: null, note: null };
const PRESET = published();

function published(): Protocol {
  const found = presetProtocol({});
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  return found.value;
}

const RULES = NOTHING_CHOSEN.equipmentRules;
const CUFF = {
  what: 'cuff',
  room: 'Room 2',
  scheme: 'aha-2005',
  cuff: 'adult',
  bladderCm: null,
  pieces: 1,
  note: null,
};
const RUN = {
  method: 'auscultation',
  moments: [
    { what: 'first sound', mmHg: 148 },
    { what: 'last sound', mmHg: 92 },
  ],
};

describe('equipment over HTTP', () => {
  let database: TestDatabase;
  let clinic: TestClinic;
  let person: string;
  beforeAll(async () => {
    database = await openMemory();
    clinic = await TestClinic.open(database);
    person = await clinic.addPerson();
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  const named = (content: object = NAMED) => clinic.frame('equipment', null, content);
  const logged = (gauge: string, log: GaugeLog, more: Partial<EntryFrame> = {}) =>
    clinic.frame(
      'gauge-logged',
      null,
      chartGaugeLog({ gauge, log, note: null }, NOTHING_CHOSEN, PROGRAM),
      more,
    );
  const read = (gauge: string | null, more: Partial<EntryFrame> = {}, of = person) =>
    clinic.pressure(of, RUN, more, NOTHING_CHOSEN, gauge);
  const kept = async (...entries: EntryFrame[]) => {
    const came = await clinic.sign(...entries);
    expect(came.status, came.text).toBe(201);
  };
  const placesOf = ({ body }: { body: { problems: { field: string }[] } }) =>
    body.problems.map(({ field }) => field);
  const at = (time: string) => ({
    measuredAt: { at: `2026-11-25T${time}+00:00`, zone: 'Europe/Lisbon', asEntered: null },
  });

  test('a gauge and its log are kept, listed and found right by a check', async () => {
    const gauge = named();
    await kept(
      gauge,
      logged(gauge.id, { of: 'zero', restMmHg: 0 }),
      logged(gauge.id, { of: 'leak', fromMmHg: 200, toMmHg: 196, seconds: 60 }),
    );
    const { entries, unreadable, agents } = (await clinic.send('GET', '/api/equipment')).body;
    expect([unreadable, agents.length]).toEqual([0, 1]);
    const found = placeEquipment(entries as StoredEntry[], '2026-11-25', RULES).gauges.find(
      ({ id }) => id === gauge.id,
    );
    expect(found?.standing.checks.map(({ state }) => state)).toEqual(['good', 'never', 'good']);
    expect((await clinic.send('GET', '/control/check')).body).toMatchObject({ findings: [] });
  });

  // A verdict that the readings do not give would call a bad gauge good.
  test('a verdict that is not what was read is refused, and so is what no gauge can show', async () => {
    const gauge = named();
    await kept(gauge);
    const entry = logged(gauge.id, { of: 'zero', restMmHg: 6 });
    const { value } = entry.content as { value: object };
    const bent = { ...entry, content: { ...entry.content, value: { ...value, verdict: 'good' } } };
    expect(placesOf(await clinic.sign(bent))).toEqual(['/entries/0/content/value/verdict']);
    const above = logged(gauge.id, { of: 'leak', fromMmHg: 100, toMmHg: 101, seconds: 60 });
    expect(placesOf(await clinic.sign(above))).toEqual(['/entries/0/content/evidence/log/toMmHg']);
  });

  test('a check is judged by the protocol that it names, and found right by it for ever', async () => {
    const strict = overrideFields(PRESET, [{ section: 'equipment', key: 'mostRestMmHg', value: 1 }]);
    if (!strict.ok) throw new Error(JSON.stringify(strict.refusals));
    const { version } = (await clinic.send('POST', '/api/protocols', { content: strict.value })).body;
    const inForce = inForceUnder(strict.value, version);
    const gauge = named();
    const log: GaugeLog = { of: 'zero', restMmHg: 2 };
    const judged = (by: InForce) => chartGaugeLog({ gauge: gauge.id, log, note: null }, by, PROGRAM);
    const failed = clinic.frame('gauge-logged', null, judged(inForce));
    expect(failed.content).toMatchObject({
      value: { verdict: 'failed' },
      computedBy: { preset: 'half-yearly', presetVersion: version },
    });
    await kept(gauge, failed);
    expect((await clinic.send('GET', '/control/check')).body).toMatchObject({ findings: [] });
    const { value } = judged(NOTHING_CHOSEN);
    const bent = clinic.frame('gauge-logged', null, { ...judged(inForce), value });
    expect(placesOf(await clinic.sign(bent))).toEqual(['/entries/0/content/value/verdict']);
    // Whoever was measured with it is handed over with the gauge's checks, and so with what these were judged by.
    await clinic.sign(read(gauge.id));
    const bundle = await clinic.send('GET', `/api/books/care/persons/${person}/export?as=fhir`);
    expect(JSON.stringify(bundle.body)).toContain('mostRestMmHg');
  });

  test('what is logged, ended or read from names a gauge that is here', async () => {
    const cuff = named(CUFF);
    await kept(cuff);
    for (const id of [v7(), cuff.id]) {
      expect(placesOf(await clinic.sign(logged(id, { of: 'dropped' })))).toEqual([
        '/entries/0/content/gauge',
      ]);
      expect(placesOf(await clinic.sign(read(id)))).toEqual(['/entries/0/content/evidence/gauge']);
    }
    const ended = (equipment: string) =>
      clinic.frame('equipment-ended', null, { equipment, reason: 'torn (invented)' });
    expect(placesOf(await clinic.sign(ended(v7())))).toEqual(['/entries/0/content/equipment']);
    await kept(ended(cuff.id));
  });

  test('a gauge is put right by another naming of it, and not by that of a cuff', async () => {
    const gauge = named();
    await kept(gauge);
    const put = { ...named({ ...NAMED, name: 'Gauge 4' }), ...clinic.amending(gauge) };
    await kept(put);
    const cuff = { ...named(CUFF), ...clinic.amending(gauge) };
    expect(placesOf(await clinic.sign(cuff))).toEqual(['/entries/0/amends/entry']);
    // Its log goes on under the name that it was first entered by.
    expect(placesOf(await clinic.sign(logged(put.id, { of: 'dropped' })))).toEqual([
      '/entries/0/content/gauge',
    ]);
  });

  test('a log line is entered in error, and said anew rather than amended', async () => {
    const gauge = named();
    const line = logged(gauge.id, { of: 'zero', restMmHg: 6 });
    await kept(gauge, line);
    const amended = { ...logged(gauge.id, { of: 'zero', restMmHg: 0 }), ...clinic.amending(line) };
    expect(placesOf(await clinic.sign(amended))).toEqual(['/entries/0/amends/entry']);
    await kept({ ...clinic.frame('entered-in-error', null, { note: null }), ...clinic.amending(line) });
    const { entries } = (await clinic.send('GET', '/api/equipment')).body;
    const found = placeEquipment(entries as StoredEntry[], '2026-11-25', RULES).gauges.find(
      ({ id }) => id === gauge.id,
    );
    expect(found?.log.map(({ isInError }) => isInError)).toEqual([true]);
    expect(found?.standing.state).toBe('due');
  });

  test('the readings of a gauge are listed as they stand, by whose they are', async () => {
    const [gauge, other] = [named(), named({ ...NAMED, name: 'Gauge 9' })];
    await kept(gauge, other);
    const ansel = await clinic.addPerson({ ...HESTER, name: 'Ansel Brook (invented)', number: 'INV-78' });
    const late = read(gauge.id, at('09:40:00'));
    const early = read(gauge.id, at('09:10:00'), ansel);
    const wrong = read(gauge.id, at('09:20:00'));
    await kept(late, early, wrong, read(other.id), read(null));
    const put = { ...read(other.id, at('09:20:00')), ...clinic.amending(wrong, 'equipment-fault') };
    await kept(put);
    const listed = (await clinic.send('GET', `/api/equipment/${gauge.id}/readings`)).body;
    expect(listed.readings.map(({ entry }: { entry: string }) => entry)).toEqual([early.id, late.id]);
    expect(listed.readings[0]).toMatchObject({ person: ansel, round: early.round, written: '148/92' });
    const names = listed.persons.map(({ identity }: { identity: { name: string } }) => identity.name);
    expect(names.sort()).toEqual(['Ansel Brook (invented)', HESTER.name]);
    expect((await clinic.send('GET', `/api/equipment/${v7()}/readings`)).status).toBe(404);
  });

  test('a reading of a class names no gauge of the charts', async () => {
    const gauge = named();
    await kept(gauge);
    const learner = await clinic.addPerson({ ...HESTER, name: 'Heron (invented)' }, 'class');
    const entry = read(gauge.id, { book: 'class', session: await clinic.beginClass() }, learner);
    expect(placesOf(await clinic.sign(entry))).toEqual(['/entries/0/content/evidence/gauge']);
  });
});
