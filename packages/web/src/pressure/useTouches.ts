import { useEffect, useRef } from 'react';

/** What a clicker or a foot pedal sends for "now". A pedal most often sends a letter. */
export const PEDAL_KEYS: readonly string[] = ['PageDown', 'PageUp', 'b', 'B'];
/** Keys that a control of the page answers itself. */
const CONTROL_KEYS: readonly string[] = [' ', 'Enter'];
const KEYS = [...CONTROL_KEYS, ...PEDAL_KEYS];

/**
 * A moment is marked by a touch anywhere, or by a key of a clicker or a pedal, with the event's own time stamp. What is
 * meant for a control of the page marks nothing.
 */
export function useTouches(onTouch: (atMs: number) => void): void {
  const touch = useRef(onTouch);
  touch.current = onTouch;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!KEYS.includes(event.key) || event.ctrlKey || event.altKey || event.metaKey) return;
      if (CONTROL_KEYS.includes(event.key) && isControl(event.target)) return;
      event.preventDefault();
      if (!event.repeat) touch.current(event.timeStamp);
    };
    const onPointer = (event: PointerEvent) => {
      if (event.button === 0 && !isControl(event.target)) touch.current(event.timeStamp);
    };
    window.addEventListener('keydown', onKey);
    window.addEventListener('pointerdown', onPointer);
    return () => {
      window.removeEventListener('keydown', onKey);
      window.removeEventListener('pointerdown', onPointer);
    };
  }, []);
}

/** Whether an event is on a control other than the place to touch. */
function isControl(target: EventTarget | null): boolean {
  const control = target instanceof Element ? target.closest('button, a, input, select, summary') : null;
  return control !== null && !control.classList.contains('touch-area');
}
