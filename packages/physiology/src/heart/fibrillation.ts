import { exp } from '../exact/exponential.js';
import { HEART_FIGURES as F } from './figures.js';

/** The law of the intervals in atrial fibrillation at a mean rate: slow Gaussian part plus an exponential one, seconds. */
export type FibrillationLaw = {
  readonly meanSeconds: number;
  readonly slowMean: number;
  readonly slowSd: number;
  readonly tailPerSecond: number;
  /** No stroke after an interval as short as this. */
  readonly fillingFrom: number;
  /** Mean filling over the law, by which strokes are made 1 on average. */
  readonly meanFilling: number;
};

/**
 * The book gives three rates (62, 81 and 136/min with tails of 4.5, 6 and 10 a second); they lie on a straight line,
 * which is used between them. Source: physiology handbook 2.3.
 */
export function fibrillationLaw(ratePerMinute: number): FibrillationLaw {
  const tail = F.fibrillationTailHz.value + TAIL_PER_RATE * (ratePerMinute - DEFAULT_RATE);
  const tailPerSecond = tail < 3 ? 3 : Math.min(tail, 12);
  const meanSeconds = 60 / ratePerMinute;
  const slowMean = meanSeconds - 1 / tailPerSecond;
  const isFast = isFastFibrillation(ratePerMinute);
  const slowSd = (isFast ? F.fibrillationSlowSdFast.value : F.fibrillationSlowSd.value) * slowMean;
  const fillingFrom = isFast ? F.fillingFromFastSeconds.value : F.fillingFromSeconds.value;
  const law = { meanSeconds, slowMean, slowSd, tailPerSecond, fillingFrom };
  return { ...law, meanFilling: 1 - meanDecay(law, fillingFrom, 1 / F.fillingSeconds.value) };
}

const DEFAULT_RATE = 60 / 0.7377;
const TAIL_PER_RATE = 0.0743;
/** Above this rate hardly any interval fills a ventricle. */
const FAST = 110;

/** Whether a rate is so fast that beats are lost between heart and wrist. */
export function isFastFibrillation(ratePerMinute: number): boolean {
  return ratePerMinute > FAST;
}

/** Mean of exp(-k (RR - from)) over the law. */
export function meanDecay(
  law: { readonly slowMean: number; readonly slowSd: number; readonly tailPerSecond: number },
  from: number,
  k: number,
): number {
  const slow = exp(-k * (law.slowMean - from) + (k * k * law.slowSd * law.slowSd) / 2);
  return (slow * law.tailPerSecond) / (law.tailPerSecond + k);
}
