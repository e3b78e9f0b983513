import type { Sureness } from '../contract/figure.js';
import type { Comparison } from '../contract/threshold.js';
import type { FieldValue } from './field.js';

/** What a field may hold. Limits are included; they bound a local value and say nothing about a person. */
export type FieldKind =
  | {
      readonly kind: 'number';
      readonly low: number;
      readonly high: number;
      /** On which side of the number its rule applies, whoever sets it; null if it is no limit. */
      readonly comparison: Comparison | null;
      /** Only whole numbers; absent for any. */
      readonly isWhole?: true;
    }
  /** A number with its side, both open to the place; null, where allowed, is no limit. */
  | {
      readonly kind: 'limit';
      readonly low: number;
      readonly high: number;
      readonly comparisons: readonly Comparison[];
      readonly orNone: boolean;
    }
  /** At least one, rising. */
  | { readonly kind: 'numbers'; readonly low: number; readonly high: number }
  | { readonly kind: 'yes-no' }
  | { readonly kind: 'choice'; readonly choices: readonly (string | number)[] }
  /** Any number of them, in the order of the choices. */
  | { readonly kind: 'choices'; readonly choices: readonly string[] };

/**
 * The definition of one field: what it may hold, what it is for, and the value that stands where no preset says
 * otherwise. `since` is the schema number of protocols that first had it; older ones are read without it.
 */
export type FieldShape<V extends FieldValue = FieldValue> = FieldKind & {
  readonly value: V;
  readonly unit: string | null;
  readonly meaning: string;
  readonly source: string;
  readonly sure: Sureness;
  readonly since: number;
};

/** The fields of a section whose rules, as plain values, are `Rules`. */
export type SectionShape<Rules> = {
  readonly [Key in keyof Rules]: Rules[Key] extends FieldValue ? FieldShape<Rules[Key]> : never;
};

/** A section with what must hold between its fields. */
export type Section<Rules> = {
  readonly fields: SectionShape<Rules>;
  /** A rule that came with a later schema does not judge an older protocol. */
  readonly agree: (rules: Rules, schema: number) => readonly Disagreement[];
};

/** A field that cannot stand beside the others: the key, and the rule that says so. */
export type Disagreement = {
  readonly key: string;
  readonly expected: string;
  readonly figures: Readonly<Record<string, number>>;
};
