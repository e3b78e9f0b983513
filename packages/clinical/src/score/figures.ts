import { type Figure, figures, type Sureness } from '../contract/figure.js';

type Origin = { readonly source: string; readonly sure: Sureness };

/** The numbers of the College's table; free to use with acknowledgement. Its chart and its colours stand nowhere here. */
const COLLEGE: Origin = {
  source: 'Royal College of Physicians, December 2017, early-warning score for adults (bedside handbook 5.2)',
  sure: 'second-hand',
};
const COLLEGE_RESPONSE: Origin = { ...COLLEGE, sure: 'found' };
const MEMORY: Origin = { source: 'bedside handbook 5.1, widely published, from memory', sure: 'memory' };
const TRAUMA: Origin = { source: 'shock index in trauma (bedside handbook 5.1)', sure: 'second-hand' };
const SPRINGER: Origin = {
  source: 'paediatric shock index study 2022, s43054-022-00103-4 (bedside handbook 5.1)',
  sure: 'found',
};
const BODY_MASS: Origin = { source: 'bedside handbook 4.4, from memory', sure: 'memory' };
const GLASGOW: Origin = { source: 'bedside handbook 4.3, from memory', sure: 'memory' };
const STANDING: Origin = {
  source: 'consensus definition of orthostatic hypotension (bedside handbook 3.14)',
  sure: 'found',
};
const STANDING_QUOTED: Origin = { source: 'bedside handbook 3.14', sure: 'second-hand' };
const SITTING: Origin = { source: 'Shaw 2017, J Hypertens 35:1019', sure: 'found' };
const RATIO: Origin = { source: 'Norcliffe-Kaufmann 2018, Ann Neurol 83:522', sure: 'found' };
const RISE: Origin = { source: 'bedside handbook 3.14, from memory', sure: 'memory' };
const UNITS: Origin = { source: 'definition of the unit (bedside handbook 0.2, 4.4)', sure: 'derived' };
const DECISION: Origin = { source: 'docs/conventions.md section 7', sure: 'decision' };

