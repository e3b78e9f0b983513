import type { Identity, StoredEntry } from '@evenfall/record';
import { expect, test } from 'vitest';
import { entriesOf } from './entries.js';
import { factsOf } from './facts.js';
import { complete, SIGNED } from './testing.js';

const identity = { name: 'Ada', birthDate: '2024-03-06', number: null };
const named = (one: Identity | null) => ({ identity: one, classIdentity: null });

test('an empty chart makes it the first set; an age needs a birth date', () => {
  expect(factsOf(named(identity), [], '2026-03-05')).toMatchObject({
    ageMonths: 23,
    isFirstSet: true,
    previousPerMinute: { pulse: null, breaths: null },
    round: { ageMonths: 23, isPregnant: null, isFirstPressure: true },
  });
  expect(
    factsOf(named({ ...identity, birthDate: null, number: '7' }), [], '2026-03-05').ageMonths,
  ).toBeNull();
  expect(factsOf(named(null), [], '2026-03-05').ageMonths).toBeNull();
});

test('in a class an age in years is known as whole years, or not at all', () => {
  const aged = (ageYears: number | null) =>
    factsOf({ identity: null, classIdentity: { pseudonym: 'Heron', ageYears } }, [], '2026-03-05');
  expect(aged(24)).toMatchObject({ ageMonths: 288, round: { ageMonths: 288 } });
  expect(aged(0).ageMonths).toBe(0);
  expect(aged(null).ageMonths).toBeNull();
});

test('the newest values of the chart are the ones before', () => {
  const entries = entriesOf(complete(), SIGNED).map((entry) => ({
    ...entry,
    recordedAt: '2026-03-05T09:06:00Z',
  })) as unknown as StoredEntry[];
  // 19 in 15 s and 16 in 60 s.
  expect(factsOf(named(identity), entries, '2026-03-05')).toMatchObject({
    isFirstSet: false,
    previousPerMinute: { pulse: 76, breaths: 16 },
  });
});
