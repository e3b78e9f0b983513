import { CUFF_FIGURES as F } from './figures.js';
import type { CuffScheme, SchemeCuff, TrialSize } from './schemes.js';

/** What a cuff at hand does to the two numbers, in mmHg: reading with it minus reading with the right one. */
export type CuffBias = {
  /** The mean of a trial that compared just these two; 0 for the right cuff itself; null if none did. */
  readonly biasMmHg: { readonly systolic: number; readonly diastolic: number } | null;
  /** Lowest and highest mean effect of a cuff wrong in this direction over many studies; null for the right one. */
  readonly biasRangeMmHg: {
    readonly systolic: readonly [number, number];
    readonly diastolic: readonly [number, number];
  } | null;
  readonly source: string | null;
};

/** The regular cuff on everybody: what it did by the size that was right. Source: bedside handbook 3.3. */
const REGULAR_ON: Readonly<Partial<Record<NonNullable<TrialSize>, CuffBias['biasMmHg']>>> = {
  small: { systolic: F.regularOnSmallSystolic.value, diastolic: F.regularOnSmallDiastolic.value },
  large: { systolic: F.regularOnLargeSystolic.value, diastolic: F.regularOnLargeDiastolic.value },
  'extra-large': {
    systolic: F.regularOnExtraLargeSystolic.value,
    diastolic: F.regularOnExtraLargeDiastolic.value,
  },
};

const TOO_SMALL: CuffBias['biasRangeMmHg'] = {
  systolic: [F.tooSmallSystolicLow.value, F.tooSmallSystolicHigh.value],
  diastolic: [F.tooSmallDiastolicLow.value, F.tooSmallDiastolicHigh.value],
};

const TOO_LARGE: CuffBias['biasRangeMmHg'] = {
  systolic: [F.tooLargeSystolicLow.value, F.tooLargeSystolicHigh.value],
  diastolic: [F.tooLargeDiastolicLow.value, F.tooLargeDiastolicHigh.value],
};

/**
 * The expected bias of the cuff at hand where another is right, both of one scheme. It is not to be subtracted:
 * the mean of a trial says little of one person.
 * Source: bedside handbook 3.1 (13, 14) and 3.3.
 */
export function cuffBias(scheme: CuffScheme, right: SchemeCuff, atHand: SchemeCuff): CuffBias {
  if (right.id === atHand.id) {
    return { biasMmHg: { systolic: 0, diastolic: 0 }, biasRangeMmHg: null, source: null };
  }
  const isTooSmall = scheme.cuffs.indexOf(atHand) < scheme.cuffs.indexOf(right);
  const biasRangeMmHg = isTooSmall ? TOO_SMALL : TOO_LARGE;
  const biasMmHg =
    atHand.trialSize === 'regular' && right.trialSize !== null ? REGULAR_ON[right.trialSize] : null;
  const source = biasMmHg == null ? F.tooSmallSystolicLow.source : F.regularOnSmallSystolic.source;
  return { biasMmHg: biasMmHg ?? null, biasRangeMmHg, source };
}
