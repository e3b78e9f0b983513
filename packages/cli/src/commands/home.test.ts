import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { typed } from '../../testing/typed.js';

const example = (name: string) => new URL(`../../../../docs/examples/${name}`, import.meta.url).pathname;
const WEEK = example('home-week.csv');

type Home = {
  rules: string;
  asked: Record<string, unknown>;
  valid: boolean;
  used: number;
  days: number;
  high: boolean;
  category: string | null;
  dropped: { row: number; reason: string; column: number | null }[];
  mean: Record<string, number>;
  morning: Record<string, number>;
  evening: Record<string, number>;
  sd: Record<string, number>;
  dayMeans: { date: string; systolic: number }[];
  probability: { prior: string; systolic: number; threshold: { systolic: number } }[];
  shown: Record<string, string>;
  actFirst: { row: number; code: string }[];
  flags: { code: string }[];
  why: { code: string }[];
  phenotype: { names: string[] } | null;
  whiteCoat: { systolic: number; diastolic: number } | null;
  computedBy: Record<string, unknown>;
};

async function answered(line: string, input = ''): Promise<Home> {
  const { code, json, stderr } = await typed(`home ${line} --json`, { input });
  expect([stderr, code]).toEqual(['', 0]);
  return json[0] as Home;
}

// Source of H1 and H2: out-of-office handbook 19 (invented series, computed independently), to the printed digits.
describe('the invented week H1', () => {
  test('by ISH 2020, which is taken where none is named: the first day is left out, row by row', async () => {
    const found = await answered(WEEK);
    expect(found).toMatchObject({ rules: 'ish-2020', valid: true, why: [], used: 24, days: 6, high: true });
    expect(found.dropped.map(({ row, reason }) => [row, reason])).toEqual([
      [2, 'dropped-day'],
      [3, 'dropped-day'],
      [4, 'dropped-day'],
      [5, 'dropped-day'],
    ]);
    expect(found.mean.systolic).toBeCloseTo(136.5833, 4);
    expect(found.mean.diastolic).toBeCloseTo(84.9583, 4);
    expect(found.mean.pulse).toBeCloseTo(73.6667, 4);
    expect(found.morning.systolic).toBeCloseTo(139.0833, 4);
    expect(found.evening.systolic).toBeCloseTo(134.0833, 4);
    expect(found.sd.systolic).toBeCloseTo(3.1885, 4);
    expect(found.sd.diastolic).toBeCloseTo(2.2161, 4);
    expect(found.dayMeans.map(({ systolic }) => systolic)).toEqual([137, 135.5, 138.5, 134.5, 136.5, 137.5]);
    expect(found.dayMeans[0]?.date).toBe('2025-03-04');
    expect(found.shown).toEqual({ systolic: '137', diastolic: '84.96' });
    expect(found.computedBy).toMatchObject({ preset: 'ish-2020', rule: 'home-2' });
  });

  test('the named keys come first and in their order', async () => {
    const keys = Object.keys(await answered(WEEK));
    expect(keys.slice(0, 15)).toEqual(
      'rules valid why used dropped days mean morning evening sd dayMeans high category compared probability'.split(' '), // biome-ignore format: one list
    );
  });

  test.each([
    ['esc-2024', 28, 138.1071, 85.8214],
    ['jsh-2019', 28, 138.1071, 85.8214],
    ['nice-ng136', 24, 136.5833, 84.9583],
    ['hypertension-canada', 24, 136.5833, 84.9583],
  ])('by %s %d readings', async (rules, used, systolic, diastolic) => {
    const found = await answered(`${WEEK} --rules ${rules}`);
    expect(found.used).toBe(used);
    expect(found.mean.systolic).toBeCloseTo(systolic, 4);
    expect(found.mean.diastolic).toBeCloseTo(diastolic, 4);
  });

  test('chances: flat alone, and by age and sex only where both are known', async () => {
    const priors = async (line: string) =>
      (await answered(`${WEEK} ${line}`)).probability.map(({ prior, threshold }) => [
        prior,
        threshold.systolic,
      ]);
    expect(await priors('')).toEqual([['flat', 135]]);
    expect(await priors('--age 55')).toEqual([['flat', 135]]);
    expect(await priors('--age 55 --sex m')).toEqual([
      ['flat', 135],
      ['age-sex', 135],
    ]);
    expect(await priors('--rules nice-ng136')).toEqual([
      ['flat', 135],
      ['flat', 150],
    ]);
    expect(await priors('--rules korea-2018')).toEqual([]);
    expect(await priors('--age 17 --sex f')).toEqual([]);
    expect(await priors('--age 55 --sex m --pregnant')).toEqual([]);
  });

  test('permuted rows change nothing but the order of lines', async () => {
    const [heading = '', ...rows] = readFileSync(WEEK, 'utf8').trim().split('\n');
    const first = await answered(WEEK);
    const again = await answered('-', [heading, ...rows.reverse()].join('\n'));
    expect(again.mean).toEqual(first.mean);
    expect(again.dropped.map(({ row }) => row)).toEqual([26, 27, 28, 29]);
  });
});

