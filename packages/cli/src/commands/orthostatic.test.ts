import { describe, expect, test } from 'vitest';
import { typed } from '../../testing/typed.js';

async function answered(line: string): Promise<Record<string, unknown>> {
  const { code, json, stderr } = await typed(`orthostatic ${line} --json`);
  expect([code, stderr]).toEqual([0, '']);
  return json[0] ?? {};
}

function codes(flags: unknown): string[] {
  return (flags as { code: string }[]).map(({ code }) => code);
}

describe('check values (bedside handbook 5.3, 8)', () => {
  test.each([
    ['C065', '--lying 150/90 --standing3 130/86', { positive: true, bySystolic: true, byDiastolic: false }],
    ['C066', '--lying 150/90 --standing3 131/81', { positive: false, bySystolic: false, byDiastolic: false }],
    ['C067', '--lying 128/80 --standing3 118/70', { positive: true, bySystolic: false, byDiastolic: true }],
    ['C069', '--sitting 130/80 --standing1 114/80', { positive: true, from: 'sitting' }],
    [
      'C070',
      '--lying 120/80x72 --standing3 116/78x104',
      { positive: false, pulseRise: 32, riseToReport: true },
    ],
    ['W10', '--lying 148/84x68 --standing3 112/70x76', { positive: true, heartRatePattern: 'neurogenic' }],
    ['W11', '--lying 130/Px70 --standing3 106/Px96', { positive: true, heartRatePattern: 'not-neurogenic' }],
  ])('%s: %s', async (_source, line, expected) => {
    expect(await answered(line)).toMatchObject(expected);
  });

  test('W10, C068: the ratio is 8 / 36', async () => {
    expect((await answered('--lying 148/84x68 --standing3 112/70x76')).heartRateRatio).toBeCloseTo(0.222, 3);
  });
});

describe('the answer', () => {
  test('has its keys in order, and repeats its switches', async () => {
    const answer = await answered(
      '--lying 148/84x68 --standing1 120/76x74 --standing3 112/70x76 --pacemaker',
    );
    expect(Object.keys(answer)).toEqual([
      'positive',
      'bySystolic',
      'byDiastolic',
      'delayed',
      'limits',
      'falls',
      'heartRateRatio',
      'heartRatePattern',
      'pulseRise',
      'riseToReport',
      'missing',
      'flags',
      'why',
      'from',
      'supineHypertension',
      'sinusRhythm',
      'pacemaker',
      'rateSlowingDrug',
      'computedBy',
    ]);
    expect(answer).toMatchObject({ heartRateRatio: null, sinusRhythm: true, pacemaker: true, missing: [] });
    expect(codes(answer.why)).toEqual(['has-pacemaker']);
    expect((answer.falls as { minutes: number }[]).map(({ minutes }) => minutes)).toEqual([1, 3]);
  });

  test('each condition of the ratio takes it away, and says so', async () => {
    const line = '--lying 148/84x68 --standing3 112/70x76';
    expect(codes((await answered(`${line} --not-sinus-rhythm`)).why)).toEqual(['rhythm-not-sinus']);
    expect(codes((await answered(`${line} --rate-slowing-drug`)).why)).toEqual(['takes-rate-slowing-drug']);
  });

  test('three numbers go by the muffling, one by feel has no diastolic', async () => {
    const zero = await answered('--lying 118/62/0 --standing3 112/52');
    expect(zero).toMatchObject({ positive: true, falls: [{ systolicFall: 6, diastolicFall: 10 }] });
    expect(await answered('--lying 150/P --standing3 148/P')).toMatchObject({ positive: null });
  });

  test('what was felt is told at its time; a higher limit where the lying pressure is high', async () => {
    const felt = await answered('--lying 120/80 --standing1 118/78 --standing3 116/76 --symptoms-at 1,3');
    expect(felt.flags).toMatchObject([{ code: 'symptoms-on-standing', figures: { minutes: 1 } }, {}]);
    expect(await answered('--lying 190/80 --standing3 165/80 --supine-hypertension')).toMatchObject({ positive: false, limits: { systolicFall: 30 } }); // biome-ignore format: one thought
  });

  test('every flag and reason has its sentence, and none names an illness', async () => {
    const answers = [
      await answered('--lying 148/84x68 --standing1 86/50x74 --standing3 140/80x76 --symptoms-at 1'),
      await answered('--lying 120/80x70 --standing1 118/80x110 --age 15'),
      await answered('--sitting 120/P --standing5 100/P'),
    ];
    for (const { flags, why } of answers) {
      for (const { detail } of [...(flags as { detail: string }[]), ...(why as { detail: string }[])]) {
        expect(detail).toMatch(/\.$/);
        expect(detail).not.toMatch(/no sentence|hypotension|tachycardia|syndrome/i);
      }
    }
  });

  test('for people: what fell, and by how much at each time', async () => {
    const { stdout } = await typed('orthostatic --lying 148/84x68 --standing3 112/70x76');
    expect(stdout).toMatch(/From lying to standing: a fall on standing by the usual limits/);
    expect(stdout).toMatch(/at 3 min +systolic −36, diastolic −14, pulse \+8/);
    expect((await typed('orthostatic --lying 150/90 --standing1 148/90')).stdout).toMatch(/not excluded/);
    expect((await typed('orthostatic --lying 150/90 --standing3 150/90 --standing5 128/84')).stdout).toMatch(/a delayed fall/); // biome-ignore format: one thought
  });
});

describe('what is refused', () => {
  test.each([
    ['', ['--lying missing', '--standing3 missing']],
    ['--lying 148/84x68', ['--standing3 missing']],
    ['--lying 148/84 --sitting 140/80 --standing3 120/80', ['--sitting contradicts']],
    // Elsewhere x2 is the mean of two readings; here nothing is guessed.
    ['--lying 148/84x2 --standing3 120/80', ['--lying ambiguous']],
    ['--lying 148/84x68x2 --standing3 120/80', ['--lying not-a-number']],
    ['--lying 148 --standing3 120/80', ['--lying not-a-number']],
    ['--lying 148/84x --standing3 120/80', ['--lying not-a-number']],
    ['--lying 84/148x68 --standing3 120/80', ['--lying not-below-systolic']],
    ['--lying 148/84x68.5 --standing3 120/80x', ['--lying not-whole', '--standing3 not-a-number']],
    ['--lying 148/84 --standing3 120/80 --symptoms-at 1', ['--symptoms-at unknown-id']],
    ['--lying 148/84 --standing3 120/80 --age x', ['--age not-a-number']],
    ['--lying 148/84 --standing4 120/80', ['--standing3 missing', '--standing4 unknown-option']],
  ])('%s', async (line, expected) => {
    const { code, stdout, problems } = await typed(`orthostatic ${line} --json`);
    const found = problems.map(({ field, code: fault }) => `${field} ${fault}`);
    expect(found.sort()).toEqual(expected.sort());
    expect([code, stdout]).toEqual([2, '']);
  });
});

test('lists the two ways to begin, each of which can be typed', async () => {
  const { json } = await typed('orthostatic --list --json');
  const items = json[0]?.items as Record<string, string>[];
  expect(items.map(({ id }) => id)).toEqual(['lying', 'sitting']);
  for (const item of items) expect((await answered(item.typed ?? '')).from).toBe(item.id);
});
