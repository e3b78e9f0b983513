import { CHILD_COMPARISONS as SIDE } from '../child/comparisons.js';
import { CHILD_FIGURES as F } from '../child/figures.js';
import { type Centiles, centilesOf } from '../child/fourthReport.js';
import { heightZ } from '../child/heightZ.js';
import { passes } from '../contract/threshold.js';
import type { RoundInput } from './roundInput.js';

/** The limits of a child's pressure at its age, sex and height, mmHg. */
export type LimitsOfChild = { readonly systolic: Centiles; readonly diastolic: Centiles };

/** A child of whom sex, age and height are known, in the range of the tables. */
export type KnownChild = { readonly sex: 'f' | 'm'; readonly ageMonths: number; readonly heightCm: number };

/** The child as the tables need it; null without sex, age or height, or outside their ages. */
export function knownChild({ heightCm, facts }: Pick<RoundInput, 'heightCm' | 'facts'>): KnownChild | null {
  const { sex, ageMonths } = facts;
  const height = heightCm ?? facts.heightCm;
  if (sex === null || ageMonths === null || height === null) return null;
  const isInRange =
    passes(ageMonths, SIDE.fourthFromMonths, F.fourthFromMonths.value) &&
    passes(ageMonths, SIDE.fourthUnderMonths, F.fourthUnderMonths.value);
  return isInRange ? { sex, ageMonths, heightCm: height } : null;
}

/** The centiles of the Fourth Report for a known child. Source: bedside handbook 6.4. */
export function limitsOfChild({ sex, ageMonths, heightCm }: KnownChild): LimitsOfChild {
  const grown = { sex, ageMonths, heightZ: heightZ(sex, ageMonths, heightCm) };
  return { systolic: centilesOf(grown, 'systolic'), diastolic: centilesOf(grown, 'diastolic') };
}
