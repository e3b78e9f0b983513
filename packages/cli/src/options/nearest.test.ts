import { expect, test } from 'vitest';
import { nearest } from './nearest.js';

const NAMES = ['n', 'window', 'clock', 'first', 'of', 'heart-rate-drug', 'json', 'help', 'version'];

test.each([
  ['clok', 'clock'],
  ['widow', 'window'],
  ['jsn', 'json'],
  ['windows', 'window'],
  // The start of a name is likelier meant than another short name.
  ['ver', 'version'],
  ['h', 'help'],
  ['heart', 'heart-rate-drug'],
])('%s was meant as %s', (typed, meant) => {
  expect(nearest(typed, NAMES)).toBe(meant);
});
