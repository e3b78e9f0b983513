import { type NumberFault, readFields } from '../contract/fields.js';
import { inOrder } from '../contract/inOrder.js';
import { isBlank } from '../contract/numberText.js';
import type { Parsed } from '../contract/refusal.js';
import type { CuffQuestion } from './cuffChoice.js';
import { CUFF_FIGURES as F } from './figures.js';
import { type CuffRules, DEFAULT_CUFF_RULES } from './rules.js';
import { CUFF_SCHEME_IDS, type CuffSchemeId, cuffScheme } from './schemes.js';

const FIELDS = ['armCm', 'scheme', 'atHand'] as const;

/**
 * Reads what is asked of a cuff: `{ armCm, scheme, atHand }`. An absent scheme is that of the local rules; the
 * cuff at hand is one of the scheme's, and may be absent.
 *
 * Errors, all together: `/armCm`, `/scheme`, `/atHand` and unknown ones: `missing`, `not-a-number`,
 * `out-of-range`, `unknown-id`, `unknown-field`.
 */
export function parseCuffQuestion(
  input: unknown,
  rules: CuffRules = DEFAULT_CUFF_RULES,
): Parsed<CuffQuestion> {
  const reader = readFields(input, FIELDS);
  const armCm = reader.number('armCm', armFault);
  const scheme = reader.choice<CuffSchemeId>('scheme', CUFF_SCHEME_IDS, rules.scheme);
  const known = scheme === null ? [] : cuffScheme(scheme).cuffs.map(({ id }) => id);
  const isAsked = !isBlank(reader.raw('atHand')) && scheme !== null;
  const atHand = isAsked ? reader.choice('atHand', known, null) : null;
  if (reader.refusals.length > 0 || armCm === null || scheme === null) {
    return { ok: false, refusals: inOrder(reader.refusals, FIELDS) };
  }
  return { ok: true, value: { armCm, scheme, atHand } };
}

function armFault(armCm: number): NumberFault | null {
  const minimum = F.thinnestArmCm.value;
  const maximum = F.thickestArmCm.value;
  if (armCm >= minimum && armCm <= maximum) return null;
  return { code: 'out-of-range', expected: 'within-limits', figures: { minimum, maximum } };
}
