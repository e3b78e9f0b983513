import { DEFAULT_COUNT_RULES } from '@evenfall/clinical';
import { readEntry, type StoredEntry } from '@evenfall/record';
import { expect, test } from 'vitest';
import { stampOfLocal } from '../ports/stampAt.js';
import { entriesOf } from '../round/entries.js';
import { AGENT, AT, complete, DEVICE, ID, NO_PROTOCOL, NOTHING_BEFORE } from '../round/testing.js';
import { type AmendFields, amendedContent, canCorrectCount, readAmendment } from './amendForm.js';

const frames = entriesOf(complete(), {
  book: 'care',
  agent: AGENT,
  role: 'observer',
  device: DEVICE,
  signedAt: AT(5),
  sequence: 40,
  facts: NOTHING_BEFORE,
  inForce: NO_PROTOCOL,
  program: 'evenfall test',
});
/** 19 beats in 15 s, as kept. */
const pulse = { ...frames[0], recordedAt: '2026-03-05T09:06:00Z' } as unknown as StoredEntry;

const BLANK: AmendFields = { what: '', n: '', perMinute: '', time: '', byHandWhy: '', reason: '', text: '' };
const CLOCK = { now: AT(9), stampOf: (typed: string) => stampOfLocal(typed, 'Europe/Lisbon', () => 0) };
const amend = (fields: Partial<AmendFields>) =>
  readAmendment(pulse, { ...BLANK, ...fields }, DEFAULT_COUNT_RULES, CLOCK);
const under = { inForce: NO_PROTOCOL, program: 'evenfall test' };

test('a mistyped count is put right and its value made anew from it', () => {
  const { amendment } = amend({ what: 'count', n: '18', reason: 'typing-slip' });
  if (amendment === null) throw new Error('refused');
  const { kind, content } = amendedContent(pulse, amendment, under);
  expect(kind).toBe('count');
  // 60 n / W: 18 in 15 s is 72 a minute (docs/conventions.md section 5).
  expect(content).toMatchObject({
    evidence: { count: { n: 18, windowSeconds: 15 } },
    value: { perMinute: 72 },
    override: null,
  });
});

test('a rate set by hand stands beside the evidence, which stays', () => {
  const { amendment } = amend({
    what: 'by-hand',
    perMinute: '80',
    byHandWhy: 'counted by a second observer',
    reason: 'equipment-fault',
  });
  if (amendment === null) throw new Error('refused');
  expect(amendedContent(pulse, amendment, under).content).toMatchObject({
    evidence: { count: { n: 19 } },
    value: { perMinute: 76 },
    override: { perMinute: 80, reason: 'counted by a second observer' },
  });
});

test('every amendment is an entry that the record accepts', () => {
  for (const fields of [
    { what: 'count', n: '18', reason: 'typing-slip' },
    { what: 'by-hand', perMinute: '80', byHandWhy: 'second observer', reason: 'other', text: 'recounted' },
    { what: 'in-error', reason: 'wrong-person' },
  ]) {
    const { amendment } = amend(fields);
    if (amendment === null) throw new Error('refused');
    const { recordedAt: _kept, ...frame } = pulse as StoredEntry & Record<string, unknown>;
    const entry = {
      ...frame,
      id: ID(60),
      amends: amendment.amends,
      ...amendedContent(pulse, amendment, under),
    };
    expect(readEntry(entry)).toMatchObject({ ok: true });
  }
});

test('what was marked as an error by mistake can stand again as it was, also with its rate by hand', () => {
  const override = { perMinute: 80, reason: 'counted by a second observer' };
  const byHand = { ...pulse, content: { ...pulse.content, override } } as StoredEntry;
  for (const fields of [{ what: 'as-was' }, { what: 'time', time: '2026-03-04T08:15' }]) {
    const { amendment } = amend({ ...fields, reason: 'wrong-person' });
    if (amendment === null) throw new Error('refused');
    expect(amendedContent(byHand, amendment, under)).toMatchObject({ kind: 'count', content: { override } });
  }
});

test.each([
  [{}, { what: 'whatMissing', reason: 'reasonMissing' }],
  [{ what: 'count', reason: 'typing-slip' }, { n: 'numberMissing' }],
  [{ what: 'in-error', reason: 'other', text: '  ' }, { text: 'textMissing' }],
  [
    { what: 'by-hand', reason: 'duplicate' },
    { perMinute: 'rateMissing', byHandWhy: 'byHandWhyMissing' },
  ],
  [{ what: 'by-hand', reason: 'duplicate', perMinute: '0', byHandWhy: 'x' }, { perMinute: 'rateMissing' }],
  [{ what: 'by-hand', reason: 'duplicate', perMinute: '72,5', byHandWhy: 'x' }, { perMinute: 'rateMissing' }],
])('refuses %j', (fields, wrong) => {
  expect(amend(fields)).toEqual({ amendment: null, wrong });
});

test('a count that clinical refuses is refused here in its words', () => {
  const { amendment, wrong } = amend({ what: 'count', n: '101', reason: 'typing-slip' });
  // Over 400 a minute (docs/conventions.md section 5): 101 in 15 s is 404.
  expect(amendment).toBeNull();
  expect(wrong.n).toMatchObject([{ field: '/n', code: 'impossible' }]);
});

test('what was broken off can neither be put right nor given a rate by hand', () => {
  expect(canCorrectCount(pulse)).toBe(true);
  const count = {
    ...(pulse.content as { evidence: { count: object } }).evidence.count,
    interrupted: { atSeconds: 2, reason: 'other' },
  };
  const { n: _none, ...broken } = count as Record<string, unknown>;
  const voided = {
    ...pulse,
    content: { ...pulse.content, evidence: { count: broken } },
  } as unknown as StoredEntry;
  expect(canCorrectCount(voided)).toBe(false);
  const byHand = { ...BLANK, what: 'by-hand', perMinute: '70', byHandWhy: 'x', reason: 'duplicate' };
  expect(readAmendment(voided, byHand, DEFAULT_COUNT_RULES, CLOCK).wrong).toEqual({ what: 'whatMissing' });
});

test('another time of measuring moves the value and leaves its evidence; a time to come is refused', () => {
  const { amendment } = amend({ what: 'time', time: '2026-03-04T08:15', reason: 'wrong-time' });
  expect(amendment?.change).toMatchObject({
    what: 'time',
    measuredAt: { at: '2026-03-04T08:15:00.000+00:00', asEntered: '2026-03-04T08:15' },
  });
  if (amendment === null) throw new Error('refused');
  expect(amendedContent(pulse, amendment, under).content).toMatchObject({
    value: { perMinute: 76 },
    override: null,
  });
  for (const time of ['2126-03-04T08:15', '', 'yesterday']) {
    expect(amend({ what: 'time', time, reason: 'wrong-time' }).wrong).toEqual({ time: 'timeMissing' });
  }
});
