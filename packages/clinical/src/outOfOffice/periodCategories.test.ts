import { expect, test } from 'vitest';
import { overrideFields } from '../protocol/override.js';
import { presetProtocol } from '../protocol/presetProtocol.js';
import { ambulatoryRules } from '../protocol/rules.js';
import type { AmbulatoryResult } from './ambulatoryResult.js';
import type { PressurePair } from './byMeasure.js';
import { periodCategories } from './periodCategories.js';

function protocolOf(id: string) {
  const found = presetProtocol({ ambulatory: id });
  if (!found.ok) throw new Error(id);
  return found.value;
}

const pair = (typed: string): PressurePair => {
  const [systolic = null, diastolic = null] = typed
    .split('/')
    .map((one) => (one === '-' ? null : Number(one)));
  return { systolic, diastolic };
};

type Given = Pick<AmbulatoryResult, 'judged' | 'valid' | 'why'>;
const means = (whole: string, day: string, night: string, more: Partial<Given> = {}): Given => ({
  valid: true,
  why: [],
  ...more,
  judged: {
    whole: { mean: pair(whole), high: null },
    day: { mean: pair(day), high: null },
    night: { mean: pair(night), high: null },
  },
});

const named = (given: Given, id: string, rules = ambulatoryRules(protocolOf(id))) =>
  periodCategories(given, rules).names.map(({ period, category }) => `${period} ${category}`);

/** The rules of a guideline with limits of a place's own. */
function changedRules(id: string, limits: Readonly<Record<string, number>>) {
  const changed = overrideFields(
    protocolOf(id),
    Object.entries(limits).map(([key, limit]) => ({
      section: 'ambulatory',
      key,
      value: { comparison: '>=', limit },
    })),
  );
  if (!changed.ok) throw new Error(JSON.stringify(changed.refusals));
  return ambulatoryRules(changed.value);
}

// Out-of-office handbook 8.1, each limit from both sides: NICE stage 1 from 135/85 and stage 2 from 150/95 by day alone.
test.each([
  ['134.99/84.99', 'below-stage-1'],
  ['135/60', 'stage-1'],
  ['120/85', 'stage-1'],
  ['149.9/94.9', 'stage-1'],
  ['150/80', 'stage-2'],
  ['130/95', 'stage-2'],
])('NICE: %s by day is %s', (day, category) => {
  expect(named(means('160/100', day, '160/100'), 'nice-ng136')).toEqual([`day ${category}`]);
});

// ESC 2024 "elevated": 115-129/65-79 over 24 hours, 120-134/70-84 by day, 110-119/60-69 by night.
test.each([
  ['114.9/64.9', '119.9/69.9', '109.9/59.9', 'non-elevated'],
  ['115/60', '120/60', '110/50', 'elevated'],
  ['100/65', '100/70', '100/60', 'elevated'],
  ['129.9/79.9', '134.9/84.9', '119.9/69.9', 'elevated'],
  ['130/79', '135/80', '120/65', 'hypertension'],
  ['110/80', '110/85', '100/70', 'hypertension'],
])('ESC: %s over 24 hours, %s by day, %s by night: %s', (whole, day, night, category) => {
  const each = ['whole', 'day', 'night'].map((period) => `${period} ${category}`);
  expect(named(means(whole, day, night), 'esc-2024')).toEqual(each);
});

// ACC/AHA 2025, table 7: what office pressures of 120, 130/80 and 140/90 are; the mean by night is not used for the label.
test.each([
  ['114.9/74.9', '119.9/79.9', 'normal'],
  ['115/74.9', '120/79.9', 'elevated'],
  ['124.9/74.9', '129.9/79.9', 'elevated'],
  ['125/60', '130/60', 'stage-1'],
  ['100/75', '100/80', 'stage-1'],
  ['130/70', '135/70', 'stage-2'],
  ['110/80', '110/85', 'stage-2'],
])('ACC/AHA: %s over 24 hours, %s by day: %s', (whole, day, category) => {
  for (const id of ['acc-aha-2017', 'acc-aha-2025'])
    expect(named(means(whole, day, '150/90'), id)).toEqual([`whole ${category}`, `day ${category}`]);
});

