// @ts-expect-error: jstat ships no types
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { typed } from '../../testing/typed.js';

type Usual = {
  mean: number;
  sd: number;
  interval: [number, number];
  probability: number;
  probabilityFlatPrior: number;
  oneMoreDay: { sd: number; narrowerMmHg: number; probability: number } | null;
  scale: string;
  settledAfterDays: number | null;
};

async function answered(line: string) {
  const { code, json, stderr } = await typed(`usual ${line} --json`);
  expect([stderr, code]).toEqual(['', 0]);
  return json[0] as { systolic: Usual; diastolic: Usual; assumptions: { code: string; detail: string }[] };
}

/** 1 - Phi of a general-purpose statistics package. */
const over = (threshold: number, mean: number, sd: number): number =>
  1 -
  (jstat as { normal: { cdf: (x: number, mean: number, sd: number) => number } }).normal.cdf(
    threshold,
    mean,
    sd,
  );

// Out-of-office handbook 17.4: 4.2 % of 138 is 5.7960, 5.5 % is 7.5900; 0.6976 is printed there for the flat prior.
test('a week at home of 138 about 135, from itself alone', async () => {
  const { systolic } = await answered('--home 138/86x28 --days 7 --threshold 135/85');
  expect(systolic.sd).toBeCloseTo(5.796, 4);
  expect(systolic.probability).toBeCloseTo(0.6976, 4);
  expect(systolic.probabilityFlatPrior).toBe(systolic.probability);
});

test('a recording of 138 by day about 135, from itself alone', async () => {
  const { systolic } = await answered('--ambulatory 138/86 --threshold 135/85');
  expect(systolic.sd).toBeCloseTo(7.59, 4);
  expect(systolic.probability).toBeCloseTo(over(135, 138, 7.59), 6);
  expect(systolic.oneMoreDay).toBeNull();
});

// The table of 17.4 takes 8.6 % of the mean of the population (10.8850) for the variation of an office visit, which it says;
// the program takes 8.6 % of the person's own level, as the formula above that table does. By hand for 148:
test.each([
  [1, 12.728],
  [2, 12.728 / Math.SQRT2],
  [3, 12.728 / Math.sqrt(3)],
])('%d office visits of 148 of a man of 55 about 140', async (visits, s) => {
  const { systolic } = await answered(`--age 55 --sex m --office 148/92x${visits} --threshold 140/90`);
  const [mu, tau] = [126.57, 13.5364];
  const weight = tau ** 2 / (tau ** 2 + s ** 2);
  expect(systolic.mean).toBeCloseTo(mu + weight * (148 - mu), 2);
  expect(systolic.sd).toBeCloseTo(Math.sqrt(weight) * s, 3);
  expect(systolic.probability).toBeCloseTo(over(140, systolic.mean, systolic.sd), 6);
  expect(systolic.probabilityFlatPrior).toBeCloseTo(over(140, 148, s), 6);
  expect(systolic.scale).toBe('office');
});

describe('the question as the help writes it', () => {
  const LINE = '--age 55 --sex m --office 148/92x2 --home 138/86x24 --days 6 --threshold 135/85';

  test('the named keys, each assumption said, the offset among them', async () => {
    const found = await answered(LINE);
    expect(Object.keys(found).slice(0, 3)).toEqual(['systolic', 'diastolic', 'assumptions']);
    expect(Object.keys(found.systolic).slice(0, 6)).toEqual(['mean', 'sd', 'interval', 'probability', 'probabilityFlatPrior', 'oneMoreDay']); // biome-ignore format: one list
    expect(found.assumptions.map(({ code }) => code)).toEqual(['prior-age-sex', 'office-visits', 'home-offset', 'home-variation', 'not-a-diagnosis']); // biome-ignore format: one list
    expect(found.assumptions[2]?.detail).toMatch(
      /Home minus office is taken as −5 mmHg, itself uncertain by 5/,
    );
    const [low, high] = found.systolic.interval;
    expect((high - low) / 2).toBeCloseTo(1.96 * found.systolic.sd, 9);
    // The prior of the office pulls down; one more day narrows, and little: the long-term part stays.
    expect(found.systolic.probability).toBeLessThan(found.systolic.probabilityFlatPrior);
    expect(found.systolic.oneMoreDay?.sd).toBeLessThan(found.systolic.sd);
    expect(found.systolic.oneMoreDay?.narrowerMmHg).toBeLessThan(1);
  });

  test('for people: the careful words, and no chance of 0 or 100', async () => {
    const { stdout } = await typed(`usual ${LINE}`);
    expect(stdout).toContain('that the usual level is at or above 135, under the stated assumptions');
    expect(stdout).toContain('more readings of the same kind within four weeks will not settle it');
    expect(stdout).not.toMatch(/chance of having|\b(0|100) %/);
    const sure = (await typed('usual --home 200/120x28 --days 7 --threshold 135/85')).stdout;
    expect(sure).toContain('over 99 % that');
    expect((await typed('usual --home 100/60x28 --days 7 --threshold 135/85')).stdout).toContain(
      'under 1 % that',
    );
    expect((await typed(`usual ${LINE} --language es`)).stdout).toContain('bajo los supuestos indicados');
  });
});

test.each([
  ['--home 138/86x24 --days 6', ['--threshold missing']],
  ['--threshold 135/85', ['--office missing']],
  ['--home 138/86x24 --threshold 135/85', ['--days missing']],
  ['--home 138/86x2 --days 6 --threshold 135/85', ['--days contradicts']],
  ['--days 6 --office 148/92 --threshold 135/85', ['--home missing']],
  ['--office 148/92x0 --threshold 135/85', ['--office out-of-range']],
  ['--office 148 --threshold 135/85', ['--office not-a-number']],
  ['--office 148/92 --threshold 85/135', ['--threshold not-below-systolic']],
  ['--office 148/92 --age 55 --threshold 135/85', ['--sex missing']],
  ['--office 148/92 --age 17 --sex m --threshold 135/85', ['--age out-of-range']],
])('%s is refused', async (line, expected) => {
  const { code, stdout, problems } = await typed(`usual ${line} --json`);
  expect([code, stdout]).toEqual([2, '']);
  expect(problems.map(({ field, code: fault }) => `${field} ${fault}`)).toEqual(expected);
});
