import { expect, test } from 'vitest';
import type { RoundDraft } from '../round/draft.js';
import { freshKept, type Kept, type WaitingRound } from './kept.js';
import { mergeKept } from './mergeKept.js';

const waits = (round: string) => ({ round, person: `of ${round}` }) as WaitingRound;
const draft = (round: string) => ({ round }) as RoundDraft;
const kept = (more: Partial<Kept>): Kept => ({ ...freshKept('device'), ...more });

test('rounds that wait in either are kept, each once', () => {
  const both = mergeKept(
    kept({ waiting: [waits('a'), waits('b')] }),
    kept({ waiting: [waits('b'), waits('c')] }),
  );
  expect(both.waiting.map(({ round }) => round)).toEqual(['a', 'b', 'c']);
});

test('what was signed in one is no draft in the other, and of two drafts the one on the page stands', () => {
  const both = mergeKept(
    kept({ drafts: { p: draft('a'), q: draft('x'), r: draft('only there') }, waiting: [waits('c')] }),
    kept({ drafts: { q: draft('y'), s: draft('c') }, waiting: [waits('a')] }),
  );
  expect(both.drafts).toEqual({ q: draft('y'), r: draft('only there') });
});

test('numbers of entries never go back', () => {
  expect(mergeKept(kept({ sequence: 7 }), kept({ sequence: 3 })).sequence).toBe(7);
  expect(mergeKept(kept({ sequence: 3 }), kept({ sequence: 7 })).sequence).toBe(7);
});
