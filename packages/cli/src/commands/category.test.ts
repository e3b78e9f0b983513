import { describe, expect, test } from 'vitest';
import { typed } from '../../testing/typed.js';

async function answered(line: string): Promise<Record<string, unknown>> {
  const { code, json, stderr } = await typed(`category ${line} --json`);
  expect([code, stderr]).toEqual([0, '']);
  return json[0] ?? {};
}

function codes(flags: unknown): string[] {
  return (flags as { code: string }[]).map(({ code }) => code);
}

/** `152/86` as options. */
function options(pressure: string): string {
  const [systolic, diastolic] = pressure.split('/');
  return `--systolic ${systolic} --diastolic ${diastolic}`;
}

describe('check values of the bedside handbook, section 8', () => {
  test.each([
    ['C071', '180/100', 'nice-ng136', 'severe'],
    ['C071', '178/120', 'nice-ng136', 'severe'],
    ['C072', '180/118', 'acc-aha-2017', 'stage-2'],
    ['C073', '181/90', 'acc-aha-2025', 'severe'],
    ['C092', '118/84', 'acc-aha-2017', 'stage-1'],
    ['C092', '118/84', 'esc-2024', 'elevated'],
    ['C092', '118/84', 'esh-2023', 'normal'],
    ['C092', '118/84', 'ish-2020', 'normal'],
    ['C092', '118/84', 'jsh-2019', 'elevated'],
    ['C093', '118/72', 'esc-2024', 'elevated'],
    ['C094', '125/79', 'jsh-2019', 'high-normal'],
    ['C095', '125/82', 'acc-aha-2025', 'stage-1'],
    ['C096', '138/88', 'nice-ng136', 'below-stage-1'],
    ['C097', '162/96', 'esc-esh-2018', 'grade-2'],
  ])('%s: %s by %s is %s', async (_c, pressure, guideline, category) => {
    const found = await answered(`${options(pressure)} --guideline ${guideline} --age 50`);
    expect(found).toMatchObject({ guideline, category });
  });

  test('C098: isolated', async () => {
    const found = await answered(`${options('152/86')} --guideline esh-2023 --age 50`);
    expect(found).toMatchObject({ category: 'grade-1', isolated: 'systolic' });
  });

  test('C059: 139.5/84.5 is shown on its own side', async () => {
    const found = await answered(`${options('139.5/84.5')} --guideline ish-2020 --age 50`);
    expect(found).toMatchObject({
      category: 'high-normal',
      diastolicCategory: 'normal',
      shown: { systolic: '139.5', diastolic: '84.5' },
    });
    const { stdout } = await typed(`category ${options('139.6/80')} --guideline esc-2024 --age 50`);
    expect(stdout).toMatch(/^Pressure +139\.6\/80 falls in: Elevated\n/);
  });

  test('C074: in pregnancy its own scheme', async () => {
    const found = await answered(`${options('160/100')} --guideline esc-2024 --pregnant`);
    expect(found).toMatchObject({ guideline: 'pregnancy', category: 'severe', pregnant: true });
    expect(codes(found.flags)).toEqual(['severe-reading', 'pregnancy-scheme', 'limits-from-memory']);
    expect(await answered(`${options('160/100')} --pregnant`)).toMatchObject({ category: 'severe' });
  });

  test('C099, C100: AAP 2017', async () => {
    const by = (pressure: string, more: string) =>
      answered(`${options(pressure)} --guideline aap-2017 ${more}`);
    expect(await by('128/78', '--age 13')).toMatchObject({ category: 'elevated' });
    expect(await by('132/78', '--age 13')).toMatchObject({ category: 'stage-1' });
    expect(await by('106/60', '--age 7 --sex m')).toMatchObject({ category: null, screening: 'at-or-above' });
    expect(await by('105/60', '--age 7 --sex m')).toMatchObject({ category: null, screening: 'below' });
  });
});

