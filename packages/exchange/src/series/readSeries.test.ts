import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceFrom, faultOf, mutated, validFile } from '../../fixtures/seriesMutations.mjs';
import { plainSeries } from './plainSeries.js';
import { readAnySeries, readSeries } from './readSeries.js';
import { NOTHING_SAID, type ReadSeries, type SeriesChoices } from './seriesRead.js';

type Said = Partial<SeriesChoices>;
const read = (text: string, said: Said = {}): ReadSeries =>
  readSeries(text, { ...NOTHING_SAID, kind: 'home', ...said });
const whole = (text: string, said: Said = {}): ReadSeries => {
  const found = read(text, said);
  expect(found.questions.map((one) => one.of)).toEqual([]);
  return found;
};
const numbers = ({ readings }: ReadSeries) =>
  readings.map(({ systolic, diastolic, pulse }) => [systolic, diastolic, pulse]);
const asked = (text: string, said: Said = {}) =>
  read(text, said).questions.map(({ of, choices }) => [of, choices]);
const refused = ({ refused: rows }: ReadSeries) =>
  rows.map(({ line, problems }) => [
    line,
    ...problems.map(({ code, column, field }) => `${code} ${column} ${field}`),
  ]);

const HEAD = 'time,systolic,diastolic,pulse\n';
const ROW = '2025-03-03T07:30+00:00,142,88,74';

describe('the plain table', () => {
  test('one row, by the wall clock of its own offset', () => {
    const found = whole(`${HEAD}2025-03-03T07:30+02:00,142,88,74\n`);
    expect(found.readings).toEqual([
      {
        index: 1,
        atMs: Date.UTC(2025, 2, 3, 5, 30),
        localDay: Date.UTC(2025, 2, 3) / 86_400_000,
        minuteOfDay: 450,
        systolic: 142,
        diastolic: 88,
        pulse: 74,
        asleep: null,
        part: null,
        site: 'upper-arm',
      },
    ]);
    expect(found).toMatchObject({ lines: [2], refused: [], flags: [], zone: null });
    expect(found.mapping).toEqual({
      headings: ['time', 'systolic', 'diastolic', 'pulse'],
      columns: ['time', 'systolic', 'diastolic', 'pulse'],
    });
  });

  // The platform's own reading of ISO 8601 is the other source.
  test('every instant of the exact form is what the platform reads', () => {
    const instant = fc.record({
      ms: fc.integer({ min: Date.UTC(1970, 0, 1), max: Date.UTC(2100, 0, 1) }),
      offset: fc.integer({ min: -14 * 4, max: 14 * 4 }),
      seconds: fc.boolean(),
    });
    fc.assert(
      fc.property(instant, ({ ms, offset, seconds }) => {
        const minutes = offset * 15;
        const whole60 = ms - (ms % (seconds ? 1000 : 60_000));
        const local = new Date(whole60 + minutes * 60_000).toISOString().slice(0, seconds ? 19 : 16);
        const [h, m] = [Math.floor(Math.abs(minutes) / 60), Math.abs(minutes) % 60];
        const two = (n: number) => String(n).padStart(2, '0');
        const text = `${local}${minutes < 0 ? '-' : '+'}${two(h)}:${two(m)}`;
        expect(Date.parse(text)).toBe(whole60);
        expect(read(`${HEAD}${text},142,88,74`).readings[0]?.atMs).toBe(whole60);
      }),
    );
  });

  test('any order of columns, with a note, an arm, a device; lines are physical, blank ones counted', () => {
    const found = whole(`\ufeffpulse,note,diastolic,time,systolic,arm,device\n\n74,"a, b",88,2025-03-03T07:30Z,142,left,B7\n,,,,,,\n70,,80,2025-03-03T19:30Z,130,,`); // biome-ignore format: one text
    expect(numbers(found)).toEqual([
      [142, 88, 74],
      [130, 80, 70],
    ]);
    expect(found.lines).toEqual([3, 5]);
    expect(found.beside).toEqual([{ index: 1, note: 'a, b', arm: 'left', device: 'B7', irregular: null }]);
    expect(found.flags).toEqual([{ code: 'times-in-utc', lines: [3, 5] }]);
  });

  test('sleep, part of the day and a wrist, in several languages', () => {
    const found = whole('hora,sis,time,sys,dia,dormido,momento,sitio\n,,2025-03-03T07:30+00:00,142,88,sí,mañana,muñeca\n,,2025-03-03T19:30+00:00,142,88,no,tarde,brazo\n,,2025-03-04T19:30+00:00,142,88,quizá,luego,\n'); // biome-ignore format: one text
    expect(found.readings.map(({ asleep, part, site }) => [asleep, part, site])).toEqual([
      [true, 'morning', 'wrist'],
      [false, 'evening', 'upper-arm'],
    ]);
    expect(refused(found)).toEqual([[4, 'unknown-id 6 dormido', 'unknown-id 7 momento']]);
  });
});

