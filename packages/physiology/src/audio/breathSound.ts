import type { Breath } from '../breathing/breath.js';
import { keyOf, uniformOf } from '../chance/uniform.js';
import { sineOfTurns } from '../exact/circle.js';
import { exp } from '../exact/exponential.js';
import { Biquad } from './biquad.js';
import { AUDIO_FIGURES as F } from './figures.js';
import { gainOfDb } from './level.js';
import { WhiteNoise } from './noise.js';
import { peakOf } from './samples.js';

const BREATH_LANE = 16;
/** Breathing out is heard at its beginning and dies away long before its end. */
const OUT_DECAYS = 4;
/** A wheeze is of a few tones that wander a little. */
const WHEEZES = [1, 1.31];

export type BreathMoved = Pick<Breath, 'index' | 'inspirationSeconds' | 'movingSeconds' | 'depth'>;

/**
 * One breath under a chest piece on the chest, from its start, as samples begun and ended at 0: breathing in louder
 * than breathing out, and with a wheeze, if there is one, mostly on the way out. Source: physiology handbook 13.
 */
export function breathSound(
  breath: BreathMoved,
  hasWheeze: boolean,
  seed: number,
  rate: number,
): Float32Array {
  const key = keyOf(seed, 'noise');
  const length = Math.round(breath.movingSeconds * rate);
  const white = new WhiteNoise(key, breath.index, BREATH_LANE);
  const layer = new Float64Array(length);
  for (let i = 0; i < length; i++) layer[i] = white.next();
  for (let twice = 0; twice < 2; twice++) Biquad.highPass(rate, F.breathFromHz.value).run(layer);
  for (let twice = 0; twice < 2; twice++) Biquad.lowPass(rate, F.breathToHz.value).run(layer);
  const usual = gainOfDb(F.breathDbfs.value);
  const gain = (usual / (peakOf(layer) || 1)) * breath.depth;
  const inward = breath.inspirationSeconds;
  const outward = Math.max(1 / rate, breath.movingSeconds - inward);
  const out = gainOfDb(F.breathOutDb.value);
  const wheeze = hasWheeze ? usual * gainOfDb(F.wheezeDb.value) * breath.depth : 0;
  const bend = uniformOf(key, breath.index, BREATH_LANE + 1);
  const samples = new Float32Array(length);
  for (let i = 0; i < length; i++) {
    const t = i / rate;
    const isIn = t < inward;
    const part = isIn ? t / inward : (t - inward) / outward;
    const swell = isIn
      ? sineOfTurns(0.5 * part)
      : out * sineOfTurns(0.5 * Math.sqrt(part)) * exp(-OUT_DECAYS * part);
    let sample = gain * swell * (layer[i] as number);
    if (wheeze > 0) {
      const held = sineOfTurns(0.5 * part) * (isIn ? 0.4 : 1);
      for (const ratio of WHEEZES) {
        const turns = F.wheezeHz.value * ratio * (t + 0.012 * sineOfTurns(0.35 * t + bend));
        sample += (wheeze / WHEEZES.length) * held * held * sineOfTurns(turns);
      }
    }
    samples[i] = sample;
  }
  if (length > 0) samples[length - 1] = 0;
  return samples;
}
