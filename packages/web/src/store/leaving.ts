import type { State } from './store.js';

/** Whether closing the page would lose something: what could not be put on the device's shelf is in this page alone. */
export function wouldLose({ isKeeping, kept }: Pick<State, 'isKeeping' | 'kept'>): boolean {
  return !isKeeping && (kept.waiting.length > 0 || Object.keys(kept.drafts).length > 0);
}

/** Asks before a page is closed that holds what is nowhere else. The browser has its own words for it. */
export function askBeforeLeaving(get: () => State): void {
  window.addEventListener('beforeunload', (event) => {
    if (wouldLose(get())) event.preventDefault();
  });
}
