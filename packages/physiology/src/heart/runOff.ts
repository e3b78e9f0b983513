import { exp, log } from '../exact/exponential.js';
import { type FibrillationLaw, meanDecay } from './fibrillation.js';
import { HEART_FIGURES as F } from './figures.js';

/** Share of the pressure over the run-off level that is left at the next foot, after an interval in seconds. */
export function leftAfter(interval: number, perSecond: number): number {
  return exp(-perSecond * (interval - F.ejectionSeconds.value));
}

/** The run-off rate (per second) at which a regular heart keeps its levels. Source: physiology handbook 3.3. */
export function runOffRate(systolic: number, diastolic: number, interval: number): number {
  return -log(wantedLeft(systolic, diastolic)) / (interval - F.ejectionSeconds.value);
}

/** The same for atrial fibrillation: the rate at which the mean levels are kept over all its intervals. */
export function fibrillationRunOffRate(systolic: number, diastolic: number, law: FibrillationLaw): number {
  const wanted = wantedLeft(systolic, diastolic);
  let low = 0;
  let high = 20;
  for (let step = 0; step < 48; step++) {
    const middle = (low + high) / 2;
    // The Gaussian mean turns up again for absurd rates; within these bounds it falls.
    if (meanDecay(law, F.ejectionSeconds.value, middle) > wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function wantedLeft(systolic: number, diastolic: number): number {
  const to = F.runOffToMmHg.value;
  return (diastolic - to) / (systolic - to);
}
