import { describe, expect, test } from 'vitest';
import { typed } from '../../testing/typed.js';

const codes = (flags: unknown) => (flags as { code: string }[]).map(({ code }) => code);

async function asked(options: string) {
  const ended = await typed(`cuff ${options} --json`);
  expect([ended.code, ended.stderr]).toEqual([0, '']);
  return ended.json[0] as Record<string, unknown>;
}

describe('a cuff for an arm', () => {
  test('has the keys of the issue in its order, then what lies behind it', async () => {
    expect(Object.keys(await asked('--arm 33'))).toEqual(
      'scheme cuff bladderCm biasMmHg biasRangeMmHg biasSource smallestBladderCm atHand status flags why computedBy'.split(
        ' ',
      ),
    );
  });

  // Bedside handbook 8, C028 to C030 (second-hand; the half centimetre common practice), and just beyond each end.
  test.each([
    ['21.4', null, null],
    ['21.5', 'small-adult', { width: 12, length: 22 }],
    ['26', 'small-adult', { width: 12, length: 22 }],
    ['26.4', 'small-adult', { width: 12, length: 22 }],
    ['26.5', 'adult', { width: 16, length: 30 }],
    ['27', 'adult', { width: 16, length: 30 }],
    ['34', 'adult', { width: 16, length: 30 }],
    ['35', 'large-adult', { width: 16, length: 36 }],
    ['44', 'large-adult', { width: 16, length: 36 }],
    ['45', 'thigh', { width: 16, length: 42 }],
    ['52', 'thigh', { width: 16, length: 42 }],
    ['52.5', null, null],
  ])('%s cm takes %j', async (arm, cuff, bladderCm) => {
    expect(await asked(`--arm ${arm}`)).toMatchObject({
      scheme: 'aha-2005',
      cuff,
      bladderCm,
      biasMmHg: null,
    });
  });

  // C032 (found).
  test.each([
    [22, 'small'],
    [30, 'medium'],
    [40, 'large'],
  ])('by the arm bands %d cm takes %s', async (arm, cuff) => {
    expect(await asked(`--arm ${arm} --scheme uk-arm-bands`)).toMatchObject({ scheme: 'uk-arm-bands', cuff });
  });

  test('C031: where there is none it says why', async () => {
    expect(codes((await asked('--arm 21')).why)).toEqual(['arm-below-scheme']);
    expect(codes((await asked('--arm 53')).why)).toEqual(['arm-above-scheme']);
  });

  test('C033: an arm of 40 cm needs a bladder of 16 by 32 cm or more', async () => {
    expect(await asked('--arm 40')).toMatchObject({ smallestBladderCm: { width: 16, length: 32 } });
  });

  test('C034 (Ishigami 2023): the regular cuff on an extra-large arm reads +19.5/+7.4', async () => {
    const answer = await asked('--arm 48 --at-hand adult');
    expect(answer).toMatchObject({ atHand: 'adult', biasMmHg: { systolic: 19.5, diastolic: 7.4 } });
    expect(codes(answer.flags)).toEqual(['cuff-too-small']);
  });

  test('for people: what is right, and what the one at hand does', async () => {
    const { stdout } = await typed('cuff --arm 24 --at-hand adult');
    expect(stdout).toMatch(/^Cuff +Small adult, bladder 12 x 22 cm\n/);
    expect(stdout).toMatch(
      /shift the reading by −3\.6\/−1\.3 mmHg on average; the reading stands as it was taken$/m,
    );
    expect(stdout).toMatch(/^Note .*too large for an arm of 24 cm.*Nothing is added\.$/m);
    expect((await typed('cuff --arm 53')).stdout).toMatch(/^Cuff +none of this scheme\n/);
  });

  test('what cannot be is refused together, by the names that were typed', async () => {
    const { code, stdout, problems } = await typed('cuff --at-hand medium --arm 3.9 --json');
    expect([code, stdout]).toEqual([2, '']);
    expect(problems.map(({ field, code: one }) => [field, one])).toEqual([
      ['--at-hand', 'unknown-id'],
      ['--arm', 'out-of-range'],
    ]);
    expect((await typed('cuff --json')).problems).toMatchObject([{ field: '--arm', code: 'missing' }]);
    expect((await typed('cuff --arm 33 --scheme x --json')).problems).toMatchObject([{ field: '--scheme' }]);
  });

  test('--list has each scheme and its cuffs in the order of the handbook', async () => {
    const { json } = await typed('cuff --list --json');
    const items = json[0]?.items as { id: string; title: string; status: string; typed: string }[];
    expect(items.map(({ id }) => id)).toEqual([
      'aha-2005',
      ...['small-adult', 'adult', 'large-adult', 'thigh'].map((id) => `aha-2005-${id}`),
      'uk-arm-bands',
      ...['small', 'medium', 'large'].map((id) => `uk-arm-bands-${id}`),
      'fourth-report-2004',
      ...['newborn', 'infant', 'child', 'small-adult', 'adult', 'large-adult', 'thigh'].map(
        (id) => `fourth-report-2004-${id}`,
      ),
    ]);
    expect(items[1]).toMatchObject({ title: 'Small adult, bladder 12 x 22 cm', status: 'second-hand' });
    for (const { typed: one } of items) expect((await typed(`cuff --arm 30 ${one} --json`)).code).toBe(0);
  });
});
