import { type Figure, figures, type Sureness } from '../contract/figure.js';

const TEMPERATURE = 'bedside handbook 4.1';
const MEMORY = 'widely published, from memory';
const DECISION = 'docs/conventions.md section 7';
const ACUTE = 'Royal College of Physicians 2017, early-warning score for adults (bedside handbook 4.2)';

/** Every number of the signs that are neither counted nor taken with a cuff. */
export const SIGN_FIGURES = figures({
  coldestCelsius: row(25, 'degC', 'a temperature below this is refused', TEMPERATURE, 'practice'),
  hottestCelsius: row(45, 'degC', 'a temperature above this is refused', TEMPERATURE, 'practice'),
  queryColdCelsius: row(34, 'degC', 'a temperature below this is queried', TEMPERATURE, 'practice'),
  queryHotCelsius: row(42, 'degC', 'a temperature above this is queried', TEMPERATURE, 'practice'),
  feverCelsius: row(38, 'degC', 'fever, usual limit', MEMORY, 'memory'),
  hyperpyrexiaCelsius: row(41, 'degC', 'very high fever', MEMORY, 'memory'),
  youngInfantFeverCelsius: row(38, 'degC', 'fever of an infant under 3 months, high risk', MEMORY, 'memory'),
  infantFeverCelsius: row(39, 'degC', 'fever of an infant of 3 to 6 months', MEMORY, 'memory'),
  youngInfantUnderMonths: row(3, 'months', 'a young infant is under this age', MEMORY, 'memory'),
  infantUnderMonths: row(6, 'months', 'an infant, for a fever, is under this age', MEMORY, 'memory'),
  hypothermiaCelsius: row(35, 'degC', 'hypothermia, mild', MEMORY, 'memory'),
  hypothermiaModerateCelsius: row(32, 'degC', 'hypothermia, moderate', MEMORY, 'memory'),
  hypothermiaSevereCelsius: row(28, 'degC', 'hypothermia, severe', MEMORY, 'memory'),
  mouthWaitMinutes: row(15, 'min', 'least wait after a drink or a smoke before the mouth', MEMORY, 'memory'),
  fullPercent: row(
    100,
    '%',
    'the most that a saturation or a share of oxygen can be',
    'arithmetic',
    'derived',
  ),
  oximeterLowPercent: row(70, '%', 'below this an oximeter is not held to any accuracy', MEMORY, 'memory'),
  childLowPercent: row(92, '%', 'a child with less is of concern', 'bedside handbook 4.2', 'second-hand'),
  scaleOneLowPercent: row(94, '%', 'low end of the target on scale 1', ACUTE, 'second-hand'),
  scaleOneHighPercent: row(98, '%', 'high end of the target on scale 1', ACUTE, 'second-hand'),
  scaleTwoLowPercent: row(88, '%', 'low end of the target on scale 2', ACUTE, 'found'),
  scaleTwoHighPercent: row(92, '%', 'high end of the target on scale 2', ACUTE, 'found'),
  airPercent: row(21, '%', 'share of oxygen in air; on oxygen it is at least this', MEMORY, 'memory'),
  mostLitresPerMinute: row(100, 'L/min', 'a flow above this is refused', DECISION, 'decision'),
  oximeterPulseDifferencePerMinute: row(
    10,
    '/min',
    'the pulse on the oximeter agrees with the felt one within this',
    'bedside handbook 4.2',
    'practice',
  ),
  oximeterCeilingPerMinute: row(
    400,
    '/min',
    'a pulse on the oximeter above this is refused',
    'docs/conventions.md section 5',
    'decision',
  ),
  mostPain: row(10, 'points', 'the most that a pain score can be', MEMORY, 'memory'),
  painLineMm: row(100, 'mm', 'length of the line on which a pain is marked', MEMORY, 'memory'),
  severePain: row(7, 'points', 'severe pain from this score', MEMORY, 'memory'),
  mostEyes: row(4, 'points', 'Glasgow scale, eyes at their best', MEMORY, 'memory'),
  mostVerbal: row(5, 'points', 'Glasgow scale, speech at its best', MEMORY, 'memory'),
  mostMotor: row(6, 'points', 'Glasgow scale, movement at its best', MEMORY, 'memory'),
  lightestKg: row(0.2, 'kg', 'a weight below this is refused', DECISION, 'decision'),
  heaviestKg: row(700, 'kg', 'a weight above this is refused', DECISION, 'decision'),
  queryLightAdultKg: row(25, 'kg', 'an adult’s weight below this is queried', DECISION, 'decision'),
  queryHeavyKg: row(300, 'kg', 'a weight above this is queried', DECISION, 'decision'),
  shortestCm: row(20, 'cm', 'a height below this is refused', DECISION, 'decision'),
  tallestCm: row(280, 'cm', 'a height above this is refused', DECISION, 'decision'),
  queryShortAdultCm: row(100, 'cm', 'an adult’s height below this is queried', DECISION, 'decision'),
  queryTallCm: row(230, 'cm', 'a height above this is queried', DECISION, 'decision'),
  lyingUnderMonths: row(24, 'months', 'measured lying under this age', MEMORY, 'memory'),
  lyingLongerCm: row(0.7, 'cm', 'by about this much a lying length exceeds the height', MEMORY, 'memory'),
  childUnderMonths: row(192, 'months', 'a child, for a saturation, is under this age', DECISION, 'decision'),
  adultFromMonths: row(
    216,
    'months',
    'an adult, for weight and height, is from this age',
    DECISION,
    'decision',
  ),
});

function row(value: number, unit: string, meaning: string, source: string, sure: Sureness): Figure {
  return { value, unit, meaning, source, sure };
}
