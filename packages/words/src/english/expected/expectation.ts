import type { Figures } from '../../figures.js';
import type { Say } from '../../say.js';

/** What a rule would have taken, as a phrase that fits after "expected". */
export type Expectation = (f: Figures, say: Say, choices: readonly string[]) => string;

export const oneOf: Expectation = (_f, say, choices) => say.anyOf(choices);

/** The nearest rates that can be given, the lower one first; both, or the one that is within the limits. */
export function nearest(f: Figures): readonly number[] {
  return ['belowPerMinute', 'abovePerMinute'].flatMap((key) => (f.has(key) ? [f.value(key)] : []));
}
