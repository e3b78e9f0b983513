import { describe, expect, test } from 'vitest';
import { typed, typedArgs } from '../../testing/typed.js';

const codes = (flags: unknown) => (flags as { code: string }[]).map(({ code }) => code);

async function read(text: string, ...options: string[]) {
  const ended = await typedArgs(['reading', text, '--json', ...options]);
  expect([ended.code, ended.stderr]).toEqual([0, '']);
  return ended.json[0] as Record<string, unknown>;
}

async function refused(text: string) {
  const ended = await typedArgs(['reading', text, '--json']);
  expect([ended.code, ended.stdout]).toEqual([2, '']);
  return ended.problems.map(({ field, code, column }) => [field, code, column]);
}

describe('a pressure as it is written', () => {
  // Bedside handbook 7.2; docs/conventions.md sections 1 and 6.
  test.each([
    ['148/92 76', { systolic: 148, diastolic: 92, diastolicUsed: 92, pulse: 76, method: 'auscultation' }],
    ['122/P', { systolic: 122, diastolic: null, diastolicUsed: null, method: 'palpation' }],
    ['118/62/0', { systolic: 118, muffled: 62, diastolic: 0, diastolicUsed: 62 }],
    ['186/94, gap 186-152', { systolic: 186, diastolic: 94, gap: { fromMmHg: 186, toMmHg: 152 } }],
    ['148/92x2', { systolic: 148, diastolic: 92, readings: 2 }],
    ['128/76 R sit L-cuff', { side: 'right', posture: 'sit', cuff: 'L', site: 'upper-arm' }],
    ['131/77 device', { method: 'device', flags: [] }],
  ])('%s', async (text, expected) => {
    expect(await read(text)).toMatchObject({ text, ...expected });
  });

  test('has the shape of a run, whose rates and ranges are null with their reasons', async () => {
    const run = await typed('run - --json', { input: '{"method":"palpation","palpated":{"backMmHg":124}}' });
    const answer = await read('148/92 76');
    expect(Object.keys(answer)).toEqual(Object.keys(run.json[0] ?? {}));
    expect(answer).toMatchObject({
      systolicRange: null,
      diastolicRange: null,
      deflationRateMmHgPerSecond: null,
    });
    expect(codes(answer.why)).toEqual(['no-peak', 'not-timed', 'not-palpated']);
  });

  test('C042: 117/73 by ear is asked about, unless the gauge has such marks or a device showed it', async () => {
    expect(codes((await read('117/73')).flags)).toEqual(['off-graduation']);
    expect((await read('117/73', '--gauge-step', '1')).flags).toEqual([]);
    expect((await read('117/73 device')).flags).toEqual([]);
    // Bedside handbook 3.9: means may be odd.
    expect((await read('117/73x2')).flags).toEqual([]);
  });

  test('at another site it says that it is never averaged with the upper arm', async () => {
    expect(codes((await read('148/92 wrist')).flags)).toEqual(['other-site']);
    expect(codes((await read('148/92 thigh')).flags)).toEqual(['other-site', 'thigh-reads-higher']);
  });

  test('C046: 80/120 is refused, and so is whatever would have to be guessed, with its column', async () => {
    expect(await refused('80/120')).toEqual([['/diastolic', 'not-below-systolic', 1]]);
    expect(await refused('148/92 76,5 X')).toEqual([
      ['/text', 'unknown-id', 8],
      ['/text', 'unknown-id', 13],
    ]);
    expect(await refused('148/92 R L')).toEqual([['/side', 'repeated', 10]]);
    expect(await refused('118/70/60/50')).toEqual([['/diastolic', 'ambiguous', 1]]);
    expect(await refused('76')).toEqual([['/diastolic', 'missing', null]]);
  });

  test('without quotes, and from standard input', async () => {
    const { json } = await typed('reading 148/92 76 R sit --json');
    expect(json[0]).toMatchObject({ text: '148/92 76 R sit' });
    const piped = await typed('reading - --json', { input: '122/P lie\n' });
    expect(piped.json[0]).toMatchObject({ text: '122/P lie' });
    const wrong = await typed('reading - --json', { input: 'x\n' });
    expect(wrong.problems).toMatchObject([{ file: '-', column: 1 }]);
  });

  test('for people', async () => {
    const { stdout } = await typedArgs(['reading', '118/62/0 92']);
    expect(stdout).toMatch(/^118\/62\/0 +Heard, 92 \/min\n/);
    expect(stdout).toMatch(/^Diastolic +62 is used \(the last sound was at 0\)$/m);
    expect(stdout).toMatch(/^Note .*Write all three numbers/m);
    expect(stdout).toMatch(/no rate, range or margin can be told\.\n$/);
    expect(stdout).not.toMatch(/not timed|no times/);
  });

  test('nothing and a graduation that cannot be are refused', async () => {
    const none = await typed('reading');
    expect([none.code, none.stderr]).toEqual([2, expect.stringMatching(/^PRESSURE\|-: expected a pressure/)]);
    const { code, problems } = await typed('reading 148/92 --gauge-step 0 --json');
    expect(code).toBe(2);
    expect(problems).toMatchObject([{ field: '--gauge-step', code: 'out-of-range' }]);
  });
});
