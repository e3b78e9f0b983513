import type { EntryFrame } from '@evenfall/record';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { HESTER, TestClinic } from '../testing/clinic.js';

/** Entries of one book; more than two pages of 500, which backup, check and restore read and write by. */
const IN_CARE = 1200;
const IN_PRACTICE = 300;

describe('a record of many pages', () => {
  let source: TestDatabase;
  let clinic: TestClinic;
  let backup: string;

  async function signAll(frames: readonly EntryFrame[]): Promise<void> {
    for (let from = 0; from < frames.length; from += 200) {
      const came = await clinic.sign(...frames.slice(from, from + 200));
      if (came.status !== 201) throw new Error(came.text);
    }
  }

  beforeAll(async () => {
    source = await openMemory();
    clinic = await TestClinic.open(source);
    const person = await clinic.addPerson();
    const learner = await clinic.addPerson(HESTER, 'simulated');
    // Each amends the one before it, so that a page and a batch end between an amendment and what it amends.
    const chain: EntryFrame[] = [clinic.pulse(person, 19, 15)];
    while (chain.length < IN_CARE - 1)
      chain.push(clinic.pulse(person, 20, 15, clinic.amending(chain.at(-1) as EntryFrame)));
    await signAll(chain);
    await signAll(
      Array.from({ length: IN_PRACTICE - 1 }, () => clinic.pulse(learner, 18, 15, { book: 'simulated' })),
    );
    backup = (await clinic.send('GET', '/control/backup')).text;
  }, 120_000);
  afterAll(async () => {
    await source.close();
  });

  const entriesIn = (text: string): string[] =>
    text
      .split('\n')
      .flatMap((line) => (line.startsWith('{"line":"entry"') ? [JSON.parse(line).entry.id] : []));

  test('is checked whole, each entry once', async () => {
    expect((await clinic.send('GET', '/control/check')).body).toEqual({
      entries: IN_CARE + IN_PRACTICE,
      values: IN_CARE + IN_PRACTICE - 2,
      findings: [],
    });
  });

  test('is backed up whole, each entry once', () => {
    const ids = entriesIn(backup);
    expect(ids).toHaveLength(IN_CARE + IN_PRACTICE);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('is restored whole, and gives the same backup again', async () => {
    const target = await openMemory();
    try {
      const empty = await TestClinic.open(target, { agent: false });
      const came = await empty.send('POST', '/control/restore', backup);
      expect(came.body.lines).toMatchObject({ entry: IN_CARE + IN_PRACTICE, person: 2, agent: 1 });
      const again = (await empty.send('GET', '/control/backup')).text;
      expect(entriesIn(again)).toEqual(entriesIn(backup));
      expect((await empty.send('GET', '/control/check')).body.findings).toEqual([]);
      expect(empty.faults).toEqual([]);
    } finally {
      await target.close();
    }
  }, 120_000);
});
