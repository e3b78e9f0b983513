import type { Figures } from '../../figures.js';
import type { Say } from '../../say.js';

/** What a rule would have taken, as a phrase that fits after "expected". */
export type Expectation = (f: Figures, say: Say, choices: readonly string[]) => string;

export const oneOf: Expectation = (_f, say, choices) => say.anyOf(choices);
