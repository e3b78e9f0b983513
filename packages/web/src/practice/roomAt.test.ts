import { SCENARIOS } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { roomAt } from './roomAt.js';

test('a person of the place never stands where another page or a built-in person does', () => {
  const pages = ['room', 'exercises', 'scenarios', 'plan', 'own'];
  const builtIn = SCENARIOS.map(({ id }) => id);
  for (const page of pages) expect(builtIn).not.toContain(page);
  for (const id of [...pages, 'maud']) expect(roomAt(id)).toBe(`/practice/own/${id}`);
  for (const id of builtIn) expect(roomAt(id)).toBe(`/practice/${id}`);
});
