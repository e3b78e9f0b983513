import type { Bladder } from '../cuff/instrument.js';
import { log, power } from '../exact/exponential.js';
import type { Levels } from '../scenario/scenario.js';
import { CIRCUMSTANCE_FIGURES as F } from './figures.js';

/**
 * Arms a bladder is made for in whole cm, as printed: 27 to 34 takes every arm under 35. AHA 2005 and Fourth Report tables
 * (bedside handbook 3.2).
 */
export const BLADDER_ARMS: Readonly<Record<Bladder, readonly [number, number]>> = {
  infant: [10, 14],
  child: [15, 21],
  'small-adult': [22, 26],
  adult: [27, 34],
  'large-adult': [35, 44],
  thigh: [45, 52],
};

/** The bladder an arm asks for, by its circumference in cm. */
export function bladderFor(armCm: number): Bladder {
  const all = Object.entries(BLADDER_ARMS) as [Bladder, readonly [number, number]][];
  for (const [bladder, [, most]] of all) if (armCm < most + 1) return bladder;
  return 'thigh';
}

/** How many sizes a cuff is too small for an arm; negative: too large; 0 for every arm it is made for. */
export function sizesTooSmall(armCm: number, bladder: Bladder): number {
  const [least, most] = BLADDER_ARMS[bladder];
  if (armCm >= least && armCm < most + 1) return 0;
  return log((2 * armCm) / (least + most)) / log(F.sizeStep.value);
}

/** What a cuff so many sizes too small adds to a reading, mmHg. Source: Ishigami 2023 (physiology handbook 12). */
export function sizeBias(sizes: number): Levels {
  if (sizes < 0) {
    const large = Math.min(-sizes, F.tooLargeMost.value);
    return { systolic: large * F.tooLargeSystolic.value, diastolic: large * F.tooLargeDiastolic.value };
  }
  const small = Math.min(sizes, F.tooSmallMost.value);
  return {
    systolic: F.tooSmallSystolic.value * power(small, F.tooSmallSystolicPower.value),
    diastolic: F.tooSmallDiastolic.value * power(small, F.tooSmallDiastolicPower.value),
  };
}
