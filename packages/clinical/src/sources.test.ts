import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { FIGURES, TABLES } from './figures.js';

/** A numeral in a program text, and its line from 1. */
type Numeral = { readonly numeral: string; readonly line: number };

const TOKEN = new RegExp(
  [
    String.raw`\/\*[\s\S]*?\*\/`,
    String.raw`\/\/[^\n]*`,
    String.raw`'(?:\\.|[^'\\\n])*'`,
    String.raw`"(?:\\.|[^"\\\n])*"`,
    // A regular expression stands where a value may start.
    String.raw`(?<=[=(,:!&|?;[{>]\s*|return )\/(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\\n[])+\/[a-z]*`,
    String.raw`(?<numeral>(?<![\w$.])(?:0[xob][\da-f_]+|(?:\d[\d_]*)?\.?\d[\d_]*(?:e[-+]?\d+)?)n?)`,
    '`',
    String.raw`\\.`,
    String.raw`\$\{`,
    '[{}]',
  ].join('|'),
  'gi',
);

/** The numerals of a TypeScript text that are code: not in a comment, a string, a regular expression or a name. */
function numeralsIn(text: string): Numeral[] {
  const found: Numeral[] = [];
  // What encloses the place: a template text or braces of code. Strings inside a template text are text.
  const inside: ('template' | 'code')[] = [];
  TOKEN.lastIndex = 0;
  for (let match = TOKEN.exec(text); match !== null; match = TOKEN.exec(text)) {
    const token = match[0];
    const inTemplate = inside.at(-1) === 'template';
    if (inTemplate && !['`', '${'].includes(token) && !token.startsWith('\\')) {
      TOKEN.lastIndex = match.index + 1;
    } else if (token === '`') {
      if (inTemplate) inside.pop();
      else inside.push('template');
    } else if (token === '${' || token === '{') {
      inside.push('code');
    } else if (token === '}') {
      inside.pop();
    } else if (match.groups?.numeral !== undefined && !inTemplate) {
      found.push({ numeral: token, line: text.slice(0, match.index).split('\n').length });
    }
  }
  return found;
}

const SOURCE = fileURLToPath(new URL('.', import.meta.url));

/** Numbers that are no fact of the trade anywhere: counting, halving, seconds and milliseconds in a minute, comparing at 1e-9. */
const PLAIN = new Set(['0', '1', '2', '60', '1000', '60000', '1e9']);

/** Numbers of a method, which say nothing of a person; any other belongs in a `figures.ts` of its folder. */
const KNOWN: Readonly<Record<string, { readonly numbers: readonly string[]; readonly reason: string }>> = {
  'child/fourthReport.ts': { numbers: ['10', '100'], reason: 'the formula counts years from 10; percent' },
  'child/heightZ.ts': {
    numbers: ['0.5', '1e-7'],
    reason: 'where a row stands in its month; next to no power',
  },
  'child/years.ts': { numbers: ['12'], reason: 'months in a year' },
  'contract/shownPressure.ts': { numbers: ['9'], reason: 'decimals to which a number is told from a limit' },
  'equipment/calendar.ts': {
    numbers: ['4', '100', '400', '28', '29', '6', '9', '11', '30', '31', '12'],
    reason: 'the calendar',
  },
  'outOfOffice/ambulatoryResult.ts': { numbers: ['100'], reason: 'percent' },
  'outOfOffice/clock.ts': { numbers: ['3_600_000', '60_000', '1440', '24'], reason: 'the calendar' },
  'outOfOffice/cosinor.ts': {
    numbers: ['360', '3', '4'],
    reason: 'degrees of a circle; places of the waves and of the coefficients',
  },
  'outOfOffice/cosinorTimes.ts': { numbers: ['3'], reason: 'places of the waves' },
  'outOfOffice/curveExtremes.ts': {
    numbers: ['16', '1e-12', '4', '3'],
    reason: 'minutes of a block, rounding; the second derivative of half a period; places of the waves',
  },
  'outOfOffice/dayWaves.ts': {
    numbers: ['4', '1e-9'],
    reason: 'two waves for each of two harmonics; rounding',
  },
  'outOfOffice/dipping.ts': { numbers: ['100'], reason: 'percent' },
  'outOfOffice/combinedLoad.ts': { numbers: ['100'], reason: 'percent' },
  'outOfOffice/indexToMean.ts': {
    numbers: ['5', '1e-10'],
    reason: 'the golden section, where it looks and how close',
  },
  'outOfOffice/load.ts': { numbers: ['100'], reason: 'percent' },
  'outOfOffice/variability.ts': { numbers: ['100'], reason: 'percent' },
  'usual/prior.ts': { numbers: ['100'], reason: 'percent' },
  'protocol/protocol.ts': { numbers: ['9'], reason: 'the number of a schema' },
  'statistics/inverse.ts': { numbers: ['1e-12'], reason: 'rounding' },
  'statistics/longRunMean.ts': {
    numbers: [
      ...['80', '0.4', '0.65', '0.8', '0.9', '0.96', '0.68', '0.032', '0.048', '0.064', '0.088'],
      ...['0.1', '0.5', '8', '40', '5', '3', '4', '6', '1e-6'],
    ],
    reason:
      'grid and weights of the method, chosen by the coverage that prove/ measures; moments of Student t',
  },
  'statistics/median.ts': { numbers: ['1.4826'], reason: 'makes the median absolute deviation a normal SD' },
  'statistics/shannonEntropy.ts': { numbers: ['16'], reason: 'bins of the statistic, bedside handbook 1.12' },
  'statistics/wave.ts': { numbers: ['3', '4'], reason: 'two whole turns; the variance of a mean of a wave' },
  'taps/intervalStatistics.ts': { numbers: ['1e-6', '10', '4000'], reason: 'last binary digits of a time' },
  'taps/rateInterval.ts': { numbers: ['0.95', '12'], reason: 'the 95 % interval; the variance of rounding' },
  'taps/repair.ts': { numbers: ['8'], reason: 'passes' },
  'taps/rhythm.ts': {
    numbers: ['6', '16', '29', '90', '3'],
    reason: 'RMSSD of a steady tapper is jitter x root 6; turning points of a random series',
  },
  'unit/readMeasure.ts': { numbers: ['0.1'], reason: 'a limit is told to a tenth' },
  'taps/timeStep.ts': { numbers: ['0.1', '0.01', '0.001', '1e-3'], reason: 'decimals that a clock prints' },
};