describe('the answer', () => {
  test('has the keys of the issue in its order, then what else is known, then what made it', async () => {
    const found = await answered(`${options('118/84')} --guideline esc-2024 --age 50`);
    expect(Object.keys(found)).toEqual([
      'guideline',
      'category',
      'systolicCategory',
      'diastolicCategory',
      'isolated',
      'atLeast',
      'level',
      'screening',
      'shown',
      'flags',
      'why',
      'pregnant',
      'computedBy',
    ]);
    expect(found).toMatchObject({
      isolated: null,
      screening: null,
      flags: [],
      why: [],
      pregnant: false,
      computedBy: { program: 'evenfall 0.0.0-test', preset: null, presetVersion: null, rule: 'category-1' },
    });
  });

  test('by feel there is no category, and what the systolic alone comes to', async () => {
    const found = await answered('--systolic 184 --guideline esh-2023 --age 50');
    expect(found).toMatchObject({
      category: null,
      systolicCategory: 'grade-3',
      diastolicCategory: null,
      atLeast: 'grade-3',
      level: 'severe',
    });
    expect(found.why).toEqual([{ code: 'no-diastolic', detail: expect.stringMatching(/\.$/), figures: {} }]);
    const { stdout } = await typed('category --systolic 184 --guideline esh-2023 --age 50');
    expect(stdout).toMatch(/^Pressure +184\/- falls in no category; at least: Grade 3\n/);
  });

  test('for people: where it falls, by which guideline, and that once is not enough', async () => {
    const { stdout } = await typed(`category ${options('152/86')} --guideline esh-2023 --age 50`);
    expect(stdout).toBe(
      [
        'Pressure   152/86 falls in: Grade 1 (raised is the systolic alone)',
        'Systolic   152 falls in: Grade 1',
        'Diastolic  86 falls in: High normal',
        'By         ESH 2023, adults',
        'No guideline decides by one occasion: this says where these numbers fall, and no more.',
        '',
      ].join('\n'),
    );
    const screened = await typed(`category ${options('106/60')} --guideline aap-2017 --age 7 --sex m`);
    expect(screened.stdout).toMatch(/Screening +At or above the limits of screening: assess fully\n/);
  });
});

describe('what is refused', () => {
  test.each([
    ['', ['--systolic missing', '--guideline missing']],
    ['--systolic 120 --diastolic 80', ['--guideline missing']],
    ['--systolic 120 --diastolic 80 --guideline esc', ['--guideline unknown-id']],
    ['--systolic 80 --diastolic 120 --guideline esc-2024', ['--diastolic not-below-systolic']],
    ['--systolic 120,5 --diastolic 80 --guideline esc-2024', ['--systolic not-a-number']],
    ['--systolic 0 --guideline esc-2024', ['--systolic out-of-range']],
    ['--systolic 120 --diastolic 80 --guideline esc-2024 --age 17', ['--age out-of-range']],
    ['--systolic 120 --diastolic 80 --guideline esc-2024 --age 17.5', ['--age not-whole']],
    ['--systolic 120 --diastolic 80 --guideline aap-2017', ['--age missing']],
    ['--systolic 120 --diastolic 80 --guideline aap-2017 --age 12', ['--sex missing']],
    ['--systolic 120 --diastolic 80 --guideline aap-2017 --age 12 --sex boy', ['--sex unknown-id']],
    ['--age x --systolic y --guideline esc-2024', ['--age not-a-number', '--systolic not-a-number']],
    ['--systolic 120 --diastolic 80 --guideline esc-2024 --pregnent', ['--pregnent unknown-option']],
  ])('%s', async (line, expected) => {
    const { code, stdout, problems } = await typed(`category ${line} --json`);
    expect(problems.map(({ field, code: fault }) => `${field} ${fault}`)).toEqual(expected);
    expect([code, stdout]).toEqual([2, '']);
  });
});

test('lists every guideline in the order of the handbook, each of which can be typed', async () => {
  const { json, code } = await typed('category --list --json');
  const items = json[0]?.items as Record<string, unknown>[];
  expect(code).toBe(0);
  expect(items.map(({ id }) => id)).toEqual([
    'acc-aha-2017',
    'acc-aha-2025',
    'esc-2024',
    'esc-esh-2018',
    'esh-2023',
    'nice-ng136',
    'jsh-2019',
    'ish-2020',
    'who-2021',
    'pregnancy',
    'aap-2017',
  ]);
  for (const item of items) {
    expect(Object.keys(item)).toEqual(['id', 'title', 'source', 'status', 'typed']);
    expect(item.title).not.toBe(item.id);
    expect((await typed(`category --systolic 120 --diastolic 80 ${item.typed}`)).code).toBe(0);
  }
  expect(items.find(({ id }) => id === 'pregnancy')?.status).toBe('memory');
});
