import { roundTo } from '../contract/rounding.js';
import type { ConsciousnessLevel, OxygenScale } from '../sign/sign.js';
import { heldAt, type Step } from './bands.js';
import { SCORE_FIGURES as F } from './figures.js';

/**
 * The points of the early-warning score for adults. The numbers are those of the Royal College of Physicians
 * (London, December 2017), used with acknowledgement; its chart is not reproduced.
 *
 * The table is printed in whole numbers, temperature in tenths, without a gap between its rows: a value is rounded
 * so before it is looked up, half up, and no value falls between two rows.
 */
const MOST = F.ewMostPoints.value;

const BREATHS: readonly Step<number>[] = [
  ['ewBreathsLow3', MOST],
  ['ewBreathsLow1', 1],
  ['ewBreathsHigh3', MOST],
  ['ewBreathsHigh2', 2],
];

const SCALE_ONE: readonly Step<number>[] = [
  ['ewScaleOneLow3', MOST],
  ['ewScaleOneLow2', 2],
  ['ewScaleOneLow1', 1],
];

const SCALE_TWO: readonly Step<number>[] = [
  ['ewScaleTwoLow3', MOST],
  ['ewScaleTwoLow2', 2],
  ['ewScaleTwoLow1', 1],
];

/** Too much oxygen; on air a high saturation gives nothing. */
const SCALE_TWO_ON_OXYGEN: readonly Step<number>[] = [
  ['ewScaleTwoHigh3', MOST],
  ['ewScaleTwoHigh2', 2],
  ['ewScaleTwoHigh1', 1],
];

const SYSTOLIC: readonly Step<number>[] = [
  ['ewSystolicLow3', MOST],
  ['ewSystolicLow2', 2],
  ['ewSystolicLow1', 1],
  ['ewSystolicHigh3', MOST],
];

const PULSE: readonly Step<number>[] = [
  ['ewPulseLow3', MOST],
  ['ewPulseLow1', 1],
  ['ewPulseHigh3', MOST],
  ['ewPulseHigh2', 2],
  ['ewPulseHigh1', 1],
];

const TEMPERATURE: readonly Step<number>[] = [
  ['ewTemperatureLow3', MOST],
  ['ewTemperatureLow1', 1],
  ['ewTemperatureHigh2', 2],
  ['ewTemperatureHigh1', 1],
];

export function pointsOfBreaths(perMinute: number): number {
  return heldAt(roundTo(perMinute, 0), BREATHS, 0);
}

/** Null where scale 2 asks whether the person is on oxygen and that is not known. */
export function pointsOfSaturation(
  percent: number,
  scale: OxygenScale,
  onOxygen: boolean | null,
): number | null {
  const whole = roundTo(percent, 0);
  if (scale === 1) return heldAt(whole, SCALE_ONE, 0);
  const low = heldAt(whole, SCALE_TWO, 0);
  const high = heldAt(whole, SCALE_TWO_ON_OXYGEN, 0);
  if (low > 0 || high === 0) return low;
  return onOxygen === null ? null : onOxygen ? high : 0;
}

export function pointsOfOxygen(onOxygen: boolean): number {
  return onOxygen ? F.ewOxygenPoints.value : 0;
}

export function pointsOfSystolic(mmHg: number): number {
  return heldAt(roundTo(mmHg, 0), SYSTOLIC, 0);
}

export function pointsOfPulse(perMinute: number): number {
  return heldAt(roundTo(perMinute, 0), PULSE, 0);
}

export function pointsOfConsciousness(level: ConsciousnessLevel): number {
  return level === 'alert' ? 0 : MOST;
}

export function pointsOfTemperature(celsius: number): number {
  return heldAt(roundTo(celsius, 1), TEMPERATURE, 0);
}
