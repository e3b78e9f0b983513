import { useCallback } from 'react';
import { useApp } from '../app/context.js';

/** The cue at the start and the end of a count, as this device's user set it: silent unless they chose a tick. */
export function useCue(): () => void {
  const { cue, store } = useApp();
  return useCallback(() => {
    if (store.get().kept.cue === 'tick') cue.tick();
  }, [cue, store]);
}
