/*
 * Measures of sounds for tests, by definition and apart from the code under test.
 */

/** Power of samples at a frequency: the Fourier sum, by Goertzel's recurrence (American Mathematical Monthly 1958;65:34). */
export function powerAt(samples: ArrayLike<number>, rate: number, hz: number): number {
  const twice = 2 * Math.cos((2 * Math.PI * hz) / rate);
  let last = 0;
  let before = 0;
  for (let i = 0; i < samples.length; i++) {
    const now = (samples[i] as number) + twice * last - before;
    before = last;
    last = now;
  }
  return last * last + before * before - twice * last * before;
}

export function range(from: number, to: number, step: number): number[] {
  return Array.from({ length: Math.floor((to - from) / step + 1e-9) + 1 }, (_, i) => from + i * step);
}

/** Mean power of several sounds at each frequency. */
export function meanSpectrum(
  sounds: readonly ArrayLike<number>[],
  rate: number,
  at: readonly number[],
): number[] {
  return at.map((hz) => sounds.reduce((sum, one) => sum + powerAt(one, rate, hz), 0) / sounds.length);
}

/** The frequency at which a spectrum is highest. */
export function peakHz(spectrum: readonly number[], at: readonly number[]): number {
  return at[spectrum.indexOf(Math.max(...spectrum))] as number;
}

/** Share of the power that lies within a band, of a spectrum at even steps. */
export function shareWithin(
  spectrum: readonly number[],
  at: readonly number[],
  low: number,
  high: number,
): number {
  const all = spectrum.reduce((sum, x) => sum + x, 0);
  return (
    spectrum.reduce((sum, x, i) => sum + ((at[i] as number) >= low && (at[i] as number) <= high ? x : 0), 0) /
    all
  );
}

export function peak(samples: ArrayLike<number>): number {
  let most = 0;
  for (let i = 0; i < samples.length; i++) most = Math.max(most, Math.abs(samples[i] as number));
  return most;
}

/** Largest step from one sample to the next, silence before and after included. */
export function largestStep(samples: ArrayLike<number>): number {
  let most = 0;
  let before = 0;
  for (let i = 0; i <= samples.length; i++) {
    const x = samples[i] ?? 0;
    most = Math.max(most, Math.abs(x - before));
    before = x;
  }
  return most;
}

export function rms(samples: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < samples.length; i++) sum += (samples[i] as number) ** 2;
  return Math.sqrt(sum / samples.length);
}

/** Largest difference between two sounds, sample by sample; infinite if they are not of one length. */
export function difference(one: ArrayLike<number>, other: ArrayLike<number>): number {
  if (one.length !== other.length) return Number.POSITIVE_INFINITY;
  let most = 0;
  for (let i = 0; i < one.length; i++)
    most = Math.max(most, Math.abs((one[i] as number) - (other[i] as number)));
  return most;
}

/** When a sound first reaches a share of its highest sample, s. */
export function onset(samples: ArrayLike<number>, rate: number, share: number): number {
  const least = share * peak(samples);
  for (let i = 0; i < samples.length; i++) if (Math.abs(samples[i] as number) >= least) return i / rate;
  return Number.POSITIVE_INFINITY;
}

/** Until when a sound stays above so many dB under its highest sample, s. */
export function lastAbove(samples: ArrayLike<number>, rate: number, db: number): number {
  const least = 10 ** (db / 20) * peak(samples);
  for (let i = samples.length - 1; i >= 0; i--) if (Math.abs(samples[i] as number) >= least) return i / rate;
  return 0;
}

export const dB = (ratio: number) => 20 * Math.log10(ratio);
