import { useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { type Gone, holdOwnWay, holdWayBack } from './wayBack.js';

/** A way off the page that was touched and waits for an answer: a link or a button of the app, or the browser's own way back. */
export type WayOff = Gone | 'back';

/** What was touched, as far as it says whether it leads off this page in this window. */
export type Touched = {
  readonly href: string | null;
  readonly target: string;
  readonly isDownload: boolean;
  /** With a key held that opens another window or saves, or by another button of the mouse. */
  readonly isElsewhere: boolean;
};

/** The address within the app that a touched link leads to, if the page is left by it; else null. */
export function leavesBy(
  { href, target, isDownload, isElsewhere }: Touched,
  here: Pick<Location, 'origin' | 'pathname'>,
): string | null {
  if (href === null || isDownload || isElsewhere || (target !== '' && target !== '_self')) return null;
  const url = new URL(href, `${here.origin}${here.pathname}`);
  if (url.origin !== here.origin || url.pathname === here.pathname) return null;
  return `${url.pathname}${url.search}${url.hash}`;
}

/**
 * Asks before the page is left while something on it is not decided: links, buttons that lead elsewhere and the way back wait for an answer, and closing
 * it is asked about by the browser in its own words.
 *
 * @returns the way that waits, and the two answers
 */
export function useLeavingAsked(isUndecided: boolean) {
  const [way, setWay] = useState<WayOff | null>(null);
  const isFree = useRef(false);
  const [, go] = useLocation();
  useEffect(() => {
    if (!isUndecided) return;
    const here = window.location.href;
    const page = window.location.pathname;
    const onClick = (event: MouseEvent) => {
      const link = event.target instanceof Element ? event.target.closest('a') : null;
      const { button, ctrlKey, metaKey, shiftKey, altKey } = event;
      const href = leavesBy(
        {
          href: link?.getAttribute('href') ?? null,
          target: link?.target ?? '',
          isDownload: link?.hasAttribute('download') ?? false,
          isElsewhere: button !== 0 || ctrlKey || metaKey || shiftKey || altKey,
        },
        window.location,
      );
      if (href === null) return;
      event.preventDefault();
      event.stopPropagation();
      setWay({ to: href, options: undefined });
    };
    // The browser has gone back already: this page is put in front again, before anything is drawn anew.
    const onBack = (event: PopStateEvent) => {
      if (isFree.current || window.location.pathname === page) return;
      event.stopImmediatePropagation();
      window.history.pushState(null, '', here);
      setWay('back');
    };
    const letOwnGo = holdOwnWay(({ to, options }) => {
      const touched = { href: to, target: '', isDownload: false, isElsewhere: false };
      if (isFree.current || leavesBy(touched, window.location) === null) return false;
      setWay({ to, options });
      return true;
    });
    const onClose = (event: BeforeUnloadEvent) => event.preventDefault();
    document.addEventListener('click', onClick, true);
    const letGo = holdWayBack(onBack);
    window.addEventListener('beforeunload', onClose);
    return () => {
      document.removeEventListener('click', onClick, true);
      letGo();
      letOwnGo();
      window.removeEventListener('beforeunload', onClose);
    };
  }, [isUndecided]);
  const leave = () => {
    if (way === null) return;
    isFree.current = true;
    setWay(null);
    if (way === 'back') window.history.back();
    else go(way.to, way.options);
  };
  return { way, stay: () => setWay(null), leave };
}
