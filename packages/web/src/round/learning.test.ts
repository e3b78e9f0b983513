import { expect, test } from 'vitest';
import { freshKept } from '../store/kept.js';
import { NOTHING_KNOWN } from '../store/known.js';
import { isKnownLearner, withLearner } from './learning.js';
import { AGENT, ID } from './testing.js';

const kept = freshKept(ID(1));
const knowing = (isLearning: boolean) => ({
  kept,
  known: {
    ...NOTHING_KNOWN,
    agents: { is: 'here' as const, value: [{ id: AGENT, name: 'Kit', isLearning }] },
  },
});

test('whom the place knows as a learner begins as one, on a device that never heard it', () => {
  expect(isKnownLearner(AGENT, knowing(true))).toBe(true);
  expect(isKnownLearner(AGENT, knowing(false))).toBe(false);
  expect(isKnownLearner(ID(7), knowing(true))).toBe(false);
  expect(isKnownLearner(null, knowing(true))).toBe(false);
});

test('what somebody said on this device holds there while the place is not heard', () => {
  const said = withLearner(kept, AGENT, true);
  expect(isKnownLearner(AGENT, { kept: said, known: NOTHING_KNOWN })).toBe(true);
  expect(isKnownLearner(AGENT, { kept: withLearner(said, AGENT, false), known: NOTHING_KNOWN })).toBe(false);
  expect(withLearner(said, AGENT, true).learners).toEqual([AGENT]);
});
