import { useSyncExternalStore } from 'react';

let isPrinting = false;

/** Whether the page is being printed, or shown as it would print: what paper alone shows is made for it alone. */
export function useIsPrinting(): boolean {
  return useSyncExternalStore(subscribe, read);
}

function read(): boolean {
  return isPrinting || window.matchMedia('print').matches;
}

function subscribe(onChange: () => void): () => void {
  const media = window.matchMedia('print');
  const before = () => {
    isPrinting = true;
    onChange();
  };
  const after = () => {
    isPrinting = false;
    onChange();
  };
  window.addEventListener('beforeprint', before);
  window.addEventListener('afterprint', after);
  media.addEventListener('change', onChange);
  return () => {
    window.removeEventListener('beforeprint', before);
    window.removeEventListener('afterprint', after);
    media.removeEventListener('change', onChange);
  };
}
