import { DEFAULT_COUNT_RULES, parseCountOrVoid, parseTaps, UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
import {
  type Agent,
  chartCount,
  chartTaps,
  type Identity,
  type Override,
  projectChart,
  type RoundContent,
  type StoredEntry,
} from '@evenfall/record';
import { inferSchema, initParser } from 'udsv';
import { describe, expect, test } from 'vitest';
import { chartCsv, type Exported, noticesOf } from './chartCsv.js';

const NONE = { preset: null, presetVersion: null, countRules: DEFAULT_COUNT_RULES };
const PERSON = idOf(900);
const WREN: Agent = { id: idOf(901), name: 'Wren (invented)' };
const ORLA: Identity = { name: 'Orla Wickstead (invented)', birthDate: '1957-03-14', number: '-0001' };

function idOf(number: number): string {
  return `01950000-0000-7000-8000-${String(number).padStart(12, '0')}`;
}

type More = {
  of?: number;
  reason?: string;
  override?: Override;
  note?: string;
  agent?: string;
  round?: string;
};

/** An entry measured and recorded so many minutes after nine. */
function entry(id: number, kind: StoredEntry['kind'], content: object, more: More = {}): StoredEntry {
  const minute = String(id).padStart(2, '0');
  return {
    id: idOf(id),
    book: 'care',
    kind,
    schema: 1,
    person: PERSON,
    round: more.round ?? idOf(500),
    agent: more.agent ?? WREN.id,
    role: 'observer',
    device: idOf(902),
    sequence: id,
    measuredAt: { at: `2026-11-25T10:${minute}:00+01:00`, zone: 'Europe/Madrid', asEntered: 'just now' },
    writtenAt: `2026-11-25T10:${minute}:20+01:00`,
    amends:
      more.of === undefined
        ? null
        : { entry: idOf(more.of), reason: more.reason ?? 'typing-slip', text: null },
    content,
    recordedAt: `2026-11-25T09:${minute}:30.000Z`,
  } as unknown as StoredEntry;
}

function count(id: number, input: object, more: More = {}): StoredEntry {
  const read = parseCountOrVoid(input);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const { override = null, note = null } = more;
  const circumstances = { ...UNKNOWN_CIRCUMSTANCES, rhythmFelt: 'irregular' as const };
  return entry(
    id,
    'count',
    chartCount({ count: read.value, circumstances, override, note }, NONE, 'evenfall 0.1.0'),
    more,
  );
}

function taps(id: number, seconds: readonly number[]): StoredEntry {
  const read = parseTaps({ of: 'breaths', source: 'key', seconds });
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const done = {
    taps: read.value,
    repair: true,
    circumstances: UNKNOWN_CIRCUMSTANCES,
    override: null,
    note: null,
  };
  return entry(id, 'taps', chartTaps(done, NONE, 'evenfall 0.1.0'));
}

function signing(id: number, content: Partial<RoundContent>, more: More = {}): StoredEntry {
  const signs = [{ sign: 'pulse', entries: [idOf(1)] }];
  return entry(id, 'round', { status: 'final', signs, protocolVersion: null, note: null, ...content }, more);
}

const inError = (id: number, of: number) =>
  entry(id, 'entered-in-error', { note: 'other bed' }, { of, reason: 'wrong-person' });

function exported(entries: readonly StoredEntry[], more: Partial<Exported> = {}): string {
  const chart = projectChart(entries);
  return chartCsv({
    book: 'care',
    invented: false,
    person: PERSON,
    identity: ORLA,
    chart,
    agents: [WREN],
    ...more,
  });
}

/** The rows of a file as an independent reader gives them, each cell under its heading, as text. */
function rowsOf(text: string): Record<string, string>[] {
  const schema = inferSchema(text, { col: ',', row: '\r\n', encl: '"', trim: false });
  const headings = text.split('\r\n')[0]?.split(',') ?? [];
  return initParser(schema)
    .stringArrs(text)
    .map((cells) => Object.fromEntries(headings.map((heading, at) => [heading, cells[at] ?? ''])));
}

const COUNTED = { n: 19, windowSeconds: 15 };

describe('the columns', () => {
  test('start with the schema (conventions 9), and are these: a column is never renamed or moved', () => {
    expect(exported([]).split('\r\n')[0]?.split(',')).toEqual(
      (
        'schema notice person name birthDate number round entry sign perMinute computedPerMinute lowPerMinute ' +
        'highPerMinute lowIncluded highIncluded n windowSeconds clock first taps rhythm rhythmFelt flags why status ' +
        'standing amends reason reasonText ' +
        'byHandReason measuredAt zone asEntered writtenAt recordedAt agent role program rule protocolVersion note ' +
        'notDone notDoneText roundNote'
      ).split(' '),
    );
    expect(rowsOf(exported([count(1, COUNTED)]))[0]?.schema).toBe('evenfall-chart-1');
  });

  test('hold a count with its evidence, range, times and who', () => {
    // 19 in 15 s, clock at any moment, first called one: 60 n / W = 76, over 72 and under 80 (conventions 5).
    const [row] = rowsOf(exported([count(1, COUNTED)]));
    expect(row).toEqual({
      schema: 'evenfall-chart-1',
      notice: '',
      person: PERSON,
      name: ORLA.name,
      birthDate: ORLA.birthDate,
      // A number that starts with a minus would run as a formula.
      number: "'-0001",
      round: idOf(500),
      entry: idOf(1),
      sign: 'pulse',
      perMinute: '76',
      computedPerMinute: '76',
      lowPerMinute: '72',
      highPerMinute: '80',
      lowIncluded: 'false',
      highIncluded: 'false',
      n: '19',
      windowSeconds: '15',
      clock: 'any',
      first: '1',
      taps: '',
      rhythm: '',
      rhythmFelt: 'irregular',
      flags: 'range-assumes-regular count-apex',
      why: expect.stringContaining('irregular'),
      status: 'unsigned',
      standing: 'as-signed',
      amends: '',
      reason: '',
      reasonText: '',
      byHandReason: '',
      measuredAt: '2026-11-25T10:01:00+01:00',
      zone: 'Europe/Madrid',
      asEntered: 'just now',
      writtenAt: '2026-11-25T10:01:20+01:00',
      recordedAt: '2026-11-25T09:01:30.000Z',
      agent: WREN.name,
      role: 'observer',
      program: 'evenfall 0.1.0',
      rule: 'count-1',
      protocolVersion: '',
      note: '',
      notDone: '',
      notDoneText: '',
      roundNote: '',
    });
  });

  test('hold taps: how many, and the rate unrounded', () => {
    // 60 (beats - 1) / (last - first) = 60 x 2 / 7 (conventions 5).
    const [row] = rowsOf(exported([taps(1, [0, 3.4, 7])]));
    expect(row).toMatchObject({ sign: 'breaths', taps: '3', n: '', windowSeconds: '', clock: '' });
    expect(Number(row?.perMinute)).toBeCloseTo(120 / 7, 12);
  });

  test('are empty where nothing is known, and 0 only where none was counted', () => {
    const broken = { windowSeconds: 30, interrupted: { reason: 'called-away', atSeconds: 12 } };
    const [none, void_, single] = rowsOf(
      exported([count(1, { n: 0, windowSeconds: 60, of: 'breaths' }), count(2, broken), taps(3, [4])]),
    );
    expect(none).toMatchObject({ perMinute: '0', n: '0', lowPerMinute: '0' });
    expect(void_).toMatchObject({
      perMinute: '',
      computedPerMinute: '',
      lowPerMinute: '',
      n: '',
      why: 'interrupted',
    });
    expect(single).toMatchObject({ perMinute: '', taps: '1', why: expect.stringContaining('too-few') });
  });

  test('show an override beside the computed value, with its reason', () => {
    const override = { perMinute: 90, reason: 'heard at the apex' };
    expect(rowsOf(exported([count(1, COUNTED, { override })]))[0]).toMatchObject({
      perMinute: '90',
      computedPerMinute: '76',
      byHandReason: 'heard at the apex',
      // The range belongs to what was computed, so a rate set by hand has none.
      lowPerMinute: '',
      highPerMinute: '',
      lowIncluded: '',
      highIncluded: '',
    });
  });

  test('keep a note of several lines in one cell, and name an agent who is not known by id', () => {
    const [row, ...others] = rowsOf(
      exported([count(1, COUNTED, { note: 'restless,\n"cold"', agent: idOf(77) })]),
    );
    expect(others).toEqual([]);
    expect(row).toMatchObject({ note: 'restless,\n"cold"', agent: idOf(77) });
  });
});

describe('a row for every value that was ever charted, which says how it stands', () => {
  const standings = (entries: readonly StoredEntry[]) =>
    rowsOf(exported(entries)).map(({ entry: id, perMinute, standing, amends, reason }) => [
      Number(id?.slice(-3)),
      perMinute,
      standing,
      amends === '' ? null : Number(amends?.slice(-3)),
      reason,
    ]);
  const slip = count(1, { n: 66, windowSeconds: 30 });

  test('amended: the old row is replaced, the new one names it and why', () => {
    expect(standings([slip, count(2, { n: 61, windowSeconds: 30 }, { of: 1 })])).toEqual([
      [1, '132', 'replaced', null, ''],
      [2, '122', 'amended', 1, 'typing-slip'],
    ]);
  });

  test('contested: both amendments stand', () => {
    const both = [61, 60].map((n, index) => count(index + 2, { n, windowSeconds: 30 }, { of: 1 }));
    expect(standings([slip, ...both]).map(([id, , standing]) => [id, standing])).toEqual([
      [1, 'replaced'],
      [2, 'contested'],
      [3, 'contested'],
    ]);
  });

  test('entered in error: the value stays readable, and the row that says so has no sign', () => {
    expect(standings([slip, inError(2, 1)])).toEqual([
      [1, '132', 'entered-in-error', null, ''],
      [2, '', 'says-entered-in-error', 1, 'wrong-person'],
    ]);
  });

  test('a mark of error that was taken back: the value in its place stands', () => {
    expect(standings([slip, inError(2, 1), count(3, { n: 66, windowSeconds: 30 }, { of: 2 })])).toEqual([
      [1, '132', 'replaced', null, ''],
      [2, '', 'replaced', 1, 'wrong-person'],
      [3, '132', 'amended', 2, 'typing-slip'],
    ]);
  });

  test('signed or not, and a learner’s not countersigned: the status', () => {
    const statuses = (...signings: StoredEntry[]) =>
      rowsOf(exported([count(1, COUNTED), count(2, COUNTED), ...signings])).map(({ status }) => status);
    expect(statuses()).toEqual(['unsigned', 'unsigned']);
    expect(statuses(signing(3, {}))).toEqual(['final', 'unsigned']);
    expect(statuses(signing(3, { status: 'preliminary' }))).toEqual(['preliminary', 'unsigned']);
  });

  test('a round in error: its values are in error too, and the mark has a row', () => {
    const rows = rowsOf(exported([count(1, COUNTED), signing(3, {}), inError(4, 3)]));
    expect(rows.map(({ status, standing, sign }) => [status, standing, sign])).toEqual([
      ['entered-in-error', 'entered-in-error', 'pulse'],
      ['entered-in-error', 'says-entered-in-error', ''],
    ]);
  });

  test('a sign that was not done has a row with its reason, and the note of the round stands in each', () => {
    const notDone = { sign: 'breaths', notDone: { reason: 'asleep', text: 'let him sleep' } } as const;
    const signs = [{ sign: 'pulse' as const, entries: [idOf(1)] }, notDone];
    const rows = rowsOf(exported([count(1, COUNTED), signing(3, { signs, note: 'before lunch' })]));
    expect(rows).toMatchObject([
      { sign: 'pulse', perMinute: '76', notDone: '', roundNote: 'before lunch' },
      {
        sign: 'breaths',
        perMinute: '',
        notDone: 'asleep',
        notDoneText: 'let him sleep',
        roundNote: 'before lunch',
        note: '',
        status: 'final',
        standing: 'as-signed',
      },
    ]);
  });

  test('oldest round first, whatever the order of the entries', () => {
    const later = count(9, COUNTED, { round: idOf(501) });
    expect(standings([later, slip]).map(([id]) => id)).toEqual([1, 9]);
  });
});

// Conventions 9: the class and simulated books say CLASS or SIMULATED, the demo INVENTED, on every page and file.
describe('what every file must say', () => {
  test.each([
    ['care', false, ''],
    ['care', true, 'INVENTED'],
    ['class', false, 'CLASS'],
    ['simulated', false, 'SIMULATED'],
    ['simulated', true, 'INVENTED SIMULATED'],
  ] as const)('%s, invented %j: %j in every row', (book, invented, notice) => {
    const rows = rowsOf(exported([count(1, COUNTED), count(2, COUNTED), inError(3, 1)], { book, invented }));
    expect(rows.map((row) => row.notice)).toEqual([notice, notice, notice]);
    expect(noticesOf({ book, invented }).join(' ')).toBe(notice);
  });
});

test('somebody whose identity was erased has an id and nothing else', () => {
  const text = exported([count(1, COUNTED)], { identity: null });
  expect(rowsOf(text)[0]).toMatchObject({ person: PERSON, name: '', birthDate: '', number: '' });
  expect(text).not.toContain('Wickstead');
});
