import type { Circumstances } from '../circumstances/circumstances.js';
import type { Scenario } from '../scenario/scenario.js';
import { SOUND_FIGURES as F } from './figures.js';

/** Noise of the place where a person is measured, dB(A): as it was found, or less where quiet was asked for. */
export function noiseOf(
  { noiseDbA }: Pick<Scenario, 'noiseDbA'>,
  { isQuieter }: Pick<Circumstances, 'isQuieter'>,
): number {
  return isQuieter ? noiseDbA - F.quieterDbA.value : noiseDbA;
}
