import type { Words } from '@evenfall/words';
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import type { Svg } from '../svg/svg.js';
import type { Paint } from './paint.js';
import { label, TEXT } from './parts.js';

/** Distance of gridlines, and what a scale is extended by, in mmHg or beats a minute. */
const STEP = 20;

/** A scale in numbers from the data: it is fixed, and extended in whole steps only where data lie outside. */
export type Extent = { readonly low: number; readonly high: number; readonly isExtended: boolean };

/** The fixed range, extended to hold every value. */
export function extentOf(values: readonly number[], low: number, high: number): Extent {
  let [least, most] = [low, high];
  for (const value of values) {
    while (value < least) least -= STEP;
    while (value > most) most += STEP;
  }
  return { low: least, high: most, isExtended: least !== low || most !== high };
}

/** Where gridlines lie. */
export function gridOf({ low, high }: Extent): number[] {
  return Array.from({ length: (high - low) / STEP + 1 }, (_, k) => low + k * STEP);
}

/** Of gridlines so far apart every so many has its number, so that none stands on another. */
export function gridLabelsEvery({ low, high }: Extent, top: number, bottom: number): number {
  const apart = ((bottom - top) * STEP) / (high - low);
  return Math.max(1, Math.ceil(LEAST_APART / apart));
}

/** Distance of lines of small text on the axis, in units of a figure. */
const LEAST_APART = 8;

/** The higher number the higher up: `top` and `bottom` are y coordinates. */
export function upScale({ low, high }: Extent, top: number, bottom: number): ScaleLinear<number, number> {
  return scaleLinear([low, high], [bottom, top]);
}

/** That a scale is extended, above its panel; nothing where it is not. */
export function extendedNote(extent: Extent, left: number, top: number, words: Words, paint: Paint): Svg[] {
  if (!extent.isExtended) return [];
  const text = words.sentence('report.extended', { low: extent.low, high: extent.high });
  return [label(text, left, top - 4, paint, { size: TEXT.small, isMuted: true })];
}
