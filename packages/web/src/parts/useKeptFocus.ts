import { type RefObject, useEffect } from 'react';

/** What may take the focus in place of something that is gone: a part of the page that says what it is about. */
const PARTS = 'section, fieldset, form, article, li, [role="group"], main';

/**
 * Keeps the focus in its place when what had it is taken off the page (a button that opened a form, an answer that ends
 * its question): it goes to the nearest part that is still there, so that a voice and a keyboard go on from here.
 */
export function useKeptFocus(page: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const whole = page.current;
    if (whole === null) return;
    let last: Element | null = null;
    let around: readonly HTMLElement[] = [];
    const onFocus = ({ target }: FocusEvent) => {
      if (!(target instanceof Element)) return;
      last = target;
      around = partsAround(target);
    };
    const look = () => {
      if (last === null || last.isConnected || document.activeElement !== document.body) return;
      last = null;
      const part = around.find((one) => one.isConnected);
      if (part === undefined) return;
      if (!part.hasAttribute('tabindex')) part.tabIndex = -1;
      part.focus({ preventScroll: true });
    };
    // What replaces it may take the focus itself, in an effect of its own: that comes first.
    const watch = new MutationObserver(() => queueMicrotask(look));
    whole.addEventListener('focusin', onFocus);
    watch.observe(whole, { childList: true, subtree: true });
    return () => {
      whole.removeEventListener('focusin', onFocus);
      watch.disconnect();
    };
  }, [page]);
}

/** The parts of the page around something, from the nearest outwards. */
function partsAround(element: Element): HTMLElement[] {
  const parts: HTMLElement[] = [];
  for (let at = element.parentElement; at !== null; at = at.parentElement)
    if (at.matches(PARTS)) parts.push(at);
  return parts;
}
