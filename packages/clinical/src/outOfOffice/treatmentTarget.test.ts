import { expect, test } from 'vitest';
import { targetBeside } from './treatmentTarget.js';

const ADULT = { ageYears: 60, isPregnant: false, isTreated: true, isValid: true };
const at = (systolic: number | null, diastolic: number | null, more: Partial<typeof ADULT> | object = {}) =>
  targetBeside('nice-ng136', { systolic, diastolic }, { ...ADULT, ...more });

// Out-of-office handbook 8.1, row "NICE target", home: < 135/85; at 80 or more < 145/85. From memory there.
test.each([
  [79, '135/85'],
  [80, '145/85'],
  [95, '145/85'],
  [18, '135/85'],
])('at %i years the mean aimed at is under %s', (ageYears, target) => {
  const found = at(130, 80, { ageYears })?.targets ?? [];
  expect(found.map(({ systolic, diastolic }) => `${systolic}/${diastolic}`)).toEqual([target]);
  expect(found[0]).toMatchObject({ comparison: '<', sure: 'memory' });
});

test('both numbers must be under it, on the target is not under it', () => {
  expect([at(134.99, 84.99), at(135, 80), at(130, 85)].map((one) => one?.isMet)).toEqual([
    true,
    false,
    false,
  ]);
  expect([at(144, 84, { ageYears: 80 }), at(145, 84, { ageYears: 80 })].map((one) => one?.isMet)).toEqual([
    true,
    false,
  ]);
});

test('whether it is met is said of treatment alone, and of a mean that can be judged', () => {
  for (const more of [{ isTreated: false }, { isTreated: null }, { isValid: false }, { ageYears: null }]) {
    expect(at(130, 80, more)?.isMet).toBeNull();
  }
  expect(at(130, null)?.isMet).toBeNull();
  // An age that nobody knows: both, each with its ages.
  expect(
    at(130, 80, { ageYears: null })?.targets.map(({ untilYears, fromYears }) => [fromYears, untilYears]),
  ).toEqual([
    [null, 80],
    [80, null],
  ]);
});

test('children, pregnancy and other rule sets have none', () => {
  expect(at(130, 80, { ageYears: 17 })).toBeNull();
  expect(at(130, 80, { isPregnant: true })).toBeNull();
  expect(targetBeside('ish-2020', { systolic: 130, diastolic: 80 }, ADULT)).toBeNull();
  expect(targetBeside(null, { systolic: 130, diastolic: 80 }, ADULT)).toBeNull();
});