test('H2: a mean of 134.58/84.50 is under 135/85, and is shown so', async () => {
  const typedOnes =
    '136/86 134/84 135/85 133/83 137/86 134/84 135/85 133/84 136/85 134/84 135/85 133/83'.split(' ');
  const rows = typedOnes.map(
    (one, k) => `2025-03-0${3 + (k >> 2)} ${['07:00', '07:02', '19:00', '19:02'][k % 4]},${one}`,
  );
  const input = ['time,pressure', ...rows].join('\n');
  const found = await answered('- --rules esc-2024 --zone Europe/London', input);
  expect(found.mean.systolic).toBeCloseTo(134.5833, 4);
  expect(found.mean.diastolic).toBeCloseTo(84.5, 10);
  expect(found).toMatchObject({ high: false, category: 'elevated', compared: 'unrounded' });
  expect(found.shown).toEqual({ systolic: '134.6', diastolic: '84.5' });
});

// Source: out-of-office handbook 19, P1; by rule sets with office 140/90 and home 135/85, and 130/80 for both.
test.each([
  ['146/88', '128/80', 'no', 'ish-2020', 'white-coat-hypertension'],
  ['146/88', '128/80', 'yes', 'ish-2020', 'white-coat-effect'],
  ['132/84', '134/86', 'no', 'ish-2020', 'masked-hypertension'],
  ['132/84', '138/80', 'yes', 'ish-2020', 'masked-uncontrolled'],
  ['139/89', '134/84', 'no', 'ish-2020', 'sustained-normotension'],
  ['140/80', '135/70', 'no', 'ish-2020', 'sustained-hypertension'],
  ['134/78', '131/78', 'no', 'ish-2020', 'sustained-normotension'],
  ['134/78', '131/78', 'no', 'acc-aha-2025', 'sustained-hypertension'],
])('P1: office %s, home %s, treated %s by %s: %s', async (office, atHome, treated, rules, name) => {
  const rows = Array.from(
    { length: 16 },
    (_, k) => `2025-03-0${3 + (k >> 2)}T${['07', '08', '19', '20'][k % 4]}:00Z,${atHome}`,
  );
  const input = ['time,bp', ...rows].join('\n');
  const found = await answered(`- --office ${office} --treated ${treated} --rules ${rules}`, input);
  expect(found.phenotype?.names).toEqual([name]);
  if (office === '146/88') expect(found.whiteCoat).toMatchObject({ systolic: 18, diastolic: 8 });
});

