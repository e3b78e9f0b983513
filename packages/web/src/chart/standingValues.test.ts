import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { standingValues } from './standingValues.js';

const words = wordsFor('en-GB');
const sign = (id: string, celsius: number) => ({
  id,
  kind: 'sign',
  content: {
    evidence: { sign: { of: 'temperature', celsius, site: 'oral' } },
    value: { flags: [] },
    note: null,
  },
});

test('the values of a round stand in the order of the work, each claim of a disputed one by itself', () => {
  const values = [
    { original: sign('a', 38.4), current: [sign('a', 38.4)] },
    { original: sign('b', 37), current: [sign('c', 37.1), sign('d', 37.2)] },
    { original: sign('e', 36), current: [] },
  ];
  const found = standingValues({ values } as never, words);
  expect(found.map(({ entry, sign: of, text }) => [entry, of, text])).toEqual([
    ['a', 'temperature', expect.stringContaining('38.4')],
    ['c', 'temperature', expect.stringContaining('37.1')],
    ['d', 'temperature', expect.stringContaining('37.2')],
  ]);
});