/** Tables of numbers that docs/sources.md prints in full. */
const PRINTED = /(^|\/)figures\.ts$|Table\.ts$|^protocol\/presets\.ts$|^protocol\/\w+Section\.ts$/;

const files = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll('\\', '/'))
  // What ships: neither tests nor what only tests share.
  .filter((path) => path.endsWith('.ts') && !path.endsWith('.test.ts') && !path.endsWith('/testing.ts'));

const textOf = (path: string) => readFileSync(new URL(path, import.meta.url), 'utf8');

test('no number of the trade hides in the code', () => {
  const hidden = files
    .filter((path) => !PRINTED.test(path))
    .flatMap((path) =>
      numeralsIn(textOf(path))
        .filter(
          ({ numeral }) =>
            !PLAIN.has(numeral.replace(/_|n$/g, '')) && !KNOWN[path]?.numbers.includes(numeral),
        )
        .map(({ numeral, line }) => `${path}:${line}: ${numeral}`),
    );
  expect(hidden).toEqual([]);
});

test('every exception is still needed', () => {
  for (const [path, { numbers, reason }] of Object.entries(KNOWN)) {
    expect(reason).not.toBe('');
    const found = new Set(numeralsIn(textOf(path)).map(({ numeral }) => numeral));
    expect([path, ...numbers.filter((number) => !found.has(number))]).toEqual([path]);
  }
});

test('every table of figures is registered, so that docs/sources.md prints it', () => {
  const folders = files.filter((path) => path.endsWith('/figures.ts')).map((path) => path.split('/')[0]);
  expect(Object.keys(FIGURES).sort()).toEqual(folders.sort());
});

test('every table is registered, says all about itself and is used', () => {
  const registered = Object.values(TABLES).flatMap((tables) => Object.keys(tables));
  const named = files
    .filter((path) => path.endsWith('Table.ts'))
    .flatMap((path) => [...textOf(path).matchAll(/^export const (\w+)/gm)].map((match) => match[1]));
  expect(named.sort()).toEqual(registered.sort());
  const code = files
    .filter((path) => !path.endsWith('Table.ts') && path !== 'figures.ts')
    .map(textOf)
    .join('\n');
  for (const tables of Object.values(TABLES)) {
    for (const [name, { meaning, unit, source, rows }] of Object.entries(tables)) {
      expect([name, meaning !== '', unit !== '', source !== '', rows.length > 0]).toEqual([
        name,
        true,
        true,
        true,
        true,
      ]);
      expect([name, new RegExp(`\\b${name}\\b`).test(code)]).toEqual([name, true]);
    }
  }
});

test.each(Object.entries(FIGURES))(
  'each figure of %s says all about itself and is used',
  (folder, figures) => {
    const code = files.filter((path) => !path.endsWith('figures.ts')).map(textOf);
    for (const [id, { value, unit, meaning, source }] of Object.entries(figures)) {
      const name = `${folder}.${id}`;
      expect([name, Number.isFinite(value), unit !== '', meaning !== '', source !== '']).toEqual([
        name,
        true,
        true,
        true,
        true,
      ]);
      expect([name, code.some((text) => new RegExp(`\\b${id}\\b`).test(text))]).toEqual([name, true]);
    }
  },
);

test('the scan sees numerals in code and nothing else', () => {
  const code = [
    "const a = 'text 7'; // 8",
    '/* 9 */ const beat3 = 72.5e1; const re = /[4-6]+"/;',
    `const t = \`no 11 but \${a + 12} and \${\`13 \${14}\`}\`;`,
    'x = y / 15 / z; const big = 1_600n; const part = .25; items[16];',
    "const quote = '\\'17'; type T = 18 | 0x1f;",
  ].join('\n');
  expect(numeralsIn(code)).toEqual([
    { numeral: '72.5e1', line: 2 },
    { numeral: '12', line: 3 },
    { numeral: '14', line: 3 },
    { numeral: '15', line: 4 },
    { numeral: '1_600n', line: 4 },
    { numeral: '.25', line: 4 },
    { numeral: '16', line: 4 },
    { numeral: '18', line: 5 },
    { numeral: '0x1f', line: 5 },
  ]);
});
