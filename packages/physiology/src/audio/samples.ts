/** Highest sample, either side. */
export function peakOf(samples: Float64Array | Float32Array): number {
  let peak = 0;
  for (let i = 0; i < samples.length; i++) {
    const size = Math.abs(samples[i] as number);
    if (size > peak) peak = size;
  }
  return peak;
}

/** Makes all louder or softer, so that the highest sample has a size; silence stays silence. */
export function scaleToPeak(samples: Float64Array, peak: number): void {
  const now = peakOf(samples);
  if (now === 0) return;
  const by = peak / now;
  for (let i = 0; i < samples.length; i++) samples[i] = (samples[i] as number) * by;
}

/** Root of the mean square. */
export function rmsOf(samples: Float64Array | Float32Array): number {
  let sum = 0;
  for (let i = 0; i < samples.length; i++) sum += (samples[i] as number) ** 2;
  return Math.sqrt(sum / Math.max(1, samples.length));
}

/** Fades the last samples out, so that the last is 0. */
export function fadeEnd(samples: Float64Array, count: number): void {
  const fading = Math.min(count, samples.length);
  const from = samples.length - fading;
  for (let i = 0; i < fading; i++) {
    const left = (fading - 1 - i) / fading;
    samples[from + i] = (samples[from + i] as number) * left * left * (3 - 2 * left);
  }
}

/** Adds a sound to a mix from a sample on; what lies outside the mix is left out. */
export function addAt(
  mix: Float64Array | Float32Array,
  sound: Float64Array | Float32Array,
  at: number,
): void {
  const from = Math.max(0, -at);
  const to = Math.min(sound.length, mix.length - at);
  for (let i = from; i < to; i++) mix[at + i] = (mix[at + i] as number) + (sound[i] as number);
}

/** The same made so much louder or softer, as it is played and kept: single precision. */
export function asPlayed(samples: Float64Array, gain = 1): Float32Array {
  const played = new Float32Array(samples.length);
  for (let i = 0; i < samples.length; i++) played[i] = (samples[i] as number) * gain;
  return played;
}
