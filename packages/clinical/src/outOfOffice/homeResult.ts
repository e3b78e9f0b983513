import { type CategoryResult, categoryIn } from '../category/categoryIn.js';
import { isChild } from '../category/isChild.js';
import { isRaised } from '../category/scheme.js';
import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import { mean } from '../statistics/mean.js';
import { sampleSd } from '../statistics/sampleSd.js';
import { type ByMeasure, forEachMeasure, ofEachMeasure } from './byMeasure.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import { dayPartOf, homeDayOf, sittingsOf } from './homeDays.js';
import type { HomeRules } from './homeRules.js';
import { firstHighFrom, highFrom, homeScheme } from './homeSchemes.js';
import { inTimeOrder, isTwin, type Measure, type SeriesReading, valuesOf } from './seriesReading.js';
import { averageRealVariability, cvPercent } from './variability.js';

/** Name of this rule; one that gives another result for the same readings has another name. */
export const HOME_RULE = 'home-2';

/**
 * Rules by which a kept value is made again. By `home-1` a place's own limit of high moved the first name for a high mean
 * alone, so that a mean below a limit set further up could have the name of a stage beyond it.
 */
export type HomeRuleName = typeof HOME_RULE | 'home-1';

export type DropCode = 'dropped-day' | 'first-of-sitting' | 'beyond-two' | 'duplicate' | 'wrist' | 'rejected';
export type Dropped = { readonly index: number } & Flag<DropCode>;

export type HomeReasonCode =
  | 'too-few-readings'
  | 'too-few-days'
  | 'no-readings'
  | 'no-limit'
  | 'child'
  | 'pregnancy'
  | 'no-diastolic'
  | 'no-systolic';

/** What is known of the person and decided by hand about single readings (by `index`). */
export type HomeCircumstances = {
  /** Completed years; null is not known. */
  readonly ageYears: number | null;
  readonly isPregnant: boolean;
  /** Readings that somebody took out by hand. */
  readonly rejected: ReadonlySet<number>;
  /** Readings left out by rule that somebody put back. */
  readonly restored: ReadonlySet<number>;
};

export const NOTHING_BY_HAND: HomeCircumstances = {
  ageYears: null,
  isPregnant: false,
  rejected: new Set(),
  restored: new Set(),
};

/** Variation from day to day, of daily means. */
export type DayToDay = {
  readonly days: number;
  readonly sd: ByMeasure;
  readonly cvPercent: ByMeasure;
  readonly arv: ByMeasure;
  readonly standardError: ByMeasure;
  readonly mostMinusLeast: ByMeasure;
};

/**
 * What a series at home comes to under a rule set. Means are of readings, or of sittings where the rules say so, not rounded; SD divides by n - 1. `used`
 * counts readings of the mean, `counts` says for each measure how many had it.
 */
export type HomeResult = {
  readonly valid: boolean;
  readonly why: readonly Flag<HomeReasonCode>[];
  readonly used: number;
  readonly counts: { readonly [M in Measure]: number };
  readonly dropped: readonly Dropped[];
  /** Days with a reading that is averaged. */
  readonly days: number;
  readonly mean: ByMeasure;
  readonly morning: ByMeasure;
  readonly evening: ByMeasure;
  /** Morning minus evening. */
  readonly morningMinusEvening: ByMeasure;
  readonly sd: ByMeasure;
  /** In order of days; `day` as days since 1970-01-01. */
  readonly dayMeans: readonly ({ readonly day: number; readonly readings: number } & ByMeasure)[];
  readonly dayToDay: DayToDay;
  readonly high: boolean | null;
  readonly category: string | null;
  /** The pressures as shown beside the limits, so that rounding never puts one on the other side. */
  readonly shown: CategoryResult['shown'];
  readonly flags: readonly Flag<HomeFlagCode>[];
};

export type HomeFlagCode = 'same-time-other-value' | 'sittings-first' | 'limits-from-memory';