describe('a mark of an irregular pulse', () => {
  const marked = (heading: string, ...cells: string[]) => {
    const rows = cells.map((cell, k) => `2025-03-0${k + 1}T07:30+00:00,142,88,74,${cell}`);
    const { beside, flags, refused: not } = whole(`time,sys,dia,pulse,${heading}\n${rows.join('\n')}\n`);
    return [
      beside.map(({ index, irregular }) => [index, irregular]),
      flags.map(({ code, lines }) => [code, lines]),
      not.map(({ line, problems }) => [line, problems[0]?.expected]),
    ];
  };

  test.each([
    'Irregular pulse',
    'Pulso irregular',
    'Pouls irrégulier',
    'Unregelmässiger Puls',
    'نبض غير منتظم',
  ])('is known by the heading %s, is kept by reading and said once', (heading) => {
    expect(marked(heading, 'yes', 'no', '', 'irregular', '-')).toEqual([
      [
        [1, true],
        [2, false],
        [4, true],
      ],
      [['irregular-pulse', [2, 5]]],
      [],
    ]);
  });

  // Marks of displays and spreadsheets: common practice, no source.
  test.each(['*', '**', '!', 'x', 'X', '✓', '✔️', '+', '1', 'sí', 'ja', 'TRUE', 'detected', 'نعم'])(
    'may be %s beside the reading',
    (cell) => {
      expect(marked('irregular pulse', cell)).toEqual([[[1, true]], [['irregular-pulse', [2]]], []]);
    },
  );

  test.each(['0', 'no', 'normal', 'Not detected', 'FALSE'])('is not there where it says %s', (cell) => {
    expect(marked('irregular pulse', cell)).toEqual([[[1, false]], [], []]);
  });

  test.each(['', '-', '--', 'n/a'])('is unknown where the cell is blank: %j', (cell) => {
    expect(marked('irregular pulse', cell)).toEqual([[], [], []]);
  });

  test.each(['AF', 'perhaps', '?', '✗', '#', '2'])(
    'that nobody understands counts and is said: %s',
    (cell) => {
      expect(marked('irregular pulse', cell, 'no')).toEqual([
        [
          [1, true],
          [2, false],
        ],
        [['irregular-not-understood', [2]]],
        [],
      ]);
    },
  );

  test('that nobody understands is kept as it is written, beside the note, and its reading counts', () => {
    const rows = '2025-03-01T07:30+00:00,142,88,74,AF,after tea\n2025-03-02T07:30+00:00,132,82,70,?,';
    const found = whole(`time,sys,dia,pulse,irregular,note\n${rows}\n`);
    expect(found.readings.map(({ systolic }) => systolic)).toEqual([142, 132]);
    expect(found.beside.map(({ note }) => note)).toEqual(['after tea; AF', '?']);
  });
});

