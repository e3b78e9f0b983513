import { useEffect, useRef } from 'react';
import { deviceShelf } from './keptPractice.js';
import { isKeyWanted, takesLetters } from './keyWanted.js';
import { hasLetterKeys } from './letterKeys.js';

/** Put on the part of the page whose letters they are; it can take the focus, so that a touch anywhere in it gives it. */
export const KEYS_HERE = { 'data-keys': '', tabIndex: -1 } as const;

const CONTROLS = 'input, select, textarea, summary, a, button:not(.bulb), [role=button]';

/** Keys of a room. A key of ours is said on the screen. @param onKey answers whether it did something */
export function useKeys(onKey: (key: string, event: KeyboardEvent) => boolean): void {
  const now = useRef(onKey);
  now.current = onKey;
  useEffect(() => {
    const shelf = deviceShelf();
    const listen = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
      const { target, key } = event;
      const on = target instanceof Element ? target : null;
      const control = on?.closest(CONTROLS) ?? null;
      const place = {
        isInside: on?.closest('[data-keys]') != null,
        control: control === null ? 'none' : control.matches('button') ? 'button' : 'other',
        isWriting:
          on !== null &&
          takesLetters({ tag: on.tagName, type: on.getAttribute('type'), role: on.getAttribute('role') }),
        hasLetters: hasLetterKeys(shelf),
      } as const;
      if (isKeyWanted(key, place) && now.current(key, event)) event.preventDefault();
    };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, []);
}
