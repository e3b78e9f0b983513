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
};

/** What is to be done, by when the device was last touched and when the server was last told. */
export function idleStep(nowMs: number, touchedMs: number, saidMs: number): 'lock' | 'say' | 'nothing' {
  const minutes = (since: number) => (nowMs - since) / 60_000;
  if (minutes(touchedMs) >= LOCK_AFTER_MINUTES) return 'lock';
  return minutes(saidMs) >= SAY_AFTER_MINUTES && touchedMs > saidMs ? 'say' : 'nothing';
}

/** Locks a device that is left alone, and tells the server of one that is used. Only while somebody is signed in. */
export function watchIdle({ isIn, lock, sayUsed, nowMs }: Around): void {
  let touched = nowMs();
  let said = nowMs();
  for (const kind of TOUCHES)
    window.addEventListener(kind, () => (touched = nowMs()), { passive: true, capture: true });
  const look = () => {
    if (!isIn()) return;
    const step = idleStep(nowMs(), touched, said);
    if (step === 'lock') lock();
    if (step !== 'say') return;
    said = nowMs();
    sayUsed();
  };
  window.setInterval(look, LOOK_MS);
  // Timers sleep while a phone is in a pocket.
  document.addEventListener('visibilitychange', look);
}
