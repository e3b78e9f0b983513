import { type Figure, figures } from '../contract/figure.js';

const BLADDER =
  'Flynn 2017, Pediatrics 140:e20171904; Pickering 2005, Hypertension 45:142 (bedside handbook 3.2)';
const TRIAL = 'Ishigami 2023, JAMA Intern Med 183:1061';
const REVIEW = 'Kallioinen 2017, J Hypertens 35:421 (bedside handbook 3.1)';
/** Where the tables of cuffs come from: the arms, and the bladders. */
const SCHEMES = {
  'aha-2005': {
    source: 'Pickering 2005, Hypertension 45:142; Muntner 2019, Hypertension 73:e35 (bedside handbook 3.2)',
    arms: 'second-hand',
    bladders: 'second-hand',
  },
  'uk-arm-bands': {
    source: 'habit of the United Kingdom and Europe (bedside handbook 3.2); 33 cm takes the larger cuff',
    arms: 'found',
    bladders: 'memory',
  },
  'fourth-report-2004': {
    source: 'Fourth Report 2004, table of recommended cuffs (bedside handbook 3.2)',
    arms: 'memory',
    bladders: 'memory',
  },
} as const;

const ADIYAMAN = 'Adiyaman 2006, Blood Press Monit 11:309';
const THIGH = 'Flynn 2017, Pediatrics 140:e20171904 (bedside handbook 3.15)';

