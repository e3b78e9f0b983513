import { passes } from '../contract/threshold.js';
import { cosinePowers } from '../statistics/cosinePowers.js';
import { POWERS_OF_MEAN } from '../statistics/longRunMean.js';
import { strongestWave, type Wave } from '../statistics/wave.js';
import { TAP_COMPARISONS as SIDE } from './comparisons.js';
import { TAP_FIGURES } from './figures.js';
import type { RepairedTaps } from './repair.js';

const WAVE_BAND = {
  shortest: TAP_FIGURES.waveShortestBeats.value,
  longest: TAP_FIGURES.waveLongestBeats.value,
};
const WAVE_STANDS_OUT = TAP_FIGURES.waveStandsOut.value;
const MOST_FOR_WAVE = TAP_FIGURES.waveMostIntervals.value;
const FEWEST = TAP_FIGURES.intervalsForRange.value;

/**
 * The beat-to-beat intervals as shares of their mean, seen as slow and fast cosines. An interval in which taps
 * were missed is split evenly, which leaves the mean as it is.
 */
export type BeatSeries = {
  readonly n: number;
  readonly powers: Float64Array;
  /** The wave of breathing, if one stands out from the rest; looked for in up to 240 intervals. */
  readonly wave: Wave | null;
  /** Total of all powers up to the fastest looked at. */
  readonly power: number;
};

/** Null for fewer than five intervals. */
export function beatSeries(taps: RepairedTaps, meanIntervalMs: number): BeatSeries | null {
  const { seconds, beatsToNext } = taps;
  const shares: number[] = [];
  for (let i = 0; i < beatsToNext.length; i++) {
    const beats = beatsToNext[i] as number;
    const interval = (((seconds[i + 1] as number) - (seconds[i] as number)) * 1000) / meanIntervalMs;
    for (let k = 0; k < beats; k++) shares.push(interval / beats);
  }
  const n = shares.length;
  if (passes(n, SIDE.intervalsForRange, FEWEST)) return null;
  const isTooLong = passes(n, SIDE.waveMostIntervals, MOST_FOR_WAVE);
  const powers = cosinePowers(shares, isTooLong ? POWERS_OF_MEAN : n - 1);
  const power = powers.reduce((sum, one) => sum + one, 0);
  const strongest = isTooLong ? null : strongestWave(powers, n, WAVE_BAND);
  const standsOut =
    strongest !== null && passes(strongest.power, SIDE.waveStandsOut, (WAVE_STANDS_OUT / n) * power);
  return { n, powers, power, wave: standsOut ? strongest : null };
}
