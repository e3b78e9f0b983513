import type { Circumstances } from '../circumstances/circumstances.js';
import type { Scenario } from '../scenario/scenario.js';
import { backgroundThresholdDb } from './backgroundThreshold.js';
import { SOUND_FIGURES as F } from './figures.js';

/** Noise of the place where a person is measured, dB(A): as it was found, or less where quiet was asked for. */
export function noiseOf(
  { noiseDbA }: Pick<Scenario, 'noiseDbA'>,
  { isQuieter }: Pick<Circumstances, 'isQuieter'>,
): number {
  return isQuieter ? noiseDbA - F.quieterDbA.value : noiseDbA;
}

/**
 * Whether soft sounds are hidden in a side room, too. What makes such a noise is no talk of a ward: an engine, a building site; it comes
 * through a door, and there is no quieter place to go to.
 */
export function isLoudInAnyRoom(scenario: Pick<Scenario, 'noiseDbA'>): boolean {
  return backgroundThresholdDb(noiseOf(scenario, { isQuieter: true })) > 0;
}
