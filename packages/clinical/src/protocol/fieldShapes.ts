import type { Figure, Sureness } from '../contract/figure.js';
import type { Comparison } from '../contract/threshold.js';
import type { FieldShape } from './shape.js';

/** Lowest and highest value a place may set; they say nothing about a person. */
export type Bounds = readonly [low: number, high: number];

/** A number of a folder's figures as a field; `comparison` null is no limit. */
export function numberField(
  { value, unit, meaning, source, sure }: Figure,
  [low, high]: Bounds,
  comparison: Comparison | null,
  since: number,
): FieldShape<number> & { kind: 'number' } {
  return { kind: 'number', low, high, comparison, value, unit, meaning, source, sure, since };
}

/** As {@link numberField}, of a number that is counted: a whole one. */
export function wholeField(
  figure: Figure,
  bounds: Bounds,
  comparison: Comparison | null,
  since: number,
): FieldShape<number> {
  return { ...numberField(figure, bounds, comparison, since), isWhole: true };
}

/** What a field that is no number says of itself. */
export type Origin = { readonly meaning: string; readonly source: string; readonly sure: Sureness };

/** One of several words. */
export function choiceField<Word extends string>(
  choices: readonly Word[],
  value: Word,
  { meaning, source, sure }: Origin,
  since: number,
): FieldShape<Word> {
  return { kind: 'choice', choices, value, unit: null, meaning, source, sure, since };
}

/** Any of several words. */
export function choicesField<Word extends string>(
  choices: readonly Word[],
  value: readonly Word[],
  { meaning, source, sure }: Origin,
  since: number,
): FieldShape<readonly Word[]> {
  return { kind: 'choices', choices, value, unit: null, meaning, source, sure, since };
}
