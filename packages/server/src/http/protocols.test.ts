import { readFileSync } from 'node:fs';
import { overrideFields, type Protocol, presetProtocol, protocolVersion } from '@evenfall/clinical';
import { inForceUnder } from '@evenfall/record';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';

function presetOf(id: string): Protocol {
  const preset = presetProtocol({ count: id });
  if (!preset.ok) throw new Error(`no preset ${id}`);
  return preset.value;
}

/** Thirty seconds, and slow below 55 instead of the preset's limit, as a place might decide. */
function localProtocol(): Protocol {
  const local = overrideFields(presetOf('thirty-seconds'), [
    { section: 'count', key: 'slowPerMinute', value: 55 },
  ]);
  if (!local.ok) throw new Error(JSON.stringify(local.refusals));
  return local.value;
}

const UNKNOWN = 'ab'.repeat(32);

describe('protocols over HTTP', () => {
  let database: TestDatabase;
  let clinic: TestClinic;
  beforeAll(async () => {
    database = await openMemory();
    clinic = await TestClinic.open(database);
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  const add = (content: unknown) => clinic.send('POST', '/api/protocols', { content });
  const choose = (version: string | null) => clinic.sign(clinic.frame('protocol-chosen', null, { version }));
  const chosen = async () => (await clinic.send('GET', '/api/about')).body.protocolVersion;

  test('none is kept or in force at first, and nobody chooses one for the place', async () => {
    expect((await clinic.send('GET', '/api/protocols')).body).toEqual({ protocols: [] });
    expect(await chosen()).toBeNull();
  });

  test('the same content is one version whenever and in whatever order of keys it is sent', async () => {
    const content = presetOf('full-minute');
    const [first, again] = [await add(content), await add(content)];
    const turned = await add(Object.fromEntries(Object.entries(content).reverse()));
    expect([first.status, again.status, turned.status]).toEqual([201, 200, 200]);
    expect(turned.body).toEqual(first.body);
    expect(first.body.version).toBe(protocolVersion(content));
    const { protocols } = (await clinic.send('GET', '/api/protocols')).body;
    expect(protocols).toEqual([first.body]);
    expect(protocols[0].content).toEqual(content);
  });

  test('another value is another version, and both stay', async () => {
    const came = await add(localProtocol());
    expect(came.status).toBe(201);
    const { protocols } = (await clinic.send('GET', '/api/protocols')).body;
    expect(protocols.map(({ version }: { version: string }) => version)).toEqual([
      protocolVersion(presetOf('full-minute')),
      came.body.version,
    ]);
  });

  test('one that is wrong is refused at each of its fields, and is not kept', async () => {
    const content = structuredClone(localProtocol()) as unknown as {
      sections: { count: Record<string, { value: unknown; source: string }> };
    };
    const { slowPerMinute, clock } = content.sections.count;
    if (slowPerMinute === undefined || clock === undefined) throw new Error('the fields are gone');
    slowPerMinute.value = 'slow';
    clock.value = 'later';
    const came = await add({ ...content, colour: 'blue' });
    expect(came.status).toBe(422);
    const places = came.body.problems.map(({ field }: { field: string }) => field);
    expect(places.sort()).toEqual([
      '/content/colour',
      '/content/sections/count/clock/value',
      '/content/sections/count/slowPerMinute/value',
    ]);
    expect((await add({ ...localProtocol(), schema: 99 })).body.problems).toMatchObject([
      { field: '/content/schema' },
    ]);
    expect((await clinic.send('POST', '/api/protocols', {})).body.problems).toMatchObject([
      { field: '/content', code: 'missing' },
    ]);
    expect((await clinic.send('GET', '/api/protocols')).body.protocols).toHaveLength(2);
  });

  test('one that is kept can be chosen, another instead, and none again; the last choice is in force', async () => {
    for (const content of [presetOf('full-minute'), localProtocol()]) {
      expect((await choose(protocolVersion(content))).status).toBe(201);
      expect(await chosen()).toBe(protocolVersion(content));
    }
    expect((await choose(null)).status).toBe(201);
    expect(await chosen()).toBeNull();
  });

  test('every choice stays listed with who made it and when, and a version put off can be put in force again', async () => {
    const [full, local] = [presetOf('full-minute'), localProtocol()].map(protocolVersion) as [string, string];
    const { choices, agents } = (await clinic.send('GET', '/api/protocol-choices')).body;
    expect(choices.map(({ version }: { version: string | null }) => version)).toEqual([full, local, null]);
    for (const one of choices) {
      expect(one).toMatchObject({ agent: clinic.agent, at: expect.stringMatching(/^\d{4}-\d\d-\d\dT/) });
    }
    expect(agents).toContainEqual({ id: clinic.agent, name: 'Wren (invented)' });
    const kept = (await clinic.send('GET', '/api/protocols')).body.protocols;
    expect((await choose(local)).status).toBe(201);
    expect(await chosen()).toBe(local);
    expect((await clinic.send('GET', '/api/protocol-choices')).body.choices).toHaveLength(4);
    expect((await clinic.send('GET', '/api/protocols')).body.protocols).toEqual(kept);
    expect((await choose(null)).status).toBe(201);
  });

  test('one that is not kept cannot be chosen', async () => {
    const came = await choose(UNKNOWN);
    expect(came.body.problems).toMatchObject([
      { field: '/entries/0/content/version', code: 'unknown-id', got: UNKNOWN },
    ]);
    expect(await chosen()).toBeNull();
  });

  describe('a value made under one', () => {
    const local = localProtocol();
    const inForce = inForceUnder(local, protocolVersion(local));

    test('is held against its rules, and is found right by a check', async () => {
      const person = await clinic.addPerson();
      // 13 in 15 s are 52: slow below the 55 of this place, so it asks for a full minute for that.
      const pulse = clinic.pulse(person, 13, 15, {}, inForce);
      const why = (pulse.content.value as { why: { code: string; figures: object }[] }).why;
      expect(why).toContainEqual(
        expect.objectContaining({
          code: 'slow-on-short-count',
          figures: expect.objectContaining({ slowPerMinute: 55 }),
        }),
      );
      expect((await clinic.sign(pulse)).status).toBe(201);
      expect((await clinic.send('GET', '/control/check')).body).toMatchObject({ values: 1, findings: [] });
    });

    test('is refused when it says that it was made under none, or under another', async () => {
      const person = await clinic.addPerson();
      const pulse = clinic.pulse(person, 13, 15, {}, inForce);
      const under = (presetVersion: string | null) => ({
        ...pulse,
        content: {
          ...pulse.content,
          computedBy: { ...(pulse.content.computedBy as object), presetVersion },
        },
      });
      for (const version of [null, protocolVersion(presetOf('full-minute'))]) {
        const came = await clinic.sign(under(version));
        expect(came.status).toBe(422);
        expect(came.body.problems[0].field).toMatch(/^\/entries\/0\/content\/(value|computedBy\/preset)/);
      }
      expect((await clinic.sign(under(UNKNOWN))).body.problems).toMatchObject([
        { field: '/entries/0/content/computedBy/presetVersion', code: 'unknown-id' },
      ]);
    });
  });

  test('one of the first schema is kept as it was written, under the version it always had', async () => {
    const first = new URL('../../../record/fixtures/backup-1.jsonl', import.meta.url);
    const lines = readFileSync(first, 'utf8').trim().split('\n');
    const old = lines.map((line) => JSON.parse(line)).find(({ line }) => line === 'protocol');
    expect(old.content).toMatchObject({ schema: 1, preset: 'full-minute' });
    const came = await add(old.content);
    expect([came.status, came.body.version]).toEqual([201, old.version]);
    expect(came.body.content).toEqual(old.content);
  });

  // Conventions 9: a newer schema is refused by name; here by a program that is older than its database.
  test('one of a newer program is not at hand: a check says so of what was made under it, and goes on', async () => {
    const version = protocolVersion(localProtocol());
    const before = (await clinic.send('GET', '/control/check')).body;
    const newer = { ...localProtocol(), schema: 99 };
    await database.pool.query('alter table protocol disable trigger append_only');
    await database.pool.query('update protocol set content = $1 where version = $2', [newer, version]);
    try {
      const { status, body } = await clinic.send('GET', '/control/check');
      expect([status, body.entries, before.findings]).toEqual([200, before.entries, []]);
      expect(body.findings).toMatchObject([{ kind: 'count', state: 'unknown-protocol' }]);
      const person = await clinic.addPerson();
      const pulse = clinic.pulse(person, 13, 15, {}, inForceUnder(localProtocol(), version));
      expect((await clinic.sign(pulse)).body.problems).toMatchObject([
        { field: '/entries/0/content/computedBy/presetVersion', code: 'unknown-id' },
      ]);
    } finally {
      await database.pool.query('update protocol set content = $1 where version = $2', [
        localProtocol(),
        version,
      ]);
      await database.pool.query('alter table protocol enable trigger append_only');
    }
  });

  test('nothing of all this was a fault of the program', () => {
    expect(clinic.faults).toEqual([]);
  });
});
