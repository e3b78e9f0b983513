import { type Replay, traceAt } from './replay.js';

/** The letting down in which a reading was made: seconds of the visit and the highest pressure in the cuff. */
export type FallOf = {
  readonly inflatedSeconds: number;
  readonly peakSeconds: number;
  readonly peakMmHg: number;
  readonly endSeconds: number;
  /** Pumped up again by this much on the way down, mmHg; 0: not. */
  readonly pumpedAgainMmHg: number;
};

/** A cuff that went higher than this was meant to measure. */
export const MEANT_MMHG = 40;
/** Under this a cuff is empty, as for the rig: nothing is heard through it, and what comes after is another inflation. */
const EMPTY_MMHG = 4;

/** The fall about an instant: from the highest pressure since the cuff was last empty, until it is empty again. Null: the cuff was empty. */
export function fallAbout({ cuffMmHg, tracePerSecond, seconds }: Replay, atSeconds: number): FallOf | null {
  const last = cuffMmHg.length - 1;
  const at = Math.max(0, Math.min(last, Math.round(atSeconds * tracePerSecond)));
  if ((cuffMmHg[at] as number) < EMPTY_MMHG) return null;
  let from = at;
  while (from > 0 && (cuffMmHg[from - 1] as number) >= EMPTY_MMHG) from -= 1;
  let peak = from;
  for (let i = from; i <= at; i++) if ((cuffMmHg[i] as number) >= (cuffMmHg[peak] as number)) peak = i;
  let end = at;
  while (end < last && (cuffMmHg[end] as number) >= EMPTY_MMHG) end += 1;
  let lowest = cuffMmHg[peak] as number;
  let again = 0;
  for (let i = peak; i <= end; i++) {
    const now = cuffMmHg[i] as number;
    lowest = Math.min(lowest, now);
    again = Math.max(again, now - lowest);
  }
  return {
    inflatedSeconds: from / tracePerSecond,
    peakSeconds: peak / tracePerSecond,
    peakMmHg: traceAt(cuffMmHg, tracePerSecond, peak / tracePerSecond),
    endSeconds: Math.min(seconds, end / tracePerSecond),
    pumpedAgainMmHg: again,
  };
}

/** The last fall of a visit in which the cuff was over `leastMmHg`; null: none. */
export function lastFall(replayed: Replay, leastMmHg: number): FallOf | null {
  for (let i = replayed.cuffMmHg.length - 1; i >= 0; i--) {
    if ((replayed.cuffMmHg[i] as number) < leastMmHg) continue;
    return fallAbout(replayed, i / replayed.tracePerSecond);
  }
  return null;
}
