import { expect, test } from 'vitest';
import type { AccountRole } from './accountRole.js';
import { barredImport } from './barredImport.js';

// Source of the rules: decision of this project (docs/conventions.md, accounts).
const barred = (roles: readonly AccountRole[], ofRecord: number, reported: number) =>
  barredImport({ ofRecord, reported }, { agent: 'me', roles }).map(({ choices }) => choices?.join());

test('entries in the names of others are brought by an owner, values from elsewhere by whoever charts', () => {
  expect(barred(['owner'], 1, 0)).toEqual([]);
  for (const role of ['clinician', 'supervisor', 'learner'] as const)
    expect([role, barred([role], 1, 0)]).toEqual([role, ['owner']]);
  for (const role of ['clinician', 'supervisor'] as const)
    expect([role, barred([role], 0, 1)]).toEqual([role, []]);
  for (const role of ['owner', 'learner'] as const)
    expect([role, barred([role], 0, 1)]).toEqual([role, ['clinician,supervisor']]);
  expect(barred(['owner', 'clinician'], 1, 1)).toEqual([]);
  expect(barred(['learner'], 1, 1)).toEqual(['owner', 'clinician,supervisor']);
});

test('a file that adds nothing is barred to nobody', () => {
  expect(barred(['learner'], 0, 0)).toEqual([]);
});
