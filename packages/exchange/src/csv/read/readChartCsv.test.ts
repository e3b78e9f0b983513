import { chartSeries, projectChart } from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import { describe, expect, test } from 'vitest';
import {
  amending,
  count,
  FAILED_GAUGE,
  felt,
  heard,
  inError,
  type Made,
  ORLA,
  PERSON,
  run,
  sign,
  signing,
  WREN,
} from '../../../testing/charts.js';
import { chartCsv, type Exported } from '../chartCsv.js';
import { columnOf, readChartCsv } from './readChartCsv.js';
import { readTable } from './records.js';

function written(all: readonly Made[], invented = false, gaugesNow: Exported['gaugesNow'] = []): string {
  const entries = all.map(({ entry }) => entry);
  const chart = projectChart(entries);
  const series = chartSeries(entries, () => null);
  const about = { book: 'care', invented, person: PERSON, identity: ORLA, classIdentity: null } as const;
  return chartCsv({ ...about, chart, series, agents: [WREN], gaugesNow, words: wordsFor('en') });
}

/** What stands under a heading, row by row. */
function cells(text: string, heading: string) {
  const table = readTable(text);
  if (!table.ok) throw new Error('no table');
  const column = (columnOf(text, heading) ?? 0) - 1;
  return table.value.records.slice(1).map((row) => row.cells[column]);
}

function read(text: string) {
  const answered = readChartCsv(text);
  if (!answered.ok) throw new Error(JSON.stringify(answered.refusals));
  return answered.value;
}

const values = (text: string) => read(text).reported.map(({ content }) => content.value);
const ALL = [
  count(1, { n: 19, windowSeconds: 15 }, { note: 'cold,\n"hands"' }),
  run(2, heard(148, 92)),
  run(3, felt(124)),
  sign(4, { of: 'temperature', celsius: 38.1, site: 'oral' }),
  sign(5, { of: 'oxygen-saturation', percent: 94, onOxygen: false }),
  sign(6, { of: 'weight', kg: 70.5, how: 'measured' }),
];
const TABLE = written([...ALL, signing(9, ALL)]);

