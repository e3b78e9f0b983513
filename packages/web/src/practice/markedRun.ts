import { type Action, TICKS_PER_SECOND } from '@evenfall/physiology';
import type { Stamp } from '@evenfall/record';
import { listened, touched } from '../pressure/marks.js';
import type { PressureAt } from '../pressure/pressureDraft.js';
import { blankReading } from '../pressure/pressureSteps.js';

/** The run under way or just over, seconds of the visit: when the cuff was flat last, and when it was highest since. */
export type RunAt = { readonly wentUpSeconds: number | null; readonly peakSeconds: number | null };

/** One more touch, seconds of the visit. One that bounced, or that comes after any run is over, changes nothing. */
export function withTouch(marks: readonly number[], atSeconds: number): readonly number[] {
  const was = { touchesMs: marks.map(inMs) };
  return touched(was, inMs(atSeconds)) === was ? marks : [...marks, atSeconds];
}

/**
 * A reading as it begins to be written: what was touched in this run is named and its gauge read back, as at the bedside; with
 * nothing touched the keypad is blank. When the valve was opened the room knows.
 *
 * @param marks every touch, seconds of the visit; on the way up it is of a pulse under the finger, or of nothing
 */
export function begunReading(
  method: 'auscultation' | 'palpation',
  marks: readonly number[],
  { wentUpSeconds, peakSeconds }: RunAt,
  actions: readonly Action[],
  measuredAt: Stamp,
): PressureAt {
  const ofRun = marks.filter(
    (at) =>
      peakSeconds !== null &&
      at > (wentUpSeconds ?? peakSeconds) &&
      (at > peakSeconds || wasFingerOn(actions, at, at)),
  );
  if (peakSeconds === null || ofRun.length === 0)
    return blankReading(method, { measuredAt, inflatedAt: null });
  return listened({
    measuredAt,
    inflatedAt: null,
    touchesMs: ofRun.map(inMs),
    openedAtMs: inMs(peakSeconds),
    ...(method === 'palpation' ? { method } : {}),
  });
}

/** Whether a finger lay on the wrist at any instant from one second of the visit to another, both included. */
export function wasFingerOn(actions: readonly Action[], fromSeconds: number, toSeconds: number): boolean {
  let isOn = false;
  for (const action of actions) {
    if (action.kind !== 'finger') continue;
    const at = action.tick / TICKS_PER_SECOND;
    if (at > toSeconds) break;
    if (isOn && at > fromSeconds) return true;
    isOn = action.isOn;
  }
  return isOn;
}

function inMs(seconds: number): number {
  return 1000 * seconds;
}
