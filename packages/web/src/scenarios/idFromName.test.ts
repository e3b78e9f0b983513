import { expect, test } from 'vitest';
import { idFromName } from './idFromName.js';

test.each([
  ['Late shift', 'late-shift'],
  ['  Señora Ñuñez, 3.º B (invented) ', 'senora-nunez-3-b'],
  ['3rd floor', 'rd-floor'],
  ['Tall gap (invented)', 'tall-gap'],
  ['اسم', ''],
  ['', ''],
])('%s', (name, id) => {
  expect(idFromName(name, [])).toBe(id);
});

test('never one that somebody else has', () => {
  expect(idFromName('Late shift', ['late-shift'])).toBe('late-shift-2');
  expect(idFromName('Late shift', ['late-shift', 'late-shift-2'])).toBe('late-shift-3');
});

test('a long name is cut, and no hyphen is left at its end', () => {
  const id = idFromName(`${'a'.repeat(39)} b c`, []);
  expect(id).toBe('a'.repeat(39));
});
