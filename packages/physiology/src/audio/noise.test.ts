import { expect, it } from 'vitest';
import { meanSpectrum, range } from '../../testing/spectrum.js';
import { PinkNoise, WhiteNoise } from './noise.js';

const RATE = 44_100;
const SLICE = 2048;
const slices = (next: () => number) =>
  Array.from({ length: 40 }, () => Float64Array.from({ length: SLICE }, next));

/** Slope of the power over octaves, dB, by least squares. */
function slopeDb(next: () => number): number {
  const at = range(1, 6, 0.25).map((octave) => 60 * 2 ** octave);
  const power = meanSpectrum(slices(next), RATE, at).map((p) => 10 * Math.log10(p));
  const x = at.map((hz) => Math.log2(hz));
  const mean = (list: number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;
  const top = x.reduce((sum, one, i) => sum + (one - mean(x)) * ((power[i] as number) - mean(power)), 0);
  return top / x.reduce((sum, one) => sum + (one - mean(x)) ** 2, 0);
}

it('white noise is as strong at every frequency, has mean 0 and variance 1/3', () => {
  const white = new WhiteNoise(7, 0, 0);
  expect(Math.abs(slopeDb(() => white.next()))).toBeLessThan(0.5);
  const all = Float64Array.from({ length: 100_000 }, () => white.next());
  const mean = all.reduce((sum, x) => sum + x, 0) / all.length;
  // Five standard errors.
  expect(Math.abs(mean)).toBeLessThan(5 * Math.sqrt(1 / 3 / all.length));
  const square = all.reduce((sum, x) => sum + x * x, 0) / all.length;
  expect(Math.abs(square - 1 / 3)).toBeLessThan(5 * Math.sqrt(4 / 45 / all.length));
});

it('pink noise falls by 3 dB an octave', () => {
  const pink = new PinkNoise(7, 0, 0, RATE);
  expect(Math.abs(slopeDb(() => pink.next()) + 3.01)).toBeLessThan(0.6);
});

it('is named by key, index and lane', () => {
  const first = (key: number, index: number, lane: number) => new WhiteNoise(key, index, lane).next();
  expect(first(1, 2, 3)).toBe(first(1, 2, 3));
  expect(new Set([first(1, 2, 3), first(2, 2, 3), first(1, 3, 3), first(1, 2, 4)]).size).toBe(4);
});
