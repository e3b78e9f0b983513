import { expect, test } from 'vitest';
import { contourOf } from './contour.js';
import type { ArterySite, WaveShape } from './waveShape.js';

// Physiology handbook 3.2, column "features": form factor to its last digit and steepest rise to 0.1.
test.each([
  ['radial', 'young', 0.34, 12.4],
  ['radial', 'middle', 0.35, 11.7],
  ['radial', 'old', 0.34, 10.5],
  ['brachial', 'young', 0.38, 11.7],
  ['brachial', 'middle', 0.38, 11.0],
  ['brachial', 'old', 0.35, 9.4],
  ['brachial', 'collapsing', 0.21, 14.6],
  ['brachial', 'slow-rising', 0.37, 6.7],
  ['brachial', 'vasodilated', 0.23, Number.NaN],
  ['brachial', 'constricted', 0.23, Number.NaN],
] as [ArterySite, WaveShape, number, number][])('%s %s: form factor %f', (site, shape, mean, steepest) => {
  const contour = contourOf(shape, site);
  expect(Math.abs(contour.mean - mean)).toBeLessThanOrEqual(0.0051);
  if (!Number.isNaN(steepest)) expect(Math.abs(contour.steepest - steepest)).toBeLessThan(0.11);
});

// The same section: peak of the slow-rising one at 0.30 s, late peak of the old one at 0.24 s after the start of the bumps.
test('tops lie where the book has them', () => {
  expect(Math.abs(contourOf('slow-rising', 'brachial').peakSeconds - 0.3)).toBeLessThan(0.03);
  expect(Math.abs(contourOf('old', 'brachial').peakSeconds - 0.24)).toBeLessThan(0.03);
});

// Harmonics printed for the brachial of middle age: amplitude beside the pulse pressure, phase, cosine, from the foot.
test.each([
  [1, 0.409, -125],
  [2, 0.192, 173],
  [3, 0.089, 89],
  [4, 0.031, 67],
  [5, 0.035, 13],
])('harmonic %d of the brachial of middle age', (k, amplitude, degrees) => {
  const contour = contourOf('middle', 'brachial');
  const n = 2048;
  let re = 0;
  let im = 0;
  for (let i = 0; i < n; i++) {
    const y = contour.at((0.857 * i) / n);
    re += (2 / n) * y * Math.cos((2 * Math.PI * k * i) / n);
    im -= (2 / n) * y * Math.sin((2 * Math.PI * k * i) / n);
  }
  expect(Math.abs(Math.hypot(re, im) - amplitude)).toBeLessThan(0.002);
  const off = (Math.atan2(im, re) * 180) / Math.PI - degrees;
  // A foot that lies a few ms elsewhere turns the k-th by k times 0.42 degrees a ms.
  expect(Math.abs(((off + 540) % 360) - 180)).toBeLessThan(2.5 * k + 1);
});

test('climbing to a height and the height there agree', () => {
  for (const shape of ['young', 'old', 'slow-rising'] as const) {
    const contour = contourOf(shape, 'brachial');
    for (let height = 0.01; height < 0.99; height += 0.01) {
      expect(Math.abs(contour.at(contour.riseTo(height)) - height)).toBeLessThan(0.005);
    }
    expect(contour.riseTo(0)).toBe(0);
    expect(contour.riseTo(1)).toBe(contour.peakSeconds);
    expect(contour.riseTo(0.999)).toBeLessThanOrEqual(contour.peakSeconds);
  }
});