/**
 * The mean of readings at home by a rule set, with everything that was left out and why. Readings may come in any order.
 *
 * @param rule by which the names go by a place's own limit
 * Errors: none; an empty series answers with nulls.
 * Source: out-of-office handbook 3 (the rule, a decision, with each guideline's parameters from section 2).
 */
export function homeResult(
  readings: readonly SeriesReading[],
  known: HomeCircumstances,
  rules: HomeRules,
  rule: HomeRuleName = HOME_RULE,
): HomeResult {
  const { kept, dropped, days: measuredDays } = selected(readings, known, rules);
  const byPart = (part: 'morning' | 'evening') =>
    meansOf(
      kept.filter((one) => dayPartOf(one, rules) === part),
      rules,
    );
  const [morning, evening] = [byPart('morning'), byPart('evening')];
  const values = forEachMeasure((measure) => valuesOf(kept, measure));
  const all = meansOf(kept, rules);
  const dayMeans = meansByDay(kept, rules);
  const short = shortOf(kept.length, measuredDays, dayMeans.length, rules);
  const judged = judgedOf({ all, morning, evening }, short.length === 0, known, rules, rule);
  return {
    valid: short.length === 0,
    why: [...short, ...judged.why],
    used: kept.length,
    counts: ofEachMeasure(values, ({ length }) => length),
    dropped,
    days: dayMeans.length,
    mean: all,
    morning,
    evening,
    morningMinusEvening: forEachMeasure((measure) => minus(morning[measure], evening[measure])),
    // Of the readings about their own mean, whatever the mean is of.
    sd: ofEachMeasure(values, (list) => sampleSd(list, mean(list))),
    dayMeans,
    dayToDay: dayToDayOf(dayMeans),
    high: judged.high,
    category: judged.category,
    shown: judged.shown,
    flags: [...sameTimes(kept), ...sittingsFirst(kept, rules), ...judged.flags],
  };
}

/** Takes out what the rules, the wrist and the hand take out; each once, with its first reason. */
function selected(readings: readonly SeriesReading[], known: HomeCircumstances, rules: HomeRules) {
  const dropped: Dropped[] = [];
  const drop = (reading: SeriesReading, code: DropCode, figures: Flag['figures'] = {}): void => {
    dropped.push({ index: reading.index, code, figures });
  };
  const measured: SeriesReading[] = [];
  const inOrder = inTimeOrder(readings);
  for (let k = 0; k < inOrder.length; k++) {
    const reading = inOrder[k] as SeriesReading;
    const twin = firstTwinOf(inOrder, k);
    if (known.rejected.has(reading.index)) drop(reading, 'rejected');
    else if (twin !== undefined) drop(reading, 'duplicate', { ofIndex: twin.index });
    else if (reading.site === 'wrist' && !rules.averagesWrist) drop(reading, 'wrist');
    else measured.push(reading);
  }
  // Wrist and arm are never in one mean: where the wrist is averaged, it is only where nothing else is.
  const arm = measured.filter(({ site }) => site !== 'wrist');
  const ofOneSite = arm.length === 0 ? measured : arm;
  if (arm.length > 0) for (const reading of measured) if (reading.site === 'wrist') drop(reading, 'wrist');
  const days = [...new Set(ofOneSite.map((one) => homeDayOf(one, rules)))].sort((a, b) => a - b);
  // Calendar days from the first with a reading: a day without one in between counts all the same.
  const firstKept = (days[0] ?? 0) + rules.droppedDays;
  const kept: SeriesReading[] = [];
  for (const sitting of sittingsOf(ofOneSite, rules)) {
    sitting.forEach((reading, at) => {
      const isRestored = known.restored.has(reading.index);
      if (isRestored) kept.push(reading);
      else if (homeDayOf(reading, rules) < firstKept) {
        drop(reading, 'dropped-day', { day: homeDayOf(reading, rules) - (days[0] ?? 0) + 1 });
      } else if (rules.sittingUse === 'without-first' && at === 0 && sitting.length > 1) {
        drop(reading, 'first-of-sitting');
      } else if (rules.sittingUse === 'first-two' && at >= F.usedOfSitting.value) {
        drop(reading, 'beyond-two', { place: at + 1 });
      } else kept.push(reading);
    });
  }
  return { kept, dropped: dropped.sort((a, b) => a.index - b.index), days: days.length };
}

