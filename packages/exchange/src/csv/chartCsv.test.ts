import {
  parseCountOrVoid,
  parseRun,
  parseSign,
  parseTaps,
  UNKNOWN_CIRCUMSTANCES,
  UNKNOWN_RUN_CIRCUMSTANCES,
  UNKNOWN_SIGN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import {
  type Agent,
  chartCount,
  chartRun,
  chartSeries,
  chartSign,
  chartTaps,
  type Identity,
  NOTHING_CHOSEN,
  type Override,
  type PressureOverride,
  projectChart,
  type RoundContent,
  type StoredEntry,
} from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import { inferSchema, initParser } from 'udsv';
import { describe, expect, test } from 'vitest';
import { noticesOf } from '../notices.js';
import { chartCsv, type Exported } from './chartCsv.js';
import { PRESSURE_COLUMNS } from './pressureColumns.js';
import { LATER_READING_COLUMNS, READING_COLUMNS } from './readingColumns.js';
import { SIGN_COLUMNS } from './signColumns.js';

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
    chartCount({ count: read.value, circumstances, override, note }, NOTHING_CHOSEN, 'evenfall 0.1.0'),
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
  return entry(id, 'taps', chartTaps(done, NOTHING_CHOSEN, 'evenfall 0.1.0'));
}

function run(id: number, input: object, override: PressureOverride = null): StoredEntry {
  const read = parseRun(input);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const place = {
    site: 'forearm',
    side: 'left',
    posture: 'sit',
    cuff: null,
    armCm: null,
    override: null,
  } as const;
  const circumstances = { ...UNKNOWN_RUN_CIRCUMSTANCES, uprightMinutes: null };
  const done = { run: read.value, place, circumstances, override, note: null };
  return entry(id, 'run', chartRun(done, NOTHING_CHOSEN, 'evenfall 0.1.0'));
}

