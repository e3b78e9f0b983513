import { expect, test } from 'vitest';
import { fillingOf, liftOf, swingOf, wallOf } from './oscillation.js';

const WALL = wallOf(false, false);
const swing = (systolic: number, diastolic: number, cuff: number) => liftOf(WALL, systolic, diastolic, cuff);

/** Cuff pressure of the largest swing, to a hundredth. */
function peakOf(systolic: number, diastolic: number): number {
  let best = 0;
  for (let cuff = 0; cuff < 250; cuff += 0.01)
    if (swing(systolic, diastolic, cuff) > swing(systolic, diastolic, best)) best = cuff;
  return best;
}

/** Width at a share of the peak. */
function widthAt(share: number, systolic: number, diastolic: number): number {
  const limit = share * swing(systolic, diastolic, peakOf(systolic, diastolic));
  let steps = 0;
  for (let cuff = 0; cuff < 300; cuff += 0.01) if (swing(systolic, diastolic, cuff) >= limit) steps += 1;
  return steps / 100;
}

// Physiology handbook 15.
test.each([
  [-20, 5.02],
  [0, 16.667],
  [40, 39.96],
])('filling at %d mmHg across the wall', (across, filling) => {
  expect(fillingOf(WALL, across)).toBeCloseTo(filling, 2);
});

test('the envelope of 120/80 peaks at 93.333 with 2.91, and its ratios at the two levels are 0.550 and 0.846', () => {
  const peak = peakOf(120, 80);
  expect(Math.abs(peak - 93.333)).toBeLessThan(0.01);
  const height = swing(120, 80, peak);
  expect(height).toBeCloseTo(2.91, 2);
  expect(swing(120, 80, 120) / height).toBeCloseTo(0.55, 3);
  expect(swing(120, 80, 80) / height).toBeCloseTo(0.846, 3);
});

// Physiology handbook 6.4: the table.
test.each([
  [120, 80, [0.74, 1.35, 2.46, 2.88, 2.82, 2.38, 1.6, 0.88, 0.48, 0.15]],
  [170, 80, [0.99, 1.8, 3.28, 3.99, 4.32, 4.41, 4.33, 4.13, 3.8, 2.66]],
  [90, 60, [1.15, 2.09, 2.14, 1.47, 0.81, 0.44, 0.24, 0.13, 0.07, 0.02]],
] as const)('swing at %d/%d', (systolic, diastolic, row) => {
  [40, 60, 80, 90, 100, 110, 120, 130, 140, 160].forEach((cuff, i) => {
    expect(Math.abs(swing(systolic, diastolic, cuff) - (row[i] ?? 0))).toBeLessThanOrEqual(0.0051);
  });
});

// Liu 2014 by physiology handbook 18, row 30: 3.0 (0.8), 57 (11), 89 (12).
test('at 112/70 height and widths lie where they were published', () => {
  expect(Math.abs(swing(112, 70, peakOf(112, 70)) - 3)).toBeLessThan(0.8);
  expect(Math.abs(widthAt(0.5, 112, 70) - 57)).toBeLessThan(11);
  expect(Math.abs(widthAt(0.3, 112, 70) - 89)).toBeLessThan(12);
});

test('a stiff artery swings wider between its levels and a loose cuff swings less', () => {
  const stiff = wallOf(true, false);
  expect(liftOf(stiff, 178, 82, 130) / liftOf(stiff, 120, 80, 93)).toBeGreaterThan(1.3);
  expect(liftOf(wallOf(false, true), 120, 80, 93)).toBeCloseTo(0.5 * swing(120, 80, 93), 9);
});

// Physiology handbook 6.4: the lesson is not to read by the swing; what is read is its middle.
test('the needle swings as far over the pressure in the cuff as under it, by the amplitudes of the table', () => {
  const levels = { systolic: 120, diastolic: 80 };
  for (const [cuff, amplitude] of [
    [80, 2.46],
    [100, 2.82],
    [120, 1.6],
  ] as const) {
    expect(swingOf(WALL, 120, levels, cuff)).toBeCloseTo(amplitude / 2, 2);
    expect(swingOf(WALL, 80, levels, cuff)).toBeCloseTo(-amplitude / 2, 2);
  }
});