/** The first reading that is the same as the one at a place, among those of its instant before it. */
function firstTwinOf(inOrder: readonly SeriesReading[], place: number): SeriesReading | undefined {
  const reading = inOrder[place] as SeriesReading;
  let first: SeriesReading | undefined;
  for (let k = place - 1; k >= 0 && inOrder[k]?.atMs === reading.atMs; k--) {
    const one = inOrder[k] as SeriesReading;
    if (isTwin(one, reading) && one.site === reading.site) first = one;
  }
  return first;
}

/** Readings of one instant with other values are both kept, and that is said. Source: out-of-office handbook 20. */
function sameTimes(kept: readonly SeriesReading[]): Flag<HomeFlagCode>[] {
  const again = kept.filter((one, k) => k > 0 && kept[k - 1]?.atMs === one.atMs).length;
  return again === 0 ? [] : [{ code: 'same-time-other-value', figures: { readings: again } }];
}

/** The mean of readings, or of the means of their sittings where the rules average those first. Source: out-of-office handbook 3, point 7. */
function meansOf(readings: readonly SeriesReading[], rules: HomeRules): ByMeasure {
  const ofReadings = (some: readonly SeriesReading[]) =>
    forEachMeasure((measure) => mean(valuesOf(some, measure)));
  if (rules.averaged === 'readings') return ofReadings(readings);
  const sittings = sittingsOf(readings, rules).map(ofReadings);
  return forEachMeasure((measure) =>
    mean(sittings.map((one) => one[measure]).filter((one): one is number => one !== null)),
  );
}

/** That a mean is of sittings is said: it is not that of the readings which stand beside it. */
function sittingsFirst(kept: readonly SeriesReading[], rules: HomeRules): Flag<HomeFlagCode>[] {
  if (rules.averaged === 'readings' || kept.length === 0) return [];
  return [{ code: 'sittings-first', figures: { sittings: sittingsOf(kept, rules).length } }];
}

function minus(a: number | null, b: number | null): number | null {
  return a === null || b === null ? null : a - b;
}

function meansByDay(kept: readonly SeriesReading[], rules: HomeRules): HomeResult['dayMeans'] {
  const days = new Map<number, SeriesReading[]>();
  for (const reading of kept) {
    const day = homeDayOf(reading, rules);
    const ofDay = days.get(day);
    if (ofDay === undefined) days.set(day, [reading]);
    else ofDay.push(reading);
  }
  return [...days.entries()]
    .sort(([a], [b]) => a - b)
    .map(([day, ofDay]) => ({ day, readings: ofDay.length, ...meansOf(ofDay, rules) }));
}

/** How means of days vary, in the order of their days; a day without a measure is left out of it. Source: out-of-office handbook 12. */
export function dayToDayOf(dayMeans: readonly ByMeasure[]): DayToDay {
  const values = forEachMeasure((measure) =>
    dayMeans.map((one) => one[measure]).filter((one): one is number => one !== null),
  );
  const centre = ofEachMeasure(values, (list) => mean(list));
  const sd = forEachMeasure((measure) => sampleSd(values[measure], centre[measure]));
  return {
    days: dayMeans.length,
    sd,
    cvPercent: forEachMeasure((measure) => cvPercent(centre[measure], sd[measure])),
    arv: ofEachMeasure(values, (list) => averageRealVariability({ values: list, starts: [0] })),
    standardError: forEachMeasure((measure) => {
      const one = sd[measure];
      return one === null ? null : one / Math.sqrt(values[measure].length);
    }),
    mostMinusLeast: ofEachMeasure(values, (list) =>
      list.length === 0 ? null : Math.max(...list) - Math.min(...list),
    ),
  };
}

