import { expect, test } from 'vitest';
import { timeStepSeconds } from './timeStep.js';

test.each([
  ['tenths', [0, 0.8, 1.6, 2.5], 0.1],
  ['hundredths, from an odd zero', [0.003, 0.833, 1.663], 0.01],
  ['milliseconds of an epoch', [1764000000.001, 1764000000.834, 1764000001.668], 0.001],
  ['a fine clock', [0, 0.8312345, 1.662], 0],
])('%s', (_, seconds, step) => {
  expect(timeStepSeconds(seconds)).toBe(step);
});
