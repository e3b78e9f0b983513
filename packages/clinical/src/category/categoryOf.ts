import { aap2017 } from '../child/aap2017.js';
import { isChildSevere } from '../child/childSevere.js';
import { isLowSystolic, lowSystolicLimit } from '../child/lowSystolic.js';
import type { Screening } from '../child/screening.js';
import type { Sex } from '../child/sex.js';
import { monthsOf } from '../child/years.js';
import type { Flag } from '../contract/flag.js';
import { actFirst } from './actFirst.js';
import { type CategoryFlagCode, type CategoryResult, categoryIn, type Measured } from './categoryIn.js';
import { type AdultSchemeId, adultScheme, PREGNANCY_SCHEME, type PregnancySchemeId } from './schemes.js';

/** Name of this rule; one that gives another category for the same numbers has another name. */
export const CATEGORY_RULE = 'category-1';

/** Every guideline that a category can be asked of without a height. */
export type GuidelineId = AdultSchemeId | PregnancySchemeId | 'aap-2017';

/** A pressure, the guideline and what it needs of the person. Only `parseCategoryQuestion` makes one from outside. */
export type CategoryQuestion = Measured & {
  readonly guideline: GuidelineId;
  /** Completed years; null is not known, and then an adult. */
  readonly ageYears: number | null;
  readonly sex: Sex | null;
  /** Pregnant now, or in the six weeks after. */
  readonly isPregnant: boolean;
};

/** The category with the guideline that was used; `screening` is of AAP 2017 alone. */
export type Category = { readonly guideline: GuidelineId } & CategoryResult & {
    readonly screening: Screening | null;
  };

/**
 * The category of a pressure by a guideline. In pregnancy the scheme of pregnancy is used in place of any other.
 *
 * Errors: none; a {@link CategoryQuestion} has been parsed.
 * Source: bedside handbook 6.1 to 6.3; docs/conventions.md section 7.
 */
export function categoryOf(question: CategoryQuestion): Category {
  const { guideline, isPregnant, ageYears, sex } = question;
  if (isPregnant || guideline === 'pregnancy') {
    const flags: Flag<CategoryFlagCode>[] =
      guideline === 'pregnancy' ? [] : [{ code: 'pregnancy-scheme', figures: {} }];
    return withFlags('pregnancy', categoryIn(PREGNANCY_SCHEME, question), [
      ...actFirst(question, true),
      ...flags,
    ]);
  }
  if (guideline === 'aap-2017') {
    if (ageYears === null) throw new Error('AAP 2017 needs an age');
    const found = aap2017(question, ageYears, sex);
    return { guideline, ...found, flags: [...childFlags(question, ageYears), ...found.flags] };
  }
  const flags: Flag<CategoryFlagCode>[] = actFirst(question, false);
  if (ageYears === null) flags.push({ code: 'adult-assumed', figures: {} });
  if (guideline === 'who-2021') flags.push({ code: 'treatment-rule', figures: {} });
  return withFlags(guideline, categoryIn(adultScheme(guideline), question), flags);
}

/** What no category of a child says: far too high, or low for its age. Source: bedside handbook 3.16 and 3.17. */
function childFlags(measured: Measured, ageYears: number): Flag<CategoryFlagCode>[] {
  const ageMonths = monthsOf(ageYears);
  const { systolic } = measured;
  const flags: Flag<CategoryFlagCode>[] = [];
  if (isChildSevere(measured, ageMonths, null) === true) flags.push({ code: 'child-severe', figures: {} });
  if (systolic !== null && isLowSystolic(systolic, ageMonths)) {
    const { limitMmHg } = lowSystolicLimit(ageMonths);
    flags.push({ code: 'child-low', figures: { systolic, limitMmHg } });
  }
  return flags;
}

function withFlags(
  guideline: GuidelineId,
  result: CategoryResult,
  flags: Flag<CategoryFlagCode>[],
): Category {
  return { guideline, ...result, flags: [...flags, ...result.flags], screening: null };
}
