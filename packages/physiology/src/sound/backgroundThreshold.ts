import { SOUND_FIGURES as F } from './figures.js';

/** Sounds under this are hidden by the noise of a place, dB over a normal listener's threshold in a quiet room. */
export function backgroundThresholdDb(noiseDbA: number): number {
  return noiseDbA <= F.noiseFromDbA.value ? 0 : F.noiseShare.value * (noiseDbA - F.noiseFromDbA.value);
}
