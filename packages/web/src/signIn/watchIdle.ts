/**
 * A device that nobody touched for so long is locked, minutes. Sooner than the server would, so that what is on the screen
 * is covered too. Source: decision of this project.
 */
export const LOCK_AFTER_MINUTES = 10;
/** How often a device that is used says so, for a long round asks the server nothing. Source: decision of this project. */
const SAY_AFTER_MINUTES = 5;
const LOOK_MS = 15_000;
const TOUCHES = ['pointerdown', 'keydown', 'wheel', 'touchstart'] as const;

type Around = {
  readonly isIn: () => boolean;
  readonly lock: () => void;
  readonly sayUsed: () => void;
  readonly nowMs: () => number;
  /** When the device was last touched in any of its pages; null for not known. */
  readonly lastTouched: () => number | null;
  readonly noteTouched: (ms: number) => void;
};

/** What is to be done, by when the device was last touched and when the server was last told. */
export function idleStep(nowMs: number, touchedMs: number, saidMs: number): 'lock' | 'say' | 'nothing' {
  const minutes = (since: number) => (nowMs - since) / 60_000;
  if (minutes(touchedMs) >= LOCK_AFTER_MINUTES) return 'lock';
  return minutes(saidMs) >= SAY_AFTER_MINUTES && touchedMs > saidMs ? 'say' : 'nothing';
}

/**
 * Locks a device that is left alone, with its pages open or closed, and tells the server of one that is used. Only while
 * somebody is signed in.
 */
export function watchIdle({ isIn, lock, sayUsed, nowMs, lastTouched, noteTouched }: Around): void {
  // A page that is opened is not yet touched: one of a device that was left alone meanwhile locks at once.
  let touched = lastTouched() ?? nowMs();
  let noted = touched;
  let said = nowMs();
  for (const kind of TOUCHES)
    window.addEventListener(kind, () => (touched = nowMs()), { passive: true, capture: true });
  const note = () => {
    if (touched > noted) noteTouched(touched);
    noted = touched;
  };
  const look = () => {
    if (!isIn()) return;
    note();
    // Another page of the device may be the one in use.
    const step = idleStep(nowMs(), Math.max(touched, lastTouched() ?? touched), said);
    if (step === 'lock') lock();
    if (step !== 'say') return;
    said = nowMs();
    sayUsed();
  };
  window.setInterval(look, LOOK_MS);
  // Timers sleep while a phone is in a pocket.
  document.addEventListener('visibilitychange', look);
  window.addEventListener('pagehide', note);
  look();
}
