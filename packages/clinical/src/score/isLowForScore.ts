import { SCORE_FIGURES } from './figures.js';

/**
 * Whether a systolic, mmHg, is so low that the early-warning score of adults gives points for it. A category is one of high
 * pressures and says nothing of that. Source: handbook, bedside 4.2 (Royal College of Physicians, 2017).
 *
 * @example isLowForScore(92) // true
 */
export function isLowForScore(systolic: number): boolean {
  return systolic <= SCORE_FIGURES.ewSystolicLow1.value;
}
