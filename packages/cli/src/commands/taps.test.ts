import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { typed, typedArgs } from '../../testing/typed.js';

let folder = '';
const THIRTEEN = Array.from({ length: 13 }, (_, i) => ((10 * i) / 12).toFixed(6)).join('\n');

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'evenfall-taps-'));
  await mkdir(join(folder, 'several'));
  await writeFile(join(folder, 'one.txt'), THIRTEEN);
  await writeFile(join(folder, 'several', 'a.txt'), THIRTEEN);
  await writeFile(join(folder, 'several', 'b.txt'), '0\nx\n1\n0.5\n');
  await writeFile(join(folder, 'several', 'c c.txt'), '# one tap\n\n5\n');
});
afterAll(() => rm(folder, { recursive: true }));

function codes(flags: unknown): string[] {
  return (flags as { code: string }[]).map(({ code }) => code);
}

describe('a file of taps', () => {
  test('13 taps from 0.00 to 10.00 s are 72.0 a minute', async () => {
    // Bedside handbook 8, C010 (derived, 1.12).
    const { code, json, stderr } = await typed(`taps ${folder}/one.txt --json`);
    expect([code, stderr]).toEqual([0, '']);
    expect(json[0]!.perMinute).toBeCloseTo(72, 6);
    expect(json[0]).toMatchObject({ beats: 13, repairs: [], noRepair: false });
    expect(json[0]).not.toHaveProperty('file');
  });

  test('one tap is no rate, and an answer all the same', async () => {
    // Bedside handbook 8, C011 (derived); docs/conventions.md section 5.
    const { code, json } = await typed('taps - --json', { input: '5\n' });
    expect(code).toBe(0);
    expect(json[0]).toMatchObject({
      perMinute: null,
      lowPerMinute: null,
      highPerMinute: null,
      beats: 1,
      meanIntervalMs: null,
      cv: null,
      tapJitterMs: null,
    });
    expect(codes(json[0]!.why)).toContain('too-few');
  });

  test('has the keys of the issue in its order, then why, the switch and what made it', async () => {
    const { json } = await typed('taps - --json', { input: THIRTEEN });
    expect(Object.keys(json[0]!)).toEqual([
      'perMinute',
      'lowPerMinute',
      'highPerMinute',
      'beats',
      'repairs',
      'meanIntervalMs',
      'sdIntervalMs',
      'cv',
      'rmssdMs',
      'nrmssd',
      'turningPointRatio',
      'shannonEntropy',
      'tapJitterMs',
      'rhythm',
      'flags',
      'why',
      'nextWindowSeconds',
      'nextWhy',
      'noRepair',
      'computedBy',
    ]);
  });

  test('a short fast pulse asks for a full minute, and a rhythm tapped irregular too', async () => {
    // Bedside handbook 1.5 (practice): over 100, or irregular.
    const fast = Array.from({ length: 20 }, (_, beat) => beat * 0.5).join('\n');
    const quick = (await typed('taps - --json', { input: fast })).json[0]!;
    expect(quick).toMatchObject({ perMinute: 120, nextWindowSeconds: 60 });
    expect(codes(quick.nextWhy)).toEqual(['fast-on-short-count']);
    const inTurn = Array.from({ length: 41 }, (_, beat) => beat * 0.75 + (beat % 2) * 0.25).join('\n');
    const uneven = (await typed('taps - --json', { input: inTurn })).json[0]!;
    expect(uneven).toMatchObject({ rhythm: 'regularly-irregular', nextWindowSeconds: 60, tapJitterMs: null });
    expect(codes(uneven.nextWhy)).toContain('irregular');
    expect(codes(uneven.flags)).toContain('rhythm-irregular');
    expect((await typed('taps -', { input: inTurn })).stdout).toMatch(/full minute/);
  });

  test('a missed tap is put back, or left if told so', async () => {
    // docs/conventions.md section 5: an interval of twice the local one; index is the tap before the gap.
    const input = [0, 1, 2, 3, 4, 5, 7, 8, 9, 10, 11, 12].join('\n');
    const repaired = await typed('taps - --json', { input });
    expect(repaired.json[0]).toMatchObject({
      perMinute: 60,
      beats: 13,
      repairs: [{ index: 6, what: 'missed', added: 1 }],
    });
    const left = await typed('taps - --no-repair --json', { input });
    expect(left.json[0]).toMatchObject({ beats: 12, repairs: [], noRepair: true });
    expect(left.json[0]!.perMinute).toBeCloseTo(55, 9);
  });

  test('comments, blank lines, CRLF and a byte-order mark do no harm, and lines are counted with them', async () => {
    const input = '\uFEFF# taps\r\n\r\n0\r\n1\r\n';
    expect((await typed('taps - --json', { input })).json[0]).toMatchObject({ perMinute: 60 });
    const { problems } = await typed('taps - --json', { input: `${input}x\r\n` });
    expect(problems).toMatchObject([{ file: '-', line: 5, code: 'not-a-number', got: 'x' }]);
  });

  test('for people: the rate, a word for the rhythm, and what was put right', async () => {
    const input = [0, 1, 2, 3, 4, 5, 7, 8, 9, 10, 11, 12].join('\n');
    const { stdout } = await typed('taps -', { input });
    expect(stdout).toMatch(/^60 \/min +.*from 12 taps\n/);
    expect(stdout).toMatch(/^Rhythm +\S/m);
    expect(stdout).toMatch(/^Repaired +after tap 6: 1 tap missed, put back$/m);
    expect((await typed('taps -', { input: '5' })).stdout).toMatch(/^no rate +from 1 tap\n/);
  });
});

