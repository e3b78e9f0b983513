import { expect, test } from 'vitest';
import { celsiusTyped } from './celsiusTyped.js';

test.each([
  ['39.4', 39.4],
  ['39,4', 39.4],
  [' 37 ', 37],
  ['', null],
  ['394', null],
  ['24.9', null],
  ['45.1', null],
  ['39.42', null],
  ['warm', null],
])('%j typed is %s', (text, celsius) => expect(celsiusTyped(text)).toBe(celsius));
