import { useEffect, useState } from 'react';
import { useApp } from '../app/context.js';
import type { Instant } from './pressureDraft.js';

/** This instant, told anew a few times a second while something is waited for. */
export function useNow(isTicking: boolean, everyMs = 250): Instant {
  const { clock, session } = useApp();
  const [atMs, setAtMs] = useState(() => clock.monotonicMs());
  useEffect(() => {
    if (!isTicking) return;
    const timer = window.setInterval(() => setAtMs(clock.monotonicMs()), everyMs);
    return () => window.clearInterval(timer);
  }, [isTicking, clock, everyMs]);
  return { session, atMs };
}
