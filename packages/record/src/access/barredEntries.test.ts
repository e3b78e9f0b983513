import { expect, test } from 'vitest';
import { KIND_NAMES } from '../content/kinds.js';
import { ROLES } from '../entry/role.js';
import type { AccountRole } from './accountRole.js';
import { barredAmending, barredEntry } from './barredEntries.js';

// Source of the rules: decision of this project (docs/conventions.md, accounts).
const ME = '01950000-0000-7000-8000-00000000000a';
const OTHER = '01950000-0000-7000-8000-00000000000b';
const nobodyElse = () => false;
const entry = (more: object = {}) =>
  ({ kind: 'count', book: 'care', agent: ME, role: 'observer', content: {}, ...more }) as Parameters<
    typeof barredEntry
  >[0];
const barred = (roles: readonly AccountRole[], more: object = {}, hasAccount = nobodyElse) =>
  barredEntry(entry(more), { agent: ME, roles }, hasAccount).map(({ field }) => field);

test('a sign is kept in one’s own name only', () => {
  expect(barred(['clinician'])).toEqual([]);
  expect(barred(['clinician'], { agent: OTHER })).toEqual(['/agent']);
  expect(barred(['supervisor', 'owner'], { agent: OTHER })).toEqual(['/agent']);
});

test('in a class a shared device may name whoever has no account, and nobody who has one', () => {
  expect(barred(['supervisor'], { agent: OTHER, book: 'class' })).toEqual([]);
  expect(barred(['supervisor'], { agent: OTHER, book: 'class' }, () => true)).toEqual(['/agent']);
});

test('in a class too whoever begins, ends, keeps or supervises does so in their own name', () => {
  const others = { agent: OTHER, book: 'class' };
  for (const kind of ['class-session', 'class-session-ended', 'kept-by-agreement', 'countersigned'])
    expect([kind, barred(['supervisor'], { ...others, kind })]).toEqual([kind, ['/agent']]);
  for (const role of ['supervisor', 'teacher', 'assessor'])
    expect([role, barred(['supervisor'], { ...others, role })]).toEqual([role, ['/agent']]);
  expect(barred(['supervisor'], { book: 'class', kind: 'class-session', role: 'teacher' })).toEqual([]);
});

test('a learner’s round of a patient stays preliminary; that of a clinician need not', () => {
  const final = { kind: 'round', content: { status: 'final' } };
  const preliminary = { kind: 'round', content: { status: 'preliminary' } };
  expect(barred(['learner'], final)).toEqual(['/content/status']);
  expect(barred(['learner', 'owner'], final)).toEqual(['/content/status']);
  expect(barred(['learner'], preliminary)).toEqual([]);
  expect(barred(['clinician'], final)).toEqual([]);
  expect(barred(['learner', 'clinician'], final)).toEqual([]);
  expect(barred(['learner'], { ...final, book: 'class' })).toEqual([]);
  const series = (status: string) => ({ kind: 'series', content: { status } });
  expect(barred(['learner'], series('final'))).toEqual(['/content/status']);
  expect(barred(['learner'], series('preliminary'))).toEqual([]);
  expect(barred(['clinician'], series('final'))).toEqual([]);
  // Schema 1 says nothing of it.
  expect(barred(['learner'], { kind: 'series', content: {} })).toEqual(['/content/status']);
  expect(barred(['learner'], { kind: 'series-decided', content: {} })).toEqual(['/kind']);
});

test('a learner corrects of a patient what they charted themselves, and nothing of anybody else', () => {
  const amends = { entry: 'kept', reason: 'typing-slip', text: null } as const;
  const by = (agent: string | undefined, roles: readonly AccountRole[], book: 'care' | 'class' = 'care') =>
    barredAmending({ book, amends }, { agent: ME, roles }, () => agent).map(({ field }) => field);
  expect(by(OTHER, ['learner'])).toEqual(['/amends/entry']);
  expect(by(OTHER, ['learner', 'owner'])).toEqual(['/amends/entry']);
  expect(by(ME, ['learner'])).toEqual([]);
  expect(by(undefined, ['learner'])).toEqual([]);
  expect(by(OTHER, ['learner'], 'class')).toEqual([]);
  for (const role of ['clinician', 'supervisor'] as const) expect(by(OTHER, [role, 'learner'])).toEqual([]);
  expect(
    barredAmending({ book: 'care', amends: null }, { agent: ME, roles: ['learner'] }, () => OTHER),
  ).toEqual([]);
});

test('an owner alone takes no signs, and a clinician alone is no supervisor', () => {
  expect(barred(['owner'])).toEqual(['/kind']);
  expect(barred(['owner'], { kind: 'identity-erased' })).toEqual([]);
  expect(barred(['clinician'], { kind: 'identity-erased' })).toEqual(['/kind']);
  expect(barred(['clinician'], { kind: 'countersigned', role: 'supervisor' })).toEqual(['/kind']);
  expect(barred(['supervisor'], { kind: 'countersigned', role: 'supervisor' })).toEqual([]);
  expect(barred(['clinician'], { role: 'supervisor' })).toEqual(['/role']);
  expect(barred(['clinician'], { kind: 'protocol-chosen' })).toEqual(['/kind']);
  for (const role of ['owner', 'supervisor'] as const)
    expect(barred([role], { kind: 'protocol-chosen' })).toEqual([]);
});

test('a gauge is looked after by an owner too, and by no learner; what other systems say is brought in by neither', () => {
  for (const kind of ['equipment', 'equipment-ended', 'gauge-logged']) {
    expect(barred(['owner'], { kind })).toEqual([]);
    expect(barred(['clinician'], { kind })).toEqual([]);
    expect(barred(['learner'], { kind })).toEqual(['/kind']);
  }
  expect(barred(['clinician'], { kind: 'reported', role: 'importer' })).toEqual([]);
  for (const role of ['owner', 'learner'] as const)
    expect(barred([role], { kind: 'reported' })).toEqual(['/kind']);
});

test('whoever holds every role may keep every kind in every role, in their own name', () => {
  for (const kind of KIND_NAMES)
    for (const role of ROLES)
      expect(barred(['owner', 'clinician', 'supervisor', 'learner'], { kind, role })).toEqual([]);
});
