import { identity } from '@evenfall/record';
import { expect, test } from 'vitest';
import { changedParts, readIdentity } from './identityForm.js';

const TODAY = '2026-03-05';
const typed = (name: string, birthDate: string, number: string) =>
  readIdentity({ name, birthDate, number }, TODAY);

test('blanks are null, and what is accepted here the record accepts', () => {
  for (const [given, kept] of [
    [typed(' Ada Lind ', '1948-03-05', ''), { name: 'Ada Lind', birthDate: '1948-03-05', number: null }],
    [typed('Ada Lind', '', ' A-17 '), { name: 'Ada Lind', birthDate: null, number: 'A-17' }],
    [typed('Ada Lind', TODAY, '0'), { name: 'Ada Lind', birthDate: TODAY, number: '0' }],
  ] as const) {
    expect(given.identity).toEqual(kept);
    expect(identity.safeParse(given.identity).success).toBe(true);
  }
});

// Two identifiers: bedside handbook 7.1.
test.each([
  ['', '1948-03-05', '', { name: 'nameMissing' }],
  ['Ada Lind', '', '', { number: 'secondMissing' }],
  ['Ada Lind', '   ', '  ', { number: 'secondMissing' }],
  ['Ada Lind', '2026-03-06', '', { birthDate: 'birthDateWrong' }],
  ['Ada Lind', '2025-02-29', '', { birthDate: 'birthDateWrong' }],
  ['Ada Lind', '5.3.48', '', { birthDate: 'birthDateWrong' }],
  ['x'.repeat(201), '', 'n'.repeat(61), { name: 'nameLong', number: 'numberLong' }],
])('refuses %s, %s, %s', (name, birthDate, number, wrong) => {
  expect(typed(name, birthDate, number)).toEqual({ identity: null, wrong });
});

test('a correction names the parts that changed, and nothing when none did', () => {
  const was = { name: 'Ada Lind', birthDate: '1948-03-05', number: null };
  expect(changedParts(was, was)).toEqual([]);
  expect(changedParts(was, { ...was, birthDate: null, number: 'A-17' })).toEqual(['birthDate', 'number']);
});