describe('columns', () => {
  const ROWS = [
    ['2025-03-03 07:30', '142', '88', '74'],
    ['2025-03-03 19:30', '136', '84', '92'],
    ['2025-03-04 07:30', '139', '86', '71'],
  ];
  const zoned = { zone: 'Europe/Lisbon' };
  const EXPECTED = [
    [142, 88, 74],
    [136, 84, 92],
    [139, 86, 71],
  ];
  const table = (heading: string, order: readonly number[], delimiter = ',') =>
    [heading, ...ROWS.map((row) => order.map((at) => row[at]).join(delimiter))]
      .filter((line) => line !== '')
      .join('\n');

  test.each([
    ['Date and time,SYS,DIA,Pulse', [0, 1, 2, 3], ','],
    ['Fecha y hora;Sistólica;Diastólica;Pulso', [0, 1, 2, 3], ';'],
    ['Zeitpunkt\tPuls\tDiastolisch (mmHg)\tSystolisch (mmHg)', [0, 3, 2, 1], '\t'],
    ['Date et heure;PAS;PAD;Pouls', [0, 1, 2, 3], ';'],
    ['Data e ora;Massima;Minima;Polso', [0, 1, 2, 3], ';'],
    ['Data e hora;Pressão sistólica;Pressão diastólica;FC', [0, 1, 2, 3], ';'],
    ['Datum en tijd;Bovendruk;Onderdruk;Hartslag', [0, 1, 2, 3], ';'],
    ['الوقت,الانقباضي,الانبساطي,النبض', [0, 1, 2, 3], ','],
    ['Časový údaj;Horní;Dolní;Tep', [0, 1, 2, 3], ';'],
    ['', [0, 1, 2, 3], ','],
    ['', [1, 2, 3, 0], ';'],
  ])('%s', (heading, order, delimiter) => {
    expect(numbers(whole(table(heading, order, delimiter), zoned))).toEqual(EXPECTED);
  });

  test('two columns of pressures without names: the larger one is systolic, whichever comes first', () => {
    expect(numbers(whole(table('', [0, 2, 1]), zoned))).toEqual(EXPECTED.map(([s, d]) => [s, d, null]));
  });

  test('diastolic and pulse that nothing tells apart are asked, and so is a column that is not there', () => {
    expect(asked(table('', [0, 2, 3, 1]), zoned).map(([of]) => of)).toEqual(['columns', 'columns']);
    expect(asked('time,pulse\n2025-03-03T07:30Z,74').map(([of]) => of)).toEqual(['columns', 'columns']);
    expect(asked('sys,dia\n142,88').map(([of]) => of)).toEqual(['columns']);
  });

  test('separate date and time of day; a running number is no pressure', () => {
    const found = whole('No;Dia;Hora;Max;Min\n1;13/03/2025;07:30;142;88\n2;13/03/2025;19:30;136;84\n', zoned);
    expect(numbers(found)).toEqual([
      [142, 88, null],
      [136, 84, null],
    ]);
    expect(found.mapping.columns).toEqual([null, 'date', 'clock', 'systolic', 'diastolic']);
  });

  test('a mapping that is given wins over headings, and is handed back', () => {
    const columns = ['time', 'diastolic', 'systolic', null] as const;
    const found = whole(table('Zeit,Systolisch,Diastolisch,Puls', [0, 2, 1, 3]), { ...zoned, mapping: { headings: null, columns }, areColumnsSure: true }); // biome-ignore format: one text
    expect(numbers(found)).toEqual(EXPECTED.map(([s, d]) => [s, d, null]));
    expect(found.mapping.columns).toEqual(columns);
  });

  test('columns that look swapped are asked in more than half of the rows, and not in half', () => {
    const two = (a: string, b: string) => `${HEAD}2025-03-03T07:30Z,${a}\n2025-03-03T08:30Z,${b}`;
    expect(asked(two('88,142,74', '84,136,74')).map(([of]) => of)).toEqual(['swapped']);
    expect(asked(two('88,142,74', '136,84,74'))).toEqual([]);
    expect(refused(read(two('88,142,74', '136,84,74')))).toEqual([[2, 'not-below-systolic 3 diastolic']]);
    // 24 hours: what the rule of editing is for.
    expect(numbers(whole(two('88,142,74', '136,84,74'), { kind: 'ambulatory' }))[0]).toEqual([88, 142, 74]);
  });
});

// Out-of-office handbook 5: keep a flag. The words are common practice, no source.
describe('a reading of a recorder that was started by hand', () => {
  const marked = (heading: string, ...cells: string[]) => {
    const rows = cells.map((cell, at) => `2025-03-03T0${at}:30Z,142,88,74,${cell}`).join('\n');
    const { readings, flags, beside } = whole(`time,sys,dia,pulse,${heading}\n${rows}\n`, {
      kind: 'ambulatory',
    });
    return {
      marks: readings.map(({ startedByHand = null }) => startedByHand),
      flags: flags.flatMap(({ code, lines }) => (code === 'times-in-utc' ? [] : [[code, ...lines]])),
      notes: beside.map(({ note }) => note),
    };
  };

  test.each(['started', 'Mode', 'manual', 'Trigger', 'modo', 'Auslösung'])(
    'a column %s says so',
    (heading) => {
      const found = marked(heading, 'manual', 'auto', '', 'M', 'by hand');
      expect(found.marks).toEqual([true, false, null, true, true]);
      expect(found.flags).toEqual([['marked-by-hand', 2, 5, 6]]);
      expect(found.notes).toEqual([]);
    },
  );

  test.each(['by hand', 'Manual', 'Manual (1 = yes)', 'a mano', 'started by hand'])(
    'a column that asks it, %s, is answered by yes, no and a mark',
    (heading) => {
      const found = marked(heading, 'yes', '1', 'x', '*', '0', 'no');
      expect(found.marks).toEqual([true, true, true, true, false, false]);
      expect(found.flags).toEqual([['marked-by-hand', 2, 3, 4, 5]]);
    },
  );

  // Recorders number their modes: 1 is as often the clock.
  test.each(['mode', 'modo', 'trigger', 'Messmodus', 'inicio'])(
    'a number or a mark under %s is the name of a mode, and of the schedule',
    (heading) => {
      const found = marked(heading, '1', '2', '0', 'x', 'si', '+');
      expect(found.marks).toEqual([null, null, null, null, null, null]);
      expect(found.flags).toEqual([['start-not-understood', 2, 3, 4, 5, 6, 7]]);
      expect(found.notes).toEqual(['1', '2', '0', 'x', 'si', '+']);
    },
  );

  test.each(['Inicio', 'Started', 'avvio', 'Initiated'])('times under %s are when it was', (heading) => {
    const table = (when: readonly string[]) =>
      `${heading};Sistolica;Diastolica;Pulso\n${when.map((at) => `${at};130;80;70`).join('\n')}\n`;
    const read = whole(table(['2026-11-02 08:00', '2026-11-02 20:15']), { kind: 'ambulatory', zone: 'UTC' });
    expect(numbers(read)).toEqual([
      [130, 80, 70],
      [130, 80, 70],
    ]);
    expect(read.readings[0]?.startedByHand).toBeUndefined();
    const clock = `Fecha;${table(['08:00', '20:15']).replaceAll(/^(\d)/gm, '2026-11-02;$1')}`;
    expect(numbers(whole(clock, { kind: 'ambulatory', zone: 'UTC' }))).toHaveLength(2);
  });

  test('a note says so where it says nothing else in that part', () => {
    const found = marked('note', 'manual', 'felt dizzy; started by hand', 'manual work', 'hand hurts', 'patient'); // biome-ignore format: one row
    expect(found.marks).toEqual([true, true, null, null, null]);
    expect(found.flags).toEqual([['marked-by-hand', 2, 3]]);
  });

  test('what nobody understands is of the schedule, and kept as written; at home nobody asks', () => {
    const found = marked('mode', 'R2');
    expect(found).toEqual({ marks: [null], flags: [['start-not-understood', 2]], notes: ['R2'] });
    const home = whole('time,sys,dia,mode\n2025-03-03T07:30Z,142,88,manual');
    expect(home.readings[0]?.startedByHand).toBeUndefined();
    expect(home.flags.map(({ code }) => code)).toEqual(['times-in-utc']);
  });
});

