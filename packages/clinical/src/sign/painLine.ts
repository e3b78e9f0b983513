import { settled } from '../contract/threshold.js';
import { SIGN_FIGURES as F } from './figures.js';

/** Points of a pain score for each mm of the line. Source: bedside handbook 4.3 (0 to 100 mm; from memory). */
const POINTS_PER_MM = F.mostPain.value / F.painLineMm.value;

/** The score that a mark on the line stands for; `mm` from the end that says no pain. */
export function scoreOfLine(mm: number): number {
  return settled(mm * POINTS_PER_MM);
}

/** Where on the line a score stands, mm from the end that says no pain. */
export function lineOfScore(score: number): number {
  return settled(score / POINTS_PER_MM);
}
