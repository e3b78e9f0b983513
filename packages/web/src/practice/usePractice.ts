import { NOTHING_CHOSEN, type Stamp } from '@evenfall/record';
import { useCallback, useMemo, useRef, useState } from 'react';
import { useApp, useKept } from '../app/context.js';
import { localDate } from '../ports/stampAt.js';
import { withPulseOfRuns } from '../pressure/pulseOfRuns.js';
import { withMeasuring } from '../round/draft.js';
import { factsOf } from '../round/facts.js';
import type { Round } from '../round/useRound.js';
import { useAnswering } from '../signIn/useAccess.js';
import { deviceShelf, keepPractice, type PracticeDraft, readPractice } from './keptPractice.js';

export type Change = (change: (draft: PracticeDraft) => PracticeDraft) => void;

/** The exercise under way on this device, and the ways to change it; each change is kept before it is shown. */
export function usePractice() {
  const agent = useAnswering();
  const shelf = useMemo(deviceShelf, []);
  const [draft, setDraft] = useState<PracticeDraft | null>(() => readPractice(shelf, agent));
  const now = useRef(draft);
  const put = useCallback(
    (next: PracticeDraft | null) => {
      now.current = next;
      keepPractice(shelf, agent, next);
      setDraft(next);
    },
    [shelf, agent],
  );
  const change = useCallback<Change>(
    (make) => {
      if (now.current !== null) put(make(now.current));
    },
    [put],
  );
  /** Keeps without drawing anew: what moves all the time is drawn by itself. */
  const keepQuietly = useCallback<Change>(
    (make) => {
      if (now.current === null) return;
      now.current = make(now.current);
      keepPractice(shelf, agent, now.current);
    },
    [shelf, agent],
  );
  /** It is kept elsewhere: this device forgets it, and what is shown of it stays. */
  const forget = useCallback(() => {
    now.current = null;
    keepPractice(shelf, agent, null);
  }, [shelf, agent]);
  return { draft, put, change, keepQuietly, forget };
}

/** The exercise as the bedside's own screens take a round: what they change is changed in it. */
export function useRoundOf(draft: PracticeDraft, change: Change, secondsAt: (ms: number) => number): Round {
  const { store, ids } = useApp();
  const inForce = useKept(({ known }) => known.inForce.value) ?? NOTHING_CHOSEN;
  const { scenario } = draft.visit;
  const facts = useMemo(
    () => ({
      ...factsOf({ identity: null, classIdentity: null }, [], dateOf(draft.begunAt)),
      ageMonths: 12 * scenario.ageYears,
    }),
    [draft.begunAt, scenario],
  );
  return useMemo((): Round => {
    const changeRound: Round['change'] = (make) =>
      change((was) => ({ ...was, round: withPulseOfRuns(make(was.round), inForce) }));
    return {
      draft: draft.round,
      facts,
      inForce,
      change: changeRound,
      measure: (sign, measuring) =>
        change((was) => ({
          ...was,
          round: withMeasuring(was.round, sign, measuring),
          countedFrom:
            measuring.at === 'running'
              ? { ...was.countedFrom, [sign]: secondsAt(measuring.startedAtMs) }
              : was.countedFrom,
        })),
      keep: (make) => {
        const start = { entry: ids(), sequence: store.get().kept.sequence };
        changeRound((round) => make(round, start));
        store.change((state) => ({
          ...state,
          kept: { ...state.kept, sequence: state.kept.sequence + 1 },
        }));
      },
    };
  }, [draft.round, facts, inForce, change, ids, store, secondsAt]);
}

function dateOf(stamp: Stamp): string {
  return localDate(stamp);
}