describe('a table that export wrote', () => {
  test('gives its values as they were charted, an absent diastolic as none and never as zero', () => {
    expect(values(TABLE)).toEqual([
      { of: 'pulse', perMinute: 76 },
      { of: 'pressure', systolic: 148, diastolic: 92 },
      { of: 'pressure', systolic: 124, diastolic: null },
      { of: 'temperature', celsius: 38.1 },
      { of: 'oxygen-saturation', percent: 94 },
      { of: 'weight', kg: 70.5 },
    ]);
    expect(read(TABLE)).toMatchObject({
      person: PERSON,
      birthDate: '1957-03-14',
      refused: [],
      passedOver: {},
    });
  });

  test('gives who, when, how and the note of several lines', () => {
    const [pulse, pressure] = read(TABLE).reported;
    expect(pulse?.content).toMatchObject({ by: WREN.name, note: 'cold,\n"hands"', status: 'final' });
    expect(pulse?.measuredAt).toMatchObject({ at: '2026-11-25T10:01:00+01:00', zone: 'Europe/Madrid' });
    expect(pressure?.content).toMatchObject({
      method: 'auscultation',
      site: 'right upper-arm',
      posture: 'sit',
    });
  });

  test('says apart that a gauge failed since, which is read back as nobody’s note and takes nothing from one', () => {
    const long = 'left arm later '.repeat(66).trim();
    const readings = [
      run(1, heard(148, 92), { gauge: FAILED_GAUGE.id, note: long }),
      run(2, heard(131, 75), { gauge: FAILED_GAUGE.id }),
      run(3, heard(137, 77)),
    ];
    const table = (gauges: Exported['gaugesNow']) =>
      written([...readings, signing(9, readings)], false, gauges);
    const notes = (gauges: Exported['gaugesNow']) =>
      read(table(gauges)).reported.map(({ content }) => content.note);
    const doubt = 'in doubt: read from Gauge 3, a gauge that failed a check';
    expect(cells(table([FAILED_GAUGE]), 'gaugeDoubt')).toEqual([doubt, doubt, '']);
    const notKnown = 'whether its gauge failed a check is not known here';
    expect(cells(table([]), 'gaugeDoubt')).toEqual([notKnown, notKnown, '']);
    expect(notes([FAILED_GAUGE])).toEqual([long, null, null]);
    // A table from before the failure and one from after it say the same to whoever reads them.
    expect(read(table([FAILED_GAUGE])).reported).toEqual(read(table([])).reported);
  });

  test('says how long somebody had lain, and on their feet, and is read again with both', () => {
    const both = written([
      run(1, heard(148, 92), { place: { posture: 'lie' }, posture: { lyingMinutes: 5 } }),
      run(2, heard(126, 88), {
        place: { posture: 'stand' },
        posture: { uprightMinutes: 1.1, unwellUpright: true },
      }),
      run(3, heard(132, 84)),
    ]);
    expect(cells(both, 'lyingMinutes')).toEqual(['5', '', '']);
    expect(cells(both, 'uprightMinutes')).toEqual(['', '1.1', '']);
    expect(cells(both, 'unwellUpright')).toEqual(['', 'true', '']);
    expect(read(both).refused).toEqual([]);
    expect(read(both).reported.map(({ content }) => [content.value, content.posture])).toEqual([
      [{ of: 'pressure', systolic: 148, diastolic: 92 }, 'lie'],
      [{ of: 'pressure', systolic: 126, diastolic: 88 }, 'stand'],
      [{ of: 'pressure', systolic: 132, diastolic: 84 }, 'sit'],
    ]);
  });

  test('passes over what was replaced, not done or without a number, and says how many', () => {
    const broken = { windowSeconds: 30, interrupted: { reason: 'called-away', atSeconds: 12 } };
    const pain = sign(6, { of: 'pain', score: 3, tool: 'numeric' });
    const all = [ALL[0] as Made, count(7, { n: 18, windowSeconds: 15 }, amending(1)), count(8, broken), pain];
    expect(values(written(all))).toEqual([{ of: 'pulse', perMinute: 72 }]);
    expect(read(written(all)).passedOver).toEqual({ replaced: 1, withoutNumber: 1, pain: 1 });
  });

  // Bedside handbook 3.7: sounds to zero are written in three numbers.
  test('of sounds to zero keeps where they muffled', () => {
    const toZero = {
      method: 'auscultation',
      moments: [
        { what: 'first sound', mmHg: 118 },
        { what: 'muffled', mmHg: 62 },
        { what: 'last sound', mmHg: 0 },
      ],
    };
    const { reported } = read(written([run(2, toZero), run(3, heard(148, 92))]));
    expect(reported.map(({ content }) => [content.value, content.asSent])).toEqual([
      [{ of: 'pressure', systolic: 118, diastolic: 0 }, '118/62/0'],
      [{ of: 'pressure', systolic: 148, diastolic: 92 }, null],
    ]);
  });

  test('marks what was entered in error', () => {
    const { reported, passedOver } = read(written([ALL[0] as Made, inError(7, 1)]));
    expect(reported.map(({ isInError }) => isInError)).toEqual([true]);
    expect(passedOver).toEqual({ 'says-entered-in-error': 1 });
  });

  test('says what stands on it', () => {
    expect(read(written(ALL, true)).notices).toEqual(['INVENTED']);
  });
});

// Interoperability handbook 14: what spreadsheets make of a table.
describe('the same table after a spreadsheet saved it', () => {
  const same = values(TABLE);
  /** As a spreadsheet of a country with a decimal comma saves it: a cell with a semicolon is quoted. */
  const semicolons = () => {
    const quoted = TABLE.replace(/first sound [^,]*/g, '"$&"').split('"');
    return quoted
      .map((part, at) => (at % 2 === 0 ? part.replaceAll(',', ';').replaceAll('38.1', '38,1') : part))
      .join('"');
  };

  test.each([
    ['a byte-order mark', () => `\ufeff${TABLE}`],
    ['LF', () => TABLE.replaceAll('\r\n', '\n')],
    ['CR', () => TABLE.replaceAll('\r\n', '\r')],
    ['no last line end', () => TABLE.trimEnd()],
    ['blank lines', () => TABLE.replaceAll('\r\n', '\r\n\r\n')],
    ['semicolons and a decimal comma', semicolons],
    ['a first line sep=;', () => `sep=;\r\n${semicolons()}`],
    [
      'tabs',
      () =>
        TABLE.split('"')
          .map((part, at) => (at % 2 === 0 ? part.replaceAll(',', '\t') : part))
          .join('"'),
    ],
  ] as const)('with %s', (_, text) => {
    expect(values(text())).toEqual(same);
  });

  test('with its columns in another order', () => {
    const rows = written([ALL[1] as Made])
      .trimEnd()
      .split('\r\n');
    const turned = rows.map((row) => row.split(',').toReversed().join(',')).join('\r\n');
    expect(values(turned)).toEqual([{ of: 'pressure', systolic: 148, diastolic: 92 }]);
  });
});

