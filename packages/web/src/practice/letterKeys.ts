import type { PracticeShelf } from './keptPractice.js';

const KEY = 'evenfall.practice.letters';

/** Whether keys that are single letters do something on this device. Somebody who dictates turns them off. */
export function hasLetterKeys(shelf: Pick<PracticeShelf, 'getItem'> | null): boolean {
  try {
    return shelf?.getItem(KEY) !== 'off';
  } catch {
    return true;
  }
}

/** Keeps it for this device; where nothing is kept they stay on. */
export function keepLetterKeys(
  shelf: Pick<PracticeShelf, 'setItem' | 'removeItem'> | null,
  isOn: boolean,
): void {
  try {
    if (isOn) shelf?.removeItem(KEY);
    else shelf?.setItem(KEY, 'off');
  } catch {
    // Without a shelf there is nothing to keep.
  }
}