describe('cells', () => {
  test('142/88 74 is understood in the column of either pressure, of both, and in one that is not read', () => {
    const rows =
      '2025-03-03T07:30Z,142/88 74,,\n2025-03-03T08:30Z,,142/88,74\n2025-03-03T09:30Z,,,74,142/88\n2025-03-03T10:30Z,142/88 74,90,';
    const found = whole(`time,systolic,diastolic,pulse,what\n${rows}`);
    expect(numbers(found)).toEqual([
      [142, 88, 74],
      [142, 88, 74],
      [142, 88, 74],
    ]);
    expect(refused(found)).toEqual([[5, 'contradicts 3 diastolic']]);
  });

  test('a number that begins with a 0 is a slip where a hand typed it, and padded where a program wrote it', () => {
    const padded = `${HEAD}2025-03-03T07:30+00:00,092,076,070\n`;
    expect(numbers(whole(padded))).toEqual([[92, 76, 70]]);
    const typed = whole(padded, { isTyped: true });
    expect(typed.readings).toEqual([]);
    expect(refused(typed)[0]).toContain('not-a-number 2 systolic');
    expect(typed.refused[0]?.problems.map(({ expected, got }) => [expected, got])).toEqual([
      ['number-without-zero', '092'],
      ['number-without-zero', '076'],
      ['number-without-zero', '070'],
    ]);
  });

  test('a paste of words', () => {
    const paste = '2025-03-03 07:30 142/88 74 after coffee\n3 Mar 2025 7:30 pm 136 84 92\n2025-03-04 7.30 139/86\nno pressure at all\n2025-03-05 07:30'; // biome-ignore format: one text
    const found = whole(paste, { zone: 'UTC' });
    expect(numbers(found)).toEqual([
      [142, 88, 74],
      [136, 84, 92],
      [139, 86, null],
    ]);
    expect(found.beside).toEqual([
      { index: 1, note: 'after coffee', arm: null, device: null, irregular: null },
    ]);
    expect(found.readings.map(({ minuteOfDay }) => minuteOfDay)).toEqual([450, 1170, 450]);
    expect(found.refused.map(({ line }) => line)).toEqual([4, 5]);
  });

  // The limits themselves, and both sides of them: decisions of the project (docs/sources.md).
  test.each([
    ['30,10,', true],
    ['29,10,', false],
    ['29.9,10,', false],
    ['300,299,', true],
    ['301,90,', false],
    ['142,9,', false],
    ['142,88,20', true],
    ['142,88,19', false],
    ['142,88,300', true],
    ['142,88,301', false],
    ['142,88,', true],
    ['142,,74', true],
    [',88,74', true],
    [',,74', false],
    ['142,142,74', false],
    ['142,141,74', true],
    ['0,0,0', false],
    ['1e2,88,74', false],
    ['0x8e,88,74', false],
    ['142,88,sinus', false],
    ['-142,88,74', false],
    ['142,88,74,99', false],
    ['142,88,74,,', true],
  ])('%s is used: %s', (cells, isUsed) => {
    const found = whole(`${HEAD}${ROW}\n2025-03-03T08:30+00:00,${cells}`);
    expect(found.readings).toHaveLength(isUsed ? 2 : 1);
    expect(found.refused).toHaveLength(isUsed ? 0 : 1);
  });

  test('a blank or a failure of the recorder is a measurement that failed in 24 hours, and refused at home', () => {
    const text = `${HEAD}${ROW}\n2025-03-03T08:30+00:00,,,\n2025-03-03T09:30+00:00,E12,--,`;
    const day = whole(text, { kind: 'ambulatory' });
    expect(numbers(day)).toEqual([[142, 88, 74], [null, null, null], [null, null, null]]); // biome-ignore format: one list
    expect(refused(whole(text))).toEqual([
      [3, 'missing 2 systolic'],
      [4, 'not-a-number 2 systolic'],
    ]);
  });

  test('decimal comma with semicolons, and in quotes', () => {
    expect(numbers(whole('time;sys;dia\n2025-03-03T07:30Z;142,5;88,25'))).toEqual([[142.5, 88.25, null]]);
    expect(numbers(whole('time,sys,dia\n2025-03-03T07:30Z,"142,5","88,25"'))).toEqual([[142.5, 88.25, null]]);
  });

  test('kilopascal: asked where most are under 30 with decimals, told by a heading, else refused', () => {
    const table = (heading: string, sys: string) => `time,${heading},dia\n2025-03-03T07:30Z,${sys},11.7`;
    expect(asked(table('sys', '18.9'))).toEqual([['unit', ['kPa', 'mmHg']]]);
    expect(asked(table('sys', '19'))).toEqual([]);
    expect(asked(table('sys (mmHg)', '18.9'))).toEqual([]);
    const kPa = whole(table('sys (kPa)', '18.9'));
    // 1 kPa = 7.50062 mmHg: out-of-office handbook 20.
    expect(kPa.readings[0]?.systolic).toBeCloseTo(141.7617, 4);
    expect(kPa.flags.map(({ code }) => code)).toContain('from-kilopascal');
    expect(whole(table('sys', '18.9'), { unit: 'mmHg' }).refused).toHaveLength(1);
  });

  test('a quote that is never closed swallows no row', () => {
    const found = whole(`time,systolic,diastolic,note\n2025-03-03T07:30Z,142,88,"oh\n2025-03-03T08:30Z,136,84,fine\n2025-03-03T09:30Z,139,86,"two\nlines, of it"\n`); // biome-ignore format: one text
    expect(found.lines).toEqual([2, 3, 4]);
    expect(found.beside.map(({ note }) => note)).toEqual(['oh', 'fine', 'two\nlines, of it']);
  });
});