/** Every number of the scores, the derived values and the standing test. */
export const SCORE_FIGURES = figures({
  ewMostPoints: row(3, 'points', 'the most that one part of the early-warning score gives', COLLEGE),
  ewOxygenPoints: row(2, 'points', 'early-warning score: on oxygen', COLLEGE),
  ewBreathsLow3: early(8, '/min', 3, 'breaths'),
  ewBreathsLow1: early(11, '/min', 1, 'breaths'),
  ewBreathsHigh2: early(21, '/min', 2, 'breaths'),
  ewBreathsHigh3: early(25, '/min', 3, 'breaths'),
  ewScaleOneLow3: early(91, '%', 3, 'saturation on scale 1'),
  ewScaleOneLow2: early(93, '%', 2, 'saturation on scale 1'),
  ewScaleOneLow1: early(95, '%', 1, 'saturation on scale 1'),
  ewScaleTwoLow3: early(83, '%', 3, 'saturation on scale 2'),
  ewScaleTwoLow2: early(85, '%', 2, 'saturation on scale 2'),
  ewScaleTwoLow1: early(87, '%', 1, 'saturation on scale 2'),
  ewScaleTwoHigh1: early(93, '%', 1, 'saturation on scale 2, on oxygen'),
  ewScaleTwoHigh2: early(95, '%', 2, 'saturation on scale 2, on oxygen'),
  ewScaleTwoHigh3: early(97, '%', 3, 'saturation on scale 2, on oxygen'),
  ewSystolicLow3: early(90, 'mmHg', 3, 'systolic pressure'),
  ewSystolicLow2: early(100, 'mmHg', 2, 'systolic pressure'),
  ewSystolicLow1: early(110, 'mmHg', 1, 'systolic pressure'),
  ewSystolicHigh3: early(220, 'mmHg', 3, 'systolic pressure'),
  ewPulseLow3: early(40, '/min', 3, 'pulse'),
  ewPulseLow1: early(50, '/min', 1, 'pulse'),
  ewPulseHigh1: early(91, '/min', 1, 'pulse'),
  ewPulseHigh2: early(111, '/min', 2, 'pulse'),
  ewPulseHigh3: early(131, '/min', 3, 'pulse'),
  ewTemperatureLow3: early(35, 'degC', 3, 'temperature'),
  ewTemperatureLow1: early(36, 'degC', 1, 'temperature'),
  ewTemperatureHigh1: early(38.1, 'degC', 1, 'temperature'),
  ewTemperatureHigh2: early(39.1, 'degC', 2, 'temperature'),
  ewMediumTotal: row(5, 'points', 'early-warning score: medium from this total', COLLEGE_RESPONSE),
  ewHighTotal: row(7, 'points', 'early-warning score: high from this total', COLLEGE_RESPONSE),
  ewZeroHours: row(12, 'h', 'early-warning score 0: least often checked', COLLEGE),
  ewLowFromHours: row(4, 'h', 'early-warning score 1 to 4: checked from this often', COLLEGE),
  ewLowToHours: row(6, 'h', 'early-warning score 1 to 4: checked at least this often', COLLEGE),
  ewHourly: row(1, 'h', 'early-warning score 5 to 6, or one part of 3: checked this often', COLLEGE),
  ewFromYears: row(16, 'years', 'the early-warning score holds from this age', COLLEGE),
  sepsisBreaths: row(22, '/min', 'sepsis screen: a point for breaths this fast', MEMORY),
  sepsisSystolic: row(100, 'mmHg', 'sepsis screen: a point for a systolic this low', MEMORY),
  sepsisGlasgow: row(15, 'points', 'sepsis screen: a point for a Glasgow total under this', MEMORY),
  sepsisPositive: row(2, 'points', 'sepsis screen: positive from this total', MEMORY),
  sepsisFromYears: row(18, 'years', 'the sepsis screen was made for adults from this age', MEMORY),
  shockIndexLow: row(0.5, '/min per mmHg', 'low end of the shock index of the healthy', TRAUMA),
  shockIndexUsual: row(0.7, '/min per mmHg', 'high end of the shock index of the healthy', TRAUMA),
  shockIndexRaised: row(0.9, '/min per mmHg', 'shock index: worse outcome in trauma', TRAUMA),
  shockIndexHigh: row(1, '/min per mmHg', 'shock index: poor prognosis', TRAUMA),
  shockIndexFromYears: row(17, 'years', 'the adult’s shock index from this age', {
    ...DECISION,
    source: `${DECISION.source}: older than the ages of the paediatric limits`,
  }),
  modifiedShockIndexLow: row(0.7, '/min per mmHg', 'modified shock index of concern', MEMORY),
  modifiedShockIndexHigh: row(1.3, '/min per mmHg', 'modified shock index of concern', SPRINGER),
  ageShockIndexHigh: row(50, 'years/min per mmHg', 'age shock index of concern', MEMORY),
  childShockIndexFromYears: row(4, 'years', 'youngest age of the paediatric shock index', SPRINGER),
  childShockIndexMiddleYears: row(7, 'years', 'age from which the middle limit holds', SPRINGER),
  childShockIndexOlderYears: row(13, 'years', 'age from which the last limit holds', SPRINGER),
  childShockIndexToYears: row(16, 'years', 'oldest age of the paediatric shock index', SPRINGER),
  childShockIndexYoung: row(1.22, '/min per mmHg', 'paediatric shock index, 4 to 6 years', SPRINGER),
  childShockIndexMiddle: row(1, '/min per mmHg', 'paediatric shock index, 7 to 12 years', SPRINGER),
  childShockIndexOlder: row(0.9, '/min per mmHg', 'paediatric shock index, 13 to 16 years', SPRINGER),
  meanThird: row(3, '', 'mean pressure: diastolic and a part in this many of the pulse pressure', MEMORY),
  meanFormFactor: row(0.4, '', 'mean pressure by form factor: diastolic and this share of it', MEMORY),
  meanRateBase: row(0.33, '', 'mean pressure corrected for rate: share at no beats', MEMORY),
  meanRateSlope: row(
    0.0012,
    'min',
    'mean pressure corrected for rate: share added by a beat a minute',
    MEMORY,
  ),
  meanLow: row(65, 'mmHg', 'low mean pressure', MEMORY),
  meanUsualLow: row(70, 'mmHg', 'low end of the usual mean pressure', MEMORY),
  meanUsualHigh: row(105, 'mmHg', 'high end of the usual mean pressure', MEMORY),
  pulsePressureWide: row(60, 'mmHg', 'wide pulse pressure (older adults)', MEMORY),
  pulsePressureNarrow: row(0.25, '', 'narrow pulse pressure: share of the systolic', MEMORY),
  rateProductLow: row(6000, 'mmHg/min', 'low end of the resting rate-pressure product', MEMORY),
  rateProductHigh: row(12000, 'mmHg/min', 'high end of the resting rate-pressure product', MEMORY),
  bodyMassUsual: row(18.5, 'kg/m2', 'body-mass index: usual from this', BODY_MASS),
  bodyMassOver: row(25, 'kg/m2', 'body-mass index: over from this', BODY_MASS),
  bodyMassClass1: row(30, 'kg/m2', 'body-mass index: class 1 from this', BODY_MASS),
  bodyMassClass2: row(35, 'kg/m2', 'body-mass index: class 2 from this', BODY_MASS),
  bodyMassClass3: row(40, 'kg/m2', 'body-mass index: class 3 from this', BODY_MASS),
  bodyMassFromYears: row(18, 'years', 'adult classes of the body-mass index from this age', BODY_MASS),
  cmInMetre: row(100, 'cm/m', 'centimetres in a metre', UNITS),
  glasgowLeast: row(3, 'points', 'least Glasgow total', GLASGOW),
  glasgowMost: row(15, 'points', 'most Glasgow total', GLASGOW),
  glasgowSevere: row(8, 'points', 'Glasgow total: severe up to this', GLASGOW),
  glasgowModerate: row(12, 'points', 'Glasgow total: moderate up to this', GLASGOW),
  standingSystolicFall: row(20, 'mmHg', 'fall of the systolic from lying to standing', STANDING),
  standingDiastolicFall: row(10, 'mmHg', 'fall of the diastolic from lying to standing', STANDING),
  standingHypertensiveFall: row(
    30,
    'mmHg',
    'fall of the systolic on standing where it is high when lying',
    STANDING_QUOTED,
  ),
  standingWithinMinutes: row(3, 'min', 'a fall on standing comes within this, else it is delayed', STANDING),
  standingFirstMinutes: row(1, 'min', 'the first reading on standing', STANDING_QUOTED),
  standingSystolicLow: row(90, 'mmHg', 'a systolic on standing below this is told', STANDING_QUOTED),
  sittingSystolicFall: row(15, 'mmHg', 'fall of the systolic from sitting to standing', SITTING),
  sittingDiastolicFall: row(7, 'mmHg', 'fall of the diastolic from sitting to standing', SITTING),
  heartRateRatio: row(
    0.5,
    '/min per mmHg',
    'rise of the pulse for each mmHg of fall: neurogenic below',
    RATIO,
  ),
  standingRise: row(30, '/min', 'rise of the pulse on standing without a fall', RISE),
  standingRiseTeenage: row(40, '/min', 'rise of the pulse on standing without a fall, 12 to 19 years', RISE),
  standingRiseWithinMinutes: row(10, 'min', 'the rise comes within this', RISE),
  teenageFromYears: row(12, 'years', 'the higher limit of the rise from this age', RISE),
  teenageToYears: row(19, 'years', 'the higher limit of the rise to this age', RISE),
  longestStandingMinutes: row(60, 'min', 'a longer time on the feet is refused', DECISION),
  mostAgeYears: row(130, 'years', 'a greater age is refused', DECISION),
  fahrenheitPerCelsius: row(1.8, 'degF/degC', 'degrees Fahrenheit in a degree Celsius', UNITS),
  fahrenheitAtZero: row(32, 'degF', 'degrees Fahrenheit at 0 degC', UNITS),
  mmHgPerKiloPascal: row(7.50062, 'mmHg/kPa', 'mmHg in a kilopascal', UNITS),
  kgPerPound: row(0.45359237, 'kg/lb', 'kilograms in a pound', UNITS),
  poundsPerStone: row(14, 'lb/st', 'pounds in a stone', UNITS),
  cmPerInch: row(2.54, 'cm/in', 'centimetres in an inch', UNITS),
});

function row(value: number, unit: string, meaning: string, { source, sure }: Origin): Figure {
  return { value, unit: unit === '' ? '1' : unit, meaning, source, sure };
}

function early(value: number, unit: string, points: number, what: string): Figure {
  return row(value, unit, `early-warning score: limit of ${points} points for ${what}`, COLLEGE);
}
