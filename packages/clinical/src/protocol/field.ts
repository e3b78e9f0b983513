import type { Sureness } from '../contract/figure.js';
import type { Comparison } from '../contract/threshold.js';

/** A limit whose side guidelines disagree on: one takes another reading over 10, another from 10. */
export type Limit = { readonly comparison: Comparison; readonly limit: number };

/** What a field of a protocol can hold; null is "no such rule here". */
export type FieldValue = number | boolean | string | readonly number[] | readonly string[] | Limit | null;

/** The value a local decision took the place of, with where that one came from. */
export type Replaced<V extends FieldValue = FieldValue> = {
  readonly value: V;
  readonly source: string;
  readonly sure: Sureness;
};

/**
 * One rule of a protocol: its value, where that comes from and how sure it is. A value set by the place itself
 * has the source `local`, and `replaces` keeps the preset's beside it.
 */
export type Field<V extends FieldValue = FieldValue> = {
  readonly value: V;
  /** `s`, `/min`, `months`; null where there is none. */
  readonly unit: string | null;
  readonly source: string;
  readonly sure: Sureness;
  readonly replaces: Replaced<V> | null;
};

/** The source of a value that the place set itself. */
export const LOCAL_SOURCE = 'local';
