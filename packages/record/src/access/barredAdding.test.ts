import { expect, test } from 'vitest';
import type { StoredEntry } from '../entry/entry.js';
import { H1, homeEvidence, seriesContentOf } from '../testing/series.js';
import { frame, idOf, kept, NO_PROTOCOL } from '../testing/work.js';
import { barredAdding } from './barredAdding.js';

// Source of the rule: decision of this project (docs/conventions.md, records).
const [LEARNER, SUPERVISOR] = [idOf(71), idOf(72)];
const signed = (id: number, agent: string, status: 'preliminary' | 'final', amends: number | null = null) => {
  const content = seriesContentOf(homeEvidence(H1, { status }), NO_PROTOCOL);
  const old = amends === null ? null : { entry: idOf(amends), reason: 'other' as const, text: 'more days' };
  const frame_ = frame('series', content, {
    id: idOf(id),
    round: idOf(501),
    sequence: id,
    agent,
    amends: old,
  });
  return kept(frame_, id);
};
const countersigned = (agrees: boolean) =>
  kept(
    frame(
      'countersigned',
      { signing: idOf(1), agrees, ownRound: null, note: agrees ? null : 'look again' },
      { id: idOf(8), round: idOf(501), agent: SUPERVISOR, role: 'supervisor' },
    ),
    8,
  );
const barred = (entry: StoredEntry, ...record: StoredEntry[]) =>
  barredAdding(entry, record).map(({ field, code, expected }) => `${field} ${code} ${expected}`);
const WAITS = ['/amends/entry contradicts series-countersigned'];
const OTHERS = ['/amends/entry contradicts own-entry-of-learner'];

test('somebody else adds to a learner’s series once a supervisor agreed to it, and no sooner', () => {
  const learners = signed(1, LEARNER, 'preliminary');
  const added = signed(2, SUPERVISOR, 'final', 1);
  expect(barred(added, learners)).toEqual(WAITS);
  expect(barred(added, learners, countersigned(false))).toEqual(WAITS);
  expect(barred(added, learners, countersigned(true))).toEqual([]);
});

test('nor by saying that what they add is preliminary: who signed it counts, not what it says', () => {
  const learners = signed(1, LEARNER, 'preliminary');
  const added = signed(2, SUPERVISOR, 'preliminary', 1);
  expect(barred(added, learners)).toEqual(WAITS);
  expect(barred(added, learners, countersigned(false))).toEqual(WAITS);
  // As a learner nobody adds to what somebody else signed last, agreed to or not.
  expect(barred(added, learners, countersigned(true))).toEqual(OTHERS);
  // A learner goes on with what they signed last, whoever began it.
  const begun = signed(1, SUPERVISOR, 'final');
  expect(barred(signed(3, LEARNER, 'preliminary', 2), begun, signed(2, LEARNER, 'preliminary', 1))).toEqual(
    [],
  );
});

test('whoever signed it adds to it, as a learner or no longer one; and nothing waits of a series that never was a learner’s', () => {
  expect(barred(signed(2, LEARNER, 'preliminary', 1), signed(1, LEARNER, 'preliminary'))).toEqual([]);
  expect(barred(signed(2, LEARNER, 'final', 1), signed(1, LEARNER, 'preliminary'))).toEqual([]);
  expect(barred(signed(2, SUPERVISOR, 'final', 1), signed(1, LEARNER, 'final'))).toEqual([]);
});

test('a learner adds nothing to a final series that somebody else signed last', () => {
  const final = signed(1, SUPERVISOR, 'final');
  expect(barred(signed(2, LEARNER, 'preliminary', 1), final)).toEqual(OTHERS);
  expect(barred(signed(2, SUPERVISOR, 'final', 1), final)).toEqual([]);
  expect(barred(signed(2, SUPERVISOR, 'preliminary', 1), final)).toEqual([]);
});

test('a new series, an amendment of one that is not here and a mark of error add to nothing that waits', () => {
  const learners = signed(1, LEARNER, 'preliminary');
  expect(barred(signed(2, SUPERVISOR, 'final'), learners)).toEqual([]);
  expect(barred(signed(2, SUPERVISOR, 'final', 9), learners)).toEqual([]);
  const amends = { entry: idOf(1), reason: 'wrong-person' as const, text: null };
  const mark = frame('entered-in-error', { note: null }, { id: idOf(4), agent: SUPERVISOR, amends });
  expect(barred(kept(mark, 9), learners)).toEqual([]);
});
