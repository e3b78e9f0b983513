import type { InflationRules } from './rules.js';

/**
 * How far to pump up, in mmHg: the local margin above the pressure at which the pulse was lost.
 * Source: bedside handbook 3.5 (margins of 10, 20 and 30 are in use).
 *
 * @example inflateTo(124, DEFAULT_INFLATION_RULES) // 154
 */
export function inflateTo(lostMmHg: number, { marginMmHg }: Pick<InflationRules, 'marginMmHg'>): number {
  return lostMmHg + marginMmHg;
}
