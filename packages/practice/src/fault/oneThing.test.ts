import { expect, test } from 'vitest';
import type { Conduct } from './conduct.js';
import type { Cost } from './cost.js';
import { oneThingOf } from './oneThing.js';

const cost = (systolic: number | null): Cost => ({
  code: 'talking',
  doInstead: 'ask-for-silence',
  systolic,
  diastolic: 0,
});
const left: Conduct = { code: 'not-marked', doInstead: 'mark-in-time', figures: {} };
const untold: Conduct = { code: 'not-told', doInstead: 'tell-at-once', figures: {} };
const of = (costs: readonly Cost[], conduct: readonly Conduct[]) =>
  oneThingOf({ best: null, costs, left: null, hidBy: null }, conduct);

// Assessment handbook 13 (critical when red-flag) and 14 (one thing to change).
test('a sign that was not told comes before every cost', () => {
  expect(of([cost(30)], [untold, left])).toEqual({ kind: 'conduct', conduct: untold });
});

test.each([
  [1.9, 'conduct'],
  [2, 'cost'],
  [-2, 'cost'],
])('a fault of %f mmHg beside something left out: the %s is told', (systolic, kind) => {
  expect(of([cost(systolic)], [left])?.kind).toBe(kind);
});

test('a fault that left nothing to be heard is told, and one of a reading by feel by its one number', () => {
  expect(of([{ ...cost(null), diastolic: null }], [left])?.kind).toBe('cost');
  expect(of([{ ...cost(0.5), diastolic: null }], [left])?.kind).toBe('conduct');
});

test('what the gauge cannot show is no advice', () => {
  expect(of([cost(0.5)], [])).toBeNull();
  expect(of([], [])).toBeNull();
});

test('what the person teaches comes before a small fault and before what was left out, and after a large one', () => {
  const lesson = ['three-readings'] as const;
  const with_ = (mmHg: number) =>
    oneThingOf({ best: null, costs: [cost(mmHg)], left: null, hidBy: null }, [left], lesson)?.kind;
  expect(with_(4.9)).toBe('lesson');
  expect(with_(5)).toBe('cost');
});

// docs/conventions.md section 6: three numbers are written where sounds go on. To hear on to the last sound does not mend it.
test('a muffling that was not written comes before a last sound taken for it, and not before anything else', () => {
  const unwritten: Conduct = { code: 'muffled-not-written', doInstead: 'three-numbers', figures: {} };
  const misheard: Cost = {
    ...cost(0),
    code: 'misheard',
    doInstead: 'first-of-two-last-of-all',
    diastolic: -60,
  };
  expect(of([misheard], [unwritten])).toEqual({ kind: 'conduct', conduct: unwritten });
  expect(of([misheard], [left])?.kind).toBe('cost');
  expect(of([{ ...misheard, systolic: 1 }], [unwritten])?.kind).toBe('cost');
  expect(of([misheard, cost(12)], [unwritten])).toEqual({ kind: 'cost', cost: cost(12) });
});
