import { settled } from '../contract/threshold.js';
import type { GaugeReading } from './rules.js';

/**
 * What is read of a needle at a pressure: the nearest mark (the upper of two as near), or the next mark above
 * where it stands between two. All in mmHg. Source: bedside handbook 3.9.
 *
 * @example gaugeRead(127, 2, 'mark-above') // 128
 */
export function gaugeRead(mmHg: number, stepMmHg: number, reading: GaugeReading): number {
  const marks = settled(mmHg / stepMmHg);
  return stepMmHg * (reading === 'nearest' ? Math.round(marks) : Math.ceil(marks));
}

/** Whether a gauge with this graduation has a mark at a pressure. */
export function isOnGraduation(mmHg: number, stepMmHg: number): boolean {
  return Number.isInteger(settled(mmHg / stepMmHg));
}
