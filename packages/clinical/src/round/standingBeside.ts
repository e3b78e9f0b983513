import type { Flag } from '../contract/flag.js';

/** What of a test is read out. */
type StandingSaid = {
  readonly flags: readonly Flag[];
  readonly why: readonly Flag[];
  /** The greatest on the feet, per minute; null where no pulse was taken at rest or on the feet. */
  readonly pulseRise: number | null;
};

/**
 * What is said of a test of lying and standing beside its answer: that the third minute was missed stands in the answer
 * already where that is left open for it, and how the pulse changed stands before what its rise means or does not. No kept value changes: this is how it is read out.
 *
 * @param test what was made of the test
 * @param notes what is said beside it
 *
 * Source: none; that nothing is said twice is our decision.
 *
 * @example standingBeside({ flags: [], why: [notMeasured], pulseRise: null }, [missed]) // [notMeasured]
 */
export function standingBeside(
  { flags, why, pulseRise }: StandingSaid,
  notes: readonly Flag[],
): readonly Flag[] {
  const isSaid = why.some(({ code }) => code === 'third-minute-not-measured');
  const isRiseSaid = pulseRise === null || flags.some(({ code }) => code === 'rise-without-fall');
  return [
    ...flags,
    ...(isRiseSaid ? [] : [{ code: 'pulse-change', figures: { pulseRise } }]),
    ...why,
    ...notes.filter(({ code }) => !(isSaid && code === 'third-minute-missed')),
  ];
}