test('a guideline without other names says high or not of what it judges; the early proposals only over their limits', () => {
  expect(named(means('130/70', '140/90', '120/70'), 'ish-2020')).toEqual(['whole high']);
  expect(named(means('129.9/79.9', '135/70', '130/90'), 'hypertension-canada')).toEqual([
    'whole not-high',
    'day high',
  ]);
  expect(named(means('135/85', '140/90', '125.1/75'), 'early-proposals-over-24-hours')).toEqual([
    'whole not-high',
    'day not-high',
    'night high',
  ]);
  expect(named(means('150/90', '150/90', '150/90'), 'means-alone-over-24-hours')).toEqual([]);
});

test('no name where the recording is not enough, nor for a child, in pregnancy, or with one number alone', () => {
  const high = (more: Partial<Given>) => named(means('150/95', '150/95', '140/90', more), 'esc-2024');
  expect(high({ valid: false })).toEqual([]);
  expect(high({ why: [{ code: 'child', figures: { ageYears: 12 } }] })).toEqual([]);
  expect(high({ why: [{ code: 'pregnancy', figures: {} }] })).toEqual([]);
  expect(named(means('150/-', '150/95', '-/90'), 'esc-2024')).toEqual(['day hypertension']);
});

test('a limit that a place sets itself is where the first high name begins', () => {
  const rules = changedRules('nice-ng136', { daySystolic: 140 });
  expect(named(means('130/70', '139/80', '120/70'), 'nice-ng136', rules)).toEqual(['day below-stage-1']);
  expect(named(means('130/70', '140/80', '120/70'), 'nice-ng136', rules)).toEqual(['day stage-1']);
  expect(named(means('130/70', '150/80', '120/70'), 'nice-ng136', rules)).toEqual(['day stage-2']);
});

// What a place takes for high decides: a name of the range called hypertension is never given below it.
test('no name for a high mean below a limit that a place sets itself, however high that is', () => {
  const nice = changedRules('nice-ng136', { daySystolic: 155 });
  const day = (mean: string, id: string, rules: typeof nice) =>
    named(means('100/60', mean, '100/60'), id, rules).at(-1);
  expect(day('152/80', 'nice-ng136', nice)).toBe('day below-stage-1');
  expect(day('154.9/80', 'nice-ng136', nice)).toBe('day below-stage-1');
  expect(day('155/80', 'nice-ng136', nice)).toBe('day stage-2');
  // The diastolic keeps its own limits.
  expect(day('152/95', 'nice-ng136', nice)).toBe('day stage-2');
  const acc = changedRules('acc-aha-2025', { daySystolic: 140 });
  expect(day('137/70', 'acc-aha-2025', acc)).toBe('day elevated');
  expect(day('140/70', 'acc-aha-2025', acc)).toBe('day stage-2');
});

// Out-of-office handbook 8.1 has the row of ESC 2024 from memory, that of NICE quoted and that of ACC/AHA read in its table 7.
test('names that were never read again ask to be confirmed', () => {
  const flags = (id: string) =>
    periodCategories(means('125/70', '125/75', '112/62'), ambulatoryRules(protocolOf(id))).flags;
  expect(flags('esc-2024')).toEqual([{ code: 'limits-from-memory', figures: {} }]);
  // So are the limits of ESH, JSH and Australia, which are named high or not.
  for (const id of ['esh-2023', 'jsh-2019', 'australia-2016'])
    expect([id, flags(id)]).toEqual([id, [{ code: 'limits-from-memory', figures: {} }]]);
  // Of ISH 2020 the limits were read, quoted; a limit of the place’s own is from nobody’s memory.
  expect(flags('ish-2020')).toEqual([]);
  const own = { wholeSystolic: 131, wholeDiastolic: 81, daySystolic: 136, dayDiastolic: 86, nightSystolic: 121, nightDiastolic: 71 }; // biome-ignore format: one place
  expect(periodCategories(means('125/70', '125/75', '112/62'), changedRules('jsh-2019', own)).flags).toEqual(
    [],
  );
  expect(flags('nice-ng136')).toEqual([]);
  expect(flags('acc-aha-2025')).toEqual([]);
  expect(flags('means-alone-over-24-hours')).toEqual([]);
});

test('the names are those of the rules, whatever preset they began with', () => {
  const rules = ambulatoryRules(protocolOf('nice-ng136'));
  expect(named(means('130/70', '152/80', '120/70'), '', { ...rules, scheme: 'esc-2024' })).toEqual([
    'day hypertension',
  ]);
  expect(named(means('130/70', '152/80', '120/70'), '', { ...rules, scheme: 'none' })).toEqual([]);
});
