import { expect, test } from 'vitest';
import type { RoundDraft } from '../round/draft.js';
import { freshKept, type WaitingRound } from './kept.js';
import { wouldLose } from './leaving.js';

test('leaving is asked about only where something is in the page alone', () => {
  const nothing = freshKept('device');
  const draft = { ...nothing, drafts: { p: {} as RoundDraft } };
  const waiting = { ...nothing, waiting: [{} as WaitingRound] };
  for (const kept of [draft, waiting]) {
    expect(wouldLose({ isKeeping: false, kept })).toBe(true);
    expect(wouldLose({ isKeeping: true, kept })).toBe(false);
  }
  expect(wouldLose({ isKeeping: false, kept: nothing })).toBe(false);
});
