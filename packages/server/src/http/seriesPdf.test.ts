import {
  NO_ROUND_FACTS,
  type Presets,
  presetProtocol,
  protocolDocument,
  protocolVersion,
  type SeriesReading,
} from '@evenfall/clinical';
import {
  type InForce,
  inForceUnder,
  PROGRAM,
  type SeriesEvidence,
  type SeriesReadingKept,
  seriesMade,
  withSleep,
} from '@evenfall/record';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { A1, H1 } from '../../../clinical/src/outOfOffice/testing.js';
import { readPdf } from '../../../report/testing/pdfText.js';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { HESTER, TestClinic } from '../testing/clinic.js';

let database: TestDatabase;
let clinic: TestClinic;
beforeAll(async () => {
  database = await openMemory();
  clinic = await TestClinic.open(database);
}, 60_000);
afterAll(async () => {
  await database.close();
});

/** 3 March 2025, the first day of the invented series. */
const FIRST_DAY_MS = Date.UTC(2025, 2, 3);
let person: string;

function kept({ atMs, systolic, diastolic, pulse }: SeriesReading): SeriesReadingKept {
  const at = new Date(FIRST_DAY_MS + atMs).toISOString();
  return {
    at: { at, zone: 'Europe/Lisbon', asEntered: null },
    systolic,
    diastolic,
    pulse,
    asleep: null,
    part: null,
    site: 'upper-arm',
    arm: 'left',
    note: null,
    device: null,
    line: null,
    how: 'file',
    irregular: null,
    clock: null,
    mended: null,
    startedByHand: null,
  };
}

async function signed(
  presets: Partial<Presets>,
  readings: readonly SeriesReading[],
  more: Partial<SeriesEvidence>,
) {
  const protocol = presetProtocol(presets);
  if (!protocol.ok) throw new Error(JSON.stringify(protocol.refusals));
  await clinic.send('POST', '/api/protocols', { content: protocolDocument(protocol.value) });
  const evidence = {
    of: 'home' as const,
    status: 'final' as const,
    diary: null,
    readings: readings.map(kept),
    refused: [{ line: 30, got: 'x;y', code: 'not-a-number', systolic: null, diastolic: null }],
    asleep: null,
    nap: null,
    scheduled: null,
    treated: false,
    features: null,
    facts: { ...NO_ROUND_FACTS, arms: [] },
    note: null,
    ...more,
  };
  const content = seriesMade(
    evidence,
    inForceUnder(protocol.value, protocolVersion(protocol.value)),
    PROGRAM,
  );
  const entry = clinic.frame('series', person, content, { round: v7() });
  expect((await clinic.sign(entry)).status).toBe(201);
  return entry.id;
}

const asked = (series: string, query = '', of = person) =>
  clinic.send('GET', `/api/books/care/persons/${of}/series/${series}/pdf${query}`);

