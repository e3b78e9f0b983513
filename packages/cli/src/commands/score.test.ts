import { describe, expect, test } from 'vitest';
import { typed } from '../../testing/typed.js';

async function answered(line: string): Promise<Record<string, unknown>> {
  const { code, json, stderr } = await typed(`score ${line} --json`);
  expect([code, stderr]).toEqual([0, '']);
  return json[0] ?? {};
}

function codes(flags: unknown): string[] {
  return (flags as { code: string }[]).map(({ code }) => code);
}

const EARLY = '--of early-warning';
const W4 = `${EARLY} --respirations 22 --oxygen-saturation 94 --systolic 108 --pulse 112 --consciousness alert --temperature 38.4`;

describe('the early-warning score (Royal College of Physicians 2017; bedside handbook 5.2, 5.3, 8 C089)', () => {
  test.each([
    ['W4', W4, 7, 'high'],
    ['W5', `${EARLY} --respirations 24 --oxygen-saturation 95 --scale 2 --on-oxygen --systolic 124 --pulse 96 --consciousness alert --temperature 37.2`, 7, 'high'], // biome-ignore format: one example
    ['W5 on scale 1', `${EARLY} --respirations 24 --oxygen-saturation 95 --scale 1 --on-oxygen --systolic 124 --pulse 96 --consciousness alert --temperature 37.2`, 6, 'medium'], // biome-ignore format: one example
    ['W6', `${EARLY} --respirations 16 --oxygen-saturation 97 --systolic 88 --pulse 88 --consciousness alert --temperature 36.5`, 3, 'low-medium'], // biome-ignore format: one example
    ['W7', `${EARLY} --respirations 30 --oxygen-saturation 85 --on-oxygen --systolic 70 --pulse 140 --consciousness voice --temperature 34.5`, 20, 'high'], // biome-ignore format: one example
  ])('%s', async (_source, line, total, band) => {
    expect(await answered(line)).toMatchObject({ total, atLeast: total, band, missing: [] });
  });

  test('has the keys of the issue in its order, then the rest; its switches are repeated', async () => {
    const answer = await answered(`${W4} --age 70`);
    expect(Object.keys(answer)).toEqual([
      'total',
      'atLeast',
      'parts',
      'band',
      'missing',
      'alerts',
      'response',
      'checks',
      'flags',
      'why',
      'of',
      'scale',
      'onOxygen',
      'pregnant',
      'spinalInjury',
      'computedBy',
    ]);
    expect(answer).toMatchObject({
      parts: { respirations: 2, oxygenSaturation: 1, onOxygen: 0, systolic: 1, pulse: 2, consciousness: 0, temperature: 1 }, // biome-ignore format: one row
      response: { code: 'response-emergency-team', detail: expect.stringMatching(/\.$/) },
      flags: [{ code: 'air-assumed', detail: expect.stringMatching(/--on-oxygen was not given/) }],
      scale: 1,
      onOxygen: false,
      computedBy: { program: 'evenfall 0.0.0-test', preset: null, presetVersion: null, rule: 'score-2' },
    });
  });

  test('says that air was taken for granted, and only then', async () => {
    const on = await answered(`${EARLY} --age 60 --systolic 108 --on-oxygen`);
    expect(on).toMatchObject({ flags: [], parts: { onOxygen: 2 } });
    const off = await answered(`${EARLY} --age 60 --systolic 108`);
    expect(off).toMatchObject({ flags: [{ code: 'air-assumed' }], parts: { onOxygen: 0 } });
  });

  test('a missing part: no total, "at least", and a part of three alerts (C090, common practice; C091)', async () => {
    const answer = await answered(`${EARLY} --systolic 84 --pulse 120`);
    expect(answer).toMatchObject({
      total: null,
      atLeast: 5,
      band: null,
      missing: ['respirations', 'oxygenSaturation', 'consciousness', 'temperature'],
      response: null,
    });
    expect(codes(answer.alerts)).toEqual(['three-points-systolic', 'early-warning-medium']);
    expect((await typed(`score ${EARLY} --systolic 84`)).stdout).toMatch(/^at least 3, no total {2}[\s\S]*Missing[\s\S]*Alert/); // biome-ignore format: one thought
  });

  // Bedside handbook 8, C081 and C082 (second-hand): 93 % on air and on oxygen, by scale.
  test.each([
    ['C081 scale 1', '', { oxygenSaturation: 2, onOxygen: 0 }],
    ['C081 scale 2', '--scale 2', { oxygenSaturation: 0, onOxygen: 0 }],
    ['C082', '--scale 2 --on-oxygen', { oxygenSaturation: 1, onOxygen: 2 }],
  ])('%s', async (_source, more, parts) => {
    expect(await answered(`${EARLY} --oxygen-saturation 93 ${more}`)).toMatchObject({ parts });
  });

  test('somebody who does not respond is an emergency before any points', async () => {
    const { alerts } = await answered(`${EARLY} --consciousness unresponsive --respirations 0 --pulse 0`);
    expect(codes(alerts).slice(0, 3)).toEqual(['unresponsive', 'no-breath-counted', 'no-pulse-counted']);
  });

  test('the College is acknowledged where the score is shown', async () => {
    expect((await typed(`score ${W4}`)).stdout).toMatch(/Royal College of Physicians.*acknowledgement/);
  });
});

