import { useEffect } from 'react';

/**
 * Keeps the screen awake while something runs on the clock, and takes the lock again when the page comes back. Where a
 * device has none or refuses, the screen may go dark, and a count then is void as for any screen that is left.
 */
export function useWakeLock(isWanted: boolean): void {
  useEffect(() => {
    if (!isWanted || !('wakeLock' in navigator)) return;
    let lock: WakeLockSentinel | null = null;
    let isOver = false;
    const take = () => {
      if (document.visibilityState !== 'visible') return;
      navigator.wakeLock.request('screen').then(
        (taken) => {
          lock = taken;
          if (isOver) void taken.release();
        },
        () => undefined,
      );
    };
    take();
    document.addEventListener('visibilitychange', take);
    return () => {
      isOver = true;
      document.removeEventListener('visibilitychange', take);
      void lock?.release();
    };
  }, [isWanted]);
}
