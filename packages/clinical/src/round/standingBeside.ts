import type { Flag } from '../contract/flag.js';

/**
 * What is said of a test of lying and standing beside its answer: that the third minute was missed stands in the answer
 * already where that is left open for it. No kept value changes: this is how it is read out.
 *
 * @param test what was made of the test
 * @param notes what is said beside it
 *
 * Source: none; that nothing is said twice is our decision.
 *
 * @example standingBeside({ flags: [], why: [notMeasured] }, [missed]) // [notMeasured]
 */
export function standingBeside(
  { flags, why }: { readonly flags: readonly Flag[]; readonly why: readonly Flag[] },
  notes: readonly Flag[],
): readonly Flag[] {
  const isSaid = why.some(({ code }) => code === 'third-minute-not-measured');
  return [...flags, ...why, ...notes.filter(({ code }) => !(isSaid && code === 'third-minute-missed'))];
}
