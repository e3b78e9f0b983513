import { NOTHING_CHOSEN } from '@evenfall/record';
import { inferSchema, initParser } from 'udsv';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { H1, homeEvidence, seriesContentOf } from '../../../record/src/testing/series.js';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { HESTER, TestClinic } from '../testing/clinic.js';

// What the cells say is in the exchange package; here is what a browser is handed.
describe('a chart as a file', () => {
  let database: TestDatabase;
  let clinic: TestClinic;
  beforeAll(async () => {
    database = await openMemory();
    clinic = await TestClinic.open(database);
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  const exported = (person: string, book = 'care', query = '?identity=with') =>
    clinic.send('GET', `/api/books/${book}/persons/${person}/export${query}`);

  test('is CSV with a heading (RFC 4180 section 3), of one row for each value', async () => {
    const person = await clinic.addPerson({ ...HESTER, name: '=HYPERLINK("x")' });
    const slip = clinic.pulse(person, 66, 30);
    await clinic.sign(slip);
    await clinic.sign(clinic.pulse(person, 61, 30, clinic.amending(slip)));
    const came = await exported(person);
    expect(came.status).toBe(200);
    expect(came.headers.get('content-type')).toBe('text/csv; charset=utf-8; header=present');
    const rows: string[][] = initParser(inferSchema(came.text)).stringArrs(came.text);
    expect(rows).toHaveLength(2);
    expect(rows.map((cells) => cells[3])).toEqual([`'=HYPERLINK("x")`, `'=HYPERLINK("x")`]);
    expect((await exported(person, 'care', '?as=csv&identity=with')).text).toBe(came.text);
  });

  // Week H1 of the out-of-office handbook 19: 28 readings, a mean of 136.5833/84.9583 without the first day.
  test('of somebody with nothing but a series has a row for each reading and lines of text, and no round', async () => {
    const person = await clinic.addPerson();
    const empty = ['csv', 'text', 'fhir'].map(async (as) => await exported(person, 'care', `?as=${as}`));
    const said = (await Promise.all(empty)).map(({ headers }) => headers.get('evenfall-empty'));
    expect(said).toEqual(['true', 'true', 'false']);
    const week = seriesContentOf(homeEvidence(H1), NOTHING_CHOSEN);
    await clinic.sign(clinic.frame('series', person, week, { round: v7() }));
    const table = await exported(person, 'care', '?as=csv');
    expect(table.text.trimEnd().split('\r\n')).toHaveLength(1 + 28);
    expect(table.headers.get('evenfall-empty')).toBe('false');
    const text = await exported(person, 'care', '?as=text&template=line');
    expect(text.text).toMatch(/^Readings at home, 2026-07-01 to 2026-07-07\.\nMean 137\/85 mmHg\. /);
    expect(text.headers.get('evenfall-empty')).toBe('false');
    const named = await exported(person, 'care', '?as=text&identity=with');
    expect(named.text).toMatch(/^Hester Quillfeather \(invented\), 1961-02-28, INV-77\n\nReadings at home/);
    // Beside a round, which comes first.
    const round = v7();
    const pulse = clinic.pulse(person, 66, 30, { round });
    const signs = [{ sign: 'pulse', entries: [pulse.id] }];
    const signed = { status: 'final', signs, protocolVersion: null, note: null };
    await clinic.sign(pulse, clinic.frame('round', person, signed, { round }));
    const both = (await exported(person, 'care', '?as=text&template=line')).text.split('\n\n');
    expect(both).toEqual([expect.stringContaining('pulse 132'), expect.stringMatching(/^Readings at home/)]);
  });

  test('says who it is only where that is asked for', async () => {
    const person = await clinic.addPerson({ ...HESTER, name: 'Perpetua (invented)' });
    await clinic.sign(clinic.pulse(person, 66, 30));
    expect((await exported(person)).text).toContain('Perpetua');
    expect((await exported(person, 'care', '')).text).not.toContain('Perpetua');
    expect((await exported(person, 'care', '')).text).not.toContain('INV-77');
  });

  test('is a file to keep, named by the id and never by who it is, and kept by no cache', async () => {
    const person = await clinic.addPerson();
    const { headers } = await exported(person);
    expect(headers.get('content-disposition')).toBe(`attachment; filename="evenfall-${person}.csv"`);
    expect(headers.get('cache-control')).toBe('no-store');
  });

  // Conventions 9: on every page and file, so also on one that has no row to say it.
  test.each([
    ['class', 'CLASS'],
    ['simulated', 'SIMULATED'],
  ] as const)('of the %s book says so in its name, also when it has no row', async (book, notice) => {
    const person = await clinic.addPerson(HESTER, book);
    const came = await exported(person, book);
    expect(came.text.trimEnd().split('\r\n')).toHaveLength(1);
    expect(came.headers.get('content-disposition')).toBe(
      `attachment; filename="evenfall-${notice}-${person}.csv"`,
    );
  });

  test('in another form is refused', async () => {
    const person = await clinic.addPerson();
    const came = await exported(person, 'care', '?as=pdf');
    expect(came.status).toBe(422);
    expect(came.body.problems).toMatchObject([{ field: '/query/as', code: 'unknown-id', got: 'pdf' }]);
  });
});