describe('a series as a PDF', () => {
  beforeEach(async () => {
    person = await clinic.addPerson(HESTER);
  });

  // The numbers of H1 by ISH 2020 and of A1 by its diary: out-of-office handbook 19.
  test('has the numbers of the week, who it is, the rule set, the refused row and every reading', async () => {
    const came = await asked(await signed({ home: 'ish-2020' }, H1, {}), '?locale=en-GB');
    expect([came.status, came.headers.get('content-type')]).toEqual([200, 'application/pdf']);
    expect(came.headers.get('cache-control')).toBe('no-store');
    const { pages } = readPdf(came.bytes);
    for (const wanted of [
      HESTER.name as string,
      '136.58',
      '84.96',
      '24 of 28 readings',
      'ish-2020',
      'Europe/Lisbon',
    ])
      expect(pages[0]).toContain(wanted);
    for (const wanted of [HESTER.name as string, '152', 'x;y', '3 Mar 2025'])
      expect(pages[1]).toContain(wanted);
  });

  test('says what a hand decided and why, and the mean moves by it', async () => {
    const series = await signed({ home: 'ish-2020' }, H1, {});
    const content = { series, decision: 'out', indexes: [5], reason: 'talked during it' };
    expect((await clinic.sign(clinic.frame('series-decided', person, content))).status).toBe(201);
    const { pages } = readPdf((await asked(series)).bytes);
    expect(pages[0]).toContain('23 of 28 readings');
    // (24 x 136.5833 - 141) / 23.
    expect(pages[0]).toContain('136.39');
    expect(pages[1]).toContain('Left out. Taken out by hand. Reason: talked during it');
    expect(pages[1]?.match(/Taken out by hand/g)).toHaveLength(1);
  });

  test('says about when a time was nobody’s, that no medicine was taken, and the means of days as the screen does', async () => {
    const about = H1.map(kept).map((one, place) =>
      place < 2 ? { ...one, at: { ...one.at, asEntered: '~07:30' } } : one,
    );
    const came = await asked(await signed({ home: 'ish-2020' }, H1, { readings: about, note: 'Slept badly' }), '?locale=en-GB'); // biome-ignore format: one thought
    const { pages } = readPdf(came.bytes);
    expect(pages[0]).toContain('None for the pressure then');
    expect(pages[0]).toContain('Note: “Slept badly”.');
    // Means of days of H1: out-of-office handbook 19.
    expect(pages[0]).toMatch(/137\.0\/\d+\.\d/);
    expect(pages[0]).toMatch(/135\.5\/\d+\.\d/);
    // A sitting is typed with one time: the minute that keeps its second reading after the first is shown nowhere.
    expect(pages[1]).toMatch(/about 3 Mar 2025 07:30\s.*about 3 Mar 2025 07:30,\s+second\s+reading/s);
    expect(pages[1]?.match(/about 3 Mar 2025/g)).toHaveLength(2);
    expect(pages[1]).not.toContain('3 Mar 2025 07:31');
    const known = await signed({ home: 'ish-2020' }, H1.map((one) => ({ ...one, atMs: one.atMs + 30 * 86_400_000 })), { treated: null }); // biome-ignore format: one thought
    expect(readPdf((await asked(known)).bytes).pages[0]).not.toContain('for the pressure then');
  });

  // Limits: bedside handbook 3.16 (180 or 120) and 5.2 (pulse 131 or more).
  test('says what is to be acted on once, each reading with all of it, with the source and that it is confirmed locally', async () => {
    const [first, ...others] = H1.map(kept);
    const readings = [
      { ...(first as SeriesReadingKept), systolic: 196, diastolic: 122, pulse: 147 },
      ...others,
    ];
    const page = readPdf((await asked(await signed({ home: 'ish-2020' }, H1, { readings }), '?locale=en-GB')).bytes).pages[0] ?? ''; // biome-ignore format: one thought
    const text = page.replace(/\s+/g, ' ');
    expect(text.match(/196\/122, pulse 147 \(3 Mar \d\d:\d\d\): /g)).toHaveLength(1);
    expect(text.match(/can be an emergency|is severe/g)).toHaveLength(1);
    expect(text).toMatch(/A pulse of 147 .* count again\. Royal College of Physicians 2017/);
    expect(text).toContain('NICE NG136. Confirm with your local protocol.');
    // The row that could not be read is counted once.
    expect(text.match(/could not be read/g)).toHaveLength(1);
  });

  // Out-of-office handbook 18: hand-typed readings are marked; 2: who writes readings by hand alters or leaves out some.
  test('says which readings were typed from paper: that all were once, else each in the list', async () => {
    const typed = (is: (place: number) => boolean) =>
      H1.map(kept).map((one, place) => ({ ...one, how: is(place) ? ('typed' as const) : one.how }));
    const page = async (is: (place: number) => boolean) => {
      person = await clinic.addPerson(HESTER);
      const series = await signed({ home: 'ish-2020' }, H1, { readings: typed(is) });
      return readPdf((await asked(series, '?locale=en-GB')).bytes).pages;
    };
    const all = await page(() => true);
    expect(all[0]).toContain('Every reading was typed from paper.');
    expect(all[1]).not.toContain('typed from paper');
    const two = await page((place) => place === 8 || place === 9);
    expect(two[0]).not.toContain('typed from paper');
    expect(two[1]?.match(/typed from paper/g)).toHaveLength(2);
    expect((await page(() => false)).join(' ')).not.toContain('typed from paper');
  });

  test('says what was answered when the signs of an emergency were asked for, and nothing where nobody asked', async () => {
    const page = async (features: SeriesEvidence['features']) => {
      person = await clinic.addPerson(HESTER);
      const series = await signed({ home: 'ish-2020' }, H1, { features });
      return readPdf((await asked(series, '?locale=en-GB')).bytes).pages[0];
    };
    expect(await page([])).toContain('Asked: none of the emergency features.');
    const said = await page(['chest-or-back-pain']);
    expect(said).toMatch(/Asked: .*chest/i);
    expect(said).not.toContain('none of the emergency');
    expect(await page(null)).not.toContain('Asked:');
  });

  test('says whom somebody told of what was to be acted on, when and what was said back, and who brought it in', async () => {
    const [first, ...others] = H1.map(kept);
    const readings = [{ ...(first as SeriesReadingKept), systolic: 196, diastolic: 122 }, ...others];
    const series = await signed({ home: 'ish-2020' }, H1, { readings });
    const page = async () =>
      (readPdf((await asked(series, '?locale=en-GB')).bytes).pages[0] ?? '').replace(/\s+/g, ' ');
    expect(await page()).toMatch(/Act first.*196\/122/);
    expect(await page()).toMatch(/Number: \S+/);
    const { entries } = (await clinic.send('GET', `/api/books/care/persons/${person}`)).body;
    const { round, content } = entries.find(({ id }: { id: string }) => id === series);
    const closed = {
      conditions: content.value.actNow.map(({ condition }: { condition: string }) => condition),
      toldWhom: 'Dr Abara (invented)',
      toldAt: { at: '2025-03-10T09:05:00Z', zone: 'UTC', asEntered: null },
      saidBack: 'she comes at eleven',
    };
    const sent = await clinic.sign(clinic.frame('act-now-closed', person, closed, { round }));
    expect([sent.status, sent.body.problems]).toEqual([201, undefined]);
    const text = await page();
    expect(text).toMatch(
      /To act on first: closed .*Dr Abara \(invented\), 10 Mar 2025,? 09:05\. .*she comes at eleven.*196\/122.*Result/,
    );
    expect(text).toMatch(/Signed Brought in by .+, \d+ \w+ \d{4} \d\d:\d\d\./);
  });

  test("says who countersigned a learner's series and when, and nothing of it before", async () => {
    const series = await signed({ home: 'ish-2020' }, H1, { status: 'preliminary' });
    const page = async () => readPdf((await asked(series, '?locale=en-GB')).bytes).pages[0];
    expect(await page()).not.toContain('Countersigned.');
    const agent = v7();
    await clinic.send('POST', '/api/agents', { id: agent, name: 'Bram (invented)' });
    const { entries } = (await clinic.send('GET', `/api/books/care/persons/${person}`)).body;
    const { round } = entries.find(({ id }: { id: string }) => id === series);
    const content = { signing: series, agrees: true, ownRound: null, note: 'Went through it together' };
    const entry = clinic.frame('countersigned', person, content, { round, role: 'supervisor', agent });
    expect((await clinic.sign(entry)).status).toBe(201);
    expect(await page()).toMatch(
      /Countersigned\. Bram \(invented\), supervisor, \d+ \w+ \d{4} \d\d:\d\d: “Went through it together”/,
    );
  });

  // Out-of-office handbook 14 and 19: left out unless asked for; A1 printed 0.2134, symmetric 0.2111.
  test('of a recording has the stiffness index where it is asked for, and what it is worth', async () => {
    const series = await signed({ ambulatory: 'nice-ng136' }, A1, { of: 'ambulatory', scheduled: 40 });
    const page = async (query: string) =>
      (readPdf((await asked(series, query)).bytes).pages[0] ?? '').replace(/\s+/g, ' ');
    expect(await page('')).not.toContain('Stiffness');
    const page1 = await page('?stiffness=with');
    expect(page1).toContain('0.21, symmetric 0.21');
    expect(page1).toContain('does not measure stiffness accurately');
    // Out-of-office handbook 8.1: the targets of NICE by age; nobody knows this one's.
    expect(page1).toContain('Treatment target');
    expect(page1).toMatch(/under 135\/85 mmHg at an age under 80.*under 145\/85 mmHg from the age of 80 on/s);
  });

  test('of a recording has each period, the fall by night, and the chance about the limit of day', async () => {
    const came = await asked(
      await signed({ ambulatory: 'esc-2024' }, A1, {
        of: 'ambulatory',
        asleep: { from: 23 * 60, to: 7 * 60 },
        scheduled: 40,
      }),
    );
    const { pages } = readPdf(came.bytes);
    for (const wanted of [
      '137.31',
      '86.03',
      '115.13',
      '68.5',
      '16.2 %',
      '135',
      'under the stated assumptions',
    ])
      expect(pages.join('\n')).toContain(wanted);
    // A1: combined load 60 %; mean arterial and pulse pressure by Python's `statistics`, to the digits shown.
    const [first = ''] = pages;
    expect(first).toMatch(/Pulse pressure\s+50\s+50\.35\s+2\.2\s+45\s+54/);
    expect(first).toMatch(/Mean arterial\s+99\s+99\.31\s+8\.7\s+79\s+110/);
    expect(first).toMatch(/109\s+146\s+60/);
  });

  // A1 of the out-of-office handbook 19 by two windows: 22-06 has 9 asleep readings (117.2222/70.1111), 23-07 has 8 (115.1250/68.5000).
  test('of a recording whose sleep was put right has the new night, and says who did it, from what and why; check stays green', async () => {
    const hours = (from: number, to: number) => ({ from: from * 60, to: to * 60 });
    const wrong = { of: 'ambulatory' as const, asleep: hours(22, 6), scheduled: 40 };
    const series = await signed({ ambulatory: 'esc-2024' }, A1, wrong);
    const page = async () => readPdf((await asked(series, '?locale=en-GB')).bytes).pages.join('\n');
    expect(await page()).toContain('117.22');
    const record = async () => (await clinic.send('GET', `/api/books/care/persons/${person}`)).body.entries;
    const [old] = (await record()).filter(({ id }: { id: string }) => id === series);
    const amended = (inForce: InForce, bent = {}) => {
      const content = { ...seriesMade(withSleep(old.content, { asleep: hours(23, 7), nap: null }), inForce, PROGRAM), ...bent }; // biome-ignore format: one thought
      const amends = { entry: series, reason: 'other' as const, text: 'the diary came later' };
      return clinic.frame('series', person, content, { round: old.round, amends });
    };
    const protocol = presetProtocol({ ambulatory: 'esc-2024' });
    if (!protocol.ok) throw new Error('a preset');
    const rules = inForceUnder(protocol.value, protocolVersion(protocol.value));
    // The new hours with the value of the old ones are refused: the server makes it again.
    const { status, body } = await clinic.sign(amended(rules, { value: old.content.value }));
    expect([status, body.problems[0].code]).toEqual([422, 'contradicts']);
    expect((await clinic.sign(amended(rules))).status).toBe(201);
    const text = (await page()).replace(/\s+/g, ' ');
    expect(text).toContain('115.13');
    expect(text).not.toContain('117.22');
    expect(text).toMatch(
      /Sleep times put right by .+, \d+ \w+ \d{4} \d\d:\d\d: asleep 23:00-07:00; before that, asleep 22:00-06:00\. Reason: “the diary came later”/,
    );
    expect((await record()).find(({ id }: { id: string }) => id === series).content).toEqual(old.content);
    expect((await clinic.send('GET', '/control/check')).body.findings).toEqual([]);
  });

  // H1 without day 1 is 136.5833 and 12 lower 124.5833 (out-of-office handbook 19); two such means lie apart by an SD of 7.7 (17.1).
  test('beside another one is one sheet: both means, the difference and how sure it is, and what each rests on', async () => {
    const later = H1.map((one) => ({
      ...one,
      atMs: one.atMs + 60 * 86_400_000,
      systolic: (one.systolic ?? 0) - 12,
      diastolic: (one.diastolic ?? 0) - 8,
    }));
    const before = await signed({ home: 'ish-2020' }, H1, { note: 'none yet' });
    const after = await signed({ home: 'ish-2020' }, later, { treated: true, note: 'amlodipine 5 mg' });
    for (const [series, other] of [
      [before, after],
      [after, before],
    ] as const) {
      const came = await asked(series, `?locale=en-GB&beside=${other}`);
      expect(came.status).toBe(200);
      const { pages } = readPdf(came.bytes);
      expect(pages).toHaveLength(1);
      const text = (pages[0] ?? '').replace(/\s+/g, ' ');
      expect(text).toContain(HESTER.name as string);
      expect(text).toMatch(/Result −12\.0\/−8\.0 mmHg, later minus earlier/);
      expect(text).toMatch(/At home, 3 Mar 2025 to 9 Mar 2025.*At home, 2 May 2025 to 8 May 2025/);
      expect(text).toMatch(/Mean 137\/84\.96 125\/76\.96 −12\/−8\.00/);
      expect(text).toMatch(/24 readings on 6 days, 4 readings left out/);
      expect(text).toMatch(/“none yet”.*“amlodipine 5 mg”/);
      expect(text).toContain('ish-2020');
      // 1.96 x 7.7 = 15.1 to either side.
      expect(text).toMatch(
        /SD of 7\.7 mmHg\. .* of −12\.0 mmHg lies between −27\.1 and \+3\.1 with 95 of 100/,
      );
      expect(text).toContain('No change at all lies within that.');
    }
    expect((await asked(before, `?beside=${v7()}`)).status).toBe(404);
    expect((await asked(before, `?beside=${before}`)).status).toBe(404);
    expect((await asked(before, '?beside=x')).status).toBe(422);
  });

  test('beside another one is nothing that was entered in error, whichever of the two is opened; alone it says so', async () => {
    const later = H1.map((one) => ({ ...one, atMs: one.atMs + 60 * 86_400_000 }));
    const week = await signed({ home: 'ish-2020' }, H1, {});
    const slip = await signed({ home: 'ish-2020' }, later, {});
    expect((await asked(slip, `?beside=${week}`)).status).toBe(200);
    const amends = { entry: slip, reason: 'wrong-person' as const, text: null };
    const mark = clinic.frame('entered-in-error', person, { note: null }, { amends });
    expect((await clinic.sign(mark)).status).toBe(201);
    expect((await asked(slip, `?beside=${week}`)).status).toBe(404);
    expect((await asked(week, `?beside=${slip}`)).status).toBe(404);
    expect(readPdf((await asked(slip)).bytes).pages[0]).toContain('was entered in error');
  });

  // Out-of-office handbook 17.1 has such a spread of the awake systolic mean alone: it stands beside the mean by day.
  test('of two recordings says how sure the change by day is, and that of the means of 24 hours and night nothing is known', async () => {
    const of = { of: 'ambulatory' as const, asleep: { from: 23 * 60, to: 7 * 60 }, scheduled: 40 };
    const lower = A1.map((one) => ({
      ...one,
      atMs: one.atMs + 30 * 86_400_000,
      systolic: (one.systolic ?? 0) - (one.minuteOfDay >= 420 && one.minuteOfDay < 1380 ? 20 : 0),
    }));
    const before = await signed({ ambulatory: 'esc-2024' }, A1, of);
    const after = await signed({ ambulatory: 'esc-2024' }, lower, of);
    const { pages } = readPdf((await asked(after, `?locale=en-GB&beside=${before}`)).bytes);
    const text = pages.join(' ').replace(/\s+/g, ' ');
    expect(text).toMatch(/change by day of −20\.0 mmHg lies between −37\.\d and −2\.\d/);
    expect(text).toContain('No change at all lies outside that.');
    expect(text).toContain(
      'For the means of 24 hours and of the night, and for the diastolic, no such figure',
    );
    // Beside a week at home nothing stands large: the two are not alike.
    const week = await signed({ home: 'esc-2024' }, H1, {});
    const unlike = readPdf((await asked(after, `?locale=en-GB&beside=${week}`)).bytes).pages.join(' ');
    expect(unlike).toContain('The two are not alike');
    expect(unlike).not.toContain('mmHg, later minus earlier');
  });

  test('is in the language and on the paper asked for, named by its kind, its first day and its id and by nobody', async () => {
    const series = await signed({ home: 'esc-2024' }, H1, {});
    const came = await asked(series, '?paper=letter&locale=es-MX&dates=year-month-day&hours=12');
    const { pages, sizes, language } = readPdf(came.bytes);
    expect([sizes[0], language]).toEqual([[612, 792], 'es-MX']);
    expect(pages[0]).toContain('Presión arterial en casa');
    expect(pages[1]).toContain('2025-03-03 7:30 AM');
    expect(came.headers.get('content-disposition')).toBe(
      `attachment; filename="evenfall-home-2025-03-03-${series.slice(-8)}.pdf"`,
    );
    // Somebody else's week that began on the same day has another name.
    person = await clinic.addPerson();
    const other = await asked(await signed({ home: 'esc-2024' }, H1, {}));
    expect(other.headers.get('content-disposition')).not.toBe(came.headers.get('content-disposition'));
  });

  test('names somebody and has its numbers, whatever letters and digits are asked of the fonts', async () => {
    person = await clinic.addPerson({ ...HESTER, name: '山田' });
    const came = await asked(await signed({ home: 'ish-2020' }, H1, {}), '?locale=es-u-nu-deva');
    const { pages, language } = readPdf(came.bytes);
    expect(language).toBe('es');
    expect(pages[0]).toContain('136,58');
    for (const text of pages) expect(text).toMatch(/□□ \(\d.*\d{4}\)/);
  });

  test('of nobody, of another person and on no paper there is is refused', async () => {
    const series = await signed({ home: 'ish-2020' }, H1, {});
    const other = await clinic.addPerson();
    expect((await asked(v7())).status).toBe(404);
    expect((await asked(series, '', other)).status).toBe(404);
    expect((await asked(series, '', v7())).status).toBe(404);
    expect((await asked(series, '?paper=a5')).body.problems).toMatchObject([{ field: '/query/paper' }]);
  });

  test('is for whoever is signed in alone, where there are accounts', async () => {
    const series = await signed({ home: 'ish-2020' }, H1, {});
    await clinic.addAccount('wren', ['owner']);
    expect((await asked(series)).status).toBe(401);
  });
});
