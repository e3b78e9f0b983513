// @ts-expect-error: jstat ships no types
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { typed } from '../../testing/typed.js';

type Chance = {
  threshold: { systolic: number; diastolic: number };
  systolic: number;
  diastolic: number;
  prior: string;
};
type Answer = {
  probability: Chance[];
  assumptions: { code: string }[];
  office: Record<string, unknown> | null;
  whiteCoat: unknown;
  derivedSpread: Record<string, Record<string, { sd: number; least: number; most: number }>>;
};

async function answered(line: string): Promise<Answer> {
  const { code, json, stderr } = await typed(`${line} --json`);
  expect([stderr, code]).toEqual(['', 0]);
  return json[0] as Answer;
}

const { cdf } = (jstat as { normal: { cdf: (x: number, mean: number, sd: number) => number } }).normal;
type Belief = { mean: number; sd: number };

/** The normal-normal model of the out-of-office handbook 17.4, written down again. */
const updated = ({ mean, sd }: Belief, y: number, s: number): Belief => {
  const weight = sd ** 2 / (sd ** 2 + s ** 2);
  return { mean: mean + weight * (y - mean), sd: Math.sqrt(weight) * s };
};
const atHome = ({ mean, sd }: Belief): Belief => ({ mean: mean - 5, sd: Math.hypot(sd, 5) });
const over = (threshold: number, { mean, sd }: Belief) => 1 - cdf(threshold, mean, sd);

// The man of 50 to 59 of 17.4: 126.57, SD between people 13.5364; offices vary by 8.6 % of the level over the root of the visits.
const MAN: Belief = { mean: 126.57, sd: 13.5364 };
const OFFICE = updated(MAN, 148, (0.086 * 148) / Math.SQRT2);

const RECORDING = 'docs/examples/recording-24h.csv --asleep 23:00-07:00 --rules esh-2023';
const WEEK = 'docs/examples/home-week.csv --rules esc-2024';
const KNOWN = '--age 55 --sex m --office 148/92x2';

describe('office visits beside a recording', () => {
  // A1: 137.3125/86.03125 by day, about 135/85; recordings vary by 5.5 % of the level.
  test('the chance is that of the model, and of `usual` with the same numbers', async () => {
    const found = await answered(`ambulatory ${RECORDING} ${KNOWN}`);
    expect(found.probability.map(({ prior }) => prior)).toEqual(['flat', 'age-sex', 'office']);
    const office = found.probability.at(-1) as Chance;
    expect(office.threshold).toEqual({ systolic: 135, diastolic: 85 });
    const day = updated(atHome(OFFICE), 137.3125, 0.055 * 137.3125);
    expect(office.systolic).toBeCloseTo(over(135, day), 3);
    const asked = await typed(`usual ${KNOWN} --ambulatory 137.3125/86.03125 --threshold 135/85 --json`);
    const usual = asked.json[0] as Record<'systolic' | 'diastolic', { probability: number }>;
    expect(office.systolic).toBeCloseTo(usual.systolic.probability, 9);
    expect(office.diastolic).toBeCloseTo(usual.diastolic.probability, 9);
    expect(found.assumptions.map(({ code }) => code)).toEqual(['prior-age-sex', 'office-visits', 'home-offset', 'ambulatory-variation', 'not-a-diagnosis']); // biome-ignore format: one list
  });

  test('without them there is no such column, and of a child or too few readings no chance at all', async () => {
    expect((await answered(`ambulatory ${RECORDING}`)).probability.map(({ prior }) => prior)).toEqual([
      'flat',
    ]);
    for (const more of ['--age 9', '--pregnant', '--scheduled 80']) {
      const found = await answered(`ambulatory ${RECORDING} --office 148/92 ${more}`);
      expect([found.probability, found.assumptions]).toEqual([[], []]);
    }
  });

  test('for people: which chance takes them, and how far mean arterial and pulse pressure lie apart', async () => {
    // Spread of A1 by Python's `statistics.stdev`, `min` and `max`.
    const { derivedSpread } = await answered(`ambulatory ${RECORDING}`);
    expect(derivedSpread.day?.meanArterial?.sd).toBeCloseTo(4.0998, 4);
    expect(derivedSpread.whole?.pulsePressure).toMatchObject({ least: 45, most: 54 });
    const { stdout } = await typed(`ambulatory ${RECORDING} ${KNOWN}`);
    expect(stdout).toMatch(/^Chance +that the usual level .* \(with the office visits too\)$/m);
    const chances = stdout.split('\n').filter((line) => line.startsWith('Chance'));
    expect(chances[0]).toContain('with the office visits too');
    expect(chances.at(-2)).toContain('from these readings alone');
    expect(chances.at(-1)).toMatch(
      /The first also counts the office visits and what is known of people of this age and sex: go by that one/,
    );
    expect(stdout).toMatch(/^Assuming +Home minus office is taken as −5 mmHg/m);
    expect(stdout).toMatch(/^Pulse pressure +24 hours 50 \(SD 2\.2, 45 to 54\); day 51 .*; night 47 /m);
  });
});

