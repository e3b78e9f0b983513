import { type Circumstances, TICKS_PER_SECOND } from '@evenfall/physiology';
import type { Exercise } from './exercise.js';

/** On which arm the cuff is, by the second of the visit. */
export function armsOf({
  circumstances,
  actions,
}: Pick<Exercise, 'circumstances' | 'actions'>): (seconds: number) => Circumstances['arm'] {
  const turns = actions.flatMap((one) =>
    one.kind === 'arrange' && one.arm !== undefined ? [{ tick: one.tick, arm: one.arm }] : [],
  );
  return (seconds) =>
    turns.findLast(({ tick }) => tick <= seconds * TICKS_PER_SECOND)?.arm ?? circumstances.arm;
}
