import { type NumberFault, readFields } from '../contract/fields.js';
import { isBlank, numberFrom, pointer } from '../contract/numberText.js';
import { type Refusal, refusal } from '../contract/refusal.js';
import type { FieldValue } from './field.js';
import type { FieldKind } from './shape.js';

/** The value a field may hold, or what is wrong with it. Numbers may come as text, as from a form. */
export type ReadValue = { readonly value: FieldValue } | { readonly refusals: readonly Refusal[] };

/**
 * Reads the value of a field by its kind.
 *
 * Errors at the pointer given, or one below it for an item of a list: `missing`, `not-a-number`, `not-whole`, `out-of-range`,
 * `out-of-order` (a list of numbers rises), `unknown-id`, `repeated`.
 */
export function readValue(kind: FieldKind, got: unknown, at: string): ReadValue {
  if (kind.kind === 'limit' && kind.orNone && got === null) return { value: null };
  if (isBlank(got)) return refuse(refusal(at, 'missing', 'a-value', got));
  switch (kind.kind) {
    case 'number':
      return readNumber(kind, got, at);
    case 'limit':
      return readLimit(kind, got, at);
    case 'numbers':
      return readNumbers(kind, got, at);
    case 'yes-no':
      if (typeof got === 'boolean') return { value: got };
      return refuse(refusal(at, 'unknown-id', 'one-of', got, { choices: ['true', 'false'] }));
    case 'choice':
      return readChoice(kind.choices, got, at);
    case 'choices':
      return readChoices(kind.choices, got, at);
  }
}

function readNumber(
  bounds: { low: number; high: number; isWhole?: true },
  got: unknown,
  at: string,
): ReadValue {
  const value = numberFrom(got);
  if (value === null) return refuse(refusal(at, 'not-a-number', 'a-number', got));
  const fault = boundsFault(bounds, value);
  if (fault === null && bounds.isWhole && !Number.isInteger(value))
    return refuse(refusal(at, 'not-whole', 'a-whole-number', got));
  if (fault === null) return { value };
  return refuse(refusal(at, fault.code, fault.expected, got, { figures: fault.figures }));
}

function boundsFault({ low, high }: { low: number; high: number }, value: number): NumberFault | null {
  if (value >= low && value <= high) return null;
  return { code: 'out-of-range', expected: 'within-limits', figures: { minimum: low, maximum: high } };
}

function readLimit(kind: Extract<FieldKind, { kind: 'limit' }>, got: unknown, at: string): ReadValue {
  const reader = readFields(got, ['comparison', 'limit'], at);
  const comparison = reader.choice('comparison', kind.comparisons, null);
  const limit = reader.number('limit', (value) => boundsFault(kind, value));
  const isWhole = comparison !== null && limit !== null && reader.refusals.length === 0;
  return isWhole ? { value: { comparison, limit } } : { refusals: reader.refusals };
}

function readNumbers(bounds: { low: number; high: number }, got: unknown, at: string): ReadValue {
  if (!Array.isArray(got) || got.length === 0) return refuse(refusal(at, 'missing', 'a-list', got));
  const values: number[] = [];
  const refusals: Refusal[] = [];
  for (const [index, item] of got.entries()) {
    const place = pointer(at, index);
    const read = readNumber(bounds, item, place);
    if ('refusals' in read) refusals.push(...read.refusals);
    else values.push(read.value as number);
  }
  const unordered = values.findIndex((value, index) => index > 0 && value <= (values[index - 1] ?? value));
  if (refusals.length === 0 && unordered > 0) {
    refusals.push(refusal(pointer(at, unordered), 'out-of-order', 'rising', values[unordered]));
  }
  return refusals.length > 0 ? { refusals } : { value: values };
}

function readChoice(choices: readonly (string | number)[], got: unknown, at: string): ReadValue {
  const value = choices.find((choice) => choice === got || String(choice) === got);
  if (value !== undefined) return { value };
  return refuse(refusal(at, 'unknown-id', 'one-of', got, { choices: choices.map(String) }));
}

function readChoices(choices: readonly string[], got: unknown, at: string): ReadValue {
  if (!Array.isArray(got)) return refuse(refusal(at, 'missing', 'a-list', got));
  const refusals: Refusal[] = [];
  for (const [index, item] of got.entries()) {
    const place = pointer(at, index);
    if (!choices.includes(item)) refusals.push(refusal(place, 'unknown-id', 'one-of', item, { choices }));
    else if (got.indexOf(item) < index) refusals.push(refusal(place, 'repeated', 'once', item));
  }
  return refusals.length > 0 ? { refusals } : { value: choices.filter((choice) => got.includes(choice)) };
}

function refuse(one: Refusal): ReadValue {
  return { refusals: [one] };
}
