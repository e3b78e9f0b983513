import type { Sureness } from '../contract/figure.js';
import type { Flag } from '../contract/flag.js';
import { roundTo } from '../contract/rounding.js';
import { type CuffBias, cuffBias } from './cuffBias.js';
import { CUFF_FIGURES as F } from './figures.js';
import { type Bladder, type CuffSchemeId, cuffScheme, type SchemeCuff } from './schemes.js';

/** An arm, the scheme to choose by, and the cuff at hand if it is to be judged. Only `parseCuffQuestion` makes one from outside. */
export type CuffQuestion = {
  readonly armCm: number;
  readonly scheme: CuffSchemeId;
  readonly atHand: string | null;
};

export type CuffReasonCode = 'arm-below-scheme' | 'arm-above-scheme' | 'not-compared';
export type CuffFlagCode = 'cuff-too-small' | 'cuff-too-large';

/** The right cuff; null with its reason where the scheme has none for this arm. Bladder in cm, bias in mmHg. */
export type CuffChoice = {
  readonly scheme: CuffSchemeId;
  readonly cuff: string | null;
  readonly bladderCm: Bladder | null;
  readonly biasMmHg: CuffBias['biasMmHg'];
  readonly biasRangeMmHg: CuffBias['biasRangeMmHg'];
  readonly biasSource: string | null;
  /** How sure the scheme's table is. */
  readonly status: Sureness;
  readonly flags: readonly Flag<CuffFlagCode>[];
  readonly why: readonly Flag<CuffReasonCode>[];
};

/** The version of the rule of choosing a cuff, as named beside each answer. */
export const CUFF_RULE = 'cuff-1';

/**
 * The cuff for an arm by a scheme, and what the one at hand does instead. The circumference is rounded to a whole
 * cm, half up, before it is looked up.
 *
 * Errors: none; a {@link CuffQuestion} has been parsed.
 * Source: bedside handbook 3.2 and 3.3.
 *
 * @example cuffChoice({ armCm: 26.5, scheme: 'aha-2005', atHand: null }) // adult, 16 x 30
 */
export function cuffChoice({ armCm, scheme: id, atHand }: CuffQuestion): CuffChoice {
  const scheme = cuffScheme(id);
  const wholeCm = roundTo(armCm, 0);
  const isBelow = scheme.smallestArmCm !== null && wholeCm < scheme.smallestArmCm;
  const right = isBelow ? undefined : scheme.cuffs.find(({ largestArmCm }) => wholeCm <= largestArmCm);
  const hand = scheme.cuffs.find((cuff) => cuff.id === atHand);
  const why: Flag<CuffReasonCode>[] = [];
  if (right === undefined)
    why.push({ code: isBelow ? 'arm-below-scheme' : 'arm-above-scheme', figures: { armCm } });
  const bias = right === undefined || hand === undefined ? null : cuffBias(scheme, right, hand);
  if (bias !== null && bias.biasMmHg === null) why.push({ code: 'not-compared', figures: {} });
  return {
    scheme: id,
    cuff: right?.id ?? null,
    bladderCm: right?.bladderCm ?? null,
    biasMmHg: bias?.biasMmHg ?? null,
    biasRangeMmHg: bias?.biasRangeMmHg ?? null,
    biasSource: bias?.source ?? null,
    status: scheme.status,
    flags: wrongSize(right, hand, wholeCm),
    why,
  };
}

/** Whether the cuff at hand is the wrong one; an arm beyond the scheme is judged by the table's end. */
function wrongSize(
  right: SchemeCuff | undefined,
  hand: SchemeCuff | undefined,
  wholeCm: number,
): Flag<CuffFlagCode>[] {
  if (hand === undefined || right?.id === hand.id) return [];
  const isTooSmall = wholeCm > hand.largestArmCm;
  return [{ code: isTooSmall ? 'cuff-too-small' : 'cuff-too-large', figures: { armCm: wholeCm } }];
}

/** The shortest and the narrowest bladder for an arm, in cm, whatever the scheme. Source: bedside handbook 3.2. */
export function smallestBladderCm(armCm: number): Bladder {
  return { width: armCm * F.bladderWidthShare.value, length: armCm * F.bladderLengthShare.value };
}
