import type { Figure, Sureness } from '../contract/figure.js';
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
      cuff('small-adult', F.ahaSmallAdultArm, F.ahaSmallAdultWidth, F.ahaSmallAdultLength, 'small'),
      cuff('adult', F.ahaAdultArm, F.ahaAdultWidth, F.ahaAdultLength, 'regular'),
      cuff('large-adult', F.ahaLargeAdultArm, F.ahaLargeAdultWidth, F.ahaLargeAdultLength, 'large'),
      cuff('thigh', F.ahaThighArm, F.ahaThighWidth, F.ahaThighLength, 'extra-large'),
    ],
  },
  {
    id: 'uk-arm-bands',
    smallestArmCm: null,
    source: F.ukSmallArm.source,
    status: F.ukSmallArm.sure,
    cuffs: [
      cuff('small', F.ukSmallArm, F.ukSmallWidth, F.ukSmallLength, 'small'),
      cuff('medium', F.ukMediumArm, F.ukMediumWidth, F.ukMediumLength, 'regular'),
      cuff('large', F.ukLargeArm, F.ukLargeWidth, F.ukLargeLength, 'large'),
    ],
  },
  {
    id: 'fourth-report-2004',
    smallestArmCm: null,
    source: F.fourthNewbornArm.source,
    status: F.fourthNewbornArm.sure,
    cuffs: [
      cuff('newborn', F.fourthNewbornArm, F.fourthNewbornWidth, F.fourthNewbornLength, null),
      cuff('infant', F.fourthInfantArm, F.fourthInfantWidth, F.fourthInfantLength, null),
      cuff('child', F.fourthChildArm, F.fourthChildWidth, F.fourthChildLength, null),
      cuff('small-adult', F.fourthSmallAdultArm, F.fourthSmallAdultWidth, F.fourthSmallAdultLength, 'small'),
      cuff('adult', F.fourthAdultArm, F.fourthAdultWidth, F.fourthAdultLength, 'regular'),
      cuff('large-adult', F.fourthLargeAdultArm, F.fourthLargeAdultWidth, F.fourthLargeAdultLength, 'large'),
      cuff('thigh', F.fourthThighArm, F.fourthThighWidth, F.fourthThighLength, 'extra-large'),
    ],
  },
];

export function cuffScheme(id: CuffSchemeId): CuffScheme {
  return CUFF_SCHEMES.find((scheme) => scheme.id === id) as CuffScheme;
}

function cuff(id: string, arm: Figure, width: Figure, length: Figure, trialSize: TrialSize): SchemeCuff {
  return {
    id,
    largestArmCm: arm.value,
    bladderCm: { width: width.value, length: length.value },
    trialSize,
  };
}