function sign(id: number, input: object): StoredEntry {
  const read = parseSign(input);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const done = { sign: read.value, circumstances: UNKNOWN_SIGN_CIRCUMSTANCES, note: null };
  return entry(id, 'sign', chartSign(done, NOTHING_CHOSEN, 'evenfall 0.1.0'));
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
    classIdentity: null,
    chart,
    series: chartSeries(entries, () => null),
    agents: [WREN],
    gaugesNow: [],
    words: wordsFor('en'),
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

/** The columns that came with pressures, the other signs and the class book. */
const OF_OTHER_SIGNS = new Set([
  ...[...PRESSURE_COLUMNS, ...SIGN_COLUMNS].map(([heading]) => heading),
  'pseudonym',
  'ageYears',
  'saidBy',
  'saidHow',
  'saidWhere',
  'sentAs',
  'meanUntil',
  'source',
  'typedNumber',
  'typedUnit',
  'unwellUpright',
  'lyingMinutes',
  'gaugeDoubt',
  ...['series', 'seriesOf', ...[...READING_COLUMNS, ...LATER_READING_COLUMNS].map(([heading]) => heading)],
]);

const COUNTED = { n: 19, windowSeconds: 15 };

describe('the columns', () => {
  test('start with the schema (conventions 9), and are these: a column is never renamed or moved', () => {
    expect(exported([]).split('\r\n')[0]?.split(',')).toEqual(
      (
        'schema notice person name birthDate number round entry sign perMinute computedPerMinute lowPerMinute ' +
        'highPerMinute lowIncluded highIncluded n windowSeconds clock first taps rhythm rhythmFelt flags why status ' +
        'standing amends reason reasonText ' +
        'byHandReason measuredAt zone asEntered writtenAt recordedAt agent role program rule protocolVersion note ' +
        'notDone notDoneText roundNote ' +
        'systolic diastolic diastolicUsed muffled computedSystolic computedDiastolic systolicLow systolicHigh ' +
        'diastolicLow diastolicHigh method isAveraged cuffSite side posture armCm uprightMinutes cuffScheme cuff ' +
        'armOverriddenBy armOverrideReason pulseDuringRun gaugeStepMmHg peakMmHg palpatedLostMmHg palpatedBackMmHg ' +
        'moments deflationRateMmHgPerSecond earlyDeflationRateMmHgPerSecond dropPerBeatMmHg marginMmHg celsius ' +
        'temperatureSite oxygenSaturationPercent onOxygen oxygenDevice oxygenLitresPerMinute oxygenPercent ' +
        'oxygenScale oxygenScalePrescriber oximeterProbe oximeterPulsePerMinute painScore painWord painTool ' +
        'painMoving painWhere consciousness glasgowEyes glasgowVerbal glasgowMotor weightKg weightHow heightCm ' +
        'heightHow heightLying pseudonym ageYears saidBy saidHow saidWhere sentAs meanUntil source typedNumber typedUnit unwellUpright ' +
        'series seriesOf reading pulse leftOut leftOutWhy asleep irregularPulse deviceNamed lyingMinutes startedByHand readingOfSitting gaugeDoubt'
      ).split(' '),
    );
    expect(rowsOf(exported([count(1, COUNTED)]))[0]?.schema).toBe('evenfall-chart-9');
  });

  test('hold a count with its evidence, range, times and who', () => {
    // 19 in 15 s, clock at any moment, first called one: 60 n / W = 76, over 72 and under 80 (conventions 5).
    const [row] = rowsOf(exported([count(1, COUNTED)]));
    // What belongs to another sign is empty.
    const known = Object.entries(row ?? {}).filter(([heading]) => !OF_OTHER_SIGNS.has(heading));
    expect(
      Object.entries(row ?? {}).filter(([heading, cell]) => OF_OTHER_SIGNS.has(heading) && cell !== ''),
    ).toEqual([]);
    expect(Object.fromEntries(known)).toEqual({
      schema: 'evenfall-chart-9',
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
    // Breaths are counted for the full minute (bedside handbook 2.1); these were tapped for 7 s.
    expect(row?.why?.split(' ')).toContain('breaths-full-minute');
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

describe('a pressure', () => {
  const TO_ZERO = {
    method: 'auscultation',
    pulsePerMinute: 76,
    palpated: { lostMmHg: 120 },
    peak: { mmHg: 150, atSeconds: 0 },
    moments: [
      { what: 'first sound', mmHg: 118, atSeconds: 12.8 },
      { what: 'muffled', mmHg: 62, atSeconds: 35.2 },
      { what: 'last sound', mmHg: 0, atSeconds: 60 },
    ],
  };

  test('has its numbers, its place and its evidence (conventions 6: diastolicUsed is the muffling down to zero)', () => {
    const [row] = rowsOf(exported([run(1, TO_ZERO)]));
    expect(row).toMatchObject({
      sign: 'pressure',
      perMinute: '',
      systolic: '118',
      diastolic: '0',
      diastolicUsed: '62',
      muffled: '62',
      computedSystolic: '118',
      // 148 to 118 in 12.8 s is 2.5 mmHg a second, at 76 a minute under 2 a beat; half a mark either way.
      systolicLow: '117',
      method: 'auscultation',
      isAveraged: 'false',
      cuffSite: 'forearm',
      side: 'left',
      posture: 'sit',
      armCm: '',
      peakMmHg: '150',
      palpatedLostMmHg: '120',
      palpatedBackMmHg: '',
      pulseDuringRun: '76',
      gaugeStepMmHg: '2',
      moments: 'first sound 118 at 12.8; muffled 62 at 35.2; last sound 0 at 60',
      earlyDeflationRateMmHgPerSecond: '2.5',
      marginMmHg: '30',
      flags: expect.stringMatching(/to-zero.*other-site/),
      rule: 'run-1',
      rhythmFelt: '',
    });
    expect(Number(row?.systolicHigh)).toBeCloseTo(118 + (2.5 * 60) / 76 + 1, 9);
  });

  test('by palpation has no diastolic, and an empty cell is no zero', () => {
    const [row] = rowsOf(exported([run(1, { method: 'palpation', palpated: { backMmHg: 124 } })]));
    expect(row).toMatchObject({
      systolic: '124',
      diastolic: '',
      diastolicUsed: '',
      computedDiastolic: '',
      systolicLow: '',
      moments: 'pulse back 124',
      why: expect.stringContaining('no-diastolic-by-palpation'),
    });
  });

  test('set by hand stands beside the computed one, and has no range', () => {
    const override = { systolic: 122, diastolic: 60, reason: 'heard through the second earpiece' };
    expect(rowsOf(exported([run(1, TO_ZERO, override)]))[0]).toMatchObject({
      systolic: '122',
      diastolic: '60',
      diastolicUsed: '60',
      muffled: '',
      computedSystolic: '118',
      computedDiastolic: '0',
      systolicLow: '',
      byHandReason: 'heard through the second earpiece',
    });
  });
});

describe('the other signs', () => {
  test.each([
    ['temperature', { celsius: 38.1, site: 'tympanic' }, { celsius: '38.1', temperatureSite: 'tympanic' }],
    [
      'oxygen-saturation',
      { percent: 94, onOxygen: false },
      { oxygenSaturationPercent: '94', onOxygen: 'false', oxygenDevice: '' },
    ],
    ['pain', { score: 0, tool: 'numeric' }, { painScore: '0', painWord: '', painTool: 'numeric' }],
    [
      'consciousness',
      { level: 'alert', glasgow: { eyes: 4, verbal: 'not-testable', motor: 6 } },
      { consciousness: 'alert', glasgowEyes: '4', glasgowVerbal: 'not-testable' },
    ],
    ['weight', { kg: 70.5, how: 'measured' }, { weightKg: '70.5', weightHow: 'measured' }],
    ['height', { cm: 170, how: 'stated', lying: false }, { heightCm: '170', heightLying: 'false' }],
  ])('%s', (of, given, cells) => {
    const [row] = rowsOf(exported([sign(1, { of, ...given })]));
    expect(row).toMatchObject({ sign: of, rule: 'sign-1', perMinute: '', systolic: '', ...cells });
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

test('a person of the class book has a pseudonym and an age at most, and no name', () => {
  const classIdentity = { pseudonym: '=Heron (invented)', ageYears: 31 };
  const [row] = rowsOf(exported([count(1, COUNTED)], { book: 'class', identity: null, classIdentity }));
  expect(row).toMatchObject({
    notice: 'CLASS',
    name: '',
    birthDate: '',
    number: '',
    pseudonym: "'=Heron (invented)",
    ageYears: '31',
  });
});

test('somebody whose identity was erased has an id and nothing else', () => {
  const text = exported([count(1, COUNTED)], { identity: null });
  expect(rowsOf(text)[0]).toMatchObject({ person: PERSON, name: '', birthDate: '', number: '' });
  expect(text).not.toContain('Wickstead');
});