describe('a messy file', () => {
  const MESSY = example('home-messy.csv');

  test('semicolons, decimal commas, a title, day first, two rows that cannot be read: each row is used or named', async () => {
    const found = await answered(`${MESSY} --zone Europe/Lisbon`);
    expect(found.dropped.map(({ row, reason, column }) => [row, reason, column])).toEqual([
      [3, 'dropped-day', null],
      [4, 'dropped-day', null],
      [6, 'not-a-number', 3],
      [9, 'not-below-systolic', 4],
    ]);
    expect(found.used).toBe(7);
    expect(found).toMatchObject({
      columns: ['date', 'clock', 'systolic', 'diastolic', 'pulse', 'note'],
      dates: 'dmy',
    });
    expect(found.flags.map(({ code }) => code)).toEqual([
      'few-mornings',
      'lines-before-heading',
      'time-not-there',
    ]);
  });

  test('a dangerous reading is named first, also of a day that is left out', async () => {
    const { stdout } = await typed(`home ${MESSY} --zone Europe/Lisbon`);
    expect(stdout).toMatch(/^Act first +line 4, 182\/121: /);
    // The category stands before any chance.
    expect(stdout.indexOf('Category')).toBeLessThan(stdout.indexOf('Chance'));
    expect(stdout).toContain('that the usual level is at or above 135/85, under the stated assumptions');
    // One chance needs no word on which is which.
    expect(stdout).not.toContain('All are about the same usual level');
    expect(stdout).toMatch(/By +ISH 2020: .*\(ish-2020, version [0-9a-f]{12}\)/);
    const pregnant = await answered(`${MESSY} --zone Europe/Lisbon --pregnant`);
    expect(pregnant).toMatchObject({ category: null, high: null });
    expect(pregnant.actFirst.map(({ row }) => row)).toContain(4);
    const child = await answered(`${MESSY} --zone Europe/Lisbon --age 9`);
    expect(child).toMatchObject({ category: null });
    expect(child.actFirst.map(({ row }) => row)).toContain(4);
  });

  // Bedside handbook 3.16: from 180 or 120 on; also of a row that is refused for its time.
  test.each([
    ['179/119', 0],
    ['180/70', 1],
    ['140/120', 1],
    ['91/50', 0],
    ['90/50', 1],
  ])('%s: %d to act on', async (pressure, count) => {
    expect((await answered('-', `time,bp\nyesterday,${pressure}\n`)).actFirst).toHaveLength(count);
  });

  test('in Spanish nothing is left in English', async () => {
    const { stdout } = await typed(`home ${MESSY} --zone Europe/Lisbon --language es`);
    expect(stdout).toMatch(/^Primero +línea 4, 182\/121: /);
    expect(stdout).not.toMatch(/\b(the|line|reading|chance|category)\b/i);
  });

  // H1 of the out-of-office handbook 19 without its first day: 136.5833/84.9583, which must not be rounded onto the limit of 85.
  test('decimals are written as the language writes them, in every line', async () => {
    const { stdout } = await typed(`home ${WEEK} --rules ish-2020 --office 148.5/92 --language es`);
    expect(stdout).toMatch(/Media +137\/84,96, pulso 74\n/);
    expect(stdout).toMatch(/De día a día +137\/85; 136\/84,5; .*\(DE 1,4\/0,9\)\n/);
    expect(stdout).not.toMatch(/\d\.\d/);
  });
});