describe('office visits beside a week at home', () => {
  // H1 with everything averaged: 138.1071; its own parts by day and by reading are in its standard error.
  test('the chance is that of the model about each threshold, as the page of a series takes a mean of visits', async () => {
    const found = await answered(`home ${WEEK} ${KNOWN}`);
    const office = found.probability.filter(({ prior }) => prior === 'office');
    expect(office.map(({ threshold }) => threshold)).toEqual(
      found.probability.filter(({ prior }) => prior === 'flat').map(({ threshold }) => threshold),
    );
    // The standard error follows from the chance of the readings alone: over 135 it is 1 - Phi((135 - mean) / s).
    const flat = found.probability[0] as Chance;
    const { inv } = (jstat as { normal: { inv: (p: number, mean: number, sd: number) => number } }).normal;
    const s = (138.10714 - 135) / inv(flat.systolic, 0, 1);
    const week = updated(atHome(OFFICE), 138.10714, s);
    for (const { threshold, systolic } of office)
      expect(systolic).toBeCloseTo(over(threshold.systolic, week), 3);
  });

  test('more visits weigh more', async () => {
    const at = async (visits: number) =>
      (await answered(`home ${WEEK} --age 55 --sex m --office 160/98x${visits}`)).probability.at(-1)?.systolic ?? 0; // biome-ignore format: one thought
    expect(await at(4)).toBeGreaterThan(await at(1));
  });
});

describe('office pressures with their days', () => {
  // By hand: 150 and 140 of one day are 145, with 148 of another 146.5; so many visits as days.
  test('are visits by day, as in the record', async () => {
    const dated = '2025-03-01=148/92,2025-03-04=150/94,2025-03-04=140/90';
    const found = await answered(`ambulatory ${RECORDING} --age 55 --sex m --office ${dated}`);
    expect(found.office).toEqual({
      systolic: 146.5,
      diastolic: 92,
      count: 2,
      visits: [
        { date: '2025-03-01', rounds: 1, systolic: 148, diastolic: 92 },
        { date: '2025-03-04', rounds: 2, systolic: 145, diastolic: 92 },
      ],
      tooFar: 0,
    });
    const same = await answered(`ambulatory ${RECORDING} --age 55 --sex m --office 146.5/92x2`);
    expect(found.probability).toEqual(same.probability);
    expect(same.office).toMatchObject({ count: 2, visits: null });
  });

  // Three months, a decision of this project.
  test('further than 92 days from the readings are left out, and it is said how many', async () => {
    const found = await answered(`ambulatory ${RECORDING} --office 2024-01-01=180/110,2025-03-04=148/92`);
    expect(found.office).toMatchObject({ systolic: 148, count: 1, tooFar: 1 });
    const { stdout } = await typed(`ambulatory ${RECORDING} --office 2024-01-01=180/110`);
    expect(stdout).toContain('1 pressure not taken, more than 92 days from these readings');
    const none = await answered(`ambulatory ${RECORDING} --office 2024-01-01=180/110`);
    expect([none.office, none.whiteCoat]).toEqual([
      { systolic: null, diastolic: null, count: 0, visits: [], tooFar: 1 },
      null,
    ]);
  });

  test('a day that is none, and a pressure the wrong way round, are refused', async () => {
    for (const [office, code] of [
      ['2025-02-30=148/92', 'not-a-time'],
      ['2025-03-01=148/92,150/90', 'not-a-time'],
      ['2025-03-01=92/148', 'not-below-systolic'],
    ]) {
      const came = await typed(`usual --threshold 135/85 --office ${office} --json`);
      expect([came.code, came.problems.map((one) => one.code)]).toEqual([2, [code]]);
    }
  });

  test('go into the usual level as so many visits', async () => {
    const [dated] = (await typed('usual --threshold 135/85 --office 2025-03-01=148/92,2025-04-01=150/94 --json')).json; // biome-ignore format: one line
    const [plain] = (await typed('usual --threshold 135/85 --office 149/93x2 --json')).json;
    expect((dated as { systolic: unknown }).systolic).toEqual((plain as { systolic: unknown }).systolic);
  });
});
