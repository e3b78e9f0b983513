import { describe, expect, test } from 'vitest';
import { typed, typedArgs } from '../../testing/typed.js';

async function answered(line: string): Promise<Record<string, unknown>> {
  const { code, json, stderr } = await typed(`average ${line} --json`);
  expect([code, stderr]).toEqual([0, '']);
  return json[0] ?? {};
}

function codes(flags: unknown): string[] {
  return (flags as { code: string }[]).map(({ code }) => code);
}

describe('check values of the bedside handbook, section 8', () => {
  test.each([
    ['C049', 'esc-2024', '152/94 146/90 144/88', 145, 89, [2, 3]],
    ['C049', 'esh-2023', '152/94 146/90 144/88', 145, 89, [2, 3]],
    ['C049', 'ish-2020', '152/94 146/90 144/88', 145, 89, [2, 3]],
    ['C051', 'nice-ng136', '152/94 146/90 144/88', 144, 88, [3]],
    ['C052', 'jsh-2019', '152/94 146/90 144/88', 145, 89, [2, 3]],
    ['C053', 'ish-2020', '128/82', 128, 82, [1]],
    ['C056', 'nice-ng136', '138/84', 138, 84, [1]],
    ['C058', 'aha-2005', '134/80 129/80', 131.5, 80, [1, 2]],
  ])('%s: %s of %s is %d/%d', async (_c, rule, readings, systolic, diastolic, used) => {
    const found = await answered(`--rule ${rule} ${readings}`);
    expect(found).toMatchObject({ systolic, diastolic, used, needs: [], why: [] });
  });

  test.each(['acc-aha-2017', 'hypertension-canada'])('C050: %s gives 147.33/90.67', async (rule) => {
    const { systolic, diastolic } = await answered(`--rule ${rule} 152/94 146/90 144/88`);
    expect(systolic).toBeCloseTo(147.33, 2);
    expect(diastolic).toBeCloseTo(90.67, 2);
  });

  test.each([
    ['C054', '--rule ish-2020 130/82', ['more-readings']],
    ['C055', '--rule esc-2024 164/98 150/92', ['more-readings', 'differ-over']],
    ['C057', '--rule nice-ng136 140/84', ['more-readings']],
    ['C058', '--rule aha-2005 134/80 128/80', ['differ-over']],
    ['C060', '--rule korea-2013 128/80 126/80 --irregular', ['irregular-more-readings']],
  ])('%s: %s needs %j', async (_c, line, needs) => {
    expect(codes((await answered(line)).needs)).toEqual(needs);
  });
});

