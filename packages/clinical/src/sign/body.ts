import type { FieldReader } from '../contract/fields.js';
import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import type { SignCircumstances } from './circumstances.js';
import type { SignFlagCode } from './codes.js';
import { SIGN_COMPARISONS as SIDE } from './comparisons.js';
import { SIGN_FIGURES as F } from './figures.js';
import { within, yesNo } from './readSign.js';
import { type Height, HOW_KNOWN, type HowKnown, type Weight } from './sign.js';

export const WEIGHT_FIELDS = ['of', 'kg', 'how'] as const;
export const HEIGHT_FIELDS = ['of', 'cm', 'how', 'lying'] as const;

/** Reads a weight; null if anything was refused. */
export function readWeight(reader: FieldReader): Weight | null {
  const kg = reader.number('kg', within(F.lightestKg.value, F.heaviestKg.value));
  const how = reader.choice<HowKnown>('how', HOW_KNOWN, null);
  return kg === null || how === null ? null : { of: 'weight', kg, how };
}

/** Reads a height; an absent `lying` is a standing height. Null if anything was refused. */
export function readHeight(reader: FieldReader): Height | null {
  const cm = reader.number('cm', within(F.shortestCm.value, F.tallestCm.value));
  const how = reader.choice<HowKnown>('how', HOW_KNOWN, null);
  const lying = yesNo(reader, 'lying', false);
  return cm === null || how === null ? null : { of: 'height', cm, how, lying };
}

/** A weight to be looked at again (a wrong unit, a slipped point), or one that nobody measured. */
export function weightFlags({ kg, how }: Weight, { ageMonths }: SignCircumstances): Flag<SignFlagCode>[] {
  const lowKg = F.queryLightAdultKg.value;
  const highKg = F.queryHeavyKg.value;
  const isLow = isAdult(ageMonths) && passes(kg, SIDE.queryLightAdultKg, lowKg);
  const isQueried = isLow || passes(kg, SIDE.queryHeavyKg, highKg);
  return [
    ...flagIf(isQueried, 'implausible-weight', { kg }),
    ...flagIf(how !== 'measured', 'weight-not-measured', {}),
  ];
}

/**
 * A height to be looked at again, one that nobody measured, or one taken in the posture of another age: lying under
 * 2 years, standing from then on.
 * Source: bedside handbook 4.4 (from memory).
 */
export function heightFlags(
  { cm, how, lying }: Height,
  { ageMonths }: SignCircumstances,
): Flag<SignFlagCode>[] {
  const isLow = isAdult(ageMonths) && passes(cm, SIDE.queryShortAdultCm, F.queryShortAdultCm.value);
  const isQueried = isLow || passes(cm, SIDE.queryTallCm, F.queryTallCm.value);
  const underMonths = F.lyingUnderMonths.value;
  const isYoung = ageMonths !== null && passes(ageMonths, SIDE.lyingUnderMonths, underMonths);
  const isOlder = ageMonths !== null && !isYoung;
  const standing = { ageMonths: ageMonths ?? 0, underMonths };
  return [
    ...flagIf(isQueried, 'implausible-height', { cm }),
    ...flagIf(how !== 'measured', 'height-not-measured', {}),
    ...flagIf(lying && isOlder, 'length-lying', { longerCm: F.lyingLongerCm.value }),
    ...flagIf(!lying && isYoung, 'height-standing-young', standing),
  ];
}

function isAdult(ageMonths: number | null): boolean {
  return ageMonths !== null && passes(ageMonths, SIDE.adultFromMonths, F.adultFromMonths.value);
}

function flagIf(holds: boolean, code: SignFlagCode, figures: Flag['figures']): Flag<SignFlagCode>[] {
  return holds ? [{ code, figures }] : [];
}