describe('dates', () => {
  const one = (date: string) => `time,bp\n${date} 07:30,142/88`;
  const day = (text: string, said: Said = {}) => {
    const found = read(text, { zone: 'UTC', ...said });
    const [first] = found.readings;
    return first === undefined
      ? (found.questions[0]?.of ?? 'refused')
      : new Date(first.atMs).toISOString().slice(0, 10);
  };

  test.each([
    ['2025-03-01', '2025-03-01'],
    ['2025/3/1', '2025-03-01'],
    ['13/03/2025', '2025-03-13'],
    ['03/13/2025', '2025-03-13'],
    ['13.3.2025', '2025-03-13'],
    ['13-03-25', 'dates'],
    ['13-14-25', 'refused'],
    ['13-03-32', '2032-03-13'],
    ['01/02/2025', 'dates'],
    ['01/02/03', 'dates'],
    ['25/03/01', 'dates'],
    ['03/03/2025', '2025-03-03'],
    ['31/02/2025', 'refused'],
    ['13/13/2025', 'refused'],
    ['29/02/2024', '2024-02-29'],
    ['29/02/2025', 'refused'],
    ['1 March 2025', '2025-03-01'],
    ['Mar 1 2025', '2025-03-01'],
    ['1 de marzo de 2025', '2025-03-01'],
    ['1. März 2025', '2025-03-01'],
    ['lun 3 mars 2025', '2025-03-03'],
    ['1-Aug-25', '2025-08-01'],
    ['0001-01-01', 'refused'],
    ['yesterday', 'refused'],
  ])('%s is %s', (written, expected) => {
    expect(day(one(written))).toBe(expected);
  });

  test('any row settles the order for all; two rows that disagree are asked; what is said decides', () => {
    const rows = 'time,bp\n01/02/2025 07:30,142/88\n';
    expect(day(`${rows}13/02/2025 07:30,142/88`)).toBe('2025-02-01');
    expect(day(`${rows}02/13/2025 07:30,142/88`)).toBe('2025-01-02');
    expect(day(`${rows}02/13/2025 07:30,142/88\n13/02/2025 07:30,142/88`)).toBe('dates');
    expect(day(rows, { dates: 'mdy' })).toBe('2025-01-02');
    expect(day(rows, { dates: 'ymd' })).toBe('refused');
    expect(asked(rows, { zone: 'UTC' })).toEqual([['dates', ['dmy', 'mdy']]]);
  });

  test.each([
    ['07:30', 450],
    ['7:30 am', 450],
    ['7:30 a. m.', 450],
    ['7:30 p.m.', 1170],
    ['7.30 PM', 1170],
    ['12:15 am', 15],
    ['12:15 pm', 735],
    ['19h30', 1170],
    ['7am', 420],
    ['14:30 pm', 870],
    ['14:30 am', null],
    ['07:30:59', 450],
    ['24:00', null],
    ['23:59', 1439],
    ['7:60', null],
    ['0:00', 0],
    ['noon', null],
  ])('%s is minute %s', (written, minute) => {
    const { readings } = read(`date,clock,bp\n2025-03-01,10:00,142/88\n2025-03-01,${written},142/88`, {
      zone: 'UTC',
    });
    expect(readings[1]?.minuteOfDay ?? null).toBe(minute);
  });

  test('a time without offset is asked for its zone; one zone for offsets too, where it is said', () => {
    expect(asked(one('2025-03-01'))).toEqual([['zone', []]]);
    const found = whole(`${HEAD}2025-07-01T07:30Z,142,88,74`, { zone: 'Europe/Lisbon' });
    expect(found.readings[0]).toMatchObject({ minuteOfDay: 510, atMs: Date.UTC(2025, 6, 1, 7, 30) });
    expect(found.flags).toEqual([]);
  });
});

