import { useSyncExternalStore } from 'react';

/** Where two columns stand side by side; the styles of a round say the same. */
const WIDE = '(min-width: 64rem)';

/** Whether there is the room of a laptop. */
export function useIsWide(): boolean {
  return useSyncExternalStore(watch, () => window.matchMedia(WIDE).matches);
}

function watch(onChange: () => void): () => void {
  const query = window.matchMedia(WIDE);
  query.addEventListener('change', onChange);
  return () => query.removeEventListener('change', onChange);
}
