import type { Stretch } from '@evenfall/physiology';
import type { FallOf } from '../exercise/fall.js';
import { type Replay, traceAt } from '../exercise/replay.js';

/** The batch face takes up to 32 straight pieces: finer where sounds can be, coarse far over them. */
const FINE_PIECES = 28;
const FINE_BELOW_MMHG = 240;
const LEAST_PIECE_MMHG = 4;
/** Slower than this counts as this: the batch face knows no standstill. */
const LEAST_RATE = 0.05;

/** A fall that really was, as straight pieces by pressure, from the peak down. */
export function stretchesOf({ cuffMmHg, tracePerSecond }: Replay, fall: FallOf): Stretch[] {
  const fine = Math.max(LEAST_PIECE_MMHG, Math.min(fall.peakMmHg, FINE_BELOW_MMHG) / FINE_PIECES);
  const coarse = Math.max(fine, (fall.peakMmHg - FINE_BELOW_MMHG) / 2);
  const stretches: Stretch[] = [];
  let from = fall.peakSeconds;
  let top = fall.peakMmHg;
  let lowest = top;
  const last = Math.floor(fall.endSeconds * tracePerSecond);
  for (let i = Math.ceil(fall.peakSeconds * tracePerSecond); i <= last; i++) {
    const mmHg = Math.min(lowest, cuffMmHg[i] as number);
    lowest = mmHg;
    if (top - mmHg < (top > FINE_BELOW_MMHG ? Math.min(coarse, top - FINE_BELOW_MMHG + fine) : fine))
      continue;
    const seconds = i / tracePerSecond;
    stretches.push({ mmHgPerSecond: Math.max(LEAST_RATE, (top - mmHg) / (seconds - from)), toMmHg: mmHg });
    from = seconds;
    top = mmHg;
  }
  const rest = top - traceAt(cuffMmHg, tracePerSecond, fall.endSeconds);
  const seconds = Math.max(0.02, fall.endSeconds - from);
  stretches.push({ mmHgPerSecond: Math.max(LEAST_RATE, rest / seconds), toMmHg: 0 });
  return stretches;
}
