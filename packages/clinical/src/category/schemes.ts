import type { Figure } from '../contract/figure.js';
import { CATEGORY_COMPARISONS as SIDE } from './comparisons.js';
import { CATEGORY_FIGURES as F } from './figures.js';
import { type Bound, band, bound, type CategoryScheme } from './scheme.js';

/** The schemes of adults, in the order of the handbook. */
export const ADULT_SCHEME_IDS = [
  'acc-aha-2017',
  'acc-aha-2025',
  'esc-2024',
  'esc-esh-2018',
  'esh-2023',
  'nice-ng136',
  'jsh-2019',
  'ish-2020',
  'who-2021',
] as const;
export type AdultSchemeId = (typeof ADULT_SCHEME_IDS)[number];

/** The scheme of pregnancy and the six weeks after, from memory. */
export const PREGNANCY_SCHEME_IDS = ['pregnancy'] as const;
export type PregnancySchemeId = (typeof PREGNANCY_SCHEME_IDS)[number];

/** What stands under the severe range of both editions. */
const ACC_AHA = [
  band('normal', 'usual', null, null),
  band('elevated', 'elevated', from('accAhaElevatedSystolic'), null),
  band('stage-1', 'raised', from('accAhaStage1Systolic'), from('accAhaStage1Diastolic')),
  band('stage-2', 'raised', from('accAhaStage2Systolic'), from('accAhaStage2Diastolic')),
] as const;

/** One table in both editions; they differ in who wrote them and in what follows. */
const ESH = [
  band('optimal', 'usual', null, null),
  band('normal', 'usual', from('eshNormalSystolic'), from('eshNormalDiastolic')),
  band('high-normal', 'elevated', from('eshHighNormalSystolic'), from('eshHighNormalDiastolic')),
  band('grade-1', 'raised', from('eshGrade1Systolic'), from('eshGrade1Diastolic')),
  band('grade-2', 'raised', from('eshGrade2Systolic'), from('eshGrade2Diastolic')),
  band('grade-3', 'severe', from('eshGrade3Systolic'), from('eshGrade3Diastolic')),
] as const;

/** Source: bedside handbook 6.1, 3.16. */
export const ADULT_SCHEMES: readonly CategoryScheme<AdultSchemeId>[] = [
  {
    id: 'acc-aha-2017',
    ...originOf(F.accAhaStage1Systolic),
    bands: [
      ...ACC_AHA,
      band('severe', 'severe', from('accAha2017SevereSystolic'), from('accAha2017SevereDiastolic')),
    ],
  },
  {
    id: 'acc-aha-2025',
    ...originOf(F.accAhaStage1Systolic),
    bands: [
      ...ACC_AHA,
      band('severe', 'severe', from('accAha2025SevereSystolic'), from('accAha2025SevereDiastolic')),
    ],
  },
  {
    id: 'esc-2024',
    ...originOf(F.escElevatedSystolic),
    bands: [
      band('non-elevated', 'usual', null, null),
      band('elevated', 'elevated', from('escElevatedSystolic'), from('escElevatedDiastolic')),
      band('hypertension', 'raised', from('escHypertensionSystolic'), from('escHypertensionDiastolic')),
    ],
  },
  { id: 'esc-esh-2018', ...originOf(F.eshNormalSystolic), bands: ESH },
  { id: 'esh-2023', ...originOf(F.eshNormalSystolic), bands: ESH },
  {
    id: 'nice-ng136',
    ...originOf(F.niceStage1Systolic),
    bands: [
      band('below-stage-1', 'usual', null, null),
      band('stage-1', 'raised', from('niceStage1Systolic'), from('niceStage1Diastolic'), {
        systolic: F.niceStage1AwaySystolic.value,
        diastolic: F.niceStage1AwayDiastolic.value,
      }),
      band('stage-2', 'raised', from('niceStage2Systolic'), from('niceStage2Diastolic'), {
        systolic: F.niceStage2AwaySystolic.value,
        diastolic: F.niceStage2AwayDiastolic.value,
      }),
      band('severe', 'severe', from('niceSevereSystolic'), from('niceSevereDiastolic')),
    ],
  },
  {
    id: 'jsh-2019',
    ...originOf(F.jshElevatedSystolic),
    bands: [
      band('normal', 'usual', null, null),
      band('high-normal', 'elevated', from('jshHighNormalSystolic'), null),
      band('elevated', 'elevated', from('jshElevatedSystolic'), from('jshElevatedDiastolic')),
      band('grade-1', 'raised', from('jshGrade1Systolic'), from('jshGrade1Diastolic')),
      band('grade-2', 'raised', from('jshGrade2Systolic'), from('jshGrade2Diastolic')),
      band('grade-3', 'severe', from('jshGrade3Systolic'), from('jshGrade3Diastolic')),
    ],
  },
  {
    id: 'ish-2020',
    ...originOf(F.ishHighNormalSystolic),
    bands: [
      band('normal', 'usual', null, null),
      band('high-normal', 'elevated', from('ishHighNormalSystolic'), from('ishHighNormalDiastolic')),
      band('grade-1', 'raised', from('ishGrade1Systolic'), from('ishGrade1Diastolic')),
      band('grade-2', 'raised', from('ishGrade2Systolic'), from('ishGrade2Diastolic')),
    ],
  },
  {
    // A rule for treating, not a scheme of categories.
    id: 'who-2021',
    ...originOf(F.whoTreatSystolic),
    bands: [
      band('below', 'usual', null, null),
      band('treat-if-high-risk', 'elevated', from('whoHighRiskSystolic'), null),
      band('treat', 'raised', from('whoTreatSystolic'), from('whoTreatDiastolic')),
    ],
  },
];

export const PREGNANCY_SCHEME: CategoryScheme<PregnancySchemeId> = {
  id: 'pregnancy',
  ...originOf(F.pregnancyHypertensionSystolic),
  bands: [
    band('below', 'usual', null, null),
    band(
      'hypertension',
      'raised',
      from('pregnancyHypertensionSystolic'),
      from('pregnancyHypertensionDiastolic'),
    ),
    band('severe', 'severe', from('pregnancySevereSystolic'), from('pregnancySevereDiastolic')),
  ],
};

export function adultScheme(id: AdultSchemeId): CategoryScheme<AdultSchemeId> {
  return ADULT_SCHEMES.find((scheme) => scheme.id === id) as CategoryScheme<AdultSchemeId>;
}

function from(id: keyof typeof F & keyof typeof SIDE): Bound {
  return bound({ value: F[id].value, sure: F[id].sure }, SIDE[id]);
}

function originOf({ source, sure }: Figure): Pick<CategoryScheme, 'source' | 'status'> {
  return { source, status: sure };
}
