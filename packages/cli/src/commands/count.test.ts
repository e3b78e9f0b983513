import { describe, expect, test } from 'vitest';
import { typed } from '../../testing/typed.js';

async function answered(line: string): Promise<Record<string, unknown>> {
  const { code, json, stderr } = await typed(`count ${line} --json`);
  expect([code, stderr]).toEqual([0, '']);
  return json[0]!;
}

function codes(flags: unknown): string[] {
  return (flags as { code: string }[]).map(({ code }) => code);
}

describe('rates', () => {
  test.each([
    // Bedside handbook 8.
    ['C001 (derived, 1.3)', '--n 18 --window 15', 72],
    ['C002 (derived, 1.3)', '--n 37 --window 30', 74],
    ['C003 (derived, 1.3)', '--n 12 --window 10', 72],
    ['C020 (derived, 2.2)', '--n 8 --window 30 --of breaths', 16],
  ])('%s: %s', async (_source, line, perMinute) => {
    expect((await answered(line)).perMinute).toBe(perMinute);
  });
});

describe('a regular 75 a minute counted for 15 s lies in the range of every way to count it', () => {
  test.each([
    // Bedside handbook 8, C004 to C006 (derived, 1.4), and docs/conventions.md section 5.
    ['C004', '--n 18 --clock beat --first 0', 72, [72, 76], true],
    ['C005', '--n 19 --clock beat --first 1', 76, [72, 76], true],
    ['C006, one in four', '--n 18 --clock any --first 1', 72, [68, 76], false],
    ['C006, three in four', '--n 19 --clock any --first 1', 76, [72, 80], false],
    ['1.4, last row', '--n 18 --clock any --first 0', 72, [72, 80], false],
  ])('%s: %s', async (_source, line, perMinute, [low, high], lowIncluded) => {
    const answer = await answered(`${line} --window 15`);
    expect(answer).toMatchObject({ perMinute, lowPerMinute: low, highPerMinute: high, lowIncluded });
    expect(answer).toMatchObject({ stepPerMinute: 4, highIncluded: false });
  });

  test('the conventions that shift the rate say so', async () => {
    // docs/conventions.md section 5: beat/1 and any/0.
    expect(codes((await answered('--n 19 --window 15 --clock beat --first 1')).flags)).toEqual([
      'convention-shifts-rate',
    ]);
    expect(codes((await answered('--n 19 --window 15 --clock any --first 0')).flags)).toEqual([
      'convention-shifts-rate',
    ]);
    expect(codes((await answered('--n 19 --window 15')).flags)).toEqual([]);
  });
});

test('one beat in five minutes is no rate of zero', async () => {
  const { stdout } = await typed('count --n 1 --window 300');
  expect(stdout).toMatch(/^0\.2 \/min .*\n/);
  expect(stdout).toContain('0.2 a minute is very slow');
});

describe('a rate far out', () => {
  test.each([
    // Royal College of Physicians 2017 (bedside handbook 1.7, 5.2; second-hand): an adult's limits of one sign.
    ['--n 2 --window 60 --of breaths', 'very-slow'],
    ['--n 20 --window 60', 'very-slow'],
    ['--n 190 --window 60', 'very-fast'],
  ])('%s: the person first', async (line, code) => {
    const { flags } = await answered(line);
    expect(flags).toMatchObject([
      {
        code,
        detail: expect.stringMatching(/look at the person first.*local protocol and emergency procedure/),
      },
    ]);
    expect((await answered(`${line} --age-months 100`)).flags).toEqual([]);
  });
});

describe('which window next', () => {
  test.each([
    // Bedside handbook 8, C008 (found, Hollerbach 1990; practice), C009 (practice, 1.5); 1.5 row by row.
    ['C008', '--n 27 --window 15', 'fast-for-window'],
    ['C009', '--n 36 --window 30 --rhythm irregular', 'irregular'],
    ['1.5 slow', '--n 14 --window 15', 'slow-on-short-count'],
    ['1.5 weak', '--n 36 --window 30 --strength weak', 'weak'],
    ['1.5 first set', '--n 36 --window 30 --first-set', 'first-set'],
    ['1.5 young', '--n 45 --window 30 --age-months 6', 'young'],
    ['1.5 apical', '--n 36 --window 30 --site apical', 'apical'],
    ['1.5 drug', '--n 36 --window 30 --heart-rate-drug', 'heart-rate-drug'],
    ['1.5 disagrees', '--n 36 --window 30 --previous 90', 'disagrees'],
    ['1.5 a device', '--n 36 --window 30 --device 90', 'disagrees'],
    ['2.2 breaths', '--n 8 --window 30 --of breaths', 'breaths-full-minute'],
  ])('%s: %s', async (_source, line, code) => {
    const answer = await answered(line);
    expect(codes(answer.why)).toContain(code);
    expect(answer.nextWindowSeconds).toBe(60);
  });

  test('a steady half minute stands', async () => {
    expect(await answered('--n 36 --window 30 --rhythm regular')).toMatchObject({
      nextWindowSeconds: null,
      why: [],
    });
  });

  test('an irregular pulse is also to be heard at the apex', async () => {
    // Bedside handbook 8, C009 (practice, 1.5).
    expect(codes((await answered('--n 36 --window 30 --rhythm irregular')).flags)).toContain('count-apex');
  });
});

