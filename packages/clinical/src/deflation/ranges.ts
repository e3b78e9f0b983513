import { settled } from '../contract/threshold.js';
import type { RunReasonCode } from './codes.js';
import { DEFLATION_FIGURES } from './figures.js';
import type { Pressures } from './pressures.js';
import { perBeat, type Rates, secondsBetween } from './rates.js';
import type { GaugeReading } from './rules.js';
import type { Moment, Run } from './run.js';

/**
 * What a range of deflation and gauge leaves out, in mmHg: the SD of readings of one person minutes apart. It is
 * told beside the range and never added to it.
 */
export const REPEAT_SCATTER_MMHG = DEFLATION_FIGURES.repeatScatterMmHg.value;

/** Low and high end in mmHg, both included. */
export type PressureRange = readonly [low: number, high: number];

/** What deflation and gauge alone allow: where a perfect listener at a very slow deflation would have heard it. */
export type Ranges = {
  readonly systolicRange: PressureRange | null;
  readonly diastolicRange: PressureRange | null;
  readonly why: readonly RunReasonCode[];
};

/**
 * The ranges of the two numbers of a run, each null without pulse or time. A sound is heard only on a beat, so
 * the true systolic lies up to one beat's fall above the first sound, the true diastolic up to one beat's fall
 * below the last; the gauge is read to its graduation. Certain for a regular pulse and an even deflation.
 *
 * The fall of a beat comes from gauge values too. For the systolic that error is inside the range already; for
 * the diastolic the low end leaves room for the steepest fall that the two values allow, `2g x 60 / pulse / s`
 * (s from first to last sound), which is under 0.2 mmHg in a usual run.
 * The diastolic range is about the number heard, also where the muffling is used.
 * Source: docs/conventions.md section 6; bedside handbook 3.6 (derived).
 */
export function rangesOf(run: Run, pressures: Pressures, rates: Rates, reading: GaugeReading): Ranges {
  if (run.method === 'device') {
    return { systolicRange: null, diastolicRange: null, why: ['read-from-display'] };
  }
  const gauge = gaugeErrorOf(run.gaugeStepMmHg, reading);
  const isSilent = silenceHeard(run);
  const early = perBeat(rates.earlyDeflationRateMmHgPerSecond, run.pulsePerMinute);
  const { systolic } = pressures;
  return {
    systolicRange:
      early === null || !isSilent ? null : [systolic - gauge.below, systolic + early + gauge.above],
    diastolicRange: diastolicRange(run, pressures, rates, gauge),
    why: early !== null && !isSilent ? ['silence-not-heard'] : [],
  };
}

function diastolicRange(
  run: Run,
  { diastolic }: Pressures,
  rates: Rates,
  gauge: GaugeError,
): PressureRange | null {
  const fall = rates.dropPerBeatMmHg;
  const seconds = secondsBetween(run.moments[0] as Moment, run.moments.at(-1) as Moment);
  if (diastolic === null || fall === null || seconds === null || run.pulsePerMinute === null) return null;
  const steepest = ((gauge.below + gauge.above) * 60) / run.pulsePerMinute / seconds;
  return [Math.max(0, diastolic - fall - gauge.below - steepest), diastolic + gauge.above];
}

/** How far below and above a gauge value the pressure may be, in mmHg. */
type GaugeError = { readonly below: number; readonly above: number };

function gaugeErrorOf(stepMmHg: number, reading: GaugeReading): GaugeError {
  return reading === 'nearest' ? { below: stepMmHg / 2, above: stepMmHg / 2 } : { below: stepMmHg, above: 0 };
}

/**
 * Whether a beat without a sound surely came between the peak and the first moment. If not, the sounds may have
 * been there already, and the run says nothing of how high the pressure is. False without times or pulse.
 */
export function silenceHeard(run: Run): boolean {
  const seconds = secondsBetween(run.peak, run.moments[0] as Moment);
  return seconds !== null && run.pulsePerMinute !== null && settled(seconds * run.pulsePerMinute) >= 60;
}