function shortOf(
  used: number,
  measuredDays: number,
  usedDays: number,
  { leastDays, leastReadings, droppedDays }: HomeRules,
): Flag<HomeReasonCode>[] {
  if (used === 0) return [{ code: 'no-readings', figures: {} }];
  const why: Flag<HomeReasonCode>[] = [];
  if (leastReadings !== null && !passes(used, leastReadings.comparison, leastReadings.limit)) {
    why.push({ code: 'too-few-readings', figures: { readings: used, least: leastReadings.limit } });
  }
  if (leastDays !== null) {
    const least = leastDays.limit - droppedDays;
    if (!passes(usedDays, leastDays.comparison, least)) {
      why.push({
        code: 'too-few-days',
        figures: { days: measuredDays, usedDays, least: leastDays.limit, leastUsed: least },
      });
    }
  }
  return why;
}

type Judged = Pick<HomeResult, 'high' | 'category' | 'shown' | 'flags'> & {
  readonly why: readonly Flag<HomeReasonCode>[];
};

/** Whether the mean (or either part of the day) is high, and the rule set's name for it. Adults who are not pregnant only. */
function judgedOf(
  means: { readonly all: ByMeasure; readonly morning: ByMeasure; readonly evening: ByMeasure },
  isValid: boolean,
  { ageYears, isPregnant }: HomeCircumstances,
  rules: HomeRules,
  rule: HomeRuleName,
): Judged {
  const { highSystolic, highDiastolic } = rules;
  const scheme = homeScheme(
    rules.scheme === 'none' ? 'high-or-not' : rules.scheme,
    highSystolic,
    highDiastolic,
    rule === 'home-1' ? firstHighFrom : highFrom,
  );
  const none = { high: null, category: null, flags: [] };
  const blank = { systolic: null, diastolic: null };
  if (scheme === null) return { ...none, shown: blank, why: [{ code: 'no-limit', figures: {} }] };
  const found = categoryIn(scheme, means.all);
  const barred: Flag<HomeReasonCode>[] = [];
  if (ageYears !== null && isChild(ageYears)) barred.push({ code: 'child', figures: { ageYears } });
  if (isPregnant) barred.push({ code: 'pregnancy', figures: {} });
  if (barred.length > 0) return { ...none, shown: found.shown, why: barred };
  if (!isValid) return { ...none, shown: found.shown, why: [] };
  const parts = rules.judged === 'each-part' ? [means.morning, means.evening] : [means.all];
  const results = parts.map((one) => categoryIn(scheme, one)).filter(({ atLeast }) => atLeast !== null);
  const order = scheme.bands.map(({ id }) => id);
  const highest = results
    .map(({ atLeast }) => atLeast as string)
    .sort((a, b) => order.indexOf(a) - order.indexOf(b))
    .at(-1);
  const isHigh = results.some(({ level }) => level !== null && isRaised(level));
  const isWhole = results.length === parts.length && results.every(({ category }) => category !== null);
  const flags: Flag<HomeFlagCode>[] = results.some((one) =>
    one.flags.some(({ code }) => code === 'limits-from-memory'),
  )
    ? [{ code: 'limits-from-memory', figures: {} }]
    : [];
  const why = [...new Set(results.flatMap((one) => one.why.map(({ code }) => code)))].filter(
    (code): code is 'no-systolic' | 'no-diastolic' => code === 'no-systolic' || code === 'no-diastolic',
  );
  return {
    // A part that is not known may be high: only a high one that is known is sure.
    high: isHigh ? true : isWhole ? false : null,
    category: rules.scheme === 'none' || !isWhole ? null : (highest ?? null),
    shown: found.shown,
    flags,
    why: why.map((code) => ({ code, figures: {} })),
  };
}
