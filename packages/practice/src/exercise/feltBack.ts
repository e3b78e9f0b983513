import { TICKS_PER_SECOND } from '@evenfall/physiology';
import type { Exercise } from './exercise.js';
import { type Replay, traceAt } from './replay.js';

/** The pulse that came back at the wrist while a cuff was let down, as far as a finger was there to feel it. */
export type FeltBack = {
  /** Whether a finger lay on the wrist at any time of it. */
  readonly hadFinger: boolean;
  /** The first pulse that it felt, and the pressure in the cuff then; null: none. */
  readonly first: { readonly atSeconds: number; readonly cuffMmHg: number } | null;
};

/** Whether a finger lay on the wrist at a second of the visit. */
export function isFingerOnAt({ actions }: Pick<Exercise, 'actions'>, seconds: number): boolean {
  const last = actions.findLast((one) => one.kind === 'finger' && one.tick <= seconds * TICKS_PER_SECOND);
  return last?.kind === 'finger' && last.isOn;
}

/** What a finger felt of the pulse from one second of the visit to another. What nobody felt for is not felt. */
export function feltBack(
  exercise: Pick<Exercise, 'actions'>,
  { felt, cuffMmHg, tracePerSecond }: Pick<Replay, 'felt' | 'cuffMmHg' | 'tracePerSecond'>,
  fromSeconds: number,
  toSeconds: number,
): FeltBack {
  const isWithin = (seconds: number) => seconds >= fromSeconds && seconds <= toSeconds;
  const first = felt.find(
    (one) => one.isFelt && isWithin(one.atSeconds) && isFingerOnAt(exercise, one.atSeconds),
  );
  return {
    hadFinger:
      isFingerOnAt(exercise, fromSeconds) ||
      exercise.actions.some(
        (one) => one.kind === 'finger' && one.isOn && isWithin(one.tick / TICKS_PER_SECOND),
      ),
    first:
      first === undefined
        ? null
        : { atSeconds: first.atSeconds, cuffMmHg: traceAt(cuffMmHg, tracePerSecond, first.atSeconds) },
  };
}
