import { createHash } from 'node:crypto';
import {
  chartSeries,
  newReadings,
  projectChart,
  type SeriesContent,
  type StoredEntry,
} from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { amending, idOf, inError, type Made, ORLA, PERSON, WREN } from '../../testing/charts.js';
import { homeWeek, recording, takenOut } from '../../testing/series.js';
import { type Bringing, reportedEntries, takenBackEntries } from '../reading/reported.js';
import { readSeries } from '../series/readSeries.js';
import { NOTHING_SAID } from '../series/seriesRead.js';
import { chartCsv } from './chartCsv.js';
import { readChartCsv } from './read/readChartCsv.js';

function tableOf(...all: Made[]): string {
  const entries = all.map(({ entry }) => entry);
  const series = chartSeries(entries, () => null);
  const about = {
    book: 'care',
    invented: false,
    person: PERSON,
    identity: ORLA,
    classIdentity: null,
  } as const;
  return chartCsv({
    ...about,
    chart: projectChart(entries),
    series,
    agents: [WREN],
    gaugesNow: [],
    words: wordsFor('en'),
  });
}

const rowsOf = (text: string) =>
  Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data;

describe('a series in the table', () => {
  test('a sitting that was typed with one time has that time in all its rows', () => {
    const { readings } = homeWeek(1).frame.content as { readings: { at: { at: string } }[] };
    const typed = readings.map((one, k) =>
      k === 1 ? { ...one, at: { ...one.at, at: '2026-07-01T07:31:00.000+01:00', asEntered: '~07:30' } } : one,
    );
    const rows = rowsOf(tableOf(homeWeek(1, { readings: typed as never })));
    expect(rows.slice(0, 2).map(({ measuredAt, asEntered }) => [measuredAt, asEntered])).toEqual([
      ['2026-07-01T07:30:00.000+01:00', ''],
      ['2026-07-01T07:30:00.000+01:00', '~07:30'],
    ]);
  });

  // docs/conventions.md section 8 of a time that nobody said; that nothing comes twice is a rule of the record (`newReadings`).
  test('two equal readings of a sitting are two, and the table read again adds nothing', () => {
    const { readings } = homeWeek(1).frame.content as SeriesContent;
    const kept = readings.slice(0, 4).map((one, k) => {
      const at = `2026-07-01T${k < 2 ? '07' : '23'}:${k < 2 ? '3' : '5'}${k < 2 ? k : 9}:00.000+01:00`;
      const numbers = { systolic: 142, diastolic: 88, pulse: 74 };
      const past = { at: '2026-07-02T00:00:00.000+01:00' };
      return {
        ...one,
        ...numbers,
        at: { ...one.at, at, asEntered: k < 2 ? '~07:30' : '23:59', ...(k === 3 ? past : {}) },
      };
    });
    const text = tableOf(homeWeek(1, { readings: kept as never }));
    expect(rowsOf(text).map(({ measuredAt, readingOfSitting }) => [measuredAt, readingOfSitting])).toEqual([
      ['2026-07-01T07:30:00.000+01:00', '1'],
      ['2026-07-01T07:30:00.000+01:00', '2'],
      ['2026-07-01T23:59:00.000+01:00', '1'],
      ['2026-07-01T23:59:00.000+01:00', '2'],
    ]);
    const read = readSeries(text, { ...NOTHING_SAID, kind: 'home', areColumnsSure: true });
    expect([read.questions, read.refused]).toEqual([[], []]);
    const first = read.readings[0]?.localDay ?? 0;
    expect(read.readings.map(({ localDay, minuteOfDay }) => [localDay - first, minuteOfDay])).toEqual([
      [0, 450],
      [0, 451],
      [0, 1439],
      [1, 0],
    ]);
    const again = read.readings.map((one) => ({
      ...one,
      at: { ...kept[0]?.at, at: new Date(one.atMs).toISOString() },
    }));
    const there = [{ series: 'first', readings: kept }] as never;
    const { fresh, already } = newReadings(there, again as never);
    expect([fresh.length, already.length]).toEqual([0, 4]);
    // Brought in as values from elsewhere each has a name and a time of its own, those of a table without the place.
    const brought = readChartCsv(text);
    if (!brought.ok) throw new Error(JSON.stringify(brought.refusals));
    const pressures = brought.value.reported.filter(({ content }) => content.value.of === 'pressure');
    expect(
      pressures.map(({ content, measuredAt }) => [
        content.source.id?.split('/')[1],
        Date.parse(measuredAt.at),
      ]),
    ).toEqual(kept.map(({ at }) => [new Date(at.at).toISOString(), Date.parse(at.at)]));
  });

  // Week H1 of the out-of-office handbook 19; ISH 2020 leaves the first day out (2).
  test('is a row for each reading: when, what, that it is of home, and whether the mean has it', () => {
    const noted = { ...(homeWeek(1).frame.content as { readings: object[] }).readings[4] };
    const { readings } = homeWeek(1).frame.content as { readings: object[] };
    const told = {
      ...noted,
      note: 'after, "tea"',
      arm: 'left',
      device: 'INV-1',
      irregular: true,
      startedByHand: true,
    };
    const rows = rowsOf(tableOf(homeWeek(1, { readings: readings.with(4, told) as never })));
    expect(rows).toHaveLength(28);
    expect(rows[4]).toMatchObject({
      schema: 'evenfall-chart-9',
      entry: idOf(1),
      sign: 'pressure',
      status: 'at-home',
      standing: 'as-signed',
      measuredAt: '2026-07-02T07:30:00.000+01:00',
      zone: 'Europe/Lisbon',
      systolic: '141',
      diastolic: '88',
      pulse: '74',
      rule: 'home-2',
      note: 'after, "tea"',
      side: 'left',
      cuffSite: 'upper-arm',
      deviceNamed: 'INV-1',
      irregularPulse: 'true',
      startedByHand: 'true',
      series: idOf(1),
      seriesOf: 'home',
      reading: '5',
      leftOut: 'false',
      leftOutWhy: '',
      // Of the whole series, and of no single reading.
      flags: '',
      why: '',
      perMinute: '',
    });
    expect(rows.filter(({ leftOut }) => leftOut === 'true').map(({ reading, leftOutWhy }) => [reading, leftOutWhy])) // biome-ignore format: one thought
      .toEqual(['1', '2', '3', '4'].map((place) => [place, 'dropped-day']));
  });

  test('says what a hand decided and why; a learner’s and one in error say what they are', () => {
    const row = rowsOf(tableOf(homeWeek(1), takenOut(2, 1, 5, 'talking')))[4];
    expect(row).toMatchObject({ leftOut: 'true', leftOutWhy: 'rejected', byHandReason: 'talking' });
    expect(row?.note).toBe('Taken out of the mean by hand: talking.');
    expect(rowsOf(tableOf(homeWeek(1, { status: 'preliminary' })))[0]?.status).toBe('at-home-preliminary');
    const wrong = rowsOf(tableOf(homeWeek(1), inError(2, 1)));
    expect(wrong).toHaveLength(29);
    expect(wrong[0]).toMatchObject({ status: 'entered-in-error', standing: 'entered-in-error' });
    expect(wrong[28]).toMatchObject({ standing: 'says-entered-in-error', series: idOf(1), reading: '' });
  });

  test('of a recording has its blank numbers blank, never zero', () => {
    const rows = rowsOf(tableOf(recording(1)));
    expect(rows).toHaveLength(41);
    expect(rows[0]).toMatchObject({ status: 'over-24-hours', seriesOf: 'ambulatory' });
    expect(rows[40]).toMatchObject({ systolic: '', diastolic: '', pulse: '', leftOutWhy: 'failed' });
  });
});

