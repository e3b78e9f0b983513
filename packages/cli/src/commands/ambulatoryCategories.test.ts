import { expect, test } from 'vitest';
import { typed } from '../../testing/typed.js';

const A1 = new URL('../../../../docs/examples/recording-24h.csv', import.meta.url).pathname;
const at = (more: string) => typed(`ambulatory ${A1} --asleep 23:00-07:00 ${more}`);

// Out-of-office handbook 8.1 with the means of A1 in 19: 129.82/80.11 over 24 hours, 137.31/86.03 by day, 115.13/68.5 by night.
test.each([
  ['nice-ng136', ['day stage-1']],
  ['esc-2024', ['whole hypertension', 'day hypertension', 'night elevated']],
  ['acc-aha-2025', ['whole stage-2', 'day stage-2']],
  ['hypertension-canada', ['whole high', 'day high']],
  ['ish-2020', ['whole high']],
  ['early-proposals-over-24-hours', ['whole not-high', 'day not-high', 'night not-high']],
  ['means-alone-over-24-hours', []],
])('A1 by %s: %j', async (rules, named) => {
  const { json } = await at(`--rules ${rules} --json`);
  const { categories } = json[0] as { categories: { period: string; category: string }[] };
  expect(categories.map(({ period, category }) => `${period} ${category}`)).toEqual(named);
});

test('the names stand in the answer for people, and the side of the limits of a load', async () => {
  const nice = await at('--rules nice-ng136');
  expect(nice.stdout).toMatch(/Category +day stage 1, by this rule set: names for these readings/);
  expect(nice.stdout).toContain('of readings at or above 135/85');
  const early = await at('--rules early-proposals-over-24-hours');
  expect(early.stdout).toContain('of readings over 140/90');
  // Where a pattern says as much, high or not is not said twice.
  expect((await at('--rules ish-2020')).stdout).not.toContain('Category');
});

// Out-of-office handbook 8.1: the row of ESC 2024 is from memory, to be shown as such; those of NICE and ACC/AHA were read or quoted.
test('names from memory ask to be confirmed, for people and for programs', async () => {
  const codes = async (rules: string) => {
    const { json } = await at(`--rules ${rules} --json`);
    return (json[0] as { flags: { code: string }[] }).flags.map(({ code }) => code);
  };
  expect(await codes('esc-2024')).toContain('limits-from-memory');
  expect(await codes('nice-ng136')).not.toContain('limits-from-memory');
  expect(await codes('acc-aha-2025')).not.toContain('limits-from-memory');
  const caution = 'Confirm the limits of this category with your local protocol';
  expect((await at('--rules esc-2024')).stdout).toMatch(new RegExp(`Note +${caution}`));
  expect((await at('--rules nice-ng136')).stdout).not.toContain(caution);
});

// A1 in the out-of-office handbook 19: ratios 0.8384 and 0.7962; the systolic is a dipper, the diastolic an extreme one.
test('A1: the fall as a ratio, and the class of the diastolic beside that of the systolic', async () => {
  const { json } = await at('--json');
  const { dip } = json[0] as { dip: Record<string, number | string> };
  expect(Object.keys(dip).slice(0, 3)).toEqual(['systolicPercent', 'diastolicPercent', 'class']);
  expect(dip).toMatchObject({ class: 'dipper', diastolicClass: 'extreme' });
  expect(dip.systolicRatio).toBeCloseTo(0.8384, 4);
  expect(dip.diastolicRatio).toBeCloseTo(0.7962, 4);
  expect((await at('')).stdout).toContain('of the diastolic alone a large fall by night');
});

// Out-of-office handbook 13: the arithmetic mean beside the one over time; 5: at most 30 minutes apart for a profile (A1: an hour by night).
test('the plain mean of the readings stands beside that of 24 hours, and that readings lie far apart', async () => {
  const { stdout } = await at('');
  expect(stdout).toMatch(/24 hours +129\.8\/80, pulse 73/);
  expect(stdout).toContain('the plain mean of the readings is 132.88/82.53');
  expect(stdout).toContain('By night a reading comes every 60 minutes');
  const { json } = await at('--json');
  expect((json[0] as { countsByMeasure: unknown }).countsByMeasure).toEqual({
    whole: { systolic: 40, diastolic: 40, pulse: 40 },
    day: { systolic: 32, diastolic: 32, pulse: 32 },
    night: { systolic: 8, diastolic: 8, pulse: 8 },
  });
});
