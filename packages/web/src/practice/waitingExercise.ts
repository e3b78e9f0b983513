import type { EntryFrame } from '@evenfall/record';
import type { WaitingRound } from '../store/kept.js';
import type { Store } from '../store/store.js';
import type { PracticeDraft } from './keptPractice.js';

/** An exercise that is over, as it waits for the server. What hands did is in the entry, and not a second time in the draft. */
export function waitingExercise(draft: PracticeDraft, entry: EntryFrame): WaitingRound {
  return {
    round: draft.exercise,
    person: null,
    entries: [entry],
    draft: null,
    practised: { ...draft, visit: { ...draft.visit, actions: [] } },
    tries: 0,
    refused: null,
  };
}

/** What the practice room had of an exercise that waits, with what hands did; null of anything else. */
export function practisedOf({ practised, entries: [entry] }: WaitingRound): PracticeDraft | null {
  if (practised === undefined) return null;
  const { actions } = (entry?.content ?? {}) as Partial<PracticeDraft['visit']>;
  return { ...practised, visit: { ...practised.visit, actions: actions ?? practised.visit.actions } };
}

type Read = Pick<Store, 'get' | 'subscribe'>;

/** Whether an exercise that was handed over needs the room no longer: it is on the device's shelf among what waits, or sent. */
export function isHandedOver({ isKeeping, kept }: ReturnType<Store['get']>, exercise: string): boolean {
  return isKeeping || !kept.waiting.some(({ round }) => round === exercise);
}

/**
 * Calls once, now or later, when an exercise that was handed over is on the device's shelf, or the server has it. Never where it
 * was refused and a hand took it back or gave it up meanwhile: then it is the room's again.
 */
export function onceHandedOver({ get, subscribe }: Read, exercise: string, then: () => void): void {
  if (isHandedOver(get(), exercise)) {
    then();
    return;
  }
  const waits = () => get().kept.waiting.find(({ round }) => round === exercise);
  let was = waits();
  const stop = subscribe(() => {
    const now = waits();
    if (isHandedOver(get(), exercise)) {
      stop();
      if (now !== undefined || was?.refused === null) then();
    }
    was = now;
  });
}
