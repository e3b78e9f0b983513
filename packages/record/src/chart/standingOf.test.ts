import { expect, test } from 'vitest';
import { H1, homeEvidence, seriesContentOf } from '../testing/series.js';
import { frame, idOf, kept, NO_PROTOCOL } from '../testing/work.js';
import { standingByRoles, standingOf } from './standingOf.js';

const ADA = idOf(71);
const signed = (status: 'preliminary' | 'final') =>
  kept(frame('series', seriesContentOf(homeEvidence(H1, { status }), NO_PROTOCOL), { agent: ADA }));
const mark = (more = {}) => kept(frame('entered-in-error', { note: null }, { agent: ADA, ...more }));
const ada = (standing: 'clinician' | 'supervisor' | 'learner' | 'owner' | null) => [
  { id: ADA, name: 'Ada (invented)', standing },
];

// Source of the rule: decision of this project (docs/conventions.md, records).
test('what was signed says itself whether a learner or a clinician signed it', () => {
  expect(standingOf(signed('preliminary'), [])).toBe('learner');
  expect(standingOf(signed('preliminary'), ada('clinician'))).toBe('learner');
  expect(standingOf(signed('final'), [])).toBe('clinician');
  // Signed before the account was a learner's alone.
  expect(standingOf(signed('final'), ada('learner'))).toBe('clinician');
  expect(standingOf(signed('final'), ada('supervisor'))).toBe('supervisor');
});

test('of anything else the account says it; without one nobody knows', () => {
  expect(standingOf(mark(), ada('learner'))).toBe('learner');
  expect(standingOf(mark(), ada('owner'))).toBe('owner');
  expect(standingOf(mark(), ada(null))).toBeNull();
  expect(standingOf(mark(), [])).toBeNull();
});

test('a role that is no observer’s is said as it is, and in a class an observer is one', () => {
  expect(standingOf(mark({ role: 'supervisor' }), ada('clinician'))).toBe('supervisor');
  expect(standingOf(mark({ role: 'importer' }), [])).toBe('importer');
  expect(standingOf(mark({ book: 'class' }), ada('learner'))).toBe('observer');
});

test('of several roles of an account the one at the bedside', () => {
  expect(standingByRoles(['owner', 'supervisor', 'clinician'])).toBe('clinician');
  expect(standingByRoles(['owner', 'learner'])).toBe('learner');
  expect(standingByRoles(['owner'])).toBe('owner');
  expect(standingByRoles([])).toBeNull();
});