describe('the answer', () => {
  test('has the keys of the issue in its order, then the switches, then what made it', async () => {
    expect(Object.keys(await answered('--n 19 --window 15'))).toEqual([
      'perMinute',
      'stepPerMinute',
      'lowPerMinute',
      'highPerMinute',
      'lowIncluded',
      'highIncluded',
      'flags',
      'nextWindowSeconds',
      'why',
      'firstSet',
      'heartRateDrug',
      'computedBy',
    ]);
  });

  test('repeats its switches and says what made it', async () => {
    const answer = await answered('--n 36 --window 30 --first-set');
    expect(answer).toMatchObject({ firstSet: true, heartRateDrug: false });
    expect(answer.computedBy).toEqual({
      program: 'evenfall 0.0.0-test',
      preset: null,
      presetVersion: null,
      rule: 'count-1',
    });
  });

  test('names the preset it was told to use, and its version by content', async () => {
    const { computedBy } = await answered('--n 36 --window 30 --preset full-minute');
    expect(computedBy).toMatchObject({
      preset: 'full-minute',
      presetVersion: expect.stringMatching(/^[0-9a-f]{64}$/),
    });
  });

  test('every flag and reason has its sentence', async () => {
    const { flags, why } = await answered('--n 27 --window 15 --rhythm irregular');
    for (const one of [...(flags as object[]), ...(why as object[])]) {
      expect(one).toEqual({
        code: expect.any(String),
        detail: expect.stringMatching(/\.$/),
        figures: expect.any(Object),
      });
    }
  });

  test('nothing counted is a measured zero, its range cut at 0', async () => {
    const answer = await answered('--n 0 --window 15');
    expect(answer).toMatchObject({ perMinute: 0, lowPerMinute: 0, lowIncluded: true, highPerMinute: 4 });
    expect(codes(answer.why)).toEqual(['none-counted']);
  });

  test('for people: the rate, its range and where it is from', async () => {
    const { stdout } = await typed('count --n 19 --window 15');
    expect(stdout).toBe(
      '76 /min  between 72 and 80, from 19 beats in 15 s\n         one more or less would change it by 4\n',
    );
    expect((await typed('count --n 18 --window 15 --clock beat --first 0')).stdout).toMatch(
      /from 72 to under 76/,
    );
    // A range that is no whole number keeps a decimal: never rounded inwards to whole ones.
    expect((await typed('count --n 54 --window 45')).stdout).toMatch(
      /between 70\.7 and 73\.3, from 54 beats/,
    );
    expect((await typed('count --n 1 --window 30 --of breaths')).stdout).toMatch(/from 1 breath in 30 s/);
  });
});

describe('what is refused', () => {
  test.each([
    ['', ['--n missing', '--window missing']],
    ['--n 19', ['--window missing']],
    ['--n 1e1 --window 15', ['--n not-a-number']],
    ['--n 1,5 --window 15', ['--n not-a-number']],
    ['--n +19 --window 15', ['--n not-a-number']],
    ['--n .5 --window 15', ['--n not-a-number']],
    ['--n 0x13 --window 15', ['--n not-a-number']],
    ['--n 18.5 --window 15', ['--n not-whole']],
    ['--n -1 --window 15', ['--n out-of-range']],
    ['--n 19 --window 0', ['--window out-of-range']],
    ['--n 19 --window 300.1', ['--window out-of-range']],
    ['--n 0 --window 15 --clock beat --first 1', ['--n out-of-range']],
    ['--n 101 --window 15', ['--n impossible']],
    ['--n 19 --window 15 --clock often', ['--clock unknown-id']],
    ['--n 19 --window 15 --first 2', ['--first unknown-id']],
    ['--n 19 --window 15 --preset mine', ['--preset unknown-id']],
    ['--n 19 --window 15 --age-months -1', ['--age-months out-of-range']],
    ['--n 19 --window 15 --previous fast', ['--previous not-a-number']],
    // All together, in order of place.
    ['--window 0 --n x --clok any', ['--window out-of-range', '--n not-a-number', '--clok unknown-option']],
    ['--n x --n 3 --window 15', ['--n repeated', '--n not-a-number']],
  ])('%s', async (line, expected) => {
    const { code, stdout, problems } = await typed(`count ${line} --json`);
    expect(problems.map(({ field, code: fault }) => `${field} ${fault}`)).toEqual(expected);
    expect([code, stdout]).toEqual([2, '']);
  });

  test('exactly the longest window and exactly the fastest rate are taken', async () => {
    // docs/conventions.md section 5: at most 300 s; over 400 a minute is refused.
    expect((await answered('--n 380 --window 300')).perMinute).toBe(76);
    expect((await answered('--n 100 --window 15')).perMinute).toBe(400);
  });
});

test('lists what there is to choose from', async () => {
  const { json, code } = await typed('count --list --json');
  const items = json[0]!.items as Record<string, unknown>[];
  expect(code).toBe(0);
  for (const item of items) {
    expect(Object.keys(item)).toEqual(['id', 'title', 'source', 'status', 'typed']);
    expect((await typed(`count --n 19 --window 15 ${item.typed}`)).code).toBe(0);
    expect(item.title).not.toBe(item.id);
  }
  // Bedside handbook 1.4 (derived): the average over f of each way to start.
  const offBy = Object.fromEntries(items.map(({ id, title }) => [id, String(title).split(': ')[1]]));
  expect(offBy).toMatchObject({
    'beat-0': 'on average half a beat too few (30 / window a minute)',
    'beat-1': 'on average half a beat too many (30 / window a minute)',
    'any-1': 'on average neither too few nor too many',
    'any-0': 'on average one beat too few (60 / window a minute)',
  });
  expect(items.map(({ id }) => id)).toEqual(expect.arrayContaining(['beat-0', 'beat-1', 'any-1', 'any-0']));
});
