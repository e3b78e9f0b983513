import { roundedText, roundTo } from './rounding.js';
import { type Comparison, passes } from './threshold.js';

/** A limit with the side on which it applies. */
export type SidedLimit = { readonly comparison: Comparison; readonly limit: number };

/** Most decimals that are shown; a number nearer to a limit than that is not told from it. */
const MOST_DECIMALS = 9;

/**
 * A pressure in mmHg as it is shown beside limits: whole, unless the whole number would fall on the other side of
 * one of them; then with as many decimals as it takes (139.6 is below 140 and is shown as 139.6).
 *
 * Source: docs/conventions.md section 4; bedside handbook 0.2, 8 (C059).
 */
export function shownPressure(mmHg: number, limits: readonly SidedLimit[]): string {
  const stands = (decimals: number) =>
    limits.every(
      ({ comparison, limit }) =>
        passes(roundTo(mmHg, decimals), comparison, limit) === passes(mmHg, comparison, limit),
    );
  let decimals = 0;
  while (decimals < MOST_DECIMALS && !stands(decimals)) decimals += 1;
  return roundedText(mmHg, decimals);
}
