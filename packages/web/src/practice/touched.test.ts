import { expect, test } from 'vitest';
import { noiseOf } from './touched.js';

// Physiology handbook 13: thump on and off, friction while moving, a knock of the tube when the bulb moves; 8.4: friction
// under the cuff. With the chest piece in the hand nothing passes the tube.
test.each([
  ['put-on', false, 'light', 'put-on'],
  ['taken-off', true, 'light', 'taken-off'],
  ['moved', true, 'light', 'friction'],
  ['moved', false, 'light', null],
  ['bulb', true, 'light', 'tube-knock'],
  ['bulb', true, 'pressed-hard', 'tube-knock'],
  ['bulb', true, 'under-cuff', 'friction'],
  ['bulb', false, 'light', null],
] as const)('%s, on the arm: %s, held %s: %s', (what, isOn, how, noise) => {
  expect(noiseOf(what, { isOn, how })).toBe(noise);
});
