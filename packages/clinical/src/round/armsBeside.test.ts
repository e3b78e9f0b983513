import { expect, test } from 'vitest';
import { armsBeside } from './armsBeside.js';

const figures = { systolicMmHg: 3, limitMmHg: 10 };
const against = [{ code: 'arms-unlike-cuffs', figures: {} }];

test('arms that were taken alike are told of as their difference says', () => {
  const why = [{ code: 'arms-either', figures }];
  expect(armsBeside(why, [])).toEqual(why);
});

// Bedside handbook 3.12, and 3.3: a wrong cuff shifts the systolic by as much as the limits.
test('where they were not, that comes first, and neither arm is said to do', () => {
  expect(armsBeside([{ code: 'arms-either', figures }], against)).toEqual([
    ...against,
    { code: 'arms-not-compared', figures },
  ]);
  const repeat = { code: 'arms-repeat', figures };
  expect(armsBeside([repeat], against)).toEqual([...against, repeat]);
});
