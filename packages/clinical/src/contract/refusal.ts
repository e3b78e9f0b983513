/**
 * Codes of refused input. Their meaning never changes; new ones may be added.
 * Source: docs/conventions.md section 2.
 */
export type RefusalCode =
  | 'missing'
  | 'unknown-field'
  | 'unknown-id'
  | 'unknown-option'
  | 'repeated'
  | 'not-a-number'
  | 'not-whole'
  | 'not-a-time'
  | 'out-of-range'
  | 'out-of-order'
  | 'not-below-systolic'
  | 'impossible'
  | 'contradicts'
  | 'ambiguous';

/**
 * One thing wrong with an input, in codes and figures; the message catalogue makes the sentence.
 *
 * `expected` names the rule that was broken (a key of the catalogue), `figures` the numbers its sentence
 * needs (units in the keys), `choices` the words that would have been taken.
 */
export type Refusal = {
  /** What was wrong: `/n`, `/moments/0/mmHg` (a JSON Pointer); a command line or a heading renames it. */
  readonly field: string;
  /** Line of a text from 1, where the input was one. */
  readonly line: number | null;
  readonly code: RefusalCode;
  readonly expected: string;
  readonly figures: Readonly<Record<string, number>>;
  readonly choices: readonly string[];
  /** What came, as text; null when nothing came. */
  readonly got: string | null;
};

/** The value, or everything that is wrong with it: bad input is an answer, not an exception. */
export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** A refusal with the parts that rarely apply left at their empty values. */
export function refusal(
  field: string,
  code: RefusalCode,
  expected: string,
  got: unknown,
  more: Partial<Pick<Refusal, 'figures' | 'choices' | 'line'>> = {},
): Refusal {
  return { field, code, expected, figures: {}, choices: [], line: null, got: asText(got), ...more };
}

/** What came, as a person would recognise it; a blank is null. */
function asText(got: unknown): string | null {
  if (got === undefined || got === null || got === '') return null;
  return typeof got === 'string' ? got : (JSON.stringify(got) ?? String(got));
}
