import type { AroundNavHandler, NavigateOptions } from 'wouter';

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

/** Where the app itself is led: an address, and how it is gone to. */
export type Gone = { readonly to: string; readonly options: NavigateOptions | undefined };

/** What holds the app's own ways; null while nothing does. True: it is held. */
let heldOwn: ((gone: Gone) => boolean) | null = null;

/** Holds what the app's own buttons lead to, until it is let go of by what this answers. */
export function holdOwnWay(on: (gone: Gone) => boolean): () => void {
  heldOwn = on;
  return () => {
    if (heldOwn === on) heldOwn = null;
  };
}

/** Goes where the app is led, unless somebody holds it. */
export const goUnlessHeld: AroundNavHandler = (navigate, to, options) => {
  if (heldOwn?.({ to, options }) !== true) navigate(to, options);
};
