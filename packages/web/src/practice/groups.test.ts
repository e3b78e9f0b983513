import { SCENARIOS } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { GROUPS } from './groups.js';

test('everybody of the book stands in one group and in no other', () => {
  const all: string[] = Object.values(GROUPS).flat();
  expect([...all].sort()).toEqual(SCENARIOS.map(({ id }) => id).sort());
});
