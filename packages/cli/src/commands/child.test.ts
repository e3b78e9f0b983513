import { describe, expect, test } from 'vitest';
import { typed } from '../../testing/typed.js';

const GIRL = '--sex f --age-months 60 --height-cm 105';

type Answer = {
  readonly heightZ: number;
  readonly systolic: { readonly z: number; readonly centile: number };
  readonly diastolic: { readonly z: number; readonly centile: number } | null;
  readonly limits: Readonly<
    Record<'systolic' | 'diastolic', Readonly<Record<'p90' | 'p95' | 'p99', number>>>
  >;
  readonly flags: readonly { readonly code: string }[];
} & Readonly<Record<string, unknown>>;

async function answered(line: string): Promise<Answer> {
  const { code, json, stderr } = await typed(`child ${line} --json`);
  expect([code, stderr]).toEqual([0, '']);
  return json[0] as Answer;
}

test('the worked example of bedside handbook 6.4 (derived): girl of 5, 105 cm, 104/70', async () => {
  const found = await answered(`${GIRL} --systolic 104 --diastolic 70`);
  expect(found.heightZ).toBeCloseTo(-0.628, 3);
  expect(found.systolic.z).toBeCloseTo(1.164, 3);
  expect(found.systolic.centile).toBeCloseTo(87.8, 1);
  expect(found.diastolic?.z).toBeCloseTo(1.49, 2);
  expect(found.diastolic?.centile).toBeCloseTo(93.2, 1);
  expect(found.limits.systolic.p90).toBeCloseTo(105.2, 1);
  expect(found.limits.systolic.p95).toBeCloseTo(109, 1);
  expect(found.limits.diastolic.p99).toBeCloseTo(79.2, 1);
  expect(found).toMatchObject({ category: 'elevated', guideline: 'fourth-report-2004' });
});

// Bedside handbook 8. Heights by its appendix A: z 1.28 of boys at 144.5 months is 159.032 cm; z 0 is the median itself.
test('C101 to C105 (derived): the regression and the heights of CDC 2000', async () => {
  const c101 = await answered('--sex m --age-months 144 --height-cm 159.032 --systolic 120');
  expect(c101.heightZ).toBeCloseTo(1.28, 2);
  expect(c101.systolic.z).toBeCloseTo(0.984, 3);
  expect(c101.systolic.centile).toBeCloseTo(83.7, 1);
  const c102 = await answered('--sex m --age-months 120 --height-cm 138.823 --systolic 100');
  expect(c102.limits.systolic.p95).toBeCloseTo(119.82, 2);
  const c103 = await answered('--sex f --age-months 204 --height-cm 162.924 --systolic 100');
  expect(c103.limits.diastolic.p95).toBeCloseTo(84.35, 2);
  const heightZ = async (line: string) => (await answered(`${line} --systolic 100`)).heightZ;
  expect(await heightZ('--sex m --age-months 96 --height-cm 128.1237')).toBeCloseTo(0, 3); // C104
  expect(await heightZ('--sex m --age-months 96 --height-cm 135')).toBeCloseTo(1.172, 3); // C104
  expect(await heightZ(GIRL)).toBeCloseTo(-0.628, 3); // C105
});

test('a height that no child of that age has is refused, and nothing is printed from it', async () => {
  const { code, stdout, stderr } = await typed(
    'child --sex m --age-months 72 --height-cm 155 --systolic 150',
  );
  expect([code, stdout]).toEqual([2, '']);
  expect(stderr).toMatch(/^--height-cm: expected a height within 5 SD .*, got 155/);
});

test('the answer has the keys of the issue in its order, then what else is known', async () => {
  const found = await answered(`${GIRL} --systolic 104 --diastolic 70`);
  expect(Object.keys(found)).toEqual([
    'heightZ',
    'systolic',
    'diastolic',
    'limits',
    'guideline',
    'category',
    'systolicCategory',
    'diastolicCategory',
    'isolated',
    'atLeast',
    'level',
    'shown',
    'lowSystolicMmHg',
    'flags',
    'why',
    'computedBy',
  ]);
  expect(found).toMatchObject({ lowSystolicMmHg: 80, computedBy: { rule: 'child-1' } });
});

