import { TICKS_PER_SECOND } from '@evenfall/physiology';
import { armsOf } from './armsOf.js';
import type { Exercise } from './exercise.js';
import type { FallOf } from './fall.js';
import { type Replay, settledNeedle } from './replay.js';

/** The pulse is gone once the cuff went this much higher without it, mmHg: about what a hand pumps in a second. */
const GONE_MMHG = 10;

/** From when to when a finger lay at the wrist, seconds of the visit. */
function touches({ actions, seconds }: Exercise): (readonly [from: number, to: number])[] {
  const found: (readonly [number, number])[] = [];
  let since: number | null = null;
  for (const action of actions) {
    if (action.kind !== 'finger') continue;
    const at = action.tick / TICKS_PER_SECOND;
    if (action.isOn) since ??= at;
    else if (since !== null) {
      found.push([since, at]);
      since = null;
    }
  }
  if (since !== null) found.push([since, seconds]);
  return found;
}

/** Whether a finger lay at the wrist at some time between two seconds of the visit. */
export function isTouched(exercise: Exercise, from: number, to: number): boolean {
  return touches(exercise).some(([on, off]) => on < to && off > from);
}

/**
 * Where the pulse was lost (or came back) before a reading, mmHg on the gauge: as it was written, else as a finger at the wrist had it to
 * feel while the cuff was pumped up, for this fall or an earlier one on the same arm. Null: nobody felt for it.
 */
export function feltMmHg(exercise: Exercise, played: Replay, { peakSeconds }: FallOf): number | null {
  const { lostMmHg, backMmHg } = exercise.evidence.run?.run.palpated ?? { lostMmHg: null, backMmHg: null };
  if (lostMmHg !== null || backMmHg !== null) return lostMmHg ?? backMmHg;
  const fingers = touches(exercise);
  const needle = (seconds: number) => settledNeedle(played, exercise.instrument, seconds);
  const armAt = armsOf(exercise);
  for (const begun of played.inflations.toReversed()) {
    if (begun > peakSeconds || armAt(begun) !== armAt(peakSeconds)) continue;
    const next = played.inflations.find((one) => one > begun) ?? Infinity;
    const top = highestAt(played, begun, Math.min(next, peakSeconds));
    const last = played.felt.findLast(
      ({ isFelt, atSeconds }) =>
        isFelt && atSeconds < top && fingers.some(([on, off]) => atSeconds >= on && atSeconds <= off),
    );
    const lost = last === undefined ? null : needle(last.atSeconds);
    const wasThere = fingers.some(([on, off]) => on < top && off > top - 1);
    if (lost !== null && wasThere && needle(top) >= lost + GONE_MMHG) return lost;
  }
  return null;
}

/** When the cuff was highest between two seconds of the visit. */
function highestAt({ cuffMmHg, tracePerSecond }: Replay, from: number, to: number): number {
  const start = Math.max(0, Math.floor(from * tracePerSecond));
  const end = Math.min(cuffMmHg.length - 1, Math.ceil(to * tracePerSecond));
  let best = start;
  for (let i = start; i <= end; i++) if ((cuffMmHg[i] as number) > (cuffMmHg[best] as number)) best = i;
  return best / tracePerSecond;
}
