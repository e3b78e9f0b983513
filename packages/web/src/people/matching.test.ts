import type { PersonRow } from '@evenfall/api';
import { projectLatest } from '@evenfall/record';
import { expect, test } from 'vitest';
import { matching } from './matching.js';

function row(name: string, number: string | null): PersonRow {
  const identity = { name, birthDate: null, number };
  return { id: name, identity, classIdentity: null, latest: projectLatest([]) };
}
const rows = [row('José Álvarez', 'A-17'), row('Ann Lee', 'B-2'), { ...row('gone', null), identity: null }];

test.each([
  ['', 3],
  ['jose', 1],
  ['ALVAREZ jos', 1],
  ['b-2', 1],
  ['lee jose', 0],
])('“%s” finds %d', (wanted, found) => {
  expect(matching(rows, wanted)).toHaveLength(found);
});
