import type { EntryFrame } from '@evenfall/record';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';

// What every clinic does with entries is in http/record.test.ts, on each kind of database.
describe('what could get past the checks of entries', () => {
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

  async function problemsOf(...frames: EntryFrame[]): Promise<unknown> {
    const { status, body } = await clinic.sign(...frames);
    return status === 422
      ? body.problems.map(({ field, code }: { field: string; code: string }) => `${field} ${code}`)
      : status;
  }

  test('an id in capitals is the same id: kept once, and found', async () => {
    const pulse = clinic.pulse(person, 19, 15);
    const shouted = { ...pulse, id: pulse.id.toUpperCase(), person: person.toUpperCase() };
    expect(await problemsOf(shouted)).toBe(201);
    expect(await problemsOf(pulse)).toBe(200);
    expect(await problemsOf(pulse, shouted)).toEqual(['/entries/1/id repeated']);
    const { body } = await clinic.send('GET', `/api/books/care/persons/${person.toUpperCase()}`);
    expect(body.entries.map(({ id }: EntryFrame) => id)).toContain(pulse.id);
    expect((await clinic.send('GET', '/control/check')).body.findings).toEqual([]);
  });

  test.each(['0000-01-01T00:00:00Z', '2026-11-25T09:00:00+23:59', `2026-11-25T09:00:00.${'1'.repeat(300)}Z`])(
    'an instant that PostgreSQL does not take (%s) is refused at its place, no fault',
    async (at) => {
      const measuredAt = { at, zone: 'UTC', asEntered: null };
      expect(await problemsOf(clinic.pulse(person, 19, 15, { measuredAt, writtenAt: at }))).toEqual([
        '/entries/0/measuredAt/at not-a-time',
        '/entries/0/writtenAt not-a-time',
      ]);
    },
  );

  test('a value of nobody would stand in no chart', async () => {
    expect(await problemsOf(clinic.pulse(person, 19, 15, { person: null }))).toEqual([
      '/entries/0/person missing',
    ]);
  });

  test('content nested without end is refused, not walked', async () => {
    const pulse = clinic.pulse(person, 19, 15);
    const deep = `${'['.repeat(50_000)}${']'.repeat(50_000)}`;
    const body = JSON.stringify({ entries: [{ ...pulse, content: { deep: 'HERE' } }] }).replace(
      '"HERE"',
      deep,
    );
    const came = await clinic.send('POST', '/api/entries', body);
    expect([came.status, came.body.problems[0].code]).toEqual([422, 'out-of-range']);
  });

  test('a rule that this program never had, in its name', async () => {
    const pulse = clinic.pulse(person, 19, 15);
    const claims = (computedBy: object, value: object = {}) => ({
      ...pulse,
      content: {
        ...pulse.content,
        value: { ...(pulse.content.value as object), ...value },
        computedBy: { ...(pulse.content.computedBy as object), ...computedBy },
      },
    });
    expect(await problemsOf(claims({ rule: 'count-99' }))).toEqual([
      '/entries/0/content/computedBy/rule unknown-id',
    ]);
    // A value that another program made is kept as that program made it; a check says what it finds.
    expect(await problemsOf(claims({ rule: 'count-99', program: 'another 1.0' }, { perMinute: 70 }))).toBe(
      201,
    );
  });

  test('a sign that amends another sign, and an error about an error', async () => {
    const pulse = clinic.pulse(person, 19, 15);
    await clinic.sign(pulse);
    const evidence = pulse.content.evidence as { count: object };
    const breaths = {
      ...clinic.pulse(person, 19, 15, clinic.amending(pulse)),
      content: { ...pulse.content, evidence: { ...evidence, count: { ...evidence.count, of: 'breaths' } } },
    };
    expect(await problemsOf(breaths)).toContain('/entries/0/amends/entry contradicts');
    const error = (of: EntryFrame) =>
      clinic.frame('entered-in-error', person, { note: null }, clinic.amending(of));
    const first = error(pulse);
    expect(await problemsOf(first)).toBe(201);
    expect(await problemsOf(error(first))).toEqual(['/entries/0/amends/entry contradicts']);
    const itself = error(pulse);
    expect(await problemsOf({ ...itself, ...clinic.amending(itself) })).toEqual([
      '/entries/0/amends/entry contradicts',
    ]);
    expect(await problemsOf({ ...error(pulse), amends: null })).toEqual(['/entries/0/amends missing']);
  });

  test('a signing that would amend the signing of another round', async () => {
    const signing = (round: string) => {
      const pulse = clinic.pulse(person, 19, 15, { round });
      const signs = [{ sign: 'pulse', entries: [pulse.id] }];
      const content = { status: 'final', signs, protocolVersion: null, note: null };
      return [pulse, clinic.frame('round', person, content, { round })] as const;
    };
    const [first, other] = [signing(v7()), signing(v7())];
    expect(await problemsOf(...first, ...other)).toBe(201);
    const [pulse, next] = signing(first[1].round ?? '');
    const amending = { amends: { entry: other[1].id, reason: 'duplicate' as const, text: null } };
    expect(await problemsOf(pulse, { ...next, ...amending })).toEqual(['/entries/1/round contradicts']);
    expect(await problemsOf(pulse, { ...next, ...clinic.amending(first[1]) })).toBe(201);
  });

  test('a value of another program by a rule that is known here must be what the rule gives', async () => {
    const pulse = clinic.pulse(person, 19, 15);
    const value = { ...(pulse.content.value as object), perMinute: 70 };
    const computedBy = { ...(pulse.content.computedBy as object), program: 'another 1.0' };
    expect(await problemsOf({ ...pulse, content: { ...pulse.content, value, computedBy } })).toEqual([
      '/entries/0/content/value/perMinute contradicts',
    ]);
    expect(await problemsOf({ ...pulse, content: { ...pulse.content, computedBy } })).toBe(201);
  });

  test('an amendment may come with what it amends, in either order', async () => {
    const old = clinic.pulse(person, 66, 30);
    const right = clinic.pulse(person, 61, 30, clinic.amending(old));
    expect(await problemsOf(right, old)).toBe(201);
  });

  test('problems of several entries come together, in their order', async () => {
    const none = '01950000-0000-7000-8000-000000000000';
    expect(
      await problemsOf(
        clinic.pulse(person, 19, 15, { agent: none }),
        clinic.pulse(none, 19, 15, { agent: none }),
        clinic.pulse(person, 19, 15, { amends: { entry: none, reason: 'duplicate', text: null } }),
      ),
    ).toEqual([
      '/entries/0/agent unknown-id',
      '/entries/1/person unknown-id',
      '/entries/1/agent unknown-id',
      '/entries/2/amends/entry unknown-id',
    ]);
  });

  test('nothing of all this was a fault of the program', () => {
    expect(clinic.faults).toEqual([]);
  });
});
