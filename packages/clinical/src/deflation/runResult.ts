import type { Flag } from '../contract/flag.js';
import type { RunCircumstances } from './circumstances.js';
import type { RunFlagCode, RunReasonCode } from './codes.js';
import { inflationFlags, marginOf } from './inflationFlags.js';
import { graduationFlags, plausibleFlags, toZeroFlags } from './pressureFlags.js';
import { type Pressures, pressuresOf } from './pressures.js';
import { type Ranges, rangesOf } from './ranges.js';
import { rateFlags } from './rateFlags.js';
import { type Rates, ratesOf } from './rates.js';
import type { RunRules } from './rules.js';
import type { Method, Run } from './run.js';

/**
 * What a run says; pressures in mmHg, nothing rounded, null with its reason in `why`.
 *
 * `diastolic` is the last sound heard; averages, categories and scores take `diastolicUsed`. The ranges are what
 * deflation and gauge alone allow, certain for a regular pulse and an even deflation; the same person varies far
 * more from one minute to the next. `marginMmHg` is peak minus the palpated loss of the pulse.
 */
export type RunResult = Pick<Pressures, 'systolic' | 'diastolic' | 'muffled' | 'diastolicUsed' | 'gap'> &
  Pick<Ranges, 'systolicRange' | 'diastolicRange'> &
  Omit<Rates, 'why'> & {
    readonly marginMmHg: number | null;
    readonly flags: readonly Flag<RunFlagCode>[];
    readonly why: readonly Flag<RunReasonCode>[];
    readonly method: Method;
  };

/**
 * The reading of a run: its numbers, how it was let down, and how far deflation and gauge let the numbers be off.
 *
 * Errors: none; a {@link Run} has been parsed.
 * Source: docs/conventions.md section 6; bedside handbook 3.4 to 3.7 and 3.9.
 *
 * @example runResult(run, UNKNOWN_RUN_CIRCUMSTANCES, DEFAULT_RUN_RULES) // 148/92, systolicRange [147, 151.1]
 */
export function runResult(run: Run, circumstances: RunCircumstances, rules: RunRules): RunResult {
  const pressures = pressuresOf(run, rules.deflation);
  const rates = ratesOf(run);
  const ranges = rangesOf(run, pressures, rates, rules.deflation.gaugeReading);
  const marginMmHg = marginOf(run);
  const { systolic, diastolic, muffled, diastolicUsed, gap } = pressures;
  return {
    systolic,
    diastolic,
    muffled,
    diastolicUsed,
    systolicRange: ranges.systolicRange,
    diastolicRange: ranges.diastolicRange,
    deflationRateMmHgPerSecond: rates.deflationRateMmHgPerSecond,
    earlyDeflationRateMmHgPerSecond: rates.earlyDeflationRateMmHgPerSecond,
    dropPerBeatMmHg: rates.dropPerBeatMmHg,
    marginMmHg,
    flags: flagsOf(run, pressures, rates, ranges, circumstances, rules),
    why: reasonsOf(run, pressures, rates, ranges).map((code) => ({ code, figures: {} })),
    method: run.method,
    gap,
  };
}

function flagsOf(
  run: Run,
  pressures: Pressures,
  rates: Rates,
  ranges: Ranges,
  circumstances: RunCircumstances,
  { inflation, deflation }: RunRules,
): Flag<RunFlagCode>[] {
  const { systolic, gap } = pressures;
  const isIrregular = circumstances.rhythmFelt === 'irregular';
  const flags: Flag<RunFlagCode>[] = [];
  if (run.method === 'palpation') flags.push({ code: 'palpated-only', figures: { systolic } });
  if (gap !== null) flags.push({ code: 'gap-heard', figures: { ...gap } });
  flags.push(
    ...inflationFlags(run, pressures, circumstances, inflation),
    ...rateFlags(rates, run.pulsePerMinute, isIrregular, deflation),
  );
  if (run.method !== 'device') flags.push(...graduationFlags(pressures, run.gaugeStepMmHg));
  flags.push(...toZeroFlags(pressures, deflation), ...plausibleFlags(pressures, deflation));
  if (isIrregular && (ranges.systolicRange ?? ranges.diastolicRange) !== null) {
    flags.push({ code: 'range-too-narrow', figures: {} });
  }
  // Source: bedside handbook 3.13 (NICE NG136: by hand where the pulse is irregular).
  if (isIrregular && run.method === 'device') flags.push({ code: 'device-with-irregular', figures: {} });
  return flags;
}

function reasonsOf(run: Run, pressures: Pressures, rates: Rates, ranges: Ranges): RunReasonCode[] {
  const why: RunReasonCode[] = [];
  if (run.method === 'palpation') why.push('no-diastolic-by-palpation');
  if (pressures.diastolic === 0 && pressures.diastolicUsed === null) why.push('zero-without-muffled');
  why.push(...rates.why, ...ranges.why);
  if (run.method !== 'device' && run.peak === null) why.push('no-peak');
  if (run.method !== 'device' && run.palpated.lostMmHg === null) why.push('not-palpated');
  return [...new Set(why)];
}
