import { useEffect, useRef } from 'react';

/** Keys of the room, wherever the focus is but on a control of its own. A key of ours is said on the screen. */
export function useKeys(onKey: (key: string, event: KeyboardEvent) => boolean): void {
  const now = useRef(onKey);
  now.current = onKey;
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
      const { target, key } = event;
      const isOnControl =
        target instanceof Element &&
        target.closest('input, select, textarea, summary, a, button:not(.bulb), [role=button]') !== null;
      // Letters mean the same everywhere; space and enter belong to the control that has the focus.
      if (isOnControl && (key === ' ' || key === 'Enter' || key.startsWith('Arrow'))) {
        if (!(key.startsWith('Arrow') && (target as Element).closest('button') !== null)) return;
      }
      if (target instanceof HTMLInputElement && target.type !== 'radio' && target.type !== 'checkbox') return;
      if (now.current(key, event)) event.preventDefault();
    };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, []);
}
