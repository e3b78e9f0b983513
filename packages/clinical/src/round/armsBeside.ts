import type { Flag } from '../contract/flag.js';

/** What the two arms say where they cannot be held against each other. */
export type ArmsBesideCode = 'arms-not-compared';

/**
 * What is said of the two arms, from what their difference says and from what stands against comparing them: that comes
 * first, and then nothing says that either arm will do. A difference that asks for something keeps its own words. No kept
 * value changes: this is how it is read out.
 *
 * @param why what was made of the difference
 * @param against why it may be one of the cuffs or of the methods
 *
 * Source: none; that one sentence must not take back another is our decision.
 *
 * @example armsBeside([{ code: 'arms-either', figures }], []) // the same
 */
export function armsBeside(why: readonly Flag[], against: readonly Flag[]): readonly Flag[] {
  if (against.length === 0) return why;
  return [
    ...against,
    ...why.map(
      (flag): Flag =>
        flag.code === 'arms-either'
          ? { code: 'arms-not-compared' satisfies ArmsBesideCode, figures: flag.figures }
          : flag,
    ),
  ];
}
