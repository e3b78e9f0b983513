import { useEffect, useRef } from 'react';
import { useApp } from '../app/context.js';
import { useNow } from '../pressure/useNow.js';
import { keptRest, restedSeconds } from './restDraft.js';
import type { Round } from './useRound.js';

/** How often what was rested is kept: a reload loses no more than this. Source: decision. */
const KEEP_MS = 10_000;
const LOOK_MS = 1_000;

/** Seconds rested so far; null where no rest was begun. It is kept now and then, and goes on after a reload. */
export function useRest({ draft, change }: Round): number | null {
  const { clock, session } = useApp();
  const { rest } = draft;
  const isRunning = rest !== null && rest.since !== null;
  const now = useNow(isRunning, LOOK_MS);
  const keep = useRef(() => {});
  keep.current = () => {
    const at = { session, atMs: clock.monotonicMs() };
    change((was) => (was.rest === null ? was : { ...was, rest: keptRest(was.rest, at) }));
  };
  const isOfAnotherVisit = isRunning && rest.since?.session !== session;
  const seconds = rest === null ? null : restedSeconds(rest, now);
  const isOver = isRunning && seconds === rest.neededSeconds;
  useEffect(() => {
    if (isOfAnotherVisit || isOver) keep.current();
  }, [isOfAnotherVisit, isOver]);
  useEffect(() => {
    if (!isRunning) return;
    const onHidden = () => {
      if (document.visibilityState === 'hidden') keep.current();
    };
    const timer = window.setInterval(() => keep.current(), KEEP_MS);
    document.addEventListener('visibilitychange', onHidden);
    return () => {
      window.clearInterval(timer);
      document.removeEventListener('visibilitychange', onHidden);
    };
  }, [isRunning]);
  return seconds;
}
