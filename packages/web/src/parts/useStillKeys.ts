import { type RefObject, useLayoutEffect, useRef } from 'react';

/**
 * Keys that stand still under a thumb: where a line above them comes or goes, the page is scrolled by as much, so that the
 * next touch finds the key where it was. Not after the page got another width, where all of it is laid out anew.
 */
export function useStillKeys(): RefObject<HTMLFieldSetElement | null> {
  const keys = useRef<HTMLFieldSetElement>(null);
  const was = useRef<{ readonly top: number; readonly width: number } | null>(null);
  useLayoutEffect(() => {
    if (keys.current === null) return;
    const top = keys.current.getBoundingClientRect().top + window.scrollY;
    const width = window.innerWidth;
    const moved = was.current?.width === width ? top - was.current.top : 0;
    was.current = { top, width };
    if (moved !== 0) window.scrollBy({ top: moved, behavior: 'instant' });
  });
  return keys;
}
