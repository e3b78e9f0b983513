import { isFastFibrillation } from './heart/fibrillation.js';
import type { Scenario } from './scenario/scenario.js';

/**
 * The number of the model of a simulated person. From the same scenario, seed and actions the same model gives the same visit to the
 * last bit, on every machine; a change of the model that changes a visit has the next number, so that what was practised with another
 * one is not taken for the same visit. 2: a cuff more than two sizes off does no more than one of two. 3: a fast atrial fibrillation
 * loses about as many beats in each minute. Source: decision of this project; the digest of `rig/sameEverywhere.test.ts` goes with it.
 */
export const MODEL = 3;

/** The last model before that of fast fibrillation. */
const BEFORE_FAST = 2;

/** Whether another model plays a scenario as this one does, to the last bit: then what was practised with it can still be judged. */
export function playsAlike(model: number, { rhythm }: Pick<Scenario, 'rhythm'>): boolean {
  if (model === MODEL) return true;
  const isFast = rhythm.kind === 'atrial-fibrillation' && isFastFibrillation(rhythm.ratePerMinute);
  return model === BEFORE_FAST && !isFast;
}
