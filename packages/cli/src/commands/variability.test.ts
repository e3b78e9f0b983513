import { expect, test } from 'vitest';
import { typed } from '../../testing/typed.js';

// V1 of the out-of-office handbook 19: mean and SD of six people; and an order of lines as `ambulatory` writes them.
const V1 = [
  [112, 7.1],
  [121, 8],
  [129, 9.4],
  [138, 10.1],
  [146, 12.2],
  [157, 13.9],
] as const;
const recording = (mean: number, sd: number, more: object = {}) =>
  JSON.stringify({
    valid: true,
    whole: { arithmetic: { systolic: mean, diastolic: mean / 2 } },
    sd: { systolic: sd, diastolic: sd / 2 },
    ...more,
  });
const LINES = V1.map(([mean, sd], k) => recording(mean, sd, { file: `${'abcdef'[k]}.csv` }));

type Fit = { x: number; a: number; mean: number; rest: number; correlation: number };
type Answer = {
  of: string;
  people: number;
  systolic: { logLog: Fit | null; leastSquares: Fit | null };
  diastolic: { logLog: Fit | null };
  each: {
    file: string | null;
    line: number;
    systolic: { cvPercent: number; vim: { logLog: number | null; leastSquares: number | null } };
  }[];
  left: { line: number; file: string | null; reason: string; detail: string }[];
};

async function answered(input: string): Promise<Answer> {
  const { code, json, stderr } = await typed('variability - --json', { input });
  expect([stderr, code]).toEqual(['', 0]);
  return json[0] as Answer;
}

test('V1: six people from the answers of ambulatory, to the printed digits', async () => {
  const found = await answered(LINES.join('\n'));
  expect(found).toMatchObject({ of: 'ambulatory', people: 6, left: [] });
  expect(found.systolic.logLog?.mean).toBeCloseTo(133.8333, 4);
  expect(found.systolic.logLog?.x).toBeCloseTo(2.0182, 4);
  expect(found.systolic.logLog?.correlation).toBeCloseTo(0.0246, 4);
  expect(found.systolic.leastSquares?.x).toBeCloseTo(2.0594, 4);
  expect(found.systolic.leastSquares?.rest).toBeCloseTo(0.4186, 4);
  [10.1709, 9.8049, 10.1244, 9.494, 10.2352, 10.0712].forEach((vim, k) => {
    expect(found.each[k]?.systolic.vim.logLog).toBeCloseTo(vim, 4);
  });
  expect(found.each[5]?.systolic.vim.leastSquares).toBeCloseTo(10.0052, 4);
  expect(found.each[0]?.systolic.cvPercent).toBeCloseTo(6.3393, 4);
  expect(found.each.map(({ file, line }) => [file, line])[1]).toEqual(['b.csv', 2]);
  const { stdout } = await typed('variability -', { input: LINES.join('\n') });
  expect(stdout).toContain('SD grows as the mean to the power of 2.02, about 133.8');
  expect(stdout).toMatch(/a\.csv +Systolic mean 112\.00, SD 7\.10, independent of the mean \(VIM\) 10\.17/);
  expect((await typed('variability - --language es', { input: LINES.join('\n') })).stdout).toContain(
    'elevada a 2,02',
  );
});

test('a week at home goes in as the command wrote it, by the means of its days', async () => {
  const week = new URL('../../../../docs/examples/home-week.csv', import.meta.url).pathname;
  const { stdout } = await typed(`home ${week} --json`);
  const found = await answered(`${stdout}${stdout}${stdout}`);
  expect(found).toMatchObject({ of: 'home', people: 3, systolic: { logLog: null } });
  // H1 of the out-of-office handbook 19: the means of days 2 to 7 vary by 1.0462 %.
  expect(found.each[0]?.systolic.cvPercent).toBeCloseTo(1.0462, 3);
  expect(found.each[0]?.systolic.vim).toEqual({ logLog: null, leastSquares: null });
});

test('what cannot be taken is listed; what is no answer, or of the other kind, is refused by its line', async () => {
  const odd = [
    ...LINES,
    JSON.stringify({ file: 'g.csv', problems: [] }),
    recording(140, 9, { valid: false, file: 'h.csv' }),
    recording(140, 0, { file: 'i.csv' }),
    '',
  ];
  const { left, people } = await answered(odd.join('\n'));
  expect(people).toBe(6);
  expect(left.map(({ file, line, reason }) => [file, line, reason])).toEqual([
    ['g.csv', 7, 'refused-file'],
    ['h.csv', 8, 'not-valid-series'],
    ['i.csv', 9, 'no-spread'],
  ]);
  const home = JSON.stringify({ valid: true, dayMeans: [], dayToDay: {} });
  for (const [text, lines] of [
    ['x', [1]],
    [`${LINES[0]}\n[1]\n{"a":1}`, [2, 3]],
    [`${LINES[0]}\n${home}`, [2]],
    ['\n', [null]],
  ] as const) {
    const { code, stdout, stderr } = await typed('variability - --json', { input: text });
    expect([code, stdout]).toEqual([2, '']);
    const { problems } = JSON.parse(stderr) as { problems: { line: number | null }[] };
    expect(problems.map(({ line }) => line)).toEqual(lines);
  }
});
