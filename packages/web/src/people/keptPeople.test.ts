import { expect, test } from 'vitest';
import type { Known } from '../store/known.js';
import { keptPeople } from './keptPeople.js';

const record = (name: string | null) =>
  ({
    is: 'here',
    value: { identity: name === null ? null : { name } },
  }) as unknown as Known['records'][string];

test('those known are listed by name: nobody of a class, nobody erased, nobody only asked for', () => {
  const found = keptPeople({
    'care 1': record('Marit'),
    'care 2': record('Ansel'),
    'care 3': record(null),
    'care 4': { is: 'unreachable', value: null },
    'class 5': record('Birch'),
  });
  expect(found.map(({ identity }) => identity?.name)).toEqual(['Ansel', 'Marit']);
});
