import { DEFLATION_FIGURES } from './figures.js';

/** What a thumb scatters by itself, ms (SD). */
export const MARK_SCATTER_MS = DEFLATION_FIGURES.markScatterMs.value;

/**
 * Whether moments that were marked on two devices are set apart more coarsely by their clocks than by the thumb itself.
 *
 * @param withinMs how far the two clocks may be apart, either way
 */
export function isCoarserThanThumb(withinMs: number): boolean {
  return withinMs > MARK_SCATTER_MS;
}