// Source: out-of-office handbook 19, T1.
describe('nights on which the clock changes', () => {
  const gaps = (times: readonly string[], said: Said = {}) => {
    const { readings, flags } = whole(`time,bp\n${times.map((time) => `${time},142/88`).join('\n')}`, said);
    const hours = readings.slice(1).map(({ atMs }, k) => (atMs - (readings[k]?.atMs ?? 0)) / 3_600_000);
    return { hours, flags: flags.map(({ code, lines }) => [code, lines]) };
  };

  test.each([
    [['2025-03-09T01:30-05:00', '2025-03-09T03:30-04:00'], [1]],
    [['2025-11-02T01:30-04:00', '2025-11-02T01:30-05:00'], [1]],
    [['2025-03-30T00:30+00:00', '2025-03-30T02:30+01:00'], [1]],
  ])('%j are an hour apart', (times, hours) => {
    expect(gaps(times).hours).toEqual(hours);
  });

  test('New York, forward: 02:30 is not there and is moved to 03:30', () => {
    const zone = 'America/New_York';
    expect(gaps(['2025-03-09 01:30', '2025-03-09 03:30'], { zone })).toEqual({ hours: [1], flags: [] });
    const moved = whole('time,bp\n2025-03-09 02:30,142/88', { zone });
    expect(moved.readings[0]).toMatchObject({ minuteOfDay: 210, atMs: Date.parse('2025-03-09T03:30-04:00') });
    expect(moved.flags).toEqual([{ code: 'time-not-there', lines: [2] }]);
  });

  test('New York, back: 01:30 is there twice and is the first', () => {
    const zone = 'America/New_York';
    const found = gaps(['2025-11-02 00:30', '2025-11-02 01:30', '2025-11-02 02:30'], { zone });
    expect(found).toEqual({ hours: [1, 2], flags: [['time-twice', [3]]] });
  });

  test('Lisbon, both nights', () => {
    const zone = 'Europe/Lisbon';
    expect(gaps(['2025-03-30 00:30', '2025-03-30 02:30'], { zone })).toEqual({ hours: [1], flags: [] });
    expect(gaps(['2025-03-30 00:30', '2025-03-30 01:30'], { zone })).toEqual({ hours: [1], flags: [['time-not-there', [3]]] }); // biome-ignore format: one text
    expect(gaps(['2025-10-26 00:30', '2025-10-26 01:30', '2025-10-26 02:30'], { zone })).toEqual({ hours: [1, 2], flags: [['time-twice', [3]]] }); // biome-ignore format: one text
  });

  // The offsets of the platform's own Intl are the other source.
  test('a local time of any zone is where the platform shows it', () => {
    const zones = ['Europe/Lisbon', 'America/New_York', 'Asia/Kathmandu', 'Australia/Lord_Howe', 'America/St_Johns', 'Africa/Casablanca']; // biome-ignore format: one list
    const minutes = { min: Date.UTC(2000, 0, 1) / 60_000, max: Date.UTC(2030, 0, 1) / 60_000 };
    fc.assert(
      fc.property(fc.constantFrom(...zones), fc.integer(minutes), (zone, minute) => {
        const local = new Date(minute * 60_000).toISOString().slice(0, 16);
        const { readings, flags } = read(`time,bp\n${local},142/88`, { zone });
        const [reading] = readings;
        const shown = new Intl.DateTimeFormat('sv-SE', {
          timeZone: zone,
          dateStyle: 'short',
          timeStyle: 'short',
        })
          .format(reading?.atMs)
          .replace(' ', 'T');
        if (flags.some(({ code }) => code === 'time-not-there')) expect(shown > local).toBe(true);
        else expect(shown).toBe(local);
      }),
      { numRuns: 300 },
    );
  });
});

