import { isRaised, type Level } from '../category/scheme.js';
import { isLowCondition } from './worstAlerts.js';

type Made = {
  readonly category: { readonly level: string | null } | null;
  readonly actNow: readonly { readonly condition: string }[];
  readonly standing: {
    readonly positive: boolean | null;
    readonly delayed: boolean | null;
    readonly flags: readonly { readonly code: string }[];
  } | null;
};

/**
 * Whether a category is not said by itself, away from the page: one that is not of high pressures, beside an alert for a low
 * pressure, a fall on standing or a low systolic on the feet, reads as if all were well.
 *
 * @param made what was made of a round
 *
 * Source: none; that a category of high pressures says nothing of a low one: common practice, no source.
 */
export function isCategoryHeldBack({ category, actNow, standing }: Made): boolean {
  const level = category?.level ?? null;
  if (level === null || isRaised(level as Level)) return false;
  const isLowAlert = actNow.some(({ condition }) => isLowCondition(condition));
  const isLowUpright = standing?.flags.some(({ code }) => code === 'standing-systolic-low') === true;
  return isLowAlert || isLowUpright || standing?.positive === true || standing?.delayed === true;
}

type Placed = {
  readonly category: {
    readonly shown: { readonly systolic: string | null };
    readonly flags: readonly { readonly code: string }[];
  } | null;
  readonly actNow: readonly {
    readonly condition: string;
    readonly figures: Readonly<Record<string, number>>;
  }[];
};

const LOW_FLAGS: readonly string[] = ['very-low', 'child-low'];

/**
 * Whether a category is of a pressure that is itself under the low limit: then its name is not said at all, not even on the page.
 *
 * @param made what was made of a round
 *
 * Source: none; that a category of high pressures says nothing of a low one: common practice, no source.
 */
export function isCategoryOfLow({ category, actNow }: Placed): boolean {
  if (category === null) return false;
  if (category.flags.some(({ code }) => LOW_FLAGS.includes(code))) return true;
  const { systolic } = category.shown;
  return (
    systolic !== null &&
    actNow.some(
      ({ condition, figures }) =>
        isLowCondition(condition) && figures.systolic !== undefined && Number(systolic) <= figures.systolic,
    )
  );
}
