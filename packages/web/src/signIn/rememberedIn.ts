import type { Remembered } from './standing.js';

/** The part of `localStorage` that is needed here. */
type Shelf = {
  readonly getItem: (key: string) => string | null;
  readonly setItem: (key: string, text: string) => void;
};

export const REMEMBERED_KEY = 'evenfall.signedIn';

/** Who was signed in on this device when it was last heard; null where nothing was kept, or nothing that can be read. */
export function rememberedIn(shelf: Shelf | null): Remembered | null {
  try {
    const text = shelf?.getItem(REMEMBERED_KEY) ?? null;
    if (text === null) return null;
    const { needed, current } = JSON.parse(text) as Partial<Remembered>;
    const isWho = typeof current?.account === 'string' && typeof current.agent?.id === 'string';
    if (typeof needed !== 'boolean') return null;
    return { needed, current: isWho && Array.isArray(current.roles) ? current : null };
  } catch {
    return null;
  }
}

export function remember(shelf: Shelf | null, remembered: Remembered): void {
  try {
    shelf?.setItem(REMEMBERED_KEY, JSON.stringify(remembered));
  } catch {
    // A device that keeps nothing asks the server each time.
  }
}
