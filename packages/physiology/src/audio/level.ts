import { exp } from '../exact/exponential.js';
import { AUDIO_FIGURES as F } from './figures.js';

const LN10_OVER_20 = Math.LN10 / 20;

/** How much larger an amplitude is for so many dB. */
export function gainOfDb(db: number): number {
  return exp(db * LN10_OVER_20);
}

/** Highest sample (1 is full scale) of a sound so many dB over a normal listener's threshold. */
export function amplitudeOfLevel(levelDb: number): number {
  const dbfs = levelDb + F.thresholdDbfs.value;
  return gainOfDb(Math.min(dbfs, F.loudestDbfs.value));
}
