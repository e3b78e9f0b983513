import { type Comparison, passes } from '../contract/threshold.js';
import { halfGap } from './seriesMeans.js';
import type { TimedRuns, TimedValues } from './timedValue.js';

/** Percent of the values on the side of a limit; null of none. Source: out-of-office handbook 11. */
export function loadPercent(values: readonly number[], comparison: Comparison, limit: number): number | null {
  if (values.length === 0) return null;
  let over = 0;
  for (let k = 0; k < values.length; k++) if (passes(values[k] as number, comparison, limit)) over++;
  return (100 * over) / values.length;
}

/** Percent of the time, each value standing for half of the gaps to its neighbours; null where no time passed. */
export function timeLoadPercent(
  { hours, values }: TimedValues,
  comparison: Comparison,
  limit: number,
): number | null {
  let over = 0;
  let all = 0;
  for (let k = 0; k < values.length; k++) {
    const weight = halfGap(hours, k);
    all += weight;
    if (passes(values[k] as number, comparison, limit)) over += weight;
  }
  return all === 0 ? null : (100 * over) / all;
}

/**
 * The area between the values and a threshold, where they are over it, in mmHg h: trapezoids on the clipped values,
 * an approximation where they cross it. Of each run for itself. Source: out-of-office handbook 11 (a decision).
 */
export function excessArea({ hours, values, starts }: TimedRuns, limit: number): number {
  let area = 0;
  for (let run = 0; run < starts.length; run++) {
    const end = starts[run + 1] ?? values.length;
    for (let k = (starts[run] as number) + 1; k < end; k++) {
      const before = Math.max(0, (values[k - 1] as number) - limit);
      const after = Math.max(0, (values[k] as number) - limit);
      area += (((hours[k] as number) - (hours[k - 1] as number)) * (before + after)) / 2;
    }
  }
  return area;
}
