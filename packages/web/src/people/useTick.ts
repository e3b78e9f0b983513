import { useEffect, useState } from 'react';

/** Draws the screen again every so many ms, so that what it says of the time is true. */
export function useTick(everyMs: number): void {
  const [, setTick] = useState(0);
  useEffect(() => {
    const timer = window.setInterval(() => setTick((tick) => tick + 1), everyMs);
    return () => window.clearInterval(timer);
  }, [everyMs]);
}
