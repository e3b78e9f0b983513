import type { Sureness } from '../contract/figure.js';
import { CUFF_FIGURES as F } from './figures.js';

export const CUFF_SCHEME_IDS = ['aha-2005', 'uk-arm-bands', 'fourth-report-2004'] as const;
export type CuffSchemeId = (typeof CUFF_SCHEME_IDS)[number];

/** A size as the trial of wrong cuffs knew it; null is a cuff for a child, who was not in it. */
export type TrialSize = 'small' | 'regular' | 'large' | 'extra-large' | null;

/** The bladder inside a cuff, in cm. */
export type Bladder = { readonly width: number; readonly length: number };

/** A row of a scheme. It starts where the cuff before it ends; arms are rounded to a whole cm before the look-up. */
export type SchemeCuff = {
  readonly id: string;
  readonly largestArmCm: number;
  readonly bladderCm: Bladder;
  readonly trialSize: TrialSize;
};

/** A published way to choose a cuff by the arm's circumference, its cuffs from the smallest. */
export type CuffScheme = {
  readonly id: CuffSchemeId;
  readonly source: string;
  readonly status: Sureness;
  /** Null where the scheme prints no lower end. */
  readonly smallestArmCm: number | null;
  readonly cuffs: readonly SchemeCuff[];
};

/** In the order of the handbook. Source: bedside handbook 3.2. */
export const CUFF_SCHEMES: readonly CuffScheme[] = [
  {
    id: 'aha-2005',
    smallestArmCm: F.ahaSmallestArm.value,
    source: F.ahaSmallAdultArm.source,
    status: F.ahaSmallAdultArm.sure,
    cuffs: [
      cuff(
        'small-adult',
        F.ahaSmallAdultArm.value,
        F.ahaSmallAdultWidth.value,
        F.ahaSmallAdultLength.value,
        'small',
      ),
      cuff('adult', F.ahaAdultArm.value, F.ahaAdultWidth.value, F.ahaAdultLength.value, 'regular'),
      cuff(
        'large-adult',
        F.ahaLargeAdultArm.value,
        F.ahaLargeAdultWidth.value,
        F.ahaLargeAdultLength.value,
        'large',
      ),
      cuff('thigh', F.ahaThighArm.value, F.ahaThighWidth.value, F.ahaThighLength.value, 'extra-large'),
    ],
  },
  {
    id: 'uk-arm-bands',
    smallestArmCm: null,
    source: F.ukSmallArm.source,
    status: F.ukSmallArm.sure,
    cuffs: [
      cuff('small', F.ukSmallArm.value, F.ukSmallWidth.value, F.ukSmallLength.value, 'small'),
      cuff('medium', F.ukMediumArm.value, F.ukMediumWidth.value, F.ukMediumLength.value, 'regular'),
      cuff('large', F.ukLargeArm.value, F.ukLargeWidth.value, F.ukLargeLength.value, 'large'),
    ],
  },
  {
    id: 'fourth-report-2004',
    smallestArmCm: null,
    source: F.fourthNewbornArm.source,
    status: F.fourthNewbornArm.sure,
    cuffs: [
      cuff(
        'newborn',
        F.fourthNewbornArm.value,
        F.fourthNewbornWidth.value,
        F.fourthNewbornLength.value,
        null,
      ),
      cuff('infant', F.fourthInfantArm.value, F.fourthInfantWidth.value, F.fourthInfantLength.value, null),
      cuff('child', F.fourthChildArm.value, F.fourthChildWidth.value, F.fourthChildLength.value, null),
      cuff(
        'small-adult',
        F.fourthSmallAdultArm.value,
        F.fourthSmallAdultWidth.value,
        F.fourthSmallAdultLength.value,
        'small',
      ),
      cuff('adult', F.fourthAdultArm.value, F.fourthAdultWidth.value, F.fourthAdultLength.value, 'regular'),
      cuff(
        'large-adult',
        F.fourthLargeAdultArm.value,
        F.fourthLargeAdultWidth.value,
        F.fourthLargeAdultLength.value,
        'large',
      ),
      cuff(
        'thigh',
        F.fourthThighArm.value,
        F.fourthThighWidth.value,
        F.fourthThighLength.value,
        'extra-large',
      ),
    ],
  },
];

export function cuffScheme(id: CuffSchemeId): CuffScheme {
  return CUFF_SCHEMES.find((scheme) => scheme.id === id) as CuffScheme;
}

function cuff(
  id: string,
  largestArmCm: number,
  width: number,
  length: number,
  trialSize: TrialSize,
): SchemeCuff {
  return { id, largestArmCm, bladderCm: { width, length }, trialSize };
}
