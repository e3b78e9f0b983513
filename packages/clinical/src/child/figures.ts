import { type Figure, figures, type Sureness } from '../contract/figure.js';

type Origin = { readonly source: string; readonly sure: Sureness };

const AAP: Origin = {
  source: 'AAP 2017 (Flynn, Pediatrics 140:e20171904), definitions (bedside handbook 6.2)',
  sure: 'found',
};
const AAP_TABLE: Origin = {
  source: 'AAP 2017, simplified table (bedside handbook 6.3)',
  sure: 'second-hand',
};
const FOURTH: Origin = { source: 'Fourth Report 2004 (bedside handbook 6.4)', sure: 'second-hand' };
const FOURTH_LIMITS: Origin = { source: 'Fourth Report 2004 (bedside handbook 6.2)', sure: 'found' };
const LOW: Origin = {
  source: 'Pediatric Advanced Life Support 2006 and 2015 (bedside handbook 3.17)',
  sure: 'second-hand',
};
const SEVERE: Origin = { source: 'bedside handbook 3.16', sure: 'memory' };
const WHO: Origin = {
  source: 'WHO, Integrated Management of Childhood Illness (bedside handbook 2.4)',
  sure: 'second-hand',
};
const RUSCONI: Origin = { source: 'Rusconi 1994, 95th centile (bedside handbook 2.4)', sure: 'second-hand' };
const DECISION: Origin = { source: 'no source', sure: 'decision' };

/** Every single number of the pressures and rates of children; the tables stand in the `...Table.ts` files beside. */
export const CHILD_FIGURES = figures({
  aapElevatedSystolic: mmHg(120, AAP, 'lower end of elevated, 13 years and over'),
  aapStage1Systolic: mmHg(130, AAP, 'lower end of stage-1, 13 years and over'),
  aapStage1Diastolic: mmHg(80, AAP, 'lower end of stage-1, 13 years and over'),
  aapStage2Systolic: mmHg(140, AAP, 'lower end of stage-2, 13 years and over'),
  aapStage2Diastolic: mmHg(90, AAP, 'lower end of stage-2, 13 years and over'),
  staticFromYears: years(13, AAP, 'from this age the limits no longer depend on sex, age and height'),
  screeningFromYears: years(1, AAP_TABLE, 'youngest age of the screening table'),
  fourthFromMonths: months(24, FOURTH, 'youngest age at which a standing height is looked up'),
  fourthUnderMonths: months(216, FOURTH, 'the regression is for children under this age'),
  regressionFromMonths: months(12, FOURTH, 'youngest age of the regression, with a height taken as given'),
  p90Z: z(1.282, '90th centile'),
  p95Z: z(1.645, '95th centile'),
  p99Z: z(2.326, '99th centile'),
  fourthElevatedSystolic: mmHg(120, FOURTH_LIMITS, 'elevated from here, even under the 90th centile'),
  fourthElevatedDiastolic: mmHg(80, FOURTH_LIMITS, 'elevated from here, even under the 90th centile'),
  fourthStage2Above99: mmHg(5, FOURTH_LIMITS, 'stage-2 is further than this above the 99th centile'),
  shortestHeightCm: {
    value: 40,
    unit: 'cm',
    meaning: 'a height under this is refused: it was measured in another unit or mistyped',
    ...DECISION,
  },
  tallestHeightCm: {
    value: 230,
    unit: 'cm',
    meaning: 'a height over this is refused: it was measured in another unit or mistyped',
    ...DECISION,
  },
  farOutHeightZ: {
    value: 3,
    unit: 'SD',
    meaning:
      'a height further than this from the median is flagged: measured wrongly, or beyond the reference children',
    ...DECISION,
  },
  impossibleHeightZ: {
    value: 5,
    unit: 'SD',
    meaning: 'a height further than this from the median is taken for a mistake: no limit is made from it',
    ...DECISION,
  },
  shortHeightZ: {
    value: -1.645,
    unit: 'SD',
    meaning:
      'height of a short child (5th centile), taken for alerts where the height is not known: its limits are the lowest',
    source: 'as the screening table of AAP 2017 does (bedside handbook 6.3)',
    sure: 'decision',
  },
  severeAbove95: mmHg(30, SEVERE, 'further than this above the 95th centile a child needs care at once'),
  severeAdolescentSystolic: mmHg(180, SEVERE, 'above this a person of 13 to 17 needs care at once'),
  severeAdolescentDiastolic: mmHg(120, SEVERE, 'above this a person of 13 to 17 needs care at once'),
  lowNeonateSystolic: mmHg(60, LOW, 'a systolic under this is low, first month'),
  lowInfantSystolic: mmHg(70, LOW, 'a systolic under this is low, 1 to 12 months'),
  lowChildSystolic: mmHg(
    70,
    LOW,
    'low systolic at 1 to 10 years: under this and lowChildPerYear for each year',
  ),
  lowChildPerYear: mmHg(2, LOW, 'low systolic at 1 to 10 years: what each completed year adds'),
  lowOlderSystolic: mmHg(90, LOW, 'a systolic under this is low, over 10 years'),
  neonateUnderMonths: months(1, LOW, 'a neonate (28 days) is taken as under this age'),
  infantUnderMonths: months(12, LOW, 'an infant is under this age'),
  lowChildToYears: years(10, LOW, 'the limit rises with the years up to this one'),
  fastUnder2MonthsPerMinute: rate(60, 'fast breathing under 2 months'),
  fastUnder12MonthsPerMinute: rate(50, 'fast breathing at 2 to 11 months'),
  fastUnder60MonthsPerMinute: rate(40, 'fast breathing at 12 to 59 months'),
  fastYoungestUnderMonths: months(2, WHO, 'upper end of the youngest band of fast breathing'),
  fastInfantUnderMonths: months(12, WHO, 'upper end of the middle band of fast breathing'),
  fastChildUnderMonths: months(60, WHO, 'from this age the scheme has no limit of fast breathing'),
  rusconiToMonths: months(36, RUSCONI, 'oldest age of the formula'),
  rusconiAwakeConstant: formula(1.82144, 'awake, constant'),
  rusconiAwakeLinear: formula(-0.0125995, 'awake, for each month'),
  rusconiAwakeSquare: formula(0.00013401, 'awake, for each squared month'),
  rusconiAsleepConstant: formula(1.72858, 'asleep, constant'),
  rusconiAsleepLinear: formula(-0.0139928, 'asleep, for each month'),
  rusconiAsleepSquare: formula(0.00017646, 'asleep, for each squared month'),
});

function mmHg(value: number, { source, sure }: Origin, meaning: string): Figure {
  return { value, unit: 'mmHg', meaning, source, sure };
}

function years(value: number, { source, sure }: Origin, meaning: string): Figure {
  return { value, unit: 'years', meaning, source, sure };
}

function months(value: number, { source, sure }: Origin, meaning: string): Figure {
  return { value, unit: 'months', meaning, source, sure };
}

function z(value: number, centile: string): Figure {
  return {
    value,
    unit: 'SD',
    meaning: `the ${centile} of the Fourth Report`,
    source: FOURTH.source,
    sure: FOURTH.sure,
  };
}

function rate(value: number, meaning: string): Figure {
  return { value, unit: '/min', meaning, source: WHO.source, sure: WHO.sure };
}

function formula(value: number, meaning: string): Figure {
  return {
    value,
    unit: 'log10 of /min',
    meaning: `95th centile of breaths by months: ${meaning}`,
    source: RUSCONI.source,
    sure: RUSCONI.sure,
  };
}
