import type { Exercise } from './exercise.js';

/**
 * An exercise as of each of its readings, in the order in which they were made: that reading stands in the evidence, those before
 * it are `earlier`. One in which no reading was made is as it is, once.
 */
export function asOfEach<Given extends Exercise>(exercise: Given): readonly Given[] {
  const { earlier, evidence, entered } = exercise;
  const before = earlier.map(({ startSeconds, run, entered: wrote }, k) => ({
    ...exercise,
    earlier: earlier.slice(0, k),
    evidence: { ...evidence, run: { startSeconds, run } },
    entered: { ...entered, ...wrote },
  }));
  return [...before, exercise];
}
