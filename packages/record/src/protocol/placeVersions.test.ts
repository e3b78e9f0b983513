import { expect, test } from 'vitest';
import { type ProtocolChoiceMade, placeVersions } from './placeVersions.js';

const made = (version: string | null, minute: number): ProtocolChoiceMade => ({
  entry: `entry-${minute}`,
  version,
  agent: 'wren',
  at: `2026-11-25T10:0${minute}:00Z`,
  recordedAt: `2026-11-25T10:0${minute}:00Z`,
});

// A round taken under version 3 still shows version 3.
test('versions are numbered in the order of first use; none has no number, and nothing renumbers them', () => {
  const choices = [made('aa', 1), made('bb', 2), made(null, 3), made('aa', 4), made('cc', 5)];
  const numbers = (upTo: number) =>
    placeVersions([], choices.slice(0, upTo)).map(({ version, number }) => [version, number]);
  expect(numbers(2)).toEqual([
    ['bb', 2],
    ['aa', 1],
  ]);
  expect(numbers(4)).toEqual(numbers(2));
  expect(numbers(5)).toEqual([['cc', 3], ...numbers(2)]);
});

test('each time that a version was put in force is listed, and one that is kept and never was is there too', () => {
  const choices = [made('aa', 1), made(null, 2), made('aa', 3)];
  expect(placeVersions(['zz', 'aa'], choices)).toEqual([
    { version: 'aa', number: 1, choices: [choices[0], choices[2]] },
    { version: 'zz', number: null, choices: [] },
  ]);
  expect(placeVersions([], [])).toEqual([]);
});
