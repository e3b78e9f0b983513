import { type CategoryReasonCode, type CategoryResult, categoryIn } from '../category/categoryIn.js';
import { type Bound, band, type CategoryScheme } from '../category/scheme.js';
import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import type { ChildCategory } from './aap2017.js';
import { type ChildLimits, isChildSevere } from './childSevere.js';
import { CHILD_COMPARISONS as SIDE } from './comparisons.js';
import { CHILD_FIGURES as F } from './figures.js';
import { type Centiles, centilesOf, type Standing, standingOf } from './fourthReport.js';
import { heightZ } from './heightZ.js';
import { isLowSystolic, lowSystolicLimit } from './lowSystolic.js';
import type { Sex } from './sex.js';

/**
 * A child with the mean that a round came to, in mmHg and not rounded; null is not known. Age in months, height in
 * cm. Only `parseChildQuestion` makes one from outside.
 */
export type ChildQuestion = {
  readonly sex: Sex;
  readonly ageMonths: number;
  readonly heightCm: number;
  readonly systolic: number | null;
  readonly diastolic: number | null;
};

/** Name of this rule; one that gives another answer for the same numbers has another name. */
export const CHILD_RULE = 'child-1';

export const FOURTH_REPORT_ID = 'fourth-report-2004';

export type ChildFlagCode = 'height-far-out' | 'printed-table-higher' | 'child-low' | 'child-severe';

/** Where a child's pressure stands, and the category of the Fourth Report. Limits in mmHg, not rounded. */
export type ChildResult = Omit<CategoryResult<ChildCategory>, 'flags' | 'why'> & {
  readonly heightZ: number;
  readonly systolic: Standing | null;
  readonly diastolic: Standing | null;
  readonly limits: ChildLimits;
  readonly guideline: typeof FOURTH_REPORT_ID;
  /** A systolic under this is low at that age, in mmHg. */
  readonly lowSystolicMmHg: number;
  readonly flags: readonly Flag<ChildFlagCode>[];
  readonly why: readonly Flag<CategoryReasonCode>[];
};

/**
 * A child's pressure by the Fourth Report, 24 months to 17 years, with the heights of CDC 2000.
 *
 * Errors: throws for an age without a row; a {@link ChildQuestion} has been parsed.
 * Limits: not the tables of AAP 2017, whose numbers lie 2 to 3 mmHg lower.
 * Source: bedside handbook 6.2, 6.4, 3.16, 3.17.
 */
export function childResult(question: ChildQuestion): ChildResult {
  const { sex, ageMonths, systolic } = question;
  const diastolic = question.diastolic === 0 ? null : question.diastolic;
  const grown = { sex, ageMonths, heightZ: heightZ(sex, ageMonths, question.heightCm) };
  const limits = { systolic: centilesOf(grown, 'systolic'), diastolic: centilesOf(grown, 'diastolic') };
  const { flags: _none, ...placed } = categoryIn(fourthReportScheme(limits), question);
  return {
    heightZ: grown.heightZ,
    systolic: systolic === null ? null : standingOf(grown, 'systolic', systolic),
    diastolic: diastolic === null ? null : standingOf(grown, 'diastolic', diastolic),
    limits,
    guideline: FOURTH_REPORT_ID,
    ...placed,
    lowSystolicMmHg: lowSystolicLimit(ageMonths).limitMmHg,
    flags: flagsOf(question, grown.heightZ, limits, placed),
  };
}

/** The categories for one child. Source: bedside handbook 6.2 (found). */
export function fourthReportScheme({
  systolic,
  diastolic,
}: ChildLimits): CategoryScheme<typeof FOURTH_REPORT_ID, ChildCategory> {
  const { source, sure } = F.fourthElevatedSystolic;
  return {
    id: FOURTH_REPORT_ID,
    source,
    status: sure,
    bands: [
      band('normal', 'usual', null, null),
      band(
        'elevated',
        'elevated',
        { ...from('p90Z'), limit: Math.min(systolic.p90, F.fourthElevatedSystolic.value) },
        { ...from('p90Z'), limit: Math.min(diastolic.p90, F.fourthElevatedDiastolic.value) },
      ),
      band(
        'stage-1',
        'raised',
        { ...from('p95Z'), limit: systolic.p95 },
        { ...from('p95Z'), limit: diastolic.p95 },
      ),
      band('stage-2', 'raised', stage2(systolic), stage2(diastolic)),
    ],
  };
}

function stage2({ p99 }: Centiles): Bound {
  return { ...from('fourthStage2Above99'), limit: p99 + F.fourthStage2Above99.value };
}

function from(id: 'p90Z' | 'p95Z' | 'fourthStage2Above99'): Omit<Bound, 'limit'> {
  return { comparison: SIDE[id], sure: F[id].sure };
}

function flagsOf(
  question: ChildQuestion,
  heightZ: number,
  limits: ChildLimits,
  placed: Omit<CategoryResult, 'flags'>,
): Flag<ChildFlagCode>[] {
  const { systolic, ageMonths } = question;
  const flags: Flag<ChildFlagCode>[] = [];
  if (isChildSevere(question, ageMonths, limits) === true) flags.push({ code: 'child-severe', figures: {} });
  if (systolic !== null && isLowSystolic(systolic, ageMonths)) {
    flags.push({
      code: 'child-low',
      figures: { systolic, limitMmHg: lowSystolicLimit(ageMonths).limitMmHg },
    });
  }
  if (passes(Math.abs(heightZ), SIDE.farOutHeightZ, F.farOutHeightZ.value)) {
    flags.push({ code: 'height-far-out', figures: { heightZ, limitZ: F.farOutHeightZ.value } });
  }
  const printed = categoryIn(fourthReportScheme(asPrinted(limits)), question);
  const isHigher =
    printed.systolicCategory !== placed.systolicCategory ||
    printed.diastolicCategory !== placed.diastolicCategory;
  if (isHigher) flags.push({ code: 'printed-table-higher', figures: {} });
  return flags;
}

/** The limits as the printed tables have them: without decimals. Source: bedside handbook 6.4 (derived). */
function asPrinted({ systolic, diastolic }: ChildLimits): ChildLimits {
  const floored = ({ p90, p95, p99 }: Centiles): Centiles => ({
    p90: Math.floor(p90),
    p95: Math.floor(p95),
    p99: Math.floor(p99),
  });
  return { systolic: floored(systolic), diastolic: floored(diastolic) };
}
