import { useEffect, useRef, useSyncExternalStore } from 'react';
import { useApp } from '../app/context.js';
import { isPlainKey } from './cover.js';

/**
 * Whether a page is covered. Escape covers a page that can be; what had the focus gets it back when the cover goes, and
 * whatever runs goes on underneath.
 */
export function useCover(isCoverable: boolean): boolean {
  const { cover } = useApp();
  const isOn = useSyncExternalStore(cover.subscribe, cover.isOn) && isCoverable;
  const had = useRef<Element | null>(null);
  const wasOn = useRef(false);
  // Before the next effect looks at what has the focus.
  useEffect(() => {
    if (!isOn && wasOn.current) {
      const back = had.current?.isConnected === true ? had.current : document.querySelector('h1');
      if (back instanceof HTMLElement) back.focus({ preventScroll: true });
    }
    wasOn.current = isOn;
  }, [isOn]);
  useEffect(() => {
    if (!isCoverable || isOn) return;
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || event.defaultPrevented || !isPlainKey(event)) return;
      event.preventDefault();
      cover.set(true);
    };
    const onFocus = () => {
      // The sheet takes the focus before this is taken off.
      if (!cover.isOn()) had.current = document.activeElement;
    };
    onFocus();
    window.addEventListener('keydown', onKey);
    document.addEventListener('focusin', onFocus);
    return () => {
      window.removeEventListener('keydown', onKey);
      document.removeEventListener('focusin', onFocus);
    };
  }, [isCoverable, isOn, cover]);
  return isOn;
}

/** In the corner of a page that can be covered. */
export function CoverButton() {
  const { cover, words } = useApp();
  return (
    <button type="button" className="cover-button" aria-keyshortcuts="Escape" onClick={() => cover.set(true)}>
      {words.sentence('cover.cover')}
    </button>
  );
}

/** A blank sheet over everything. A touch or any key takes it away, and does nothing else. */
export function CoverSheet() {
  const { cover, words } = useApp();
  const sheet = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    sheet.current?.focus();
    const onKey = (event: KeyboardEvent) => {
      if (!isPlainKey(event)) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      if (!event.repeat) cover.set(false);
    };
    window.addEventListener('keydown', onKey, { capture: true });
    return () => window.removeEventListener('keydown', onKey, { capture: true });
  }, [cover]);
  return (
    <button ref={sheet} type="button" className="cover-sheet" onClick={() => cover.set(false)}>
      {words.sentence('cover.comeBack')}
    </button>
  );
}
