import type { CountOf, Interruption } from '@evenfall/clinical';
import { useEffect, useRef } from 'react';
import { useApp } from '../app/context.js';
import { interrupted } from './draft.js';
import { isTimed } from './measuring.js';
import type { Round } from './useRound.js';

/** Breaks off what runs on the clock; nothing happens when nothing does. */
export function useInterrupt(round: Round, sign: CountOf) {
  const { clock } = useApp();
  return (reason: Interruption['reason']) =>
    round.keep((draft, start) => interrupted(draft, sign, { reason, nowMs: clock.monotonicMs() }, start));
}

/** A screen that is hidden or left while something runs breaks it off. */
export function useInterruption(round: Round, sign: CountOf): void {
  const interrupt = useInterrupt(round, sign);
  const now = useRef({ interrupt, isRunning: false });
  now.current = { interrupt, isRunning: isTimed(round.draft[sign].measuring) };

  useEffect(() => {
    const breakOff = (reason: Interruption['reason']) => {
      if (now.current.isRunning) now.current.interrupt(reason);
    };
    const onHidden = () => {
      if (document.visibilityState === 'hidden') breakOff('screen-left');
    };
    document.addEventListener('visibilitychange', onHidden);
    return () => {
      document.removeEventListener('visibilitychange', onHidden);
      breakOff('screen-left');
    };
  }, []);
}
