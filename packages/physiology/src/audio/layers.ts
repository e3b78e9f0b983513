import { cosineOfTurns } from '../exact/circle.js';
import { exp } from '../exact/exponential.js';
import { Biquad } from './biquad.js';
import { AUDIO_FIGURES as F } from './figures.js';
import { gainOfDb } from './level.js';
import { PinkNoise, WhiteNoise } from './noise.js';

/** Where a layer's noise comes from. */
export type Source = { readonly key: number; readonly index: number; readonly lane: number };

/** How a layer begins and fades, s: linear rise, then a fall to 1/e in `decay`. */
export type Swell = { readonly attack: number; readonly decay: number };

/** A filter has forgotten that it began from silence after so many seconds; only then is its noise used. */
const WARM_UP_SECONDS = 0.03;

/** Size of a swell at each sample, 0 at the first. */
export function swellAt(sample: number, rate: number, { attack, decay }: Swell): number {
  const t = sample / rate;
  return t < attack ? t / attack : exp((attack - t) / decay);
}

/**
 * A tone that swells and fades, added; `harmonics` are amplitudes from the first on. It begins at the top of its wave, so
 * that it is heard as soon as it swells.
 */
export function addTone(
  into: Float64Array,
  rate: number,
  hz: number,
  harmonics: readonly number[],
  swell: Swell,
): void {
  harmonics.forEach((amplitude, k) => {
    const turnsPerSample = ((k + 1) * hz) / rate;
    for (let i = 0; i < into.length; i++) {
      into[i] = (into[i] as number) + amplitude * swellAt(i, rate, swell) * cosineOfTurns(turnsPerSample * i);
    }
  });
}

/** Noise through a filter, swelling and fading, added at an RMS of `size` at its height. */
export function addNoise(
  into: Float64Array,
  rate: number,
  filter: Biquad,
  source: Source,
  size: number,
  swell: Swell,
): void {
  const white = new WhiteNoise(source.key, source.index, source.lane);
  const warm = Math.round(WARM_UP_SECONDS * rate);
  for (let i = 0; i < warm; i++) filter.next(white.next());
  const layer = new Float64Array(into.length);
  let sum = 0;
  for (let i = 0; i < layer.length; i++) {
    const y = filter.next(white.next());
    layer[i] = y;
    sum += y * y;
  }
  // It begins on the side on which the tone begins: the two never cancel at the start, when the ear takes the time.
  const side = (layer[0] ?? 0) < 0 ? -1 : 1;
  const gain = (side * size) / Math.sqrt(sum / layer.length);
  for (let i = 0; i < layer.length; i++) {
    into[i] = (into[i] as number) + gain * (layer[i] as number) * swellAt(i, rate, swell);
  }
}

/** The swish after a tap: pink noise whose band glides down. Alone, from its first sample; highest sample 1. */
export function swish(
  seconds: number,
  holdSeconds: number,
  rate: number,
  shift: number,
  source: Source,
): Float64Array {
  const layer = new Float64Array(Math.ceil(seconds * rate));
  const pink = new PinkNoise(source.key, source.index, source.lane, rate);
  const band = new Biquad();
  const above = Biquad.highPass(rate, F.swishLowHz.value * shift, STEEP);
  const below = Biquad.lowPass(rate, F.swishHighHz.value * shift, STEEP);
  const attack = F.swishAttackMs.value / 1000;
  const release = F.swishReleaseMs.value / 1000;
  const gliding = attack + holdSeconds + release;
  let peak = 0;
  for (let i = -Math.round(WARM_UP_SECONDS * rate); i < layer.length; i++) {
    const t = Math.max(0, i) / rate;
    if (i % GLIDE_EVERY === 0) {
      const part = Math.min(1, t / gliding);
      band.tuneBand(
        rate,
        shift * (F.swishFromHz.value + part * (F.swishToHz.value - F.swishFromHz.value)),
        F.swishQuality.value,
      );
    }
    const noise = above.next(below.next(band.next(pink.next())));
    if (i < 0) continue;
    const rise = t < attack ? t / attack : 1;
    const fall = t < attack + holdSeconds ? 1 : exp((attack + holdSeconds - t) / release);
    const y = noise * rise * rise * (3 - 2 * rise) * fall;
    layer[i] = y;
    if (y > peak) peak = y;
    else if (-y > peak) peak = -y;
  }
  for (let i = 0; i < layer.length; i++) layer[i] = (layer[i] as number) / (peak || 1);
  return layer;
}

/** A little steeper at the corner than flat: the resonance of the tube lies just below. */
const STEEP = 1;
/** A gliding band is tuned anew every so many samples. */
const GLIDE_EVERY = 32;

/** Amplitudes of the tone: plain, or with harmonics for a loudspeaker. */
export function harmonicsOf(isLoudspeakerVoice: boolean): readonly number[] {
  return isLoudspeakerVoice ? [1, gainOfDb(F.secondDb.value), gainOfDb(F.thirdDb.value)] : [1];
}
