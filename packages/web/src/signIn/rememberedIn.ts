import type { Remembered } from './standing.js';

/** The part of `localStorage` that is needed here. */
type Shelf = {
  readonly getItem: (key: string) => string | null;
  readonly setItem: (key: string, text: string) => void;
};

export const REMEMBERED_KEY = 'evenfall.signedIn';

/**
 * Who was signed in on this device when it was last heard, and nobody where that is too long ago; null where nothing was
 * kept, or nothing that can be read.
 */
export function rememberedIn(shelf: Shelf | null, nowMs: number): Remembered | null {
  try {
    const text = shelf?.getItem(REMEMBERED_KEY) ?? null;
    if (text === null) return null;
    const {
      needed,
      current,
      isUntold,
      untilMs = 0,
    } = JSON.parse(text) as Partial<Remembered & { untilMs: number }>;
    const isWho = typeof current?.account === 'string' && typeof current.agent?.id === 'string';
    if (typeof needed !== 'boolean') return null;
    return {
      needed,
      current: isWho && Array.isArray(current.roles) && nowMs < untilMs ? current : null,
      ...(isUntold === true ? { isUntold } : {}),
    };
  } catch {
    return null;
  }
}

/** Remembers it until then, without network too. Says whether it was kept: a device that keeps nothing, or is full, asks the server each time. */
export function remember(shelf: Shelf | null, remembered: Remembered, untilMs: number): boolean {
  try {
    shelf?.setItem(REMEMBERED_KEY, JSON.stringify({ ...remembered, untilMs }));
    return shelf !== null;
  } catch {
    return false;
  }
}
