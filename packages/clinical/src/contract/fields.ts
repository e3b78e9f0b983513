import { isBlank, numberFrom, pointer } from './numberText.js';
import { type Refusal, refusal } from './refusal.js';

/** Reads the fields of one object from outside and gathers all that is wrong with them. */
export type FieldReader = {
  readonly refusals: Refusal[];
  /** What came under a key, unread; undefined if nothing did. */
  readonly raw: (key: string) => unknown;
  /** `form` is what is asked for where there is no number; a whole one where `check` takes no other. */
  readonly number: (key: string, check: NumberCheck, form?: NumberForm) => number | null;
  readonly choice: <C extends string>(key: string, choices: readonly C[], absent: C | null) => C | null;
};

export type NumberFault = Pick<Refusal, 'code' | 'expected' | 'figures'>;
export type NumberCheck = (value: number) => NumberFault | null;
export type NumberForm = 'a-number' | 'a-whole-number';

/**
 * A reader of an object's own fields; fields not in `known` are refused as `unknown-field`.
 * Nothing at all reads as an object without fields; a list, a text or a number is refused as a whole.
 */
export function readFields(input: unknown, known: readonly string[], parent = ''): FieldReader {
  const refusals: Refusal[] = [];
  const isObject = typeof input === 'object' && !Array.isArray(input);
  if (!isObject && !isBlank(input)) refusals.push(refusal(parent, 'missing', 'an-object', input));
  const object = (isObject ? (input ?? {}) : {}) as Record<string, unknown>;
  const raw = (key: string) => (Object.hasOwn(object, key) ? object[key] : undefined);
  for (const key of Object.keys(object)) {
    if (known.includes(key)) continue;
    refusals.push(
      refusal(pointer(parent, key), 'unknown-field', 'known-field', object[key], { choices: known }),
    );
  }

  function number(key: string, check: NumberCheck, form: NumberForm = 'a-number'): number | null {
    const got = raw(key);
    const at = pointer(parent, key);
    const value = numberFrom(got);
    const fault: NumberFault | null = isBlank(got)
      ? { code: 'missing', expected: form, figures: {} }
      : value === null
        ? { code: 'not-a-number', expected: form, figures: {} }
        : check(value);
    if (fault === null) return value;
    refusals.push(refusal(at, fault.code, fault.expected, got, { figures: fault.figures }));
    return null;
  }

  function choice<C extends string>(key: string, choices: readonly C[], absent: C | null): C | null {
    const got = raw(key);
    if (isBlank(got) && absent !== null) return absent;
    const found = choices.find((one) => one === got || (typeof got === 'number' && one === String(got)));
    if (found !== undefined) return found;
    const code = isBlank(got) ? 'missing' : 'unknown-id';
    refusals.push(refusal(pointer(parent, key), code, 'one-of', got, { choices }));
    return null;
  }

  return { refusals, raw, number, choice };
}
