import type { Figure, Sureness } from '../contract/figure.js';
import type { SidedLimit } from '../contract/shownPressure.js';
import { type Comparison, passes } from '../contract/threshold.js';

/** The two numbers of a pressure, each put in a category of its own. */
export type Component = 'systolic' | 'diastolic';

/**
 * How far a category stands from the usual, whatever its guideline calls it, from low to high. `raised` is the range
 * that the guideline calls hypertension (or treats); `severe` is the one that cannot wait, where it has one.
 */
export const LEVELS = ['usual', 'elevated', 'raised', 'severe'] as const;
export type Level = (typeof LEVELS)[number];

/** Where a category begins for one number, with where the limit comes from. */
export type Bound = SidedLimit & { readonly sure: Sureness };

/** One category of a scheme. A number for which it has no bound is never in it. */
export type Band<Id extends string = string> = {
  readonly id: Id;
  readonly level: Level;
  readonly systolic: Bound | null;
  readonly diastolic: Bound | null;
  /** An average at home or by day that the guideline asks for too, in mmHg. */
  readonly alsoNeeds: Pressure | null;
};

/** A pair of limits in mmHg. */
export type Pressure = { readonly systolic: number; readonly diastolic: number };

/** A published way to put a pressure into a category: the bands from the lowest, which has no lower end. */
export type CategoryScheme<SchemeId extends string = string, Id extends string = string> = {
  readonly id: SchemeId;
  readonly source: string;
  /** How sure the scheme as a whole is; each bound says it for itself. */
  readonly status: Sureness;
  readonly bands: readonly [Band<Id>, ...Band<Id>[]];
};

/** A band that begins at the figures given. */
export function band<Id extends string>(
  id: Id,
  level: Level,
  systolic: Bound | null,
  diastolic: Bound | null,
  alsoNeeds: Pressure | null = null,
): Band<Id> {
  return { id, level, systolic, diastolic, alsoNeeds };
}

/** A bound from a figure and its side. */
export function bound({ value, sure }: Pick<Figure, 'value' | 'sure'>, comparison: Comparison): Bound {
  return { comparison, limit: value, sure };
}

/** The highest band that a number, in mmHg and not rounded, has reached. */
export function bandOf<Id extends string>(
  scheme: CategoryScheme<string, Id>,
  component: Component,
  mmHg: number,
): Band<Id> {
  const reached = scheme.bands.findLast((one) => {
    const begins = one[component];
    return begins !== null && passes(mmHg, begins.comparison, begins.limit);
  });
  return reached ?? scheme.bands[0];
}

/** Every limit of a scheme for one number, for showing a number beside them. */
export function limitsOf(scheme: CategoryScheme, component: Component): Bound[] {
  return scheme.bands.map((one) => one[component]).filter((one) => one !== null);
}

/** The higher of two bands of one scheme. */
export function higher<Id extends string>(
  { bands }: CategoryScheme<string, Id>,
  a: Band<Id>,
  b: Band<Id>,
): Band<Id> {
  return bands.indexOf(a) >= bands.indexOf(b) ? a : b;
}

/** Whether a level is the range called hypertension, or beyond. */
export function isRaised(level: Level): boolean {
  return LEVELS.indexOf(level) >= LEVELS.indexOf('raised');
}

export function isSevere(level: Level): boolean {
  return level === 'severe';
}
