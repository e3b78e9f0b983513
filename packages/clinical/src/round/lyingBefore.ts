import type { Flag } from '../contract/flag.js';
import { roundTo } from '../contract/rounding.js';
import { ROUND_FIGURES as F } from './figures.js';
import { isRestWhole } from './rest.js';

export type LyingCode = 'lying-too-short' | 'lying-not-known';

const SECONDS = 60;

/** Minutes lying to a tenth, as a reading keeps them; null past the longest time that is kept. */
export function minutesLying(seconds: number): number | null {
  const minutes = roundTo(seconds / SECONDS, 1);
  return minutes >= 0 && minutes <= F.longestLyingMinutes.value ? minutes : null;
}

/**
 * How many seconds more somebody lies before the reading from which a fall on standing is told; 0 for long enough.
 *
 * Source: bedside handbook 3.14 (lie 5 min, then measure).
 * @example lyingDue(200) // 100
 */
export function lyingDue(seconds: number): number {
  return Math.max(0, F.lyingBeforeMinutes.value * SECONDS - seconds);
}

/**
 * That a reading came before the person had lain long enough; where nobody said how long, that it is not known, if a fall on standing
 * is told from it.
 */
export function lyingFlags(minutes: number | null, isBaseline = false): Flag<LyingCode>[] {
  if (minutes === null) {
    const neededMinutes = F.lyingBeforeMinutes.value;
    return isBaseline ? [{ code: 'lying-not-known', figures: { neededMinutes } }] : [];
  }
  const neededMinutes = F.lyingBeforeMinutes.value;
  const isLong = isRestWhole({ seconds: minutes * SECONDS, neededSeconds: neededMinutes * SECONDS });
  return isLong ? [] : [{ code: 'lying-too-short', figures: { minutes, neededMinutes } }];
}