describe('the other scores', () => {
  test.each([
    // Bedside handbook 8: C087 (derived), C088, C091, C083, C084, C085; 5.3 W8, W12, W13.
    ['C087 mean', '--of mean-pressure --systolic 118 --diastolic 76', { value: 90, unit: 'mmHg', band: 'usual' }],
    ['C087 pulse pressure', '--of pulse-pressure --systolic 142 --diastolic 88', { value: 54, band: 'usual' }],
    ['C088', '--of shock-index --pulse 110 --systolic 90', { value: 110 / 90, band: 'high' }],
    ['C088 modified', '--of modified-shock-index --pulse 110 --systolic 90 --diastolic 60', { value: 110 / 70, band: 'high' }],
    ['W3 age', '--of age-shock-index --pulse 110 --systolic 90 --age 70', { value: (70 * 110) / 90, band: 'high' }],
    ['C091', '--of mean-pressure --systolic 84', { value: null, band: null, missing: ['diastolic'], why: [{ code: 'value-needs-diastolic' }] }],
    ['W8', '--of sepsis-screen --respirations 24 --systolic 98 --glasgow 15', { total: 2, band: 'positive' }],
    ['W12', '--of paediatric-shock-index --age 7 --pulse 118 --systolic 104', { band: 'high' }],
    ['C083', '--of glasgow --eyes 4 --verbal 4 --motor 6', { total: 14, text: 'E4 V4 M6 = 14' }],
    ['C084', '--of glasgow --eyes 4 --verbal NT --motor 6', { total: null, why: [{ code: 'glasgow-not-testable' }] }],
    ['product', '--of rate-pressure-product --pulse 72 --systolic 120', { value: 8640, band: 'usual' }],
  ])('%s: %s', async (_source, line, expected) => {
    expect(await answered(line)).toMatchObject(expected);
  }); // biome-ignore format: one row a score

  test('shown for people with their decimals', async () => {
    expect((await typed('score --of shock-index --pulse 110 --systolic 90')).stdout).toMatch(/^1\.22 \/min per mmHg, high/); // biome-ignore format: one thought
    // C085 (derived)
    expect((await typed('score --of body-mass-index --weight-kg 70 --height-cm 170')).stdout).toMatch(/^24\.2 kg\/m2, usual/); // biome-ignore format: one thought
    // W13 (derived): 96.7, plain 93.3
    const { stdout } = await typed('score --of mean-pressure --systolic 120 --diastolic 80 --pulse 72');
    expect(stdout).toMatch(/^93 mmHg, usual[\s\S]*96 mmHg by the form factor[\s\S]*97 mmHg corrected/);
    expect((await typed('score --of mean-pressure --systolic 84')).stdout).toMatch(/^no value/);
  });

  test('a negative sepsis screen says that it does not reassure', async () => {
    const { flags } = await answered(
      '--of sepsis-screen --respirations 18 --systolic 120 --consciousness alert',
    );
    expect(flags).toMatchObject([{ detail: expect.stringMatching(/does not reassure/) }]);
  });
});

describe('what is refused', () => {
  test.each([
    ['', ['--of missing']],
    ['--of early', ['--of unknown-id']],
    // Bedside handbook 5.2: not under 16, in pregnancy or with a spinal injury.
    [`${W4} --age 15`, ['--age out-of-range']],
    [`${W4} --pregnant`, ['--pregnant contradicts']],
    [`${W4} --spinal-injury`, ['--spinal-injury contradicts']],
    [`${EARLY} --temperature 38,4`, ['--temperature not-a-number']],
    [`${EARLY} --oxygen-saturation 101`, ['--oxygen-saturation out-of-range']],
    [`${EARLY} --consciousness awake`, ['--consciousness unknown-id']],
    [`${EARLY} --scale 3`, ['--scale unknown-id']],
    [`${EARLY} --pulse 70 --pulse 72`, ['--pulse repeated']],
    ['--of mean-pressure --systolic 80 --diastolic 120', ['--diastolic not-below-systolic']],
    ['--of pulse-pressure --systolic 120 --diastolic 80 --on-oxygen', ['--on-oxygen unknown-field']],
    ['--of glasgow --eyes 5 --verbal 5 --motor 6', ['--eyes out-of-range']],
  ])('%s', async (line, expected) => {
    const { code, stdout, problems } = await typed(`score ${line} --json`);
    expect(problems.map(({ field, code: fault }) => `${field} ${fault}`)).toEqual(expected);
    expect([code, stdout]).toEqual([2, '']);
  });

  test('16 years are enough', async () => {
    expect((await answered(`${W4} --age 16`)).total).toBe(7);
  });
});

test('lists every score, and each can be asked for', async () => {
  const { json } = await typed('score --list --json');
  const items = json[0]?.items as Record<string, string>[];
  expect(items.map(({ id }) => id)).toEqual(
    expect.arrayContaining([
      'early-warning',
      'mean-pressure',
      'pulse-pressure',
      'shock-index',
      'sepsis-screen',
    ]),
  );
  for (const item of items) {
    expect(Object.keys(item)).toEqual(['id', 'title', 'source', 'status', 'typed']);
    expect(item.title).not.toBe(item.id);
    const { code, json: answer } = await typed(`score ${item.typed} --json`);
    // Nothing typed: nothing is guessed.
    expect(code).toBe(0);
    expect(answer[0]?.missing).not.toEqual([]);
    expect(answer[0]?.band).toBeNull();
  }
});
