import { loadWords } from '@evenfall/words';
import { expect, test } from 'vitest';
import { fallText, periodCategoriesSaid } from './recordingText.js';

type Result = Parameters<typeof fallText>[0];
const means = (systolic: number, diastolic: number) =>
  ({ mean: { systolic, diastolic, pulse: null } }) as Result['day'];

// Out-of-office handbook 19, A1: the systolic falls as usual, the diastolic by 20.4 %, which has a class of its own.
const A1: Result = {
  dip: { systolicPercent: 16.1584, diastolicPercent: 20.3778, class: 'dipper' },
  day: means(137.3125, 86.03125),
  night: means(115.125, 68.5),
};

test('the fall by night with its class, and that of the diastolic where it is another', async () => {
  const [en, es] = [await loadWords('en'), await loadWords('es')];
  expect(fallText(A1, en)).toBe(
    'systolic 16.2 %, diastolic 20.4 %: the usual fall by night; of the diastolic alone a large fall by night',
  );
  expect(fallText(A1, es)).toContain('; de la diastólica sola, ');
  expect(fallText({ ...A1, night: means(115.125, 72) }, en)).toMatch(/: the usual fall by night$/);
  expect(fallText({ ...A1, dip: { ...A1.dip, class: null } }, en)).toBe('systolic 16.2 %, diastolic 20.4 %');
  expect(fallText({ ...A1, dip: { ...A1.dip, diastolicPercent: null } }, en)).toBeNull();
});

test('names that a guideline has are said; high or not of each only where there is no pattern', async () => {
  const [en, es] = [await loadWords('en'), await loadWords('es')];
  const stage = { names: [{ period: 'day', category: 'stage-1' }], flags: [] } as const;
  expect(periodCategoriesSaid(stage, 'day-alone-high', en)).toEqual({
    text: 'day stage 1, by this rule set: names for these readings, not for the person',
    flags: [],
  });
  expect(periodCategoriesSaid(stage, null, es)?.text).toContain('según este conjunto de reglas');
  const plain = {
    names: [
      { period: 'whole', category: 'not-high' },
      { period: 'day', category: 'high' },
    ],
    flags: [],
  } as const;
  expect(periodCategoriesSaid(plain, null, en)?.text).toContain('24 hours not high, day high');
  expect(periodCategoriesSaid(plain, 'day-alone-high', en)).toBeNull();
  expect(periodCategoriesSaid({ names: [], flags: [] }, null, en)).toBeNull();
});

test('what is to be known of the names comes with them', async () => {
  const en = await loadWords('en');
  const flags = [{ code: 'limits-from-memory', figures: {} }] as const;
  const found = { names: [{ period: 'day', category: 'hypertension' }], flags } as const;
  expect(periodCategoriesSaid(found, 'day-alone-high', en)?.flags.map(en.detail)).toEqual([
    'Confirm the limits of this category with your local protocol, and where a pressure could be dangerous act first.',
  ]);
});
