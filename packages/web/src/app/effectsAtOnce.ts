import { options } from 'preact';

/**
 * Effects run as soon as what they belong to is drawn, and not after the next frame as Preact has it: a key pressed at
 * once finds whoever listens for it, and the focus is where it belongs, also in a page whose frames stand still.
 */
export function runEffectsAtOnce(): void {
  options.requestAnimationFrame = (run) => queueMicrotask(run);
}
