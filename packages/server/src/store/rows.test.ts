import type { EntryFrame } from '@evenfall/record';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';
import { contentHash } from './canonical.js';
import { entryOf, frameOf, rowOf } from './rows.js';

describe('an entry in its row', () => {
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

  async function keptRow(entry: EntryFrame) {
    const came = await clinic.sign(entry);
    if (came.status !== 201) throw new Error(came.text);
    return await clinic.db
      .selectFrom('entry')
      .selectAll()
      .where('id', '=', entry.id)
      .executeTakeFirstOrThrow();
  }

  test.each<[string, Partial<EntryFrame>]>([
    ['with everything usual', {}],
    [
      'measured in another zone, to the tenth of a millisecond',
      {
        measuredAt: { at: '2026-11-25T13:00:00.1234+05:30', zone: 'Asia/Kolkata', asEntered: '1 pm' },
      },
    ],
    [
      'measured before clocks had zones',
      {
        measuredAt: { at: '1883-11-18T12:00:00-04:56', zone: 'America/New_York', asEntered: null },
      },
    ],
    ['with the largest sequence number there is', { sequence: Number.MAX_SAFE_INTEGER }],
    ['in a round', { round: '01950000-0000-7000-8000-00000000abcd' }],
  ])('comes back as it was sent: %s', async (_, more) => {
    const sent = clinic.pulse(person, 19, 15, more);
    const row = await keptRow(sent);
    expect(frameOf(row)).toEqual(sent);
    expect(contentHash(frameOf(row))).toBe(row.sha256);
    expect(entryOf(row)).toEqual({ ...sent, recordedAt: row.recorded_at.toISOString() });
    expect(row.measured_at.getTime()).toBe(Date.parse(sent.measuredAt.at));
  });

  test('keeps every double of its content to the last bit', async () => {
    const seconds = [0, 0.1 + 0.2, 1 / 3 + 1, 2.0000000000000004, 2.9999999999999996];
    const sent = clinic.taps(person, seconds);
    expect(frameOf(await keptRow(sent))).toEqual(sent);
  });

  test('keeps an amendment with its reason and text', async () => {
    const old = clinic.pulse(person, 66, 30);
    await clinic.sign(old);
    const amends = { entry: old.id, reason: 'other' as const, text: 'the watch had stopped' };
    const sent = clinic.pulse(person, 61, 30, { amends });
    expect(frameOf(await keptRow(sent)).amends).toEqual(amends);
  });

  test('throws rather than guess where a row cannot be read, and names no value', async () => {
    const row = await keptRow(clinic.pulse(person, 19, 15));
    const newer = { ...row, schema: 3 };
    expect(() => entryOf(newer)).toThrow(`entry ${row.id} (count 3) cannot be read: /schema: unknown-id`);
    const damaged = { ...row, content: { note: 'private words' } };
    expect(() => entryOf(damaged)).toThrow(/\/content\/evidence: missing/);
    expect(() => entryOf(damaged)).not.toThrow(/private/);
  });

  test('has the text of the instant beside the instant, since the offset of then is in the text alone', () => {
    const row = rowOf('s', clinic.pulse(person, 19, 15), 'x');
    expect([row.measured_at, row.measured_text]).toEqual([
      '2026-11-25T09:30:00+00:00',
      '2026-11-25T09:30:00+00:00',
    ]);
  });
});
