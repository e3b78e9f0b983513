import type { Flag } from '../contract/flag.js';
import { isPast } from './bands.js';
import { SCORE_FIGURES as F } from './figures.js';
import type { ScoreInputs } from './scoreInputs.js';

export type SepsisPart = 'respirations' | 'systolic' | 'consciousness';

/**
 * A quick screen for sepsis: `total` and `band` are null while a part is missing; `atLeast` is the sum of the known
 * ones, and two already alert. A negative screen does not reassure (flag).
 */
export type SepsisScreen = {
  readonly total: number | null;
  readonly atLeast: number;
  readonly parts: { readonly [Part in SepsisPart]: number | null };
  readonly band: 'negative' | 'positive' | null;
  readonly missing: readonly SepsisPart[];
  readonly alerts: readonly Flag<'sepsis-screen-positive'>[];
  readonly flags: readonly Flag<'negative-does-not-reassure'>[];
  readonly why: readonly Flag<'parts-missing'>[];
};

/**
 * One point each for fast breaths, a low systolic and an altered mind: a Glasgow total under 15, or anything but
 * alert. Either of the two findings of the mind will do; the worse one counts.
 *
 * Errors: none; {@link parseScoreInputs} refuses whom the screen is not for.
 * Source: bedside handbook 5.1 (from memory); not to be the only screen (2021 campaign, from memory).
 */
export function sepsisScreen(inputs: ScoreInputs): SepsisScreen {
  const { respirations, systolic } = inputs;
  const parts = {
    respirations: respirations === null ? null : pointIf(isPast(respirations, 'sepsisBreaths')),
    systolic: systolic === null ? null : pointIf(isPast(systolic, 'sepsisSystolic')),
    consciousness: pointOfMind(inputs),
  };
  const keys = ['respirations', 'systolic', 'consciousness'] as const;
  const missing = keys.filter((part) => parts[part] === null);
  const atLeast = keys.reduce((sum, part) => sum + (parts[part] ?? 0), 0);
  const isWhole = missing.length === 0;
  const isPositive = isPast(atLeast, 'sepsisPositive');
  const figures = { atLeast, limit: F.sepsisPositive.value };
  return {
    total: isWhole ? atLeast : null,
    atLeast,
    parts,
    band: !isWhole ? null : isPositive ? 'positive' : 'negative',
    missing,
    alerts: isPositive ? [{ code: 'sepsis-screen-positive', figures }] : [],
    flags: isPositive ? [] : [{ code: 'negative-does-not-reassure', figures }],
    why: isWhole ? [] : [{ code: 'parts-missing', figures: { missing: missing.length, atLeast } }],
  };
}

function pointOfMind({ consciousness, glasgow }: ScoreInputs): number | null {
  if (consciousness === null && glasgow === null) return null;
  const isAltered = consciousness !== null && consciousness !== 'alert';
  return pointIf(isAltered || (glasgow !== null && isPast(glasgow, 'sepsisGlasgow')));
}

function pointIf(holds: boolean): number {
  return holds ? 1 : 0;
}
