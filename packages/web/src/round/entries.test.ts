import { ROUND_RULE } from '@evenfall/clinical';
import { KINDS, readEntry } from '@evenfall/record';
import { expect, test } from 'vitest';
import { withPlace } from '../pressure/pressureSteps.js';
import { readTypedSet } from '../quick/typedSet.js';
import { withTypedSet } from '../quick/withTypedSet.js';
import { type RoundDraft, withNotDone, withNoticed, withValue } from './draft.js';
import {
  CLOSED_SCHEMA,
  COUNT_SCHEMA,
  entriesOf,
  ROUND_SCHEMA,
  RUN_SCHEMA,
  SIGN_SCHEMA,
  type Signing,
  WRITTEN_SCHEMA,
} from './entries.js';
import { circumstancesOf } from './facts.js';
import { AT, complete, counted, ID, NO_PROTOCOL, NOTHING_BEFORE, PERSON, SIGNED } from './testing.js';

const signing: Signing = SIGNED;

test('every entry of a signed round is one that the record accepts', () => {
  const declined = withNotDone(complete(), 'breaths', { reason: 'declined', text: 'too tired' });
  for (const draft of [complete(), declined, { ...complete(), isPreliminary: true }]) {
    for (const entry of entriesOf(draft, signing)) expect(readEntry(entry)).toMatchObject({ ok: true });
  }
});

test('the signing comes last and names its values', () => {
  const entries = entriesOf(complete(), signing);
  expect(entries.map(({ id, kind, sequence }) => [id, kind, sequence])).toEqual([
    [ID(20), 'count', 20],
    [ID(21), 'count', 21],
    [ID(11), 'round', 40],
  ]);
  expect(entries.every(({ person, round }) => person === PERSON && round === ID(10))).toBe(true);
  expect(entries.at(-1)?.content).toMatchObject({
    status: 'final',
    signs: [
      { sign: 'pulse', entries: [ID(20)] },
      { sign: 'breaths', entries: [ID(21)] },
    ],
    protocolVersion: null,
    note: null,
    evidence: { exceptions: null, features: null, unwell: null, facts: { isFirstPressure: true } },
    computedBy: { program: 'evenfall test', rule: ROUND_RULE },
  });
});

test('a blank is not charted: a sign without a value carries its reason', () => {
  const draft = withNotDone(complete(), 'breaths', { reason: 'asleep', text: null });
  const content = entriesOf(draft, signing).at(-1)?.content;
  expect(content?.signs).toEqual([
    { sign: 'pulse', entries: [ID(20)] },
    { sign: 'breaths', notDone: { reason: 'asleep', text: null } },
  ]);
});

test('signing the same round again makes the same entries', () => {
  expect(entriesOf(complete(), signing)).toEqual(entriesOf(complete(), signing));
});

test('a value is charted with what was noticed and what the chart knew', () => {
  const draft = withNoticed(complete(), 'pulse', ID(20), { rhythmFelt: 'irregular' });
  const facts = {
    ...NOTHING_BEFORE,
    ageMonths: 900,
    isFirstSet: true,
    previousPerMinute: { pulse: 90, breaths: null },
  };
  const [pulse] = entriesOf(draft, { ...signing, facts });
  expect(pulse?.content).toMatchObject({
    evidence: {
      count: { n: 19, windowSeconds: 15 },
      circumstances: {
        rhythmFelt: 'irregular',
        strength: null,
        ageMonths: 900,
        firstOnPerson: true,
        previousPerMinute: 90,
      },
    },
    computedBy: { program: 'evenfall test', preset: null },
  });
});

test('within a round, the value before is the earlier one of the round', () => {
  const draft = withValue(complete(), 'pulse', counted(22, 'pulse', 74, 60));
  const second = draft.pulse.values[1];
  if (second === undefined) throw new Error('no second value');
  const known = circumstancesOf(draft, 'pulse', second, NOTHING_BEFORE, NO_PROTOCOL);
  // 19 in 15 s is 76 a minute (docs/conventions.md section 5: 60 n / W).
  expect(known.previousPerMinute).toBe(76);
});

test('the page writes the newest schema of every kind that it writes', () => {
  expect(KINDS.count.newest).toBe(COUNT_SCHEMA);
  for (const kind of ['taps', 'equipment', 'equipment-ended', 'gauge-logged'] as const)
    expect(KINDS[kind].newest).toBe(WRITTEN_SCHEMA);
  expect(KINDS['act-now-closed'].newest).toBe(CLOSED_SCHEMA);
  expect(KINDS.sign.newest).toBe(SIGN_SCHEMA);
  expect(KINDS.run.newest).toBe(RUN_SCHEMA);
  expect(KINDS.round.newest).toBe(ROUND_SCHEMA);
  for (const kind of ['identity-corrected', 'identity-erased', 'entered-in-error'] as const)
    expect(KINDS[kind].newest).toBe(WRITTEN_SCHEMA);
});

test('a signing says whether the cuff went on in the round: what was typed was read before', () => {
  const contentOf = (draft: RoundDraft) => entriesOf(draft, signing).at(-1)?.content;
  const arm = { site: 'upper-arm', side: 'left', posture: 'sit' } as const;
  const place = { ...arm, cuff: null, armCm: null, override: null };
  expect(contentOf(complete())).toMatchObject({ isCuffAsked: false });
  const { set } = readTypedSet(
    '146/92',
    { method: 'auscultation', counted: { windowSeconds: 30, clock: 'any', first: 1 } },
    NO_PROTOCOL,
  );
  if (set === null) throw new Error('no set');
  const start = { ...{ run: ID(30), pulse: ID(31), sequence: 30 }, measuredAt: AT(3) };
  const keptAt = { session: 's', atMs: 0 };
  const typed = withTypedSet(complete(), set, place, null, { ...start, keptAt });
  expect(contentOf(typed)).toMatchObject({ isCuffAsked: false });
  expect(contentOf(withPlace(complete(), place, false))).toMatchObject({ isCuffAsked: true });
});

test('every entry of a round of a class says so, and names its session', () => {
  const entries = entriesOf({ ...complete(), book: 'class', session: ID(70) }, signing);
  expect(entries).toHaveLength(3);
  for (const entry of entries) {
    expect(entry).toMatchObject({ book: 'class', session: ID(70) });
    expect(readEntry(entry)).toMatchObject({ ok: true });
  }
  for (const entry of entriesOf(complete(), signing))
    expect(entry).toMatchObject({ book: 'care', session: null });
});
