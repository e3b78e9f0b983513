import type { Flag } from '../contract/flag.js';
import { shownPressure } from '../contract/shownPressure.js';
import {
  type Band,
  bandOf,
  type CategoryScheme,
  type Component,
  higher,
  isRaised,
  type Level,
  limitsOf,
} from './scheme.js';

/** The mean that a round came to, in mmHg and not rounded; null is not known (no diastolic by feel). */
export type Measured = { readonly systolic: number | null; readonly diastolic: number | null };

export type CategoryFlagCode =
  | 'severe-reading'
  | 'very-low'
  | 'child-severe'
  | 'child-low'
  | 'limits-from-memory'
  | 'also-needs-average'
  | 'treatment-rule'
  | 'adult-assumed'
  | 'pregnancy-scheme';
export type CategoryReasonCode = 'no-systolic' | 'no-diastolic' | 'diastolic-zero' | 'centiles-not-included';

/**
 * Where a pressure falls. `category` is the higher of the two and null unless both are known; `atLeast` is what the
 * known ones alone come to, so that a dangerous one is never lost; `level` is that of `atLeast`.
 */
export type CategoryResult<Id extends string = string> = {
  readonly category: Id | null;
  readonly systolicCategory: Id | null;
  readonly diastolicCategory: Id | null;
  /** The one number that alone lies in the range called hypertension; null if both or neither do, or one is not known. */
  readonly isolated: Component | null;
  readonly atLeast: Id | null;
  readonly level: Level | null;
  /** Each number as it is shown beside the limits, so that it never reads as on the other side of one. */
  readonly shown: { readonly systolic: string | null; readonly diastolic: string | null };
  readonly flags: readonly Flag<CategoryFlagCode>[];
  readonly why: readonly Flag<CategoryReasonCode>[];
};

/**
 * Puts a pressure into a scheme: each number in a category, the higher of the two wins. The unrounded mean is
 * compared; each limit says whether it is `>=` or `>`.
 *
 * Errors: none. A diastolic of 0 was heard to zero and not measured: it counts as not known.
 * Source: bedside handbook 0.2, 6.1; docs/conventions.md sections 4, 6 and 7.
 */
export function categoryIn<Id extends string>(
  scheme: CategoryScheme<string, Id>,
  measured: Measured,
): CategoryResult<Id> {
  const diastolicMmHg = measured.diastolic === 0 ? null : measured.diastolic;
  const systolic = placed(scheme, 'systolic', measured.systolic);
  const diastolic = placed(scheme, 'diastolic', diastolicMmHg);
  const known = [systolic, diastolic].filter((one) => one !== null);
  const top = known.length === 0 ? null : known.reduce((a, b) => higher(scheme, a, b));
  const isWhole = systolic !== null && diastolic !== null;
  return {
    category: isWhole ? (top?.id ?? null) : null,
    systolicCategory: systolic?.id ?? null,
    diastolicCategory: diastolic?.id ?? null,
    isolated: isWhole ? isolatedOf(systolic, diastolic) : null,
    atLeast: top?.id ?? null,
    level: top?.level ?? null,
    shown: {
      systolic: shown(scheme, 'systolic', measured.systolic),
      diastolic: shown(scheme, 'diastolic', measured.diastolic),
    },
    flags: top === null ? [] : flagsOf(scheme, top, { systolic, diastolic }),
    why: reasonsOf(measured),
  };
}

function placed<Id extends string>(
  scheme: CategoryScheme<string, Id>,
  component: Component,
  mmHg: number | null,
): Band<Id> | null {
  return mmHg === null ? null : bandOf(scheme, component, mmHg);
}

function shown(scheme: CategoryScheme, component: Component, mmHg: number | null): string | null {
  return mmHg === null ? null : shownPressure(mmHg, limitsOf(scheme, component));
}

function isolatedOf(systolic: Band, diastolic: Band): Component | null {
  if (isRaised(systolic.level) === isRaised(diastolic.level)) return null;
  return isRaised(systolic.level) ? 'systolic' : 'diastolic';
}

/** What must be known of the category found: whether a limit it stands on was not read again, and what it needs too. */
function flagsOf(
  scheme: CategoryScheme,
  top: Band,
  bands: { readonly [C in Component]: Band | null },
): Flag<CategoryFlagCode>[] {
  const stoodOn = (['systolic', 'diastolic'] as const)
    .filter((component) => bands[component] === top)
    .map((component) => top[component]?.sure);
  const flags: Flag<CategoryFlagCode>[] = [];
  if ([scheme.status, ...stoodOn].includes('memory')) flags.push({ code: 'limits-from-memory', figures: {} });
  if (top.alsoNeeds !== null) flags.push({ code: 'also-needs-average', figures: top.alsoNeeds });
  return flags;
}

function reasonsOf({ systolic, diastolic }: Measured): Flag<CategoryReasonCode>[] {
  const why: Flag<CategoryReasonCode>[] = [];
  if (systolic === null) why.push({ code: 'no-systolic', figures: {} });
  if (diastolic === null) why.push({ code: 'no-diastolic', figures: {} });
  if (diastolic === 0) why.push({ code: 'diastolic-zero', figures: {} });
  return why;
}