describe('properties', () => {
  test('permuted rows are the same readings', () => {
    const chance = chanceFrom(7);
    const row = (_: unknown, k: number) => `2025-03-${String(1 + (k % 28)).padStart(2, '0')}T07:30+00:00,${k % 5 === 0 ? 'x' : 130 + k},8${k % 10},7${k % 10}`; // biome-ignore format: one text
    const rows = Array.from({ length: 40 }, row);
    const inAnyOrder = rows.map((one) => [chance(), one] as const).sort(([a], [b]) => a - b).map(([, one]) => one); // biome-ignore format: one thought
    const set = (text: readonly string[]) => {
      const found = whole(HEAD + text.join('\n'));
      const used = found.readings.map(({ index: _, ...one }) => JSON.stringify(one)).sort();
      return { used, refused: found.refused.length };
    };
    expect(set(inAnyOrder)).toEqual(set(rows));
    expect(set(rows).refused).toBe(8);
  });

  // `prove/series.mjs` breaks as many as it is told to in the same way: two thousand with all tests, a hundred thousand alone.
  test('broken files: each row is used or refused once, and nothing is lost', () => {
    const chance = chanceFrom(20260101);
    for (let k = 0; k < 150; k++) {
      const text = k < 20 ? validFile(chance) : mutated(validFile(chance), chance);
      const found = read(text, { zone: 'Europe/Lisbon', kind: k % 2 === 0 ? 'home' : 'ambulatory' });
      expect(faultOf(text, found), JSON.stringify(text)).toBeNull();
      // As made, every file is read whole.
      if (k < 20) expect([found.readings.length, found.refused]).toEqual([28, []]);
    }
  });

  test.each([
    '(',
    ' ',
    '"',
    '"x',
    '1',
    '12 ',
    '1/',
    ',',
    ';;',
    '\t',
    'a',
    '1 2/',
    ':',
    '.',
    'Mar ',
    '2025-03-01 ',
    '-',
  ])('a hundred thousand times %j are read at once', (sign) => {
    const long = sign.repeat(100_000);
    // Quadratic time would be minutes: the patience of a test ends before.
    for (const text of [
      long,
      `${HEAD}${ROW}\n${long}`,
      `${HEAD}${long},142,88,74`,
      `2025-03-03 07:30 142/88\n${long}`,
      `a,${long},b\n1,2,3`,
    ]) {
      // biome-ignore format: one list
      expect(faultOf(text, read(text, { zone: 'UTC' }))).toBeNull();
    }
  });

  test('the check itself sees a row that is lost, taken twice, or impossible', () => {
    const text = `${HEAD}${ROW}\n2025-03-03T08:30+00:00,x,88,74\n`;
    const found = whole(text);
    const fault = (change: Partial<ReadSeries>) => faultOf(text, { ...found, ...change });
    expect(fault({})).toBeNull();
    expect(fault({ readings: [] })).not.toBeNull();
    expect(fault({ refused: [] })).not.toBeNull();
    expect(fault({ refused: [...found.refused, ...found.refused] })).not.toBeNull();
    expect(fault({ refused: [], lines: [2] })).toBe('line 3 is nowhere');
    expect(
      fault({ readings: found.readings.map((one) => ({ ...one, systolic: Number.NaN })) }),
    ).not.toBeNull();
  });

  test('a number that no heading names is told by all rows, never by the first alone', () => {
    const rows = Array.from({ length: 60 }, (_, n) => `2025-03-03T${10 + (n % 10)}:${10 + (n % 50)}+00:00,${n % 3 === 1 ? '80,120' : '120,80'}`); // biome-ignore format: one text
    const said: SeriesChoices = { ...NOTHING_SAID, kind: 'ambulatory' };
    const text = ['time,systolic,second', ...rows].join('\n');
    expect(plainSeries(text, said)).toBeNull();
    expect(readSeries(text, said).questions.map(({ of }) => of)).toContain('columns');
    // With its name it is read at once, for two of three rows are not swapped.
    expect(plainSeries(text.replace('second', 'diastolic'), said)?.readings).toHaveLength(60);
  });

  test.each(['xx99-xx-xx', '??99-??-??', '  99-  -  ', '0000-00-00'])(
    'a first day that reads %j is none',
    (day) => {
      const text = `time,systolic,diastolic\n${day}T08:00+01:00,120,80\n2025-03-09T08:00+01:00,121,80\n`;
      const said: SeriesChoices = { ...NOTHING_SAID, kind: 'home' };
      expect(plainSeries(text, said)).toBeNull();
      expect(readSeries(text, said)).toEqual(readAnySeries(text, said));
    },
  );

  test.each([
    ['nothing but zero bytes where a day should be', `${HEAD}${'\0'.repeat(10)}T07:30+00:00,142,88,74\n`],
    ['an offset of zero bytes', `${HEAD}2025-03-03T07:30${'\0'.repeat(6)},142,88,74\n`],
    ['a row cut in its time', `${HEAD}${ROW}\n2025-03-03T07:3`],
    ['a row cut in its seconds', `${HEAD}${ROW}\n2025-03-03T07:30:00+00:0`],
    ['a row cut in its numbers', `${HEAD}${ROW}\n2025-03-03T07:30+00:00,142,8`],
    ['a row with too few cells', `${HEAD}${ROW}\n2025-03-03T07:30+00:00,142,88`],
    ['a number of four digits', `${HEAD}2025-03-03T07:30+00:00,1420,88,74\n`],
    [
      'more rows than the first one lets expect',
      `${HEAD}2025-03-03T07:30:00+00:00,142,88,74\n${`${ROW}\n`.repeat(40)}`,
    ],
    [
      'fewer rows than the first one lets expect',
      `${HEAD}2025-03-03T07:30+00:00,,88,\n${`${ROW}\n`.repeat(40)}`,
    ],
    ['lines that end in CRLF', `${HEAD}${ROW}\r\n${ROW}\r\n`],
    ['no row', HEAD],
    ['a heading alone', 'time,systolic,diastolic,pulse'],
    ['nothing', ''],
  ])('%s: as bytes, as text and the long way it is the same', (_name, text) => {
    for (const kind of ['home', 'ambulatory'] as const) {
      const said: SeriesChoices = { ...NOTHING_SAID, kind };
      const long = readAnySeries(text, said);
      expect(readSeries(text, said)).toEqual(long);
      expect(readSeries(new TextEncoder().encode(text), said)).toEqual(long);
    }
  });

  test('a heading that was plain once is so again only of rows that are plain', () => {
    const said: SeriesChoices = { ...NOTHING_SAID, kind: 'home' };
    expect(plainSeries(`${HEAD}${ROW}\n`, said)).not.toBeNull();
    for (const row of [
      '03/04/2025 07:30,142,88,74',
      '2025-03-03 07:30,142,88,74',
      'x,142,88,74',
      ',,,',
      '1,142,88,74',
    ]) {
      const text = `${HEAD}${row}\n${row}\n`;
      expect(plainSeries(text, said)).toBeNull();
      expect(readSeries(text, said)).toEqual(readAnySeries(text, said));
    }
  });

  // What a heading is that says `Date` its rows alone tell: a text without any has none, whatever was read before it.
  test.each(['\n', '\n\n', '\r\n'])(
    'a heading without rows (%j) is answered alike before and after one with them',
    (end) => {
      const said: SeriesChoices = { ...NOTHING_SAID, kind: 'home' };
      const heading = 'Date,SYS,DIA,Pulse';
      const alone = `${heading}${end}`;
      const long = readAnySeries(alone, said);
      const before = readSeries(alone, said);
      expect(plainSeries(`${heading}\n${ROW}\n`, said)?.readings).toHaveLength(1);
      expect(before).toEqual(long);
      expect(readSeries(alone, said)).toEqual(long);
      expect(readSeries(new TextEncoder().encode(alone), said)).toEqual(long);
    },
  );

  test('the fast way for bulk files answers what the long way does, or leaves it', () => {
    const chance = chanceFrom(5);
    const pick = (all: readonly string[]) => all[Math.floor(chance() * all.length)] as string;
    let taken = 0;
    for (let k = 0; k < 2000; k++) {
      const rows = Array.from({ length: 1 + Math.floor(chance() * 60) }, (_, n) => {
        const time = `2024-02-${String(1 + (n % 29)).padStart(2, '0')}${pick(['T', 'T', ' '])}0${n % 10}:30${pick(['', ':15'])}${pick(['+00:00', '-05:00', '+05:45'])}`; // biome-ignore format: one text
        const odd = chance() < 0.01 ? pick(['', '1', '999', 'x', '88,142', '142.5', ' 142', '2023-02-29T07:30+00:00', 'Z']) : null; // biome-ignore format: one list
        const cells = [time, pick(['142', '128', '']), pick(['88', '71', '']), pick(['74', '60', ''])];
        if (odd !== null) cells[Math.floor(chance() * 4)] = odd;
        return cells.join(',');
      });
      const text = [pick(['time,systolic,diastolic,pulse', 'Time,SYS,DIA,Pulse', 'time,pulse,diastolic,systolic', 'time,systolic,diastolic,note', 'sys (kPa),time,dia,pulse']), ...rows].join(pick(['\n', '\n', '\n\n', '\r\n'])); // biome-ignore format: one text
      const said: SeriesChoices = {
        ...NOTHING_SAID,
        kind: pick(['home', 'ambulatory']) as 'home' | 'ambulatory',
      };
      if (plainSeries(text, said) !== null) taken++;
      const long = readAnySeries(text, said);
      expect(readSeries(text, said), text).toEqual(long);
      // The same as bytes, somewhere within others, with the mark that some programs put before them.
      const bytes = new TextEncoder().encode(`9${chance() < 0.5 ? '\ufeff' : ''}${text}`).subarray(1);
      expect(readSeries(bytes, said), text).toEqual(long);
    }
    expect(taken).toBeGreaterThan(200);
    expect(taken).toBeLessThan(1800);
  });
});