/** Every number of choosing a cuff and a place for it. The protocol's `cuff` section starts from these. */
export const CUFF_FIGURES = figures({
  bladderWidthShare: {
    value: 0.4,
    unit: 'of the arm circumference',
    meaning: 'narrowest bladder',
    source: BLADDER,
    sure: 'found',
  },
  bladderLengthShare: {
    value: 0.8,
    unit: 'of the arm circumference',
    meaning: 'shortest bladder',
    source: BLADDER,
    sure: 'found',
  },
  thinnestArmCm: {
    value: 4,
    unit: 'cm',
    meaning: 'an arm thinner than this is refused: it was measured in another unit or mistyped',
    source: 'no source: under half of the largest arm for a newborn cuff',
    sure: 'decision',
  },
  thickestArmCm: {
    value: 80,
    unit: 'cm',
    meaning: 'an arm thicker than this is refused: it was measured in another unit or mistyped',
    source: 'no source: well above the largest arm of any cuff',
    sure: 'decision',
  },
  regularOnSmallSystolic: trial(-3.6, 'systolic', 'small'),
  regularOnSmallDiastolic: trial(-1.3, 'diastolic', 'small'),
  regularOnLargeSystolic: trial(4.8, 'systolic', 'large'),
  regularOnLargeDiastolic: trial(1.8, 'diastolic', 'large'),
  regularOnExtraLargeSystolic: trial(19.5, 'systolic', 'extra-large'),
  regularOnExtraLargeDiastolic: trial(7.4, 'diastolic', 'extra-large'),
  tooSmallSystolicLow: review(2.08, 'systolic', 'small', 'least'),
  tooSmallSystolicHigh: review(11.2, 'systolic', 'small', 'most'),
  tooSmallDiastolicLow: review(1.61, 'diastolic', 'small', 'least'),
  tooSmallDiastolicHigh: review(6.6, 'diastolic', 'small', 'most'),
  tooLargeSystolicLow: review(-3.7, 'systolic', 'large', 'lowest'),
  tooLargeSystolicHigh: review(-1.45, 'systolic', 'large', 'highest'),
  tooLargeDiastolicLow: review(-4.7, 'diastolic', 'large', 'lowest'),
  tooLargeDiastolicHigh: review(-0.96, 'diastolic', 'large', 'highest'),
  hydrostaticMmHgPerCm: {
    value: 0.78,
    unit: 'mmHg/cm',
    meaning: 'weight of a column of blood: what a cuff below the heart adds in theory',
    source: 'blood of 1060 kg/m3 (bedside handbook 3.1)',
    sure: 'derived',
  },
  measuredSystolicMmHgPerCm: {
    value: 0.49,
    unit: 'mmHg/cm',
    meaning: 'what a cuff below the heart added to the systolic of people',
    source: ADIYAMAN,
    sure: 'found',
  },
  measuredDiastolicMmHgPerCm: {
    value: 0.47,
    unit: 'mmHg/cm',
    meaning: 'what a cuff below the heart added to the diastolic of people',
    source: ADIYAMAN,
    sure: 'found',
  },
  thighHigherLowPercent: {
    value: 10,
    unit: '%',
    meaning: 'a systolic at the thigh is usually higher than at the arm by this or more',
    source: THIGH,
    sure: 'found',
  },
  thighHigherHighPercent: {
    value: 20,
    unit: '%',
    meaning: 'a systolic at the thigh is usually higher than at the arm by this or less',
    source: THIGH,
    sure: 'found',
  },
  ahaSmallestArm: arm(22, 'aha-2005', 'smallest arm of any cuff'),
  ahaSmallAdultArm: arm(26, 'aha-2005', 'largest arm for small-adult'),
  ahaSmallAdultWidth: bladder(12, 'aha-2005', 'bladder width of small-adult'),
  ahaSmallAdultLength: bladder(22, 'aha-2005', 'bladder length of small-adult'),
  ahaAdultArm: arm(34, 'aha-2005', 'largest arm for adult'),
  ahaAdultWidth: bladder(16, 'aha-2005', 'bladder width of adult'),
  ahaAdultLength: bladder(30, 'aha-2005', 'bladder length of adult'),
  ahaLargeAdultArm: arm(44, 'aha-2005', 'largest arm for large-adult'),
  ahaLargeAdultWidth: bladder(16, 'aha-2005', 'bladder width of large-adult'),
  ahaLargeAdultLength: bladder(36, 'aha-2005', 'bladder length of large-adult'),
  ahaThighArm: arm(52, 'aha-2005', 'largest arm for thigh'),
  ahaThighWidth: bladder(16, 'aha-2005', 'bladder width of thigh'),
  ahaThighLength: bladder(42, 'aha-2005', 'bladder length of thigh'),
  ukSmallArm: arm(22, 'uk-arm-bands', 'largest arm for small'),
  ukSmallWidth: bladder(12, 'uk-arm-bands', 'bladder width of small'),
  ukSmallLength: bladder(18, 'uk-arm-bands', 'bladder length of small'),
  ukMediumArm: arm(32, 'uk-arm-bands', 'largest arm for medium'),
  ukMediumWidth: bladder(12, 'uk-arm-bands', 'bladder width of medium'),
  ukMediumLength: bladder(26, 'uk-arm-bands', 'bladder length of medium'),
  ukLargeArm: arm(50, 'uk-arm-bands', 'largest arm for large'),
  ukLargeWidth: bladder(12, 'uk-arm-bands', 'bladder width of large'),
  ukLargeLength: bladder(40, 'uk-arm-bands', 'bladder length of large'),
  fourthNewbornArm: arm(10, 'fourth-report-2004', 'largest arm for newborn'),
  fourthNewbornWidth: bladder(4, 'fourth-report-2004', 'bladder width of newborn'),
  fourthNewbornLength: bladder(8, 'fourth-report-2004', 'bladder length of newborn'),
  fourthInfantArm: arm(15, 'fourth-report-2004', 'largest arm for infant'),
  fourthInfantWidth: bladder(6, 'fourth-report-2004', 'bladder width of infant'),
  fourthInfantLength: bladder(12, 'fourth-report-2004', 'bladder length of infant'),
  fourthChildArm: arm(22, 'fourth-report-2004', 'largest arm for child'),
  fourthChildWidth: bladder(9, 'fourth-report-2004', 'bladder width of child'),
  fourthChildLength: bladder(18, 'fourth-report-2004', 'bladder length of child'),
  fourthSmallAdultArm: arm(26, 'fourth-report-2004', 'largest arm for small-adult'),
  fourthSmallAdultWidth: bladder(10, 'fourth-report-2004', 'bladder width of small-adult'),
  fourthSmallAdultLength: bladder(24, 'fourth-report-2004', 'bladder length of small-adult'),
  fourthAdultArm: arm(34, 'fourth-report-2004', 'largest arm for adult'),
  fourthAdultWidth: bladder(13, 'fourth-report-2004', 'bladder width of adult'),
  fourthAdultLength: bladder(30, 'fourth-report-2004', 'bladder length of adult'),
  fourthLargeAdultArm: arm(44, 'fourth-report-2004', 'largest arm for large-adult'),
  fourthLargeAdultWidth: bladder(16, 'fourth-report-2004', 'bladder width of large-adult'),
  fourthLargeAdultLength: bladder(38, 'fourth-report-2004', 'bladder length of large-adult'),
  fourthThighArm: arm(52, 'fourth-report-2004', 'largest arm for thigh'),
  fourthThighWidth: bladder(20, 'fourth-report-2004', 'bladder width of thigh'),
  fourthThighLength: bladder(42, 'fourth-report-2004', 'bladder length of thigh'),
  childUnderMonths: {
    value: 216,
    unit: 'months',
    meaning: 'under this age the right arm is taken first, as the reference tables did',
    source: 'Flynn 2017, Pediatrics 140:e20171904 (bedside handbook 3.1); its upper age from memory',
    sure: 'memory',
  },
  latePregnancyFromWeeks: {
    value: 20,
    unit: 'weeks',
    meaning: 'from this week, or a week not known, nobody pregnant lies flat on the back',
    source: 'the womb presses on the great vein when one lies on the back, from memory',
    sure: 'memory',
  },
});

function trial(value: number, of: string, right: string) {
  return {
    value,
    unit: 'mmHg',
    meaning: `${of} with the regular cuff minus with the right one, where a ${right} cuff is right`,
    source: TRIAL,
    sure: 'found',
  } as const;
}

function review(value: number, of: string, cuff: string, end: string) {
  return {
    value,
    unit: 'mmHg',
    meaning: `${of}, ${end} mean effect over the studies of a cuff that is too ${cuff}`,
    source: REVIEW,
    sure: 'second-hand',
  } as const;
}

function arm(value: number, scheme: keyof typeof SCHEMES, what: string): Figure {
  const { source, arms } = SCHEMES[scheme];
  return { value, unit: 'cm', meaning: `${what}, ${scheme}`, source, sure: arms };
}

function bladder(value: number, scheme: keyof typeof SCHEMES, what: string): Figure {
  const { source, bladders } = SCHEMES[scheme];
  return { value, unit: 'cm', meaning: `${what}, ${scheme}`, source, sure: bladders };
}
