/** The part of `localStorage` that is needed here. */
type Shelf = {
  readonly getItem: (key: string) => string | null;
  readonly setItem: (key: string, text: string) => void;
};

const KEY = 'evenfall.touched';

/** When the device was last touched, in any of its pages, ms; null where that is not known. */
export function lastTouched(shelf: Shelf | null): number | null {
  try {
    const text = shelf?.getItem(KEY) ?? null;
    const ms = text === null ? Number.NaN : Number(text);
    return Number.isFinite(ms) ? ms : null;
  } catch {
    return null;
  }
}

/** Notes that the device was touched, for its other pages and for the next one that is opened. */
export function noteTouched(shelf: Shelf | null, ms: number): void {
  try {
    shelf?.setItem(KEY, String(ms));
  } catch {
    // A device that keeps nothing asks the server each time.
  }
}
