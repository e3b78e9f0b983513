import type { FieldReader, NumberFault } from '../contract/fields.js';
import { isBlank, pointer } from '../contract/numberText.js';
import { refusal } from '../contract/refusal.js';

/** A check that a number lies from one limit to another, both included. */
export function within(minimum: number, maximum: number) {
  return (value: number): NumberFault | null =>
    value >= minimum && value <= maximum
      ? null
      : { code: 'out-of-range', expected: 'within-limits', figures: { minimum, maximum } };
}

/** A check that a number is whole and lies from one limit to another, both included. */
export function wholeWithin(minimum: number, maximum: number) {
  const limits = within(minimum, maximum);
  return (value: number): NumberFault | null =>
    Number.isInteger(value) ? limits(value) : { code: 'not-whole', expected: 'a-whole-number', figures: {} };
}

/** A number that may be absent: null then. */
export function numberOrNone(
  reader: FieldReader,
  key: string,
  check: (value: number) => NumberFault | null,
): number | null {
  return isBlank(reader.raw(key)) ? null : reader.number(key, check);
}

/** One of some words, or absent: null then. */
export function choiceOrNone<C extends string>(
  reader: FieldReader,
  key: string,
  choices: readonly C[],
): C | null {
  return isBlank(reader.raw(key)) ? null : reader.choice(key, choices, null);
}

/** Free words, trimmed; null for none. */
export function textOrNone(reader: FieldReader, key: string): string | null {
  const got = reader.raw(key);
  if (isBlank(got)) return null;
  if (typeof got === 'string') return got.trim() === '' ? null : got.trim();
  reader.refusals.push(refusal(pointer('', key), 'unknown-id', 'string', got));
  return null;
}

/** Yes or no; absent is `absent`, which is refused as missing where it is undefined. */
export function yesNo<Absent extends boolean | null | undefined>(
  reader: FieldReader,
  key: string,
  absent: Absent,
  parent = '',
): boolean | Absent {
  const got = reader.raw(key);
  if (typeof got === 'boolean') return got;
  if (isBlank(got) && absent !== undefined) return absent;
  const code = isBlank(got) ? 'missing' : 'unknown-id';
  reader.refusals.push(refusal(pointer(parent, key), code, 'boolean', got, { choices: ['true', 'false'] }));
  return absent;
}
