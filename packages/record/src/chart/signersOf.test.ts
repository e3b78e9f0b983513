import { describe, expect, test } from 'vitest';
import type { StoredEntry } from '../entry/entry.js';
import { H1, homeEvidence, seriesContentOf } from '../testing/series.js';
import { frame, idOf, kept, NO_PROTOCOL } from '../testing/work.js';
import { chartSeries } from './chartSeries.js';
import { mayAddTo, signersOf } from './signersOf.js';

const [LEARNER, SUPERVISOR, THIRD] = [idOf(71), idOf(72), idOf(73)];
const isOf = (id: number, agent: string, status: 'preliminary' | 'final', amends: number | null = null) => {
  const content = seriesContentOf(homeEvidence(H1, { status }), NO_PROTOCOL);
  const old = amends === null ? null : { entry: idOf(amends), reason: 'other' as const, text: 'more days' };
  return kept(
    frame('series', content, { id: idOf(id), round: idOf(501), sequence: id, agent, amends: old }),
    id,
  );
};
const agreed = kept(
  frame(
    'countersigned',
    { signing: idOf(1), agrees: true, ownRound: null, note: null },
    { id: idOf(8), round: idOf(501), agent: SUPERVISOR, role: 'supervisor' },
  ),
  8,
);
const learners = isOf(1, LEARNER, 'preliminary');
const may = (entries: StoredEntry[], agent: string | null, isLearner = false) => {
  const [one] = chartSeries(entries, () => null);
  if (one === undefined) throw new Error('no series');
  return mayAddTo(one, agent, isLearner);
};

test('everybody who signed in a story is a signer, whoever was the last; a mark of error signs nothing', () => {
  const story = [learners, isOf(2, SUPERVISOR, 'final', 1), isOf(3, LEARNER, 'preliminary', 2)];
  const mark = kept(frame('entered-in-error', { note: null }, { id: idOf(4), agent: THIRD }));
  expect([...signersOf([...story, mark])]).toEqual([LEARNER, SUPERVISOR]);
});

describe('days are added', () => {
  test("to a learner's series by somebody else once it is countersigned, and not while it waits", () => {
    expect(may([learners], SUPERVISOR)).toBe('waits');
    expect(may([learners, agreed], SUPERVISOR)).toBe('yes');
    expect(may([isOf(1, LEARNER, 'final')], SUPERVISOR)).toBe('yes');
    // Their own, when they learn no more.
    expect(may([learners], LEARNER)).toBe('yes');
    expect(may([learners], null)).toBe('yes');
  });

  test('by a learner to their own alone', () => {
    expect(may([learners], LEARNER, true)).toBe('yes');
    expect(may([learners], THIRD, true)).toBe('others');
    // The server asks whose entry it amends: what somebody else added since is not theirs, and the other way about.
    const added = isOf(2, SUPERVISOR, 'final', 1);
    expect(may([learners, agreed, added], LEARNER, true)).toBe('others');
    expect(may([isOf(1, SUPERVISOR, 'final'), isOf(2, LEARNER, 'preliminary', 1)], LEARNER, true)).toBe(
      'yes',
    );
  });

  test('to nothing that is contested', () => {
    const both = [isOf(2, LEARNER, 'preliminary', 1), isOf(3, LEARNER, 'preliminary', 1)];
    expect(may([learners, ...both], LEARNER, true)).toBe('contested');
  });
});