describe('the same table read', () => {
  function read(text: string) {
    const answered = readChartCsv(text);
    if (!answered.ok) throw new Error(JSON.stringify(answered.refusals));
    return answered.value;
  }

  test('gives each pressure and each pulse once, and names what has no number', () => {
    const { reported, refused, passedOver } = read(tableOf(homeWeek(1), recording(200)));
    expect([refused, passedOver]).toEqual([[], { withoutNumber: 1 }]);
    expect(reported).toHaveLength(2 * 28 + 2 * 40);
    expect(new Set(reported.map(({ content }) => content.source.id)).size).toBe(reported.length);
    const ofHome = reported.filter(({ series }) => series === idOf(1));
    expect(ofHome[0]).toMatchObject({
      content: {
        value: { of: 'pressure', systolic: 152, diastolic: 94 },
        method: 'at home',
        status: 'final',
      },
      entry: idOf(1),
      series: idOf(1),
    });
    expect(ofHome[1]?.content.value).toEqual({ of: 'pulse', perMinute: 78 });
  });

  test('of a series that has grown since names each reading as before; the rows that it replaced are passed over', () => {
    const { readings } = homeWeek(1).frame.content as { readings: never[] };
    const first = homeWeek(1, { readings: readings.slice(0, 24) });
    const names = (text: string) => read(text).reported.map(({ content }) => content.source.id);
    const grown = tableOf(first, homeWeek(5, {}, amending(1)));
    expect(read(grown).passedOver).toEqual({ replaced: 24 });
    expect(names(grown).slice(0, 48)).toEqual(names(tableOf(first)));
    expect(names(grown)).toHaveLength(56);
  });

  /** What stands elsewhere once these tables were brought there, one after the other: how many values, and their instants. */
  function standingAfter(...tables: string[]) {
    let entries: StoredEntry[] = [];
    for (const text of tables) {
      const { reported, takenBack } = read(text);
      for (const bring of [
        (by: Bringing) => reportedEntries(reported, by).placed,
        (by: Bringing) => takenBackEntries(takenBack, by).placed,
      ]) {
        const placed = bring({ ...BY, entries });
        entries = [...entries, ...placed.map(({ frame }) => frame as unknown as StoredEntry)];
      }
    }
    const replaced = new Set(entries.flatMap(({ amends }) => amends?.entry ?? []));
    return entries.filter(({ id, kind }) => kind === 'reported' && !replaced.has(id));
  }
  const BY = {
    book: 'care',
    person: PERSON,
    agent: PERSON,
    device: PERSON,
    writtenAt: '2026-11-25T10:00:00Z',
    hash: (text: string) => createHash('sha256').update(text).digest('hex'),
    changedText: 'changed at the source',
    againText: 'said again at the source',
  } as const;
  type Reading = { readonly at: { readonly at: string } };
  const week = homeWeek(1).frame.content as { readings: Reading[] };
  const weekOf = (id: number, readings: readonly Reading[], amends: object = {}) =>
    homeWeek(id, { readings: readings as never }, amends);

  // Week H1 has 28 readings with a pulse each: 56 values (out-of-office handbook 19).
  test('of a week that is contested brings what both say once, and what one of them says for itself', () => {
    const [first, ...others] = week.readings;
    const changed = { ...first, systolic: 158 } as never;
    const both = tableOf(
      weekOf(1, week.readings.slice(0, 24)),
      weekOf(5, week.readings, amending(1)),
      weekOf(6, [changed, ...others.slice(0, 25)], amending(1)),
    );
    expect(read(both).reported.filter(({ content }) => content.status === 'amended')).toHaveLength(56 + 52);
    // Two systolic values of the first reading are in dispute; each stands with its pulse.
    expect(standingAfter(both)).toHaveLength(56 + 2);
    expect(standingAfter(tableOf(weekOf(1, week.readings.slice(0, 24))), both)).toHaveLength(56 + 2);
  });

  test('of a week whose times were put right, or that lost a reading, leaves none at the time that was wrong', () => {
    const later = week.readings.map((one) => ({
      ...one,
      at: {
        ...one.at,
        at: one.at.at.replace(/T(\d\d)/, (_, hour) => `T${String(Number(hour) + 1).padStart(2, '0')}`),
      },
    }));
    const was = tableOf(homeWeek(1));
    const moved = tableOf(homeWeek(1), weekOf(5, later, amending(1)));
    const instants = (all: readonly StoredEntry[]) => new Set(all.map(({ measuredAt }) => measuredAt.at));
    const standing = standingAfter(was, moved);
    expect(standing).toHaveLength(56);
    expect(instants(standing)).toEqual(new Set(later.map(({ at }) => at.at)));
    const fewer = tableOf(homeWeek(1), weekOf(5, week.readings.slice(1), amending(1)));
    expect(standingAfter(was, fewer)).toHaveLength(54);
    // An older table that is brought after a newer one takes nothing back.
    expect(standingAfter(tableOf(homeWeek(1)), tableOf(weekOf(1, week.readings.slice(0, 24))))).toHaveLength(
      56,
    );
  });

  test('of a reading that was taken out and put back has it again; once it has, an older table changes nothing', () => {
    const others = week.readings.slice(1);
    const was = tableOf(homeWeek(1));
    const out = tableOf(homeWeek(1), weekOf(5, others, amending(1)));
    const back = tableOf(homeWeek(1), weekOf(5, others, amending(1)), weekOf(6, week.readings, amending(5)));
    expect(standingAfter(was, out)).toHaveLength(54);
    expect(standingAfter(was, out, back)).toHaveLength(56);
    expect(standingAfter(was, out, back, back)).toHaveLength(56);
    expect(standingAfter(was, out, was)).toHaveLength(54);
    for (const older of [was, out]) expect(standingAfter(was, out, back, older)).toHaveLength(56);
    expect(standingAfter(back, out, back)).toHaveLength(56);
    const outAgain = tableOf(
      homeWeek(1),
      weekOf(5, others, amending(1)),
      weekOf(6, week.readings, amending(5)),
      weekOf(7, others, amending(6)),
    );
    expect(standingAfter(was, out, back, outAgain)).toHaveLength(54);
    expect(standingAfter(was, out, back, outAgain, back)).toHaveLength(54);
  });

  test('of readings that were brought by their place in the series adds nothing, and changes what was changed', () => {
    const byPlace = (entries: readonly StoredEntry[]) =>
      entries.map((one, at) => {
        const content = one.content as { source: { id: string } };
        const pulse = content.source.id.endsWith('/pulse') ? '/pulse' : '';
        const id = `${idOf(1)}/${Math.floor(at / 2) + 1}${pulse}`;
        const source = { ...content.source, id };
        const kept = one.id.replace(/.{4}$/, String(at).padStart(4, '0'));
        return { ...one, id: kept, content: { ...content, source } } as unknown as StoredEntry;
      });
    const { reported } = read(tableOf(homeWeek(1)));
    const entries = byPlace(
      reportedEntries(reported, { ...BY, entries: [] }).placed.map(
        ({ frame }) => frame as unknown as StoredEntry,
      ),
    );
    expect(reportedEntries(reported, { ...BY, entries })).toEqual({
      placed: [],
      already: 56,
      older: 0,
      unclear: [],
    });
    const changed = week.readings.with(0, { ...week.readings[0], systolic: 158 } as never);
    const { placed } = reportedEntries(read(tableOf(homeWeek(1), weekOf(5, changed, amending(1)))).reported, {
      ...BY,
      entries,
    });
    expect(placed.map(({ frame }) => frame.amends?.entry)).toEqual([entries[0]?.id]);
  });

  // Either may come first: what was said last stands (FHIR R4 has the same of `issued`).
  test('a newer table that came first stands, whatever an older one says then', () => {
    const was = tableOf(homeWeek(1));
    const hourLater = (at: string) =>
      at.replace(/T(\d\d)/, (_, hour) => `T${String(Number(hour) + 1).padStart(2, '0')}`);
    const moved = week.readings.map((one) => ({ ...one, at: { ...one.at, at: hourLater(one.at.at) } }));
    const changed = week.readings.with(0, { ...week.readings[0], systolic: 158 } as never);
    const systolics = (all: readonly StoredEntry[]) =>
      all.flatMap(({ content }) => (content as { value: { systolic?: number } }).value.systolic ?? []);
    for (const [readings, values] of [
      [moved, 56],
      [week.readings.slice(1), 54],
      [changed, 56],
    ] as const) {
      const newer = tableOf(homeWeek(1), weekOf(5, readings, amending(1)));
      const [first, both] = [standingAfter(newer), standingAfter(newer, was)];
      expect(first).toHaveLength(values);
      expect(both.map(({ id }) => id)).toEqual(first.map(({ id }) => id));
      expect(standingAfter(newer, was, newer)).toHaveLength(values);
    }
    const newer = tableOf(homeWeek(1), weekOf(5, changed, amending(1)));
    expect(systolics(standingAfter(newer, was))).not.toContain(152);
    // It is said how many are left as they are.
    const entries = reportedEntries(read(newer).reported, { ...BY, entries: [] }).placed.map(
      ({ frame }) => frame as unknown as StoredEntry,
    );
    const { placed, older } = reportedEntries(read(was).reported, { ...BY, entries });
    expect([placed, older]).toEqual([[], 1]);
  });

  // The first reading of H1 is 152/94 (out-of-office handbook 19).
  test.each([
    ['put right and put back', 158, 152],
    ['put right twice', 158, 149],
    ['kept as it was and put right', 152, 158],
    ['kept as it was and taken out', 152, null],
    ['put right and taken out', 158, null],
    ['taken out and put back', null, 152],
    ['taken out and put back as another', null, 158],
    ['taken out and left out', null, null],
  ])(
    'three tables of a week in which a reading was %s: the newest stands, whichever comes when',
    (_, then, last) => {
      const [first, ...others] = week.readings;
      const weekWith = (systolic: number | null) =>
        systolic === null ? others : [{ ...first, systolic } as never, ...others];
      const all = [
        homeWeek(1),
        weekOf(5, weekWith(then), amending(1)),
        weekOf(6, weekWith(last), amending(5)),
      ];
      const [one, two, three] = [1, 2, 3].map((many) => tableOf(...all.slice(0, many))) as [
        string,
        string,
        string,
      ];
      const systolicOf = (entries: readonly StoredEntry[]) =>
        entries
          .filter(({ measuredAt }) => Date.parse(measuredAt.at) === Date.parse(first?.at.at ?? ''))
          .flatMap(({ content }) => (content as { value: { systolic?: number } }).value.systolic ?? []);
      for (const order of [
        [one, two, three],
        [one, three, two],
        [two, one, three],
        [two, three, one],
        [three, one, two],
        [three, two, one],
      ]) {
        const standing = standingAfter(...order);
        expect(standing).toHaveLength(last === null ? 54 : 56);
        expect(systolicOf(standing)).toEqual(last === null ? [] : [last]);
      }
    },
  );

  test('that takes back what a newer one has counts it as left, as it is', () => {
    const was = tableOf(homeWeek(1));
    const out = tableOf(homeWeek(1), weekOf(5, week.readings.slice(1), amending(1)));
    const back = tableOf(
      homeWeek(1),
      weekOf(5, week.readings.slice(1), amending(1)),
      weekOf(6, week.readings, amending(5)),
    );
    const entries = reportedEntries(read(back).reported, { ...BY, entries: [] }).placed.map(
      ({ frame }) => frame as unknown as StoredEntry,
    );
    expect(takenBackEntries(read(out).takenBack, { ...BY, entries })).toEqual({ placed: [], older: 2 });
    expect(reportedEntries(read(was).reported, { ...BY, entries })).toEqual({
      unclear: [],
      placed: [],
      already: 56,
      older: 0,
    });
  });

  test('that changes nothing keeps when it was said in one entry, not in one for each reading', () => {
    const was = read(tableOf(homeWeek(1))).reported;
    const signedAnew = read(tableOf(homeWeek(1), weekOf(5, week.readings, amending(1)))).reported;
    const entries = reportedEntries(was, { ...BY, entries: [] }).placed.map(
      ({ frame }) => frame as unknown as StoredEntry,
    );
    const { placed, already } = reportedEntries(signedAnew, { ...BY, entries });
    expect([placed.length, already]).toEqual([1, 55]);
    expect(placed[0]?.frame.amends).toEqual({ entry: entries[0]?.id, reason: 'other', text: BY.againText });
  });

  test('of a contested week that was brought by place each of the two stands as it did', () => {
    const [first, ...others] = week.readings;
    const changed = { ...first, systolic: 158 } as never;
    const both = tableOf(
      homeWeek(1),
      weekOf(5, week.readings, amending(1)),
      weekOf(6, [changed, ...others], amending(1)),
    );
    const { reported } = read(both);
    const frames = reportedEntries(reported, { ...BY, entries: [] }).placed.map(({ frame }) => frame);
    // As an earlier program brought it: one name for the place, and of the two the one that came last.
    const disputed = frames.filter(({ content }) => JSON.stringify(content).includes('"systolic":158'));
    const entries = disputed.map((one) => {
      const content = one.content as { source: object };
      return {
        ...one,
        content: { ...content, saidAt: null, source: { ...content.source, id: `${idOf(1)}/1` } },
      };
    }) as unknown as StoredEntry[];
    expect(entries).toHaveLength(1);
    const { placed, already } = reportedEntries(reported, { ...BY, entries });
    expect(already - reportedEntries(reported, { ...BY, entries: [] }).already).toBe(1);
    expect(placed.every(({ frame }) => frame.amends === null)).toBe(true);
    const pressures = placed.map(
      ({ frame }) => (frame.content as { value: { systolic?: number } }).value.systolic,
    );
    expect([pressures.includes(152), pressures.includes(158)]).toEqual([true, false]);
  });

  test('of readings of one instant names each', () => {
    const [first] = week.readings;
    const names = read(tableOf(weekOf(1, [first as Reading, first as Reading]))).reported;
    expect(new Set(names.map(({ content }) => content.source.id)).size).toBe(4);
  });

  test('of a reading that a hand took out says so, and why', () => {
    const noted = { ...week.readings[4], note: 'after tea' };
    const text = tableOf(weekOf(1, week.readings.with(4, noted as never)), takenOut(2, 1, 5, 'talking'));
    expect(
      read(text)
        .reported.slice(8, 11)
        .map(({ content }) => content.note),
    ).toEqual([
      'Taken out of the mean by hand: talking. after tea',
      'Taken out of the mean by hand: talking. after tea',
      null,
    ]);
  });

  test('knows a number of a person that a spreadsheet may have changed', () => {
    const text = tableOf(homeWeek(1)).replaceAll(`'${ORLA.number}`, `'0012345`);
    expect(read(text)).toMatchObject({ identity: { number: '0012345' }, isNumberBare: false });
    // What a spreadsheet writes of a bare one: common practice, no source.
    for (const bare of ['12345', '1.23E+11'])
      expect(read(text.replaceAll(`'0012345`, bare))).toMatchObject({ isNumberBare: true });
    expect(read(text.replaceAll(`'0012345`, '')).isNumberBare).toBe(false);
  });

  test('says who it is where the table was written so, and nobody where its rows do not agree', () => {
    const text = tableOf(homeWeek(1));
    expect(read(text).identity).toEqual(ORLA);
    expect(read(text.replace(ORLA.name, 'Somebody else (invented)')).identity).toBeNull();
    expect(read(text.replaceAll(ORLA.name, '')).identity).toBeNull();
  });

  test('refuses a bad pulse by its heading, with its row', () => {
    const { refused, reported } = read(tableOf(homeWeek(1)).replace(',1,78,', ',1,many,'));
    expect(refused).toMatchObject([{ line: 2, field: 'pulse', code: 'not-a-number', got: 'many' }]);
    expect(reported).toHaveLength(54);
  });
});
