import { readMeasured } from '../category/readMeasured.js';
import { type NumberFault, readFields } from '../contract/fields.js';
import { inOrder } from '../contract/inOrder.js';
import { type Parsed, refusal } from '../contract/refusal.js';
import type { ChildQuestion } from './childResult.js';
import { CHILD_FIGURES as F } from './figures.js';
import { isHeightPossible } from './heightZ.js';
import { SEXES } from './sex.js';

const FIELDS = ['sex', 'ageMonths', 'heightCm', 'systolic', 'diastolic'] as const;

/**
 * Reads a child's pressure: `{ sex, ageMonths, heightCm, systolic, diastolic }`. One of the two pressures may be
 * absent; nothing else may, since without sex, age and height there is no category.
 *
 * Errors, all together: `missing`, `not-a-number`, `out-of-range` (24 to under 216 months), `unknown-id`,
 * `not-below-systolic`, `unknown-field`; `impossible` for a height that no child of that age and sex has.
 */
export function parseChildQuestion(input: unknown): Parsed<ChildQuestion> {
  const reader = readFields(input, FIELDS);
  const sex = reader.choice('sex', SEXES, null);
  const ageMonths = reader.number('ageMonths', ageFault);
  const heightCm = reader.number('heightCm', heightFault);
  const { systolic, diastolic } = readMeasured(reader);
  const isWhole = sex !== null && ageMonths !== null && heightCm !== null;
  if (isWhole && !isHeightPossible(sex, ageMonths, heightCm)) {
    const figures = { limitZ: F.impossibleHeightZ.value };
    reader.refusals.push(refusal('/heightCm', 'impossible', 'height-of-age', heightCm, { figures }));
  }
  if (reader.refusals.length > 0 || sex === null || ageMonths === null || heightCm === null) {
    return { ok: false, refusals: inOrder(reader.refusals, FIELDS) };
  }
  return { ok: true, value: { sex, ageMonths, heightCm, systolic, diastolic } };
}

function ageFault(ageMonths: number): NumberFault | null {
  const fromMonths = F.fourthFromMonths.value;
  const underMonths = F.fourthUnderMonths.value;
  if (ageMonths >= fromMonths && ageMonths < underMonths) return null;
  return { code: 'out-of-range', expected: 'from-under-months', figures: { fromMonths, underMonths } };
}

function heightFault(heightCm: number): NumberFault | null {
  const minimum = F.shortestHeightCm.value;
  const maximum = F.tallestHeightCm.value;
  if (heightCm >= minimum && heightCm <= maximum) return null;
  return { code: 'out-of-range', expected: 'within-limits', figures: { minimum, maximum } };
}