describe('what is refused', () => {
  test.each([
    ['no times at all', '# nothing\n', 'missing', null],
    ['a time that goes back', '0\n2\n1\n', 'out-of-order', 3],
    ['two equal times', '0\n1\n1\n', 'out-of-order', 3],
    ['a comma', '0\n1,5\n', 'not-a-number', 2],
    ['an exponent', '0\n1e1\n', 'not-a-number', 2],
    ['more than anybody has', '0\n0.01\n0.02\n', 'impossible', null],
  ])('%s', async (_what, input, fault, line) => {
    const { code, stdout, problems } = await typed('taps - --json', { input });
    expect([code, stdout]).toEqual([2, '']);
    expect(problems).toMatchObject([{ file: '-', code: fault, line }]);
  });

  test('a file that is not there, and no file', async () => {
    const missing = await typed(`taps ${folder}/none.txt --json`);
    expect([missing.code, missing.stdout]).toEqual([2, '']);
    expect(missing.problems).toMatchObject([{ file: `${folder}/none.txt`, field: null, code: 'missing' }]);
    expect((await typed('taps --json')).problems).toMatchObject([{ field: 'FILE|-', code: 'missing' }]);
  });
});

describe('several files', () => {
  test('one object a line in order of path; a refused file does not stop the rest; exit 2 at the end', async () => {
    // docs/conventions.md section 2.
    const { code, json, problems, stdout } = await typed(`taps ${folder}/several --json`);
    expect(stdout.trimEnd().split('\n')).toHaveLength(3);
    expect(json.map(({ file }) => file)).toEqual(
      ['a.txt', 'b.txt', 'c c.txt'].map((name) => join(folder, 'several', name)),
    );
    expect(json[0]!.perMinute).toBeCloseTo(72, 6);
    expect(Object.keys(json[1]!)).toEqual(['file', 'problems']);
    expect(json[2]).toMatchObject({ perMinute: null });
    expect(code).toBe(2);
    expect(problems).toEqual(json[1]!.problems);
    expect(problems.map(({ line }) => line)).toEqual([2, 4]);
  });

  test('all well is exit 0, and standard input may be one of them', async () => {
    const { code, json } = await typedArgs(['taps', join(folder, 'one.txt'), '-'], { input: '0\n1\n' });
    expect(code).toBe(0);
    expect(json.map(({ file }) => file)).toEqual(['-', join(folder, 'one.txt')]);
    expect(Object.keys(json[0]!)[0]).toBe('file');
  });
});
