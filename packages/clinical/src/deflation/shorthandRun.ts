import { type RunCircumstances, UNKNOWN_RUN_CIRCUMSTANCES } from './circumstances.js';
import type { RunRules } from './rules.js';
import type { Moment, MomentOf, Run } from './run.js';
import { type RunResult, runResult } from './runResult.js';
import type { Shorthand } from './shorthand.js';

/**
 * A written pressure as a run of which only the numbers are known. A gap becomes the sounds that went and came back.
 */
export function runOfShorthand(shorthand: Shorthand, gaugeStepMmHg: number): Run {
  return {
    method: shorthand.method,
    gaugeStepMmHg,
    pulsePerMinute: shorthand.pulse,
    palpated: { lostMmHg: null, backMmHg: null },
    peak: null,
    reinflated: false,
    moments: momentsOf(shorthand),
  };
}

function momentsOf({ method, systolic, muffled, diastolic, gap }: Shorthand): Moment[] {
  const untimed = (what: MomentOf, mmHg: number): Moment => ({ what, mmHg, atSeconds: null });
  if (method === 'palpation') return [untimed('pulse back', systolic)];
  const moments = [untimed('first sound', systolic)];
  if (gap !== null) moments.push(untimed('last sound', gap.fromMmHg), untimed('first sound', gap.toMmHg));
  if (muffled !== null) moments.push(untimed('muffled', muffled));
  if (diastolic !== null) moments.push(untimed('last sound', diastolic));
  return moments;
}

/**
 * The reading of a written pressure, in the shape of a run's: no rates, no ranges. A mean may lie off the
 * graduation, and is not asked about.
 *
 * @example shorthandResult(shorthand, DEFAULT_RUN_RULES) // 118/62/0: diastolic 0, diastolicUsed 62
 */
export function shorthandResult(
  shorthand: Shorthand,
  rules: RunRules,
  circumstances: RunCircumstances = UNKNOWN_RUN_CIRCUMSTANCES,
): RunResult {
  const run = runOfShorthand(shorthand, rules.deflation.gaugeStepMmHg);
  const result = runResult(run, circumstances, rules);
  if (shorthand.readings === 1) return result;
  return { ...result, flags: result.flags.filter(({ code }) => code !== 'off-graduation') };
}
