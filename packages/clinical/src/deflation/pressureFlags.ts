import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import type { RunFlagCode } from './codes.js';
import { DEFLATION_COMPARISONS as SIDE } from './comparisons.js';
import { isOnGraduation } from './graduation.js';
import type { Pressures } from './pressures.js';
import type { DeflationRules } from './rules.js';

type Flags = Flag<RunFlagCode>[];

/** Numbers that a gauge with this graduation cannot show: rounded, averaged or from a display. Source: bedside handbook 3.9. */
export function graduationFlags({ systolic, muffled, diastolic }: Pressures, gaugeStepMmHg: number): Flags {
  const off = Object.entries({ systolic, muffled, diastolic }).filter(
    ([, mmHg]) => mmHg !== null && !isOnGraduation(mmHg, gaugeStepMmHg),
  );
  if (off.length === 0) return [];
  return [{ code: 'off-graduation', figures: { ...Object.fromEntries(off), gaugeStepMmHg } }];
}

/** Sounds that went on to zero. Source: docs/conventions.md section 6; bedside handbook 3.7. */
export function toZeroFlags({ diastolic, muffled, diastolicUsed }: Pressures, rules: DeflationRules): Flags {
  if (diastolic === null || !passes(diastolic, SIDE.toZeroMmHg, rules.toZeroMmHg)) return [];
  const flags: Flags = [
    { code: 'to-zero', figures: muffled === null ? { diastolic } : { diastolic, muffled } },
  ];
  if (diastolicUsed === null) flags.push({ code: 'zero-without-muffled', figures: { diastolic } });
  return flags;
}

/** Numbers so far out that they are asked about. The diastolic is the one that is used. */
export function plausibleFlags(
  { systolic, diastolicUsed }: Pick<Pressures, 'systolic' | 'diastolicUsed'>,
  rules: DeflationRules,
): Flags {
  const flags: Flags = [];
  const { lowestSystolic, highestSystolic, lowestDiastolic, highestDiastolic } = rules;
  const { smallestPulsePressureMmHg, largestPulsePressureMmHg } = rules;
  if (
    passes(systolic, SIDE.lowestSystolic, lowestSystolic) ||
    passes(systolic, SIDE.highestSystolic, highestSystolic)
  ) {
    flags.push({ code: 'implausible-systolic', figures: { systolic, lowestSystolic, highestSystolic } });
  }
  if (diastolicUsed === null) return flags;
  if (
    passes(diastolicUsed, SIDE.lowestDiastolic, lowestDiastolic) ||
    passes(diastolicUsed, SIDE.highestDiastolic, highestDiastolic)
  ) {
    const figures = { diastolicUsed, lowestDiastolic, highestDiastolic };
    flags.push({ code: 'implausible-diastolic', figures });
  }
  const pulsePressureMmHg = systolic - diastolicUsed;
  if (
    passes(pulsePressureMmHg, SIDE.smallestPulsePressureMmHg, smallestPulsePressureMmHg) ||
    passes(pulsePressureMmHg, SIDE.largestPulsePressureMmHg, largestPulsePressureMmHg)
  ) {
    const figures = { pulsePressureMmHg, smallestPulsePressureMmHg, largestPulsePressureMmHg };
    flags.push({ code: 'implausible-pulse-pressure', figures });
  }
  return flags;
}
