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
/** mmHg; let out to here it holds the arm no longer, though some air is in it yet: pumped up from there it is another inflation, too. Decision of this project. */
export const LET_OUT_MMHG = 20;

/**
 * The fall about an instant: from the highest pressure since the cuff was last empty, or all but empty and pumped up anew, until it is
 * so again. Null: the cuff was empty.
 */
export function fallAbout({ cuffMmHg, tracePerSecond, seconds }: Replay, atSeconds: number): FallOf | null {
  const last = cuffMmHg.length - 1;
  const at = Math.max(0, Math.min(last, Math.round(atSeconds * tracePerSecond)));
  if ((cuffMmHg[at] as number) < EMPTY_MMHG) return null;
  let begun = at;
  while (begun > 0 && (cuffMmHg[begun - 1] as number) >= EMPTY_MMHG) begun -= 1;
  let emptied = at;
  while (emptied < last && (cuffMmHg[emptied] as number) >= EMPTY_MMHG) emptied += 1;
  const [from, end] = inflationAbout(cuffMmHg, begun, emptied, at);
  let peak = from;
  for (let i = from; i <= at; i++) if ((cuffMmHg[i] as number) >= (cuffMmHg[peak] as number)) peak = i;
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

/** The part about a point of a stretch in which the cuff was never empty: each begins where it was let out and pumped up anew. */
function inflationAbout(
  cuffMmHg: Float64Array,
  begun: number,
  emptied: number,
  at: number,
): [number, number] {
  let from = begun;
  let isUp = false;
  /** Where the cuff was lowest since it was let out; null: it was not. */
  let low: number | null = null;
  for (let i = begun; i <= emptied; i++) {
    const now = cuffMmHg[i] as number;
    if (now >= MEANT_MMHG) {
      if (low !== null) {
        if (low > at) return [from, low];
        from = low;
      }
      isUp = true;
      low = null;
    } else if (isUp && now < LET_OUT_MMHG && (low === null || now <= (cuffMmHg[low] as number))) low = i;
  }
  return [from, emptied];
}

/** The fall that follows one without the cuff having been empty between them; null: it was. */
export function nextFall(replayed: Replay, { endSeconds }: FallOf): FallOf | null {
  const point = 1 / replayed.tracePerSecond;
  const begun = fallAbout(replayed, endSeconds + point);
  const next = begun === null ? null : fallAbout(replayed, begun.endSeconds - point);
  return next === null || next.inflatedSeconds < endSeconds ? null : next;
}

/** The last fall of a visit in which the cuff was over `leastMmHg`; null: none. */
export function lastFall(replayed: Replay, leastMmHg: number): FallOf | null {
  for (let i = replayed.cuffMmHg.length - 1; i >= 0; i--) {
    if ((replayed.cuffMmHg[i] as number) < leastMmHg) continue;
    return fallAbout(replayed, i / replayed.tracePerSecond);
  }
  return null;
}
