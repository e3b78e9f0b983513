import { projectChart, type StoredEntry } from '@evenfall/record';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { TEST_DATABASES, type TestDatabase } from '../database/testing.js';
import { HESTER, TestClinic } from '../testing/clinic.js';

describe.each(TEST_DATABASES)('the record on $kind', ({ open }) => {
  let database: TestDatabase;
  let clinic: TestClinic;
  beforeAll(async () => {
    database = await open();
    clinic = await TestClinic.open(database);
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  test('a person has two identifiers or is refused, beside the field', async () => {
    const lone = { name: 'Nobody Known (invented)', birthDate: null, number: null };
    const entry = clinic.personFrame({ ...lone, number: 'x' });
    const came = await clinic.send('POST', '/api/books/care/persons', { identity: lone, entry });
    expect(came.status).toBe(422);
    expect(came.body.problems).toMatchObject([{ field: '/identity/number', code: 'missing' }]);
  });

  test('a person sent twice is kept once; another person under the same id is a conflict', async () => {
    const entry = clinic.personFrame(HESTER);
    const first = await clinic.send('POST', '/api/books/care/persons', { identity: HESTER, entry });
    const again = await clinic.send('POST', '/api/books/care/persons', { identity: HESTER, entry });
    const other = { ...HESTER, name: 'Somebody Else (invented)' };
    const clash = await clinic.send('POST', '/api/books/care/persons', { identity: other, entry });
    expect([first.status, again.status, clash.status]).toEqual([201, 200, 409]);
    expect(again.body.entries[0]).toMatchObject({ id: entry.id, already: true });
    expect((await clinic.chart(entry.person ?? '')).body.identity).toEqual(HESTER);
  });

  test('a signed pulse stands in the chart with its evidence and range, and in the list', async () => {
    const person = await clinic.addPerson();
    // 19 beats in 15 s, clock at any moment, first beat called one: 76, over 72 and under 80 (conventions 5).
    const pulse = clinic.pulse(person, 19, 15);
    expect((await clinic.sign(pulse)).status).toBe(201);
    const { body } = await clinic.chart(person);
    const kept = body.entries.find(({ id }: { id: string }) => id === pulse.id);
    expect(kept.content.evidence.count).toMatchObject({ n: 19, windowSeconds: 15 });
    expect(kept.content.value).toMatchObject({ perMinute: 76, lowPerMinute: 72, highPerMinute: 80 });
    expect(kept.recordedAt).toMatch(/^\d{4}-\d\d-\d\dT/);
    const { body: list } = await clinic.send('GET', '/api/books/care/persons');
    const row = list.persons.find(({ id }: { id: string }) => id === person);
    expect(row.latest.pulse).toMatchObject({ entry: pulse.id, perMinute: 76 });
    expect(row.latest.breaths).toBeNull();
  });

  test('the same entries again are answered with what is kept, and kept once', async () => {
    const person = await clinic.addPerson();
    const pulse = clinic.pulse(person, 36, 30);
    const sent = await Promise.all(Array.from({ length: 8 }, () => clinic.sign(pulse)));
    expect(sent.filter(({ status }) => status === 201)).toHaveLength(1);
    expect(sent.filter(({ status }) => status === 200)).toHaveLength(7);
    expect(new Set(sent.map(({ body }) => body.entries[0].recordedAt)).size).toBe(1);
    const { body } = await clinic.chart(person);
    expect(body.entries.filter(({ id }: { id: string }) => id === pulse.id)).toHaveLength(1);
    const other = clinic.pulse(person, 37, 30, { id: pulse.id });
    expect((await clinic.sign(other)).status).toBe(409);
  });

  test('entries are kept all or none', async () => {
    const person = await clinic.addPerson();
    const good = clinic.pulse(person, 36, 30);
    const bad = clinic.pulse(person, 36, 30, { person: good.id });
    const came = await clinic.sign(good, bad);
    expect(came.status).toBe(422);
    expect(came.body.problems).toMatchObject([{ field: '/entries/1/person', code: 'unknown-id' }]);
    expect((await clinic.chart(person)).body.entries).toHaveLength(1);
  });

  test('a value that is not what its evidence gives is refused at its place', async () => {
    const person = await clinic.addPerson();
    const pulse = clinic.pulse(person, 19, 15);
    const value = { ...(pulse.content.value as object), perMinute: 73 };
    const came = await clinic.sign({ ...pulse, content: { ...pulse.content, value } });
    expect(came.status).toBe(422);
    expect(came.body.problems).toMatchObject([
      { field: '/entries/0/content/value/perMinute', code: 'contradicts' },
    ]);
  });

  test('a count that cannot be is refused: over 400 a minute (conventions 5)', async () => {
    const person = await clinic.addPerson();
    const pulse = clinic.pulse(person, 19, 15);
    const evidence = pulse.content.evidence as { count: object };
    const impossible = { ...evidence, count: { ...evidence.count, n: 101 } };
    const came = await clinic.sign({ ...pulse, content: { ...pulse.content, evidence: impossible } });
    expect(came.body.problems).toMatchObject([
      { field: '/entries/0/content/evidence/count/n', code: 'impossible' },
    ]);
  });

  test('an amendment leaves the old value readable; two that disagree are both kept', async () => {
    const person = await clinic.addPerson();
    const slip = clinic.pulse(person, 63, 30);
    await clinic.sign(slip);
    const first = clinic.pulse(person, 36, 30, clinic.amending(slip));
    const second = clinic.pulse(person, 35, 30, clinic.amending(slip));
    expect((await clinic.sign(first)).status).toBe(201);
    const once = projectChart((await clinic.chart(person)).body.entries as StoredEntry[]).rounds[0]
      ?.values[0];
    expect(once?.standing).toBe('amended');
    expect(once?.story.map(({ id }) => id)).toEqual([slip.id, first.id]);
    expect((await clinic.sign(second)).status).toBe(201);
    const twice = projectChart((await clinic.chart(person)).body.entries as StoredEntry[]).rounds[0]
      ?.values[0];
    expect(twice?.standing).toBe('contested');
    expect(twice?.current.map(({ id }) => id).sort()).toEqual([first.id, second.id].sort());
  });

  test('an amendment of what is not there, of another person or of another sign is refused', async () => {
    const [one, two] = [await clinic.addPerson(), await clinic.addPerson()];
    const pulse = clinic.pulse(one, 36, 30);
    await clinic.sign(pulse);
    const nothing = clinic.pulse(one, 36, 30, { amends: { entry: one, reason: 'typing-slip', text: null } });
    const elsewhere = clinic.pulse(two, 36, 30, clinic.amending(pulse));
    const asRound = clinic.frame('protocol-chosen', one, { version: null }, clinic.amending(pulse));
    for (const [frame, code] of [
      [nothing, 'unknown-id'],
      [elsewhere, 'contradicts'],
      [asRound, 'contradicts'],
    ] as const) {
      const came = await clinic.sign(frame);
      expect(came.body.problems).toMatchObject([{ field: '/entries/0/amends/entry', code }]);
    }
    const unexplained = clinic.pulse(one, 36, 30, {
      amends: { entry: pulse.id, reason: 'other', text: ' ' },
    });
    expect((await clinic.sign(unexplained)).body.problems).toMatchObject([
      { field: '/entries/0/amends/text' },
    ]);
  });

  test('entered in error keeps the value and takes it off the list', async () => {
    const person = await clinic.addPerson();
    const pulse = clinic.pulse(person, 44, 30);
    await clinic.sign(pulse);
    const error = clinic.frame(
      'entered-in-error',
      person,
      { note: null },
      clinic.amending(pulse, 'wrong-person'),
    );
    expect((await clinic.sign(error)).status).toBe(201);
    const entries = (await clinic.chart(person)).body.entries as StoredEntry[];
    expect(projectChart(entries).rounds[0]?.values[0]).toMatchObject({
      standing: 'entered-in-error',
      current: [],
    });
    expect(entries.find(({ id }) => id === pulse.id)?.content).toMatchObject({ value: { perMinute: 88 } });
    const { body } = await clinic.send('GET', '/api/books/care/persons');
    expect(body.persons.find(({ id }: { id: string }) => id === person).latest.pulse).toBeNull();
  });

  test('a mark “entered in error” is taken back by a value of the same sign, and by nothing else', async () => {
    const person = await clinic.addPerson();
    const pulse = clinic.pulse(person, 44, 30);
    await clinic.sign(pulse);
    const mark = clinic.frame(
      'entered-in-error',
      person,
      { note: null },
      clinic.amending(pulse, 'wrong-person'),
    );
    await clinic.sign(mark);
    const again = clinic.frame('entered-in-error', person, { note: null }, clinic.amending(mark, 'other'));
    expect(
      (await clinic.sign({ ...again, amends: { entry: mark.id, reason: 'duplicate', text: null } })).status,
    ).toBe(422);
    const back = clinic.pulse(person, 44, 30, clinic.amending(mark, 'wrong-person'));
    expect((await clinic.sign(back)).status).toBe(201);
    const [value] =
      projectChart((await clinic.chart(person)).body.entries as StoredEntry[]).rounds[0]?.values ?? [];
    expect(value).toMatchObject({ standing: 'amended', current: [{ id: back.id }] });
    expect(value?.story.map(({ id }) => id)).toEqual([pulse.id, mark.id, back.id]);
  });

  test('a value names the preset of the protocol it was made under', async () => {
    const person = await clinic.addPerson();
    const pulse = clinic.pulse(person, 44, 30);
    const computedBy = { ...(pulse.content.computedBy as object), preset: 'full-minute' };
    const came = await clinic.sign({ ...pulse, content: { ...pulse.content, computedBy } });
    expect(came.body.problems).toMatchObject([
      { field: '/entries/0/content/computedBy/preset', code: 'contradicts' },
    ]);
  });

  test('a signing names what it signs: entries of its own person, round and sign', async () => {
    const [person, other] = [await clinic.addPerson(), await clinic.addPerson()];
    const [round, elsewhere] = [v7(), v7()];
    const pulse = clinic.pulse(person, 36, 30, { round });
    const foreign = clinic.pulse(other, 36, 30, { round });
    const stray = clinic.pulse(person, 36, 30, { round: elsewhere });
    await clinic.sign(foreign, stray);
    const signing = (sign: string, entry: string, protocolVersion: string | null = null) =>
      clinic.frame(
        'round',
        person,
        { status: 'final', signs: [{ sign, entries: [entry] }], protocolVersion, note: null },
        { round },
      );
    const field = '/entries/1/content/signs/0/entries/0';
    for (const [sign, entry] of [
      ['pulse', foreign.id],
      ['pulse', stray.id],
      ['pulse', v7()],
      ['breaths', pulse.id],
    ] as const) {
      const came = await clinic.sign(pulse, signing(sign, entry));
      expect(came.body.problems, `${sign} ${entry}`).toMatchObject([
        { field, code: 'unknown-id', got: entry },
      ]);
    }
    const unkept = await clinic.sign(pulse, signing('pulse', pulse.id, 'nonsense'));
    expect(unkept.body.problems).toMatchObject([
      { field: '/entries/1/content/protocolVersion', code: 'unknown-id' },
    ]);
    expect((await clinic.sign(pulse, signing('pulse', pulse.id))).status).toBe(201);
    // What comes later under the same round was not signed by it, and the chart says so.
    const late = clinic.pulse(person, 40, 30, { round });
    expect((await clinic.sign(late)).status).toBe(201);
    const [shown] = projectChart((await clinic.chart(person)).body.entries as StoredEntry[]).rounds.filter(
      ({ id }) => id === round,
    );
    expect(shown?.unsigned).toEqual([late.id]);
  });

  test('a rate by hand never stands over a count that was broken off', async () => {
    const person = await clinic.addPerson();
    const pulse = clinic.pulse(person, 36, 30);
    const { count, circumstances } = pulse.content.evidence as {
      count: { n: number };
      circumstances: object;
    };
    const { n: _, ...start } = count;
    const broken = { ...start, interrupted: { atSeconds: 12, reason: 'called-away' } };
    const override = { perMinute: 90, reason: 'felt so' };
    const came = await clinic.sign({
      ...pulse,
      content: { ...pulse.content, evidence: { rateTyped: null, count: broken, circumstances }, override },
    });
    expect(came.body.problems.map(({ field: at }: { field: string }) => at)).toContain(
      '/entries/0/content/override',
    );
  });

  test('a learner’s value is preliminary in the list until it is countersigned', async () => {
    const person = await clinic.addPerson();
    const round = v7();
    const pulse = clinic.pulse(person, 36, 30, { round });
    const content = {
      status: 'preliminary',
      signs: [{ sign: 'pulse', entries: [pulse.id] }],
      protocolVersion: null,
      note: null,
    };
    await clinic.sign(pulse, clinic.frame('round', person, content, { round }));
    const { body } = await clinic.send('GET', '/api/books/care/persons');
    expect(body.persons.find(({ id }: { id: string }) => id === person).latest.pulse).toMatchObject({
      perMinute: 72,
      preliminary: true,
    });
  });

  test('the three books never mix', async () => {
    const person = await clinic.addPerson();
    const pulse = clinic.pulse(person, 36, 30);
    await clinic.sign(pulse);
    await clinic.beginClass();
    for (const book of ['class', 'simulated'] as const) {
      expect((await clinic.chart(person, book)).status).toBe(404);
      const crossed = await clinic.sign(clinic.pulse(person, 36, 30, { book }));
      expect(crossed.body.problems).toMatchObject([{ field: '/entries/0/person', code: 'unknown-id' }]);
      const other = await clinic.addPerson(HESTER, book);
      const amends = await clinic.sign(clinic.pulse(other, 36, 30, { ...clinic.amending(pulse), book }));
      expect(amends.body.problems).toMatchObject([{ field: '/entries/0/amends/entry', code: 'unknown-id' }]);
    }
  });

  test('an identity put right keeps both versions apart from the entries; erased, it leaves a record that it was', async () => {
    const person = await clinic.addPerson();
    const right = { ...HESTER, birthDate: '1962-02-28' };
    const path = `/api/books/care/persons/${person}/identity`;
    const corrected = clinic.frame('identity-corrected', person, { changed: ['birthDate'] });
    expect((await clinic.send('PUT', path, { identity: right, entry: corrected })).status).toBe(201);
    expect((await clinic.chart(person)).body.identity).toEqual(right);
    await clinic.sign(clinic.pulse(person, 36, 30));

    const erased = clinic.frame('identity-erased', person, { reason: 'asked to be erased' });
    expect((await clinic.send('DELETE', path, { entry: erased })).status).toBe(201);
    expect((await clinic.send('DELETE', path, { entry: erased })).status).toBe(200);
    const { body, text } = await clinic.chart(person);
    expect(body.identity).toBeNull();
    expect(text).not.toContain('Quillfeather');
    const kinds = body.entries.map(({ kind }: { kind: string }) => kind).sort();
    expect(kinds).toEqual(['count', 'identity-corrected', 'identity-erased', 'person']);
    const kept = await clinic.db.selectFrom('identity').selectAll().where('person', '=', person).execute();
    expect(kept).toEqual([]);
  });

  test('an identity erased while corrections arrive stays erased', async () => {
    for (let time = 0; time < 12; time += 1) {
      const person = await clinic.addPerson();
      const path = `/api/books/care/persons/${person}/identity`;
      const correct = () => {
        const entry = clinic.frame('identity-corrected', person, { changed: ['name'] });
        return clinic.send('PUT', path, { identity: { ...HESTER, name: 'Other Quillfeather' }, entry });
      };
      const erase = clinic.send('DELETE', path, {
        entry: clinic.frame('identity-erased', person, { reason: 'asked to be erased' }),
      });
      const came = await Promise.all([correct(), erase, correct()]);
      expect(came.map(({ status }) => status).every((status) => [201, 422].includes(status))).toBe(true);
      expect((await erase).status).toBe(201);
      expect((await clinic.chart(person)).body.identity).toBeNull();
    }
  });

  test('an older schema number is read, a newer one is refused by name', async () => {
    const person = await clinic.addPerson();
    const came = await clinic.sign({ ...clinic.pulse(person, 36, 30), schema: 99 });
    expect(came.status).toBe(422);
    expect(came.body.problems).toMatchObject([
      { field: '/entries/0/schema', code: 'unknown-id', got: 'count 99' },
    ]);
  });

  test('the database itself refuses to change, delete or empty what is kept', async () => {
    const person = await clinic.addPerson();
    await clinic.sign(clinic.pulse(person, 36, 30));
    const { rows } = await database.pool.query('select count(*)::int as n from entry');
    for (const sql of [
      "update entry set content = '{}'",
      'delete from entry',
      'truncate entry cascade',
      'delete from person',
      "update identity set content = '{}'",
    ]) {
      await expect(database.pool.query(sql), sql).rejects.toThrow(/a correction is an amendment/);
    }
    expect((await database.pool.query('select count(*)::int as n from entry')).rows).toEqual(rows);
  });

  test('nothing of all this was a fault of the program', () => {
    expect(clinic.faults).toEqual([]);
  });
});
