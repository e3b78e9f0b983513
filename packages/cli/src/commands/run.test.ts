import { mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { typed } from '../../testing/typed.js';

const EXAMPLES = fileURLToPath(new URL('../../../../docs/examples', import.meta.url));

/** 160 to 130 in so many seconds, then on to 80, at 60 a minute. */
const letDown = (seconds: number, more: object = {}) =>
  JSON.stringify({
    method: 'auscultation',
    pulsePerMinute: 60,
    peak: { mmHg: 160, atSeconds: 0 },
    moments: [
      { what: 'first sound', mmHg: 130, atSeconds: seconds },
      { what: 'last sound', mmHg: 80, atSeconds: seconds + 20 },
    ],
    ...more,
  });

const codes = (flags: unknown) => (flags as { code: string }[]).map(({ code }) => code);

async function ran(input: string, options = '') {
  const ended = await typed(`run - --json ${options}`, { input });
  expect([ended.code, ended.stderr]).toEqual([0, '']);
  return ended.json[0] as Record<string, unknown>;
}

describe('a run of the cuff', () => {
  test('has the keys of the issue in its order, then how it was taken and what made it', async () => {
    expect(Object.keys(await ran(letDown(12)))).toEqual(
      (
        'text systolic diastolic muffled diastolicUsed systolicRange diastolicRange deflationRateMmHgPerSecond ' +
        'earlyDeflationRateMmHgPerSecond dropPerBeatMmHg marginMmHg flags why method gap readings pulse side site ' +
        'posture cuff rhythm computedBy'
      ).split(' '),
    );
  });

  // Bedside handbook 8, C040 and C041 (derived; limits of Flynn 2017): 2.5 mmHg a second is right, 5 too fast.
  test('160 to 130 in 12 s is 2.5 mmHg a second, as taught', async () => {
    expect(await ran(letDown(12))).toMatchObject({
      text: '130/80 60',
      earlyDeflationRateMmHgPerSecond: 2.5,
      deflationRateMmHgPerSecond: 2.5,
      dropPerBeatMmHg: 2.5,
      // 130 - 1 to 130 + 2.5 + 1: one beat's fall and half a mark (docs/conventions.md section 6).
      systolicRange: [129, 133.5],
      flags: [],
      why: [{ code: 'not-palpated' }],
    });
  });

  test('160 to 130 in 6 s is 5 mmHg a second, too fast', async () => {
    const answer = await ran(letDown(6));
    expect(answer).toMatchObject({ earlyDeflationRateMmHgPerSecond: 5 });
    expect(codes(answer.flags)).toContain('early-too-fast');
  });

  test('C044: by palpation there is a systolic, a P and no diastolic', async () => {
    const answer = await ran('{"method":"palpation","palpated":{"backMmHg":124}}');
    expect(answer).toMatchObject({ text: '124/P', systolic: 124, diastolic: null, diastolicUsed: null });
    expect(codes(answer.why)).toContain('no-diastolic-by-palpation');
  });

  test('C045: 118/62/0 keeps the zero and uses the muffling', async () => {
    const moments = [
      { what: 'first sound', mmHg: 118 },
      { what: 'muffled', mmHg: 62 },
      { what: 'last sound', mmHg: 0 },
    ];
    const answer = await ran(JSON.stringify({ method: 'auscultation', moments }));
    expect(answer).toMatchObject({ text: '118/62/0', diastolic: 0, muffled: 62, diastolicUsed: 62 });
  });

  test('an irregular pulse is told of the ranges; published rules change what is judged', async () => {
    const answer = await ran(letDown(12), '--rhythm irregular');
    expect(answer).toMatchObject({ rhythm: 'irregular' });
    expect(codes(answer.flags)).toEqual(['too-fast-per-beat', 'range-too-narrow']);
    const above = await ran(letDown(12), '--preset mark-above');
    expect(above).toMatchObject({
      systolicRange: [128, 132.5],
      computedBy: {
        rule: 'run-1',
        preset: 'mark-above',
        presetVersion: expect.stringMatching(/^[0-9a-f]{64}$/),
      },
    });
    const palpated = { palpated: { lostMmHg: 145 } };
    expect(codes((await ran(letDown(12, palpated))).flags)).toEqual(['margin-small', 'possible-gap']);
    expect(codes((await ran(letDown(12, palpated), '--inflation margin-ten')).flags)).toEqual([
      'possible-gap',
    ]);
  });

  test('what cannot be is refused, all of it, each at its place', async () => {
    const moments = [
      { what: 'first sound', mmHg: '1e2' },
      { what: 'last sound', mmHg: 80, atSeconds: -1 },
      { what: 'cough', mmHg: 301 },
    ];
    const ended = await typed('run - --json', { input: letDown(12, { moments, colour: 'blue' }) });
    expect([ended.code, ended.stdout]).toEqual([2, '']);
    expect(ended.problems.map(({ field, code }) => [field, code])).toEqual([
      ['/moments/0/mmHg', 'not-a-number'],
      ['/moments/1/atSeconds', 'out-of-range'],
      ['/moments/2/what', 'unknown-id'],
      ['/moments/2/mmHg', 'out-of-range'],
      ['/colour', 'unknown-field'],
    ]);
    expect(new Set(ended.problems.map(({ file }) => file))).toEqual(new Set(['-']));
  });

  test.each([
    ['', 1],
    ['{\n  "method": "palpation",\n', 2],
    ['{\n  "method": "palpation"\n  "peak": null\n}', 3],
  ])('%j is no JSON, and stops being it in line %d', async (input, line) => {
    const ended = await typed('run - --json', { input });
    expect(ended.code).toBe(2);
    expect(ended.problems).toMatchObject([{ file: '-', line, code: 'missing', expected: 'one JSON object' }]);
  });

  test('for people: numbers, ranges with what they leave out, and what to do better', async () => {
    const { stdout } = await typed('run -', { input: letDown(6, { palpated: { lostMmHg: 150 } }) });
    expect(stdout).toMatch(/^130\/80 +Heard, 60 \/min\n/);
    expect(stdout).toMatch(/^Systolic +130, range from deflation and gauge alone 129 to 136$/m);
    // Assessment handbook 3.2: the same person scatters by about 6 (SD) from reading to reading.
    expect(stdout).toMatch(/minutes apart scatter with an SD of about 6 mmHg\.$/m);
    expect(stdout).toMatch(/^Let down +5 mmHg a second at first, 2\.5 on the whole, 2\.5 a beat$/m);
    expect(stdout).toMatch(/^Pumped up +10 mmHg above the loss of the pulse$/m);
    expect(stdout).toMatch(/^Note .*faster than 3.* more slowly\.$/m);
  });
});

describe('several runs', () => {
  let folder = '';
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'evenfall-run-'));
    await mkdir(join(folder, 'runs'));
    await writeFile(join(folder, 'runs', 'a.json'), letDown(12));
    await writeFile(join(folder, 'runs', 'b.json'), '[]');
    await writeFile(join(folder, 'runs', 'c.json'), letDown(15));
  });
  afterAll(() => rm(folder, { recursive: true }));

  test('one object a line in order of path; a refused one does not stop the rest, and ends with 2', async () => {
    const { code, json } = await typed(`run ${folder}/runs --json`);
    expect(code).toBe(2);
    expect(json).toMatchObject([
      { file: `${folder}/runs/a.json`, systolic: 130 },
      { file: `${folder}/runs/b.json`, problems: [{ code: 'missing' }, {}, {}] },
      { file: `${folder}/runs/c.json`, earlyDeflationRateMmHgPerSecond: 2 },
    ]);
  });
});

test('every run among the examples is answered', async () => {
  const runs = (await readdir(EXAMPLES)).filter((name) => /^run.*\.json$/.test(name));
  const texts = await Promise.all(
    runs.sort().map(async (name) => (await typed(`run ${EXAMPLES}/${name} --json`)).json[0]?.text),
  );
  expect(texts).toEqual(['124/P 88', '118/62/0 92', '148/92 76']);
});

test('--list says what there is to choose from', async () => {
  const { json } = await typed('run --list --json');
  const items = json[0]?.items as { id: string; title: string; typed: string }[];
  expect(items.map(({ typed: one }) => one)).toEqual([
    '--preset two-to-three-a-second',
    '--preset two-a-beat',
    '--preset mark-above',
    '--inflation margin-thirty',
    '--inflation margin-twenty',
    '--inflation margin-ten',
  ]);
  for (const { id, title } of items) expect(title).not.toBe(id);
});