describe('what must be said first', () => {
  test.each([
    ['time,bp\n01/02/2025 07:30,142/88', ['ambiguous date-order 2 1', 'ambiguous zone-of-times 2 1']],
    ['time,bp\n13/02/2025 07:30,142/88', ['ambiguous zone-of-times 2 1']],
    ['time,sys,dia\n2025-02-01T07:30Z,18.9,11.7', ['ambiguous unit-of-pressures 2 2']],
    ['time,sys,dia\n2025-02-01T07:30Z,88,142', ['ambiguous systolic-over-diastolic 2 3']],
    ['a,b\nc,d', ['missing column-of-series 1 null', 'missing column-of-series 1 null', 'missing column-of-series 1 null']], // biome-ignore format: one list
    [
      '',
      [
        'missing column-of-series 1 null',
        'missing column-of-series 1 null',
        'missing column-of-series 1 null',
      ],
    ],
  ])('%j', async (input, expected) => {
    const { code, stdout, problems } = await typed('home - --json', { input });
    expect([code, stdout]).toEqual([2, '']);
    const rule = (text: unknown) =>
      [
        [/order/, 'date-order'],
        [/zone/, 'zone-of-times'],
        [/kPa/, 'unit-of-pressures'],
        [/swapped/, 'systolic-over-diastolic'],
        [/a column for it/, 'column-of-series'],
      ].find(([about]) => (about as RegExp).test(String(text)))?.[1];
    expect(problems.map((one) => `${one.code} ${rule(one.expected)} ${one.line} ${one.column}`)).toEqual(
      expected,
    );
  });

  test('and is taken once it is said', async () => {
    const dates = await answered('- --dates mdy --zone America/New_York', 'time,bp\n01/02/2025 07:30,142/88');
    expect(dates.dropped.map(({ reason }) => reason)).toEqual(['dropped-day']);
    const kPa = await answered('- --unit kPa --rules esc-2024', 'time,sys,dia\n2025-02-01T07:30Z,18.9,11.7');
    // 1 kPa = 7.50062 mmHg: out-of-office handbook 20.
    expect(kPa.mean.systolic).toBeCloseTo(18.9 * 7.50062, 9);
    const swapped = '- --columns time,diastolic,systolic --rules esc-2024';
    expect((await answered(swapped, 'time,sys,dia\n2025-02-01T07:30Z,88,142')).mean).toMatchObject({
      systolic: 142,
    });
  });

  test.each([
    ['--zone Lisbon', '--zone unknown-id'],
    ['--age 12.5', '--age not-whole'],
    ['--age -1', '--age out-of-range'],
    ['--rules ish', '--rules unknown-id'],
    ['--office 88/146', '--office not-below-systolic'],
    ['--office 146', '--office not-a-number'],
    ['--columns time,sys', '--columns unknown-id'],
    ['--columns time,time', '--columns repeated'],
    ['--dates ydm', '--dates unknown-id'],
  ])('%s is refused', async (line, expected) => {
    const { code, stdout, problems } = await typed(`home ${WEEK} ${line} --json`);
    expect([code, stdout]).toEqual([2, '']);
    expect(problems.map(({ field, code: fault }) => `${field} ${fault}`)).toEqual([expected]);
  });
});

test('several files: a line of JSON each, in order of path; one that must be asked about does not stop the rest', async () => {
  const { code, json, problems } = await typed(`home ${WEEK} ${example('home-messy.csv')} --json`);
  expect(code).toBe(2);
  expect(json.map(({ file, used }) => [String(file).split('/').at(-1), used])).toEqual([
    ['home-messy.csv', undefined],
    ['home-week.csv', 24],
  ]);
  expect(problems.map((one) => one.code)).toEqual(['ambiguous']);
});

test('--list names every rule set with its source and how sure it is', async () => {
  const { json } = await typed('home --list --json');
  const items = json[0]?.items as { id: string; status: string; source: string | null }[];
  expect(items.map(({ id }) => id)).toEqual(
    expect.arrayContaining(['nice-ng136', 'ish-2020', 'jsh-2019', 'esh-2023', 'esc-2024', 'acc-aha-2017', 'acc-aha-2025', 'hypertension-canada']), // biome-ignore format: one list
  );
  // The project's own decisions name nothing published; nobody can look a section of its handbook up.
  for (const { status, source } of items) expect([status, source !== null].join()).toMatch(/\w{4},true|decision,false/); // biome-ignore format: one thought
  expect(JSON.stringify(json)).not.toContain('handbook');
});

