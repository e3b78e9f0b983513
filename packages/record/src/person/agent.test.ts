import { expect, test } from 'vitest';
import { idOf } from '../testing/work.js';
import { agent } from './agent.js';

test('an agent has an id and a name, and nothing about what it was in an act', () => {
  const wren = { id: idOf(1), name: 'Wren (invented)' };
  expect(agent.parse(wren)).toEqual(wren);
  expect(agent.parse({ ...wren, name: ' Wren ' }).name).toBe('Wren');
  for (const wrong of [{ name: ' ' }, { name: 'x'.repeat(201) }, { id: 'wren' }, { role: 'observer' }]) {
    expect(agent.safeParse({ ...wren, ...wrong }).success, JSON.stringify(wrong)).toBe(false);
  }
});
