import { categoryIn } from '../category/categoryIn.js';
import { type Bound, band, bound, type CategoryScheme } from '../category/scheme.js';
import type { Figure } from '../contract/figure.js';
import type { Flag } from '../contract/flag.js';
import type { AmbulatoryResult } from './ambulatoryResult.js';
import type { AmbulatoryRules, Period } from './ambulatoryRules.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import { highFrom } from './homeSchemes.js';

/**
 * How guidelines name the means of a recording; `none` gives no name, `high-or-not` only that. A table of names is never
 * changed: one with other limits has another id, so that what was kept under a protocol keeps its names.
 */
export const PERIOD_SCHEME_IDS = ['none', 'high-or-not', 'nice-ng136', 'acc-aha-2017', 'esc-2024'] as const;
export type PeriodSchemeId = (typeof PERIOD_SCHEME_IDS)[number];

/** What a rule set calls the mean of one period of a recording, with the names of a mean at home. */
export type PeriodCategory = { readonly period: Period; readonly category: string };

/** The name of each mean, and what is to be known of them: that limits they stand on were never read again. */
export type PeriodCategories = {
  readonly names: readonly PeriodCategory[];
  readonly flags: readonly Flag<'limits-from-memory'>[];
};

const NO_NAMES: PeriodCategories = { names: [], flags: [] };

const from = (figure: Figure): Bound => bound(figure, '>=');

function high(systolic: Figure, diastolic: Figure): CategoryScheme {
  const { source, sure } = systolic;
  return {
    id: 'high-or-not',
    source,
    status: sure,
    bands: [band('not-high', 'usual', null, null), band('high', 'raised', from(systolic), from(diastolic))],
  };
}

function esc(
  systolic: Figure,
  diastolic: Figure,
  highSystolic: Figure,
  highDiastolic: Figure,
): CategoryScheme {
  const { source, sure } = systolic;
  return {
    id: 'esc-2024',
    source,
    status: sure,
    bands: [
      band('non-elevated', 'usual', null, null),
      band('elevated', 'elevated', from(systolic), from(diastolic)),
      band('hypertension', 'raised', from(highSystolic), from(highDiastolic)),
    ],
  };
}

/** By what office pressures of 120, 130/80 and 140/90 are in a period: under the diastolic of stage 1 nothing is elevated. */
function acc(
  elevated: Figure,
  stage1: readonly [Figure, Figure],
  stage2: readonly [Figure, Figure],
): CategoryScheme {
  const { source, sure } = elevated;
  return {
    id: 'acc-aha-2017',
    source,
    status: sure,
    bands: [
      band('normal', 'usual', null, null),
      band('elevated', 'elevated', from(elevated), null),
      band('stage-1', 'raised', from(stage1[0]), from(stage1[1])),
      band('stage-2', 'raised', from(stage2[0]), from(stage2[1])),
    ],
  };
}

type OfPeriods = Readonly<Partial<Record<Period, CategoryScheme>>>;

const HIGH_OR_NOT: Readonly<Record<Period, CategoryScheme>> = {
  whole: high(F.wholeHighSystolic, F.wholeHighDiastolic),
  day: high(F.dayHighSystolic, F.dayHighDiastolic),
  night: high(F.nightHighSystolic, F.nightHighDiastolic),
};

const ACC: OfPeriods = {
  whole: acc(
    F.accWholeElevatedSystolic,
    [F.accWholeHighSystolic, F.accWholeHighDiastolic],
    [F.accWholeStage2Systolic, F.accWholeStage2Diastolic],
  ),
  day: acc(
    F.accDayElevatedSystolic,
    [F.accDayHighSystolic, F.accDayHighDiastolic],
    [F.accDayStage2Systolic, F.accDayStage2Diastolic],
  ),
  night: acc(
    F.accNightElevatedSystolic,
    [F.accNightHighSystolic, F.accNightHighDiastolic],
    [F.accNightStage2Systolic, F.accNightStage2Diastolic],
  ),
};

/** What guidelines call a mean over 24 hours, by day or by night; a period that one has no names for is high or not. */
const SCHEMES: Readonly<Record<Exclude<PeriodSchemeId, 'none'>, OfPeriods>> = {
  'high-or-not': HIGH_OR_NOT,
  'nice-ng136': {
    day: {
      id: 'nice-ng136',
      source: F.niceDayStage2Systolic.source,
      status: F.niceDayStage2Systolic.sure,
      bands: [
        band('below-stage-1', 'usual', null, null),
        band('stage-1', 'raised', from(F.dayHighSystolic), from(F.dayHighDiastolic)),
        band('stage-2', 'raised', from(F.niceDayStage2Systolic), from(F.niceDayStage2Diastolic)),
      ],
    },
  },
  'acc-aha-2017': ACC,
  'esc-2024': {
    whole: esc(
      F.escWholeElevatedSystolic,
      F.escWholeElevatedDiastolic,
      F.wholeHighSystolic,
      F.wholeHighDiastolic,
    ),
    day: esc(F.escDayElevatedSystolic, F.escDayElevatedDiastolic, F.dayHighSystolic, F.dayHighDiastolic),
    night: esc(
      F.escNightElevatedSystolic,
      F.escNightElevatedDiastolic,
      F.nightHighSystolic,
      F.nightHighDiastolic,
    ),
  },
};

/**
 * What the rule set calls each mean that it judges; nothing of a recording that is not valid, of a child or in pregnancy, nor of
 * a period without limits or without one of the numbers. Worked out where it is shown: what is kept says high or not.
 *
 * Source: out-of-office handbook 8.1.
 */
export function periodCategories(
  { judged, valid, why }: Pick<AmbulatoryResult, 'judged' | 'valid' | 'why'>,
  rules: AmbulatoryRules,
): PeriodCategories {
  const { scheme: id } = rules;
  if (id === 'none' || !valid) return NO_NAMES;
  if (why.some(({ code }) => code === 'child' || code === 'pregnancy')) return NO_NAMES;
  const limits = {
    whole: [rules.wholeSystolic, rules.wholeDiastolic],
    day: [rules.daySystolic, rules.dayDiastolic],
    night: [rules.nightSystolic, rules.nightDiastolic],
  } as const;
  const found = rules.judged.flatMap((period) => {
    const [systolic, diastolic] = limits[period];
    if (systolic === null || diastolic === null) return [];
    const scheme = SCHEMES[id][period] ?? HIGH_OR_NOT[period];
    const { category, flags } = categoryIn(highFrom(scheme, systolic, diastolic), judged[period].mean);
    return category === null ? [] : [{ period, category, flags }];
  });
  // High or not stands on the limits of the rules themselves, whose guideline says how sure they are.
  const isFromMemory = found.some(
    ({ period, flags }) =>
      flags.some(({ code }) => code === 'limits-from-memory') || rules.fromMemory?.includes(period) === true,
  );
  return {
    names: found.map(({ period, category }) => ({ period, category })),
    flags: isFromMemory ? [{ code: 'limits-from-memory', figures: {} }] : [],
  };
}