test('by feel: the systolic alone', async () => {
  const found = await answered(`${GIRL} --systolic 104`);
  expect(found).toMatchObject({
    diastolic: null,
    category: null,
    systolicCategory: 'normal',
    why: [{ code: 'no-diastolic' }],
  });
});

test('a low systolic sends to the child (bedside handbook 8, W9, second-hand)', async () => {
  const six = '--sex f --age-months 72 --height-cm 115';
  expect((await answered(`${six} --systolic 80 --diastolic 50`)).flags).toMatchObject([
    {
      code: 'child-low',
      detail: expect.stringMatching(/^A systolic of 80 is under 82, .*look at the child first/),
    },
  ]);
  expect((await answered(`${six} --systolic 82 --diastolic 50`)).flags).toEqual([]);
});

test('for people: labelled as the Fourth Report, with the limits', async () => {
  const { stdout } = await typed(`child ${GIRL} --systolic 104 --diastolic 70`);
  expect(stdout).toBe(
    [
      'Pressure   104/70 falls in: Elevated',
      'Systolic   104 falls in: Normal, centile 87.8 (z 1.16)',
      'Diastolic  70 falls in: Elevated, centile 93.2 (z 1.49)',
      'Height     0.63 SD below the median of age and sex',
      'Limits     systolic 90th 105.2, 95th 109.0, 99th 116.2',
      '           diastolic 90th 67.7, 95th 71.7, 99th 79.2',
      '           systolic low at this age under 80',
      'By         Fourth Report 2004, children of 2 to 17 by sex, age and height',
      'By the Fourth Report of 2004. The tables of AAP 2017 lie 2 to 3 mmHg lower and are not included here.',
      'No guideline decides by one occasion: this says where these numbers fall, and no more.',
      '',
    ].join('\n'),
  );
  expect((await typed(`child ${GIRL} --systolic 140 --diastolic 20`)).stdout).toMatch(
    /over the 99th centile[\s\S]*under the 1st centile/,
  );
});

describe('what is refused', () => {
  test.each([
    ['', ['--sex missing', '--age-months missing', '--height-cm missing', '--systolic missing']],
    ['--sex f --age-months 23 --height-cm 86 --systolic 90', ['--age-months out-of-range']],
    ['--sex f --age-months 216 --height-cm 165 --systolic 110', ['--age-months out-of-range']],
    ['--sex f --age-months 60 --height-cm 1.05 --systolic 104', ['--height-cm out-of-range']],
    [`${GIRL} --systolic 104 --diastolic 104`, ['--diastolic not-below-systolic']],
    ['--sex girl --age-months 60 --height-cm 105 --systolic 104', ['--sex unknown-id']],
    [`${GIRL} --systolic 104 --guideline aap-2017`, ['--guideline unknown-id']],
  ])('%s', async (line, expected) => {
    const { code, stdout, problems } = await typed(`child ${line} --json`);
    expect(problems.map(({ field, code: fault }) => `${field} ${fault}`)).toEqual(expected);
    expect([code, stdout]).toEqual([2, '']);
  });

  test('ages 24 and 215 are taken', async () => {
    await answered('--sex f --age-months 24 --height-cm 86 --systolic 90 --diastolic 50');
    await answered('--sex m --age-months 215 --height-cm 176 --systolic 110 --diastolic 60');
  });
});

test('lists the guideline there is, which can be typed', async () => {
  const { json, code } = await typed('child --list --json');
  const items = json[0]?.items as Record<string, unknown>[];
  expect([code, items.map(({ id }) => id)]).toEqual([0, ['fourth-report-2004']]);
  expect((await typed(`child ${GIRL} --systolic 104 ${items[0]?.typed}`)).code).toBe(0);
});
