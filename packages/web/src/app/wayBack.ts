/** What holds the browser's way back; null while nothing does. */
let held: ((event: PopStateEvent) => void) | null = null;

/** Listens for the way back. Called once, before anything is drawn: whoever listens first can keep it from the rest. */
export function listenForWayBack(): void {
  window.addEventListener('popstate', (event) => held?.(event));
}

/** Holds the way back until it is let go of, by what this answers. */
export function holdWayBack(on: (event: PopStateEvent) => void): () => void {
  held = on;
  return () => {
    if (held === on) held = null;
  };
}
