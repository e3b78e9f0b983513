import type { Flag } from '../contract/flag.js';
import type { GlasgowPart } from '../sign/sign.js';
import { heldAt } from './bands.js';
import { SCORE_FIGURES as F } from './figures.js';
import { missingOf, type ScoreInputs } from './scoreInputs.js';

export type GlasgowBand = 'mild' | 'moderate' | 'severe';
type GlasgowKey = 'eyes' | 'verbal' | 'motor';

/**
 * A Glasgow total, 3 to 15. A part that cannot be tested or is missing leaves no total. There is no "at least": on
 * this scale less is worse, and the sum of some parts says nothing. `text` is the trade's, `E4 V5 M6 = 15`; a part
 * that is not known is `?`.
 */
export type GlasgowTotal = {
  readonly total: number | null;
  readonly parts: { readonly [Key in GlasgowKey]: GlasgowPart | null };
  readonly band: GlasgowBand | null;
  readonly missing: readonly GlasgowKey[];
  readonly text: string;
  readonly alerts: readonly Flag<'glasgow-severe'>[];
  readonly flags: readonly Flag<never>[];
  readonly why: readonly Flag<'glasgow-not-testable' | 'glasgow-part-missing'>[];
};

/**
 * The sum of eyes, verbal and motor. Never made from a level of consciousness, nor the other way round.
 *
 * Errors: none. Source: bedside handbook 4.3 (from memory).
 */
export function glasgowTotal(inputs: ScoreInputs): GlasgowTotal {
  const { eyes, verbal, motor } = inputs;
  const missing = missingOf(inputs, ['eyes', 'verbal', 'motor']);
  const parts = { eyes, verbal, motor };
  const isUntested = [eyes, verbal, motor].includes('not-testable');
  const written = `E${partText(eyes)} V${partText(verbal)} M${partText(motor)}`;
  if (typeof eyes !== 'number' || typeof verbal !== 'number' || typeof motor !== 'number') {
    const untested = isUntested ? [{ code: 'glasgow-not-testable', figures: {} } as const] : [];
    const absent =
      missing.length > 0
        ? [{ code: 'glasgow-part-missing', figures: { missing: missing.length } } as const]
        : [];
    const why = [...untested, ...absent];
    return { total: null, parts, band: null, missing, text: written, alerts: [], flags: [], why };
  }
  const total = eyes + verbal + motor;
  const band = heldAt<GlasgowBand>(
    total,
    [
      ['glasgowSevere', 'severe'],
      ['glasgowModerate', 'moderate'],
    ],
    'mild',
  );
  return {
    total,
    parts,
    band,
    missing,
    text: `${written} = ${total}`,
    alerts:
      band === 'severe' ? [{ code: 'glasgow-severe', figures: { total, limit: F.glasgowSevere.value } }] : [],
    flags: [],
    why: [],
  };
}

function partText(part: GlasgowPart | null): string {
  return part === null ? '?' : part === 'not-testable' ? 'NT' : String(part);
}
