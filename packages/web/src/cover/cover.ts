import type { TabShelf } from '../store/tabShelf.js';

/** Whether this tab is covered. */
export type Cover = {
  readonly isOn: () => boolean;
  readonly set: (isOn: boolean) => void;
  readonly subscribe: (onChange: () => void) => () => void;
};

export const COVER_KEY = 'evenfall.cover';

/** The cover of this tab. It outlives a reload of the page: a phone that reloads a tab by itself uncovers nothing. */
export function createCover(shelf: TabShelf | null): Cover {
  const listeners = new Set<() => void>();
  let isOn = wasOn(shelf);
  return {
    isOn: () => isOn,
    set(next) {
      if (next === isOn) return;
      isOn = next;
      try {
        if (next) shelf?.setItem(COVER_KEY, 'on');
        else shelf?.removeItem(COVER_KEY);
      } catch {
        // A shelf that refuses keeps the cover for as long as the page is there.
      }
      for (const listener of listeners) listener();
    },
    subscribe(onChange) {
      listeners.add(onChange);
      return () => listeners.delete(onChange);
    },
  };
}

function wasOn(shelf: TabShelf | null): boolean {
  try {
    return (shelf?.getItem(COVER_KEY) ?? null) !== null;
  } catch {
    return false;
  }
}

/** Keys that by themselves are no key press: a cover that went with them would go by accident. */
const MODIFIERS: readonly string[] = ['Shift', 'Control', 'Alt', 'AltGraph', 'Meta', 'CapsLock', 'Fn'];

/** Whether a key is meant for the page, and not for the system around it. */
export function isPlainKey({ key, ctrlKey, altKey, metaKey }: KeyOf): boolean {
  return !ctrlKey && !altKey && !metaKey && !MODIFIERS.includes(key);
}

type KeyOf = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'altKey' | 'metaKey'>;
