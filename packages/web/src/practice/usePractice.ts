import { NOTHING_CHOSEN, type Stamp } from '@evenfall/record';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { useApp, useKept } from '../app/context.js';
import { localDate } from '../ports/stampAt.js';
import { withPulseOfRuns } from '../pressure/pulseOfRuns.js';
import { factsOf } from '../round/facts.js';
import type { Round } from '../round/useRound.js';
import { useAnswering } from '../signIn/useAccess.js';
import { atApex, fromApex } from './apexRound.js';
import {
  deviceShelf,
  keepPractice,
  movePractice,
  type PracticeDraft,
  practiceKey,
  readPractice,
} from './keptPractice.js';
import { measuredIn, withValuesFrom } from './valuesFrom.js';

export type Change = (change: (draft: PracticeDraft) => PracticeDraft) => void;

/** The exercise under way on this device, and the ways to change it; each change is kept before it is shown. */
export function usePractice() {
  const agent = useAnswering();
  const shelf = useMemo(deviceShelf, []);
  const [draft, setDraft] = useState<PracticeDraft | null>(() => readPractice(shelf, agent));
  const now = useRef(draft);
  /** Another tab of this device goes on with it: this one writes nothing over that. */
  const [isElsewhere, setElsewhere] = useState(false);
  const isHere = useRef(true);
  useEffect(() => {
    const onStorage = ({ key }: StorageEvent) => {
      if (key !== practiceKey(agent)) return;
      isHere.current = false;
      setElsewhere(true);
    };
    window.addEventListener('storage', onStorage);
    return () => window.removeEventListener('storage', onStorage);
  }, [agent]);
  /** Whose it was: somebody else chosen in the middle, without accounts, goes on with it. */
  const whose = useRef(agent);
  useEffect(() => {
    const before = whose.current;
    whose.current = agent;
    if (before !== agent && now.current !== null && isHere.current)
      movePractice(shelf, before, agent, now.current);
  }, [shelf, agent]);
  const goOnHere = useCallback(() => {
    const found = readPractice(shelf, agent);
    // Written with another turn, so that the tab that had it hears of it and stands still.
    now.current = found === null ? null : { ...found, turn: (found.turn ?? 0) + 1 };
    if (now.current !== null) keepPractice(shelf, agent, now.current);
    isHere.current = true;
    setElsewhere(false);
    setDraft(now.current);
  }, [shelf, agent]);
  const put = useCallback(
    (next: PracticeDraft | null) => {
      isHere.current = true;
      setElsewhere(false);
      now.current = next;
      keepPractice(shelf, agent, next);
      setDraft(next);
    },
    [shelf, agent],
  );
  const change = useCallback<Change>(
    (make) => {
      if (now.current !== null && isHere.current) put(make(now.current));
    },
    [put],
  );
  /** Keeps without drawing anew: what moves all the time is drawn by itself. */
  const keepQuietly = useCallback<Change>(
    (make) => {
      if (now.current === null || !isHere.current) return;
      now.current = make(now.current);
      keepPractice(shelf, agent, now.current);
    },
    [shelf, agent],
  );
  /** It is kept elsewhere: the room forgets it, and no other one, and what is shown of it stays. */
  const forget = useCallback(
    (exercise: string) => {
      if (now.current?.exercise === exercise) now.current = null;
      if (readPractice(shelf, agent)?.exercise === exercise) keepPractice(shelf, agent, null);
    },
    [shelf, agent],
  );
  return { draft, put, change, keepQuietly, forget, isElsewhere, goOnHere };
}

/** The same for the count at the apex, which is one of the pulse to the bedside's screens. */
export function useApexRound(draft: PracticeDraft, change: Change, secondsAt: (ms: number) => number): Round {
  const shown = useMemo(() => atApex(draft), [draft]);
  const changeApex = useCallback<Change>(
    (make) => change((was) => fromApex(was, make(atApex(was)))),
    [change],
  );
  return useRoundOf(shown, changeApex, secondsAt);
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
      change((was) => withValuesFrom({ ...was, round: withPulseOfRuns(make(was.round), inForce) }));
    return {
      draft: draft.round,
      facts,
      inForce,
      change: changeRound,
      measure: (sign, measuring) => change((was) => measuredIn(was, sign, measuring, secondsAt)),
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