describe('a row that cannot be read is refused by its line and heading, and the rest is kept', () => {
  const bent = (from: string, to: string) => {
    expect(TABLE).toContain(from);
    return read(TABLE.replace(from, to));
  };
  const places = (from: string, to: string) =>
    bent(from, to).refused.map(({ line, field, code }) => `${line} ${field} ${code}`);

  // The note of the first row has a line break: the second begins on the fourth line of the file.
  test.each([
    ['148', '0x94', '4 systolic not-a-number'],
    ['148', '"148,5"', '4 systolic not-a-number'],
    ['148', '1.48e2', '4 systolic not-a-number'],
    ['148', '301', '4 systolic out-of-range'],
    ['148', '92', '4 diastolic contradicts'],
    ['2026-11-25T10:02:00+01:00', '25/11/2026 10:02', '4 measuredAt not-a-time'],
    ['2026-11-25T10:02:00+01:00', '2026-11-31T10:02:00+01:00', '4 measuredAt not-a-time'],
    ['38.1', '45.1', '6 celsius out-of-range'],
    ['pressure', 'sugar', '4 sign unknown-id'],
    ['148', '148,', '4  contradicts'],
  ])('%s made %s', (from, to, place) => {
    expect(places(from, to)).toEqual([place]);
    expect(bent(from, to).reported).toHaveLength(5);
  });

  test('a row that says nobody, or that was cut, does not take the file with it', () => {
    expect(places(PERSON, '')).toEqual(['2 person missing']);
    expect(bent(PERSON, '').reported).toHaveLength(5);
    const more = read(`${TABLE}evenfall-chart-9,cut\r\n`);
    expect(more.refused).toMatchObject([{ line: 9, code: 'contradicts', figures: { cells: 2 } }]);
    expect(more.reported).toHaveLength(6);
  });

  test('lines of separators alone, as a spreadsheet leaves them under a table, are no rows', () => {
    const heading = TABLE.split('\r\n', 1)[0] ?? '';
    const empty = ','.repeat(heading.split(',').length - 1);
    const more = read(`${TABLE}${empty}\r\n,,,\r\n`);
    expect([more.reported.length, more.refused]).toEqual([6, []]);
  });

  test('what stands on any row of it stands on the file', () => {
    const [heading, first = '', ...others] = TABLE.split('\r\n');
    expect(first).toContain('evenfall-chart-9,,');
    const last = others.findLastIndex((line) => line.startsWith('evenfall-chart-9,,'));
    const marked = others.with(last, (others[last] ?? '').replace('-9,,', '-3,INVENTED,'));
    expect(read([heading, first, ...marked].join('\r\n')).notices).toEqual(['INVENTED']);
  });

  test('45.0 is still a temperature, and 300 a pressure', () => {
    expect(places('38.1', '45')).toEqual([]);
    expect(places('148', '300')).toEqual([]);
  });

  test('a newer table is refused row by row, by name', () => {
    expect(bent('\r\nevenfall-chart-9', '\r\nevenfall-chart-10').refused).toMatchObject([
      { field: 'schema', code: 'unknown-id', line: 2, figures: { newest: 9 } },
    ]);
    expect(places('\r\nevenfall-chart-9', '\r\nevenfall-chart-2')).toEqual([]);
  });

  test('the column is that of the heading', () => {
    expect(columnOf(TABLE, 'schema')).toBe(1);
    expect(columnOf(TABLE, 'sign')).toBe(9);
    expect(columnOf(TABLE, 'nothing')).toBeNull();
  });
});

describe('a whole file is refused', () => {
  test.each([
    ['', 'schema missing'],
    ['a,b\r\n1,2\r\n', 'schema missing'],
    ['schema,person,entry,sign,standing\r\n', 'measuredAt missing'],
    [TABLE.replace(PERSON, WREN.id), 'person contradicts'],
    ['"never closed', ' contradicts'],
  ])('%#: without a heading, of two people, cut off', (text, problem) => {
    const answered = readChartCsv(text);
    expect(
      answered.ok ? [] : answered.refusals.slice(0, 1).map(({ field, code }) => `${field} ${code}`),
    ).toEqual([problem]);
  });
});
