/**
 * Something a reader of a value must know, or a reason for an answer, in code and figures (units in the keys).
 * The message catalogue makes the sentence (`detail`) from both.
 */
export type Flag<Code extends string = string> = {
  readonly code: Code;
  readonly figures: Readonly<Record<string, number>>;
};