describe('a FHIR bundle', () => {
  test('is read like a table: a severe pressure that was taken back is not in the mean, and is named first', async () => {
    const loinc = (code: string) => ({ coding: [{ system: 'http://loinc.org', code }] });
    const part = (code: string, value: number) => ({
      code: loinc(code),
      valueQuantity: { value, system: 'http://unitsofmeasure.org', code: 'mm[Hg]' },
    });
    const pressure = (day: number, systolic: number, status: string) => ({
      resource: {
        resourceType: 'Observation',
        ...{ status, subject: { display: 'Wren (invented)' }, code: loinc('85354-9') },
        effectiveDateTime: `2026-07-0${day}T07:30:00+01:00`,
        component: [part('8480-6', systolic), part('8462-4', 84)],
      },
    });
    const entry = [
      pressure(1, 150, 'final'),
      pressure(2, 140, 'final'),
      pressure(3, 230, 'entered-in-error'),
    ];
    const input = JSON.stringify({ resourceType: 'Bundle', type: 'collection', entry });
    const { json, code, stderr } = await typed('home - --rules ish-2020 --json', { input });
    expect([stderr, code]).toEqual(['', 0]);
    const [found] = json as { used: number; mean: object; dropped: object[]; actFirst: object[] }[];
    expect([found?.used, found?.mean]).toEqual([1, { systolic: 140, diastolic: 84, pulse: null }]);
    expect(found?.dropped).toMatchObject([
      { row: 2, reason: 'dropped-day' },
      { row: 4, reason: 'contradicts', field: '/entry/2/resource' },
    ]);
    expect(found?.actFirst).toMatchObject([{ row: 4, systolic: 230, code: 'severe-reading' }]);
  });
});

// Out-of-office handbook 19, H1 without the first day, to the printed digits: mornings, evenings, what lies between them.
test('H1: how mornings and evenings vary by themselves', async () => {
  const week = new URL('../../../../docs/examples/home-week.csv', import.meta.url).pathname;
  const { json } = await typed(`home ${week} --json`);
  const { dayToDayByPart: of } = json[0] as {
    dayToDayByPart: Record<
      'morning' | 'evening' | 'morningMinusEvening',
      { days: number; sd: { systolic: number } }
    >;
  };
  expect(of.morning.sd.systolic).toBeCloseTo(1.5303, 4);
  expect(of.evening.sd.systolic).toBeCloseTo(1.3934, 4);
  expect(of.morningMinusEvening.sd.systolic).toBeCloseTo(0.6325, 4);
  expect((await typed(`home ${week}`)).stdout).toMatch(/Day to day +SD of the mornings 1\.5\/\d/);
});

test('the answer says what was asked for beside the file, and null where nothing was', async () => {
  expect((await answered(WEEK)).asked).toEqual({ rules: null, zone: null, dates: null, unit: null, columns: null, ageYears: null, sex: null, pregnant: false, office: null, treated: null }); // biome-ignore format: one object
  const found = await answered(
    `${WEEK} --zone Europe/Lisbon --rules nice-ng136 --age 55 --sex m --office 148/92x2 --treated no`,
  );
  expect(found.rules).toBe('nice-ng136');
  expect(found.asked).toMatchObject({
    rules: 'nice-ng136',
    zone: 'Europe/Lisbon',
    ageYears: 55,
    sex: 'm',
    pregnant: false,
    office: { systolic: 148, diastolic: 92, count: 2 },
    treated: false,
  });
  const office = async (typed: string) => (await answered(`${WEEK} --office ${typed}`)).asked.office;
  // A named key is always there (docs/conventions.md section 3).
  expect(await office('148/92x2')).toEqual({ systolic: 148, diastolic: 92, count: 2, visits: null });
  expect(await office('2025-03-01=148/92')).toEqual({
    systolic: null,
    diastolic: null,
    count: null,
    visits: [{ date: '2025-03-01', systolic: 148, diastolic: 92 }],
  });
});