describe('the answer', () => {
  test('has the keys of the issue first, then what else is known and what made it', async () => {
    const found = await answered('--rule nice-ng136 152/94 146/90');
    expect(Object.keys(found)).toEqual([
      'systolic',
      'diastolic',
      'used',
      'needs',
      'flags',
      'why',
      'guideline',
      'irregular',
      'raisedFrom',
      'computedBy',
    ]);
    expect(found).toMatchObject({ guideline: 'nice-ng136', irregular: false, raisedFrom: null });
    expect(found.computedBy).toEqual({
      program: 'evenfall 0.0.0-test',
      preset: 'nice-ng136',
      presetVersion: expect.stringMatching(/^[0-9a-f]{64}$/),
      rule: 'average-1',
    });
  });

  test('too few: nulls with the reason, and it is an answer', async () => {
    const found = await answered('--rule esc-2024 152/94');
    expect(found).toMatchObject({ systolic: null, diastolic: null, used: [] });
    expect([codes(found.needs), codes(found.why)]).toEqual([['more-readings'], ['too-few']]);
  });

  test('a palpated reading is left out, and sounds to zero use the muffling (bedside handbook 3.4, 3.7)', async () => {
    const felt = await answered('--rule acc-aha-2017 110/P 120/80 118/62/0');
    expect(felt).toMatchObject({ systolic: 119, diastolic: 71, used: [2, 3] });
    expect(codes(felt.flags)).toEqual(['no-diastolic-left-out']);
    expect(await answered('--rule acc-aha-2017 110/P 112/P')).toMatchObject({ systolic: null, used: [] });
  });

  test('a child is raised from its own limits, and not known without them', async () => {
    expect(await answered('--rule aap-2017 104/60 --raised-from 108/72')).toMatchObject({
      systolic: 104,
      needs: [],
      raisedFrom: { systolic: 108, diastolic: 72 },
    });
    const raised = await answered('--rule aap-2017 108/60 --raised-from 108/72');
    expect(codes(raised.needs)).toEqual(['more-readings']);
    const unknown = await answered('--rule aap-2017 104/60');
    expect(codes(unknown.needs)).toEqual(['more-readings', 'raised-not-known']);
  });

  test('a severe reading is repeated, by the guideline’s own limit (C071, C072)', async () => {
    const severe = async (rule: string, last: string) =>
      codes((await answered(`--rule ${rule} 178/112 ${last}`)).needs);
    expect(await severe('nice-ng136', '180/112')).toEqual(['severe-again']);
    expect(await severe('acc-aha-2017', '180/112')).toEqual([]);
    expect(await severe('acc-aha-2017', '181/112')).toEqual(['severe-again']);
  });

  // Bedside handbook 3.16 and 5.2: from 180 or 120 on, and 90 or under, whatever the average.
  test('a reading that may be an emergency, or is very low, is said first', async () => {
    const first = async (line: string) => codes((await answered(`--rule acc-aha-2025 ${line}`)).flags);
    expect(await first('178/118 186/112')).toEqual(['severe-reading']);
    expect(await first('178/118 179/119')).toEqual([]);
    expect(await first('88/P 120/70')).toEqual(['very-low', 'no-diastolic-left-out']);
    expect(await first('91/50 92/50')).toEqual([]);
    expect(codes((await answered('--rule aap-2017 84/50 --raised-from 108/72')).flags)).toEqual([]);
  });

  test('for people', async () => {
    const { stdout } = await typed('average --rule acc-aha-2017 152/94 146/90 144/88');
    // C050: shown 147/91.
    expect(stdout).toMatch(/^Average +147\/91, from readings 1, 2,? and 3\nBy +ACC\/AHA 2017: .*\n$/);
    // Bedside handbook 0.2: a mean under a limit is never shown on it (C059).
    const near = await typed('average --rule acc-aha-2017 140/84 139/85');
    expect(near.stdout).toMatch(/^Average +139\.5\/84\.5, /);
    const few = await typed('average --rule esc-2024 164/98 150/92');
    expect(few.stdout).toMatch(/^Average +none yet\n/);
    expect(few.stdout).toMatch(/Next +2 readings with both numbers were taken.* goes by 3: /);
    expect(few.stdout).toMatch(
      /Next +The last two readings differ by 14 in the systolic and 6 in the diastolic, more than 10: /,
    );
  });
});

describe('what is refused', () => {
  test.each([
    ['152/94', ['--rule missing']],
    ['--rule esc 152/94', ['--rule unknown-id']],
    ['--rule esc-2024', ['PRESSURE... missing']],
    ['--rule esc-2024 80/120', ['/readings/0 not-below-systolic']],
    ['--rule esc-2024 152/94 146,5/90', ['/readings/1 not-a-number']],
    ['--rule esc-2024 152/94 146', ['/readings/1 not-a-number']],
    ['--rule esc-2024 148/92x2', ['/readings/0 contradicts']],
    ['--rule aap-2017 104/60 --raised-from 108', ['--raised-from not-a-number']],
    ['--rule aap-2017 104/60 --raised-from 108/P', ['--raised-from missing']],
    ['--rule esc-2024 152/94 --iregular', ['--iregular unknown-option']],
  ])('%s', async (line, expected) => {
    const { code, stdout, problems } = await typed(`average ${line} --json`);
    expect(problems.map(({ field, code: fault }) => `${field} ${fault}`)).toEqual(expected);
    expect([code, stdout]).toEqual([2, '']);
  });

  test('words beside a reading', async () => {
    const { code, problems } = await typedArgs(['average', '--rule', 'esc-2024', '150/92 R sit', '--json']);
    expect([code, problems[0]?.field]).toEqual([2, '/readings/0']);
  });
});

test('lists every guideline in the order of the handbook, each of which can be typed', async () => {
  const { json } = await typed('average --list --json');
  const items = json[0]?.items as Record<string, string>[];
  // Bedside handbook 3.10, row by row.
  expect(items.map(({ id }) => id)).toEqual([
    'esc-2024',
    'esc-esh-2018',
    'esh-2023',
    'ish-2020',
    'acc-aha-2017',
    'acc-aha-2025',
    'aha-2005',
    'two-within-10',
    'jsh-2019',
    'nice-ng136',
    'hypertension-canada',
    'korea-2013',
    'aap-2017',
    'who-2021',
  ]);
  for (const item of items) {
    expect(Object.keys(item)).toEqual(['id', 'title', 'source', 'status', 'typed']);
    expect(item.title).not.toBe(item.id);
    expect((await typed(`average ${item.typed} 152/94 150/92 150/92`)).code).toBe(0);
  }
});
