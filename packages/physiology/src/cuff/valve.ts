import { power } from '../exact/exponential.js';
import { Air } from './air.js';
import { CUFF_FIGURES as F } from './figures.js';

/** How far open a valve is, 0 to 1, at a turn in degrees: nothing at first, then ever faster. Source: physiology handbook 6.2. */
export function openingOf(degrees: number): number {
  const turn = (degrees - F.valveDeadDegrees.value) / (F.valveFullDegrees.value - F.valveDeadDegrees.value);
  return turn <= 0 ? 0 : power(Math.min(turn, 1), F.valvePower.value);
}

/** Air let out in mL a second (at atmospheric pressure) by a valve so far open. */
export function outflow(opening: number, mmHg: number, exponent: number): number {
  return mmHg <= 0 || opening <= 0 ? 0 : opening * FULL * power(mmHg / REFERENCE, exponent);
}

const REFERENCE = 140;
const FULL = F.valveFullMmHgPerSecond.value * new Air('adult', false).complianceAt(REFERENCE);
