import {
  type AmbulatoryResult,
  type AmbulatoryRules,
  ambulatoryResult,
  type ChanceOver,
  completedYears,
  type DayNight,
  dayAsked,
  type HomeAsked,
  type HomeResult,
  homeMeanKnown,
  homeResult,
  homeThresholds,
  type Lone,
  loneOf,
  type OfficeBeside,
  officeBeside,
  type SeriesReading,
  type TargetBeside,
  targetBeside,
  type UsualKnown,
} from '@evenfall/clinical';
import type { InForce } from '../content/inForce.js';
import type { SeriesContent } from '../content/series.js';
import {
  ambulatoryRuleOf,
  type ByHand,
  dayNightOf,
  homeRuleOf,
  judgedReadings,
  seriesCircumstances,
} from '../content/seriesMade.js';
import type { OfficeNear } from './officeNear.js';
import { type DiaryAsked, seriesAsked } from './seriesAsked.js';

/** What is asked of the usual pressure: what is known of it, and the limits, that of high first; none where nothing is asked. */
export type UsualAsked = {
  readonly known: UsualKnown;
  readonly thresholds: readonly ChanceOver['threshold'][];
};

type Answered = {
  readonly readings: readonly SeriesReading[];
  readonly usual: UsualAsked | null;
  /** The office round beside it, and what both come to together; null where there is none. */
  readonly office: OfficeNear | null;
  readonly beside: OfficeBeside | null;
  /** What the guideline of the rule set aims at under treatment; null where it names nothing. */
  readonly target: TargetBeside | null;
};

/** A series with everything that its page says of it. */
export type AnsweredHome = Answered & {
  readonly of: 'home';
  readonly result: HomeResult;
  /** What was asked for and came; null where nothing asks for readings. */
  readonly asked: HomeAsked | null;
};
export type AnsweredRecording = Answered & {
  readonly of: 'ambulatory';
  readonly result: AmbulatoryResult;
  readonly dayNight: DayNight;
  /** Readings that stand far from their neighbours, and the mean of the whole without them; null where none does. */
  readonly lone: Lone | null;
  /** The rules that it was answered by, with what was asked beyond them. */
  readonly rules: AmbulatoryRules;
};

type Of = {
  readonly content: SeriesContent;
  readonly byHand: ByHand;
  /** The rules of the version that the series names. */
  readonly rules: InForce;
  readonly office: OfficeNear | null;
};

/** Readings at home: the whole result, with chances unless the rule set gives no category for whom it is. */
export function answeredHome({ diary, ...of }: Of & { readonly diary: DiaryAsked | null }): AnsweredHome {
  const { content, byHand, rules, office } = of;
  const { homeRules } = rules;
  const readings = judgedReadings(content.readings);
  const result = homeResult(
    readings,
    seriesCircumstances(content, byHand),
    homeRules,
    homeRuleOf(content.computedBy.rule),
  );
  const barred = isBarred(result);
  const { highSystolic, highDiastolic } = homeRules;
  const thresholds = barred || result.used === 0 ? [] : homeThresholds(homeRules);
  const known = { ...knownOf(content), home: homeMeanKnown(readings, result, homeRules) };
  const isJudged = result.valid && !barred && content.facts.isPregnant !== true;
  return {
    of: 'home',
    readings,
    result,
    asked: seriesAsked(content, rules, diary),
    usual: thresholds.length === 0 ? null : { known, thresholds },
    target: targetOf(content, result.mean, result.valid),
    office,
    beside:
      office === null
        ? null
        : officeBeside(office, result.mean, [{ ...result.mean, highSystolic, highDiastolic }], {
            rules: content.computedBy.preset ?? '',
            isTreated: content.treated,
            isJudged,
          }),
  };
}

/**
 * A recording over 24 hours: the whole result, with the chance about the limit of day.
 *
 * @param asksStiffness whether the stiffness index is worked out though the rules do not ask for it
 */
export function answeredRecording(
  { content, byHand, rules, office }: Of,
  asksStiffness = false,
): AnsweredRecording {
  const { ambulatoryRules } = rules;
  const a = asksStiffness ? { ...ambulatoryRules, reportsStiffness: true } : ambulatoryRules;
  const readings = judgedReadings(content.readings);
  const dayNight = dayNightOf(content, rules);
  const known = { ...seriesCircumstances(content, byHand), scheduled: content.scheduled, dayNight };
  const result = ambulatoryResult(
    readings,
    { ...known, isAllUsed: false },
    a,
    ambulatoryRuleOf(content.computedBy.rule),
  );
  const lone = loneOf(readings, new Set(result.edited.map(({ index }) => index)), (out) => {
    const rejected = new Set([...known.rejected, ...out]);
    const rule = ambulatoryRuleOf(content.computedBy.rule);
    return ambulatoryResult(readings, { ...known, rejected, isAllUsed: false }, a, rule).judged.whole.mean;
  });
  const limits = {
    whole: { highSystolic: a.wholeSystolic, highDiastolic: a.wholeDiastolic },
    day: { highSystolic: a.daySystolic, highDiastolic: a.dayDiastolic },
    night: { highSystolic: a.nightSystolic, highDiastolic: a.nightDiastolic },
  };
  const barred = isBarred(result);
  return {
    of: 'ambulatory',
    readings,
    dayNight,
    rules: a,
    result,
    lone,
    usual: barred || !result.valid ? null : byDay(content, result, rules),
    target: targetOf(content, result.day.mean, result.valid),
    office,
    beside:
      office === null
        ? null
        : officeBeside(
            office,
            result.day.mean,
            a.judged.map((period) => ({ ...result.judged[period].mean, ...limits[period] })),
            {
              rules: content.computedBy.preset ?? '',
              isTreated: content.treated,
              isJudged: result.valid && !barred,
            },
          ),
  };
}

/** Held against the mean that decides: at home, or by day. */
function targetOf(
  { computedBy, treated, facts: { ageMonths, isPregnant } }: SeriesContent,
  mean: HomeResult['mean'],
  isValid: boolean,
): TargetBeside | null {
  const ageYears = ageMonths === null ? null : completedYears(ageMonths);
  const isOf = { ageYears, isPregnant: isPregnant === true, isTreated: treated, isValid };
  return targetBeside(computedBy.preset, mean, isOf);
}

/** What the rule set gives no category for has no chance beside it either. */
function isBarred({ why }: Pick<HomeResult, 'why'> | Pick<AmbulatoryResult, 'why'>): boolean {
  return why.some(({ code }) => code === 'child' || code === 'pregnancy');
}

function knownOf({ facts: { ageMonths, sex } }: SeriesContent): UsualKnown {
  const none = { systolic: null, diastolic: null };
  const ageYears = ageMonths === null ? null : completedYears(ageMonths);
  return { ageYears, sex, office: none, home: none, ambulatory: none };
}

/** The mean by day about the limit of day; null where one of them is not known. */
function byDay(
  content: SeriesContent,
  result: AmbulatoryResult,
  { ambulatoryRules }: InForce,
): UsualAsked | null {
  const asked = dayAsked(result, ambulatoryRules);
  if (asked === null) return null;
  const { ambulatory, thresholds } = asked;
  return { known: { ...knownOf(content), ambulatory }, thresholds };
}
