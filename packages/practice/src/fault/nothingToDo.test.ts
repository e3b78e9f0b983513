import { expect, test } from 'vitest';
import type { Cost } from './cost.js';
import { nothingToDo } from './nothingToDo.js';

const cost = (systolic: number | null, doInstead: Cost['doInstead'] = 'ask-for-silence'): Cost => ({
  code: 'talking',
  doInstead,
  systolic,
  diastolic: systolic === null ? null : 0,
});
const NONE_LEFT = { systolic: 0, diastolic: 0 };
const of = (costs: readonly Cost[], systolic: boolean | null, diastolic: boolean | null = true) =>
  nothingToDo({ costs, left: NONE_LEFT }, { systolic, diastolic });

// Assessment handbook 14 (one thing to change); that nobody is praised for a number that is off is our decision.
test.each([
  ['nothing cost anything', [], true, 'none'],
  ['a cost that no gauge shows', [cost(1.9)], true, 'small'],
  ['a number that is not accepted, whatever it came of', [], false, 'unexplained'],
  ['the same with a small cost', [cost(1)], false, 'unexplained'],
  ['a large cost that there was no time to mend', [cost(17, 'no-time-for-that')], true, 'excused'],
  ['the same of a number that is not accepted', [cost(17, 'no-time-for-that')], false, 'excused'],
  ['one that left nothing to be heard', [cost(null, 'no-time-for-that')], null, 'excused'],
  ['a small one that there was no time to mend', [cost(1.9, 'no-time-for-that')], true, 'small'],
] as const)('%s', (_name, costs, isAccepted, says) => {
  expect(of(costs, isAccepted)).toBe(says);
});

test('the diastolic alone that is not accepted is no praise either', () => {
  expect(of([], true, false)).toBe('unexplained');
});

// Assessment handbook 8.5: within 5 mmHg is accepted.
test('what there was no time to mend excuses no number that is off for more than that', () => {
  const excused = [cost(2, 'no-time-for-that')];
  const off = (left: number, systolic: boolean) =>
    nothingToDo({ costs: excused, left: { systolic: left, diastolic: 0 } }, { systolic, diastolic: true });
  expect(off(18, false)).toBe('unexplained');
  expect(off(-18, false)).toBe('unexplained');
  expect(off(4, false)).toBe('excused');
  expect(off(18, true)).toBe('excused');
});
