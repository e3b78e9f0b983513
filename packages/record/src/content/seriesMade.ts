import {
  AMBULATORY_RULE,
  type AmbulatoryRuleName,
  ambulatoryResult,
  type DayNight,
  HOME_RULE,
  type HomeCircumstances,
  type HomeRuleName,
  homeResult,
  type SeriesReading,
  type SidedLimit,
  seriesAlerts,
  shownPressure,
} from '@evenfall/clinical';
import { offsetMinutes } from '../entry/offset.js';
import type { InForce } from './inForce.js';
import type { SeriesContent, SeriesEvidence } from './series.js';
import type { SeriesKind } from './seriesNames.js';
import type { SeriesValueKept } from './seriesValue.js';

/** What hands decided of single readings, by their place in the series from 1. */
export type ByHand = { readonly rejected: ReadonlySet<number>; readonly restored: ReadonlySet<number> };
export const NOT_BY_HAND: ByHand = { rejected: new Set(), restored: new Set() };

/** The rule of this program that makes the value of a series. */
export const SERIES_RULES = { home: HOME_RULE, ambulatory: AMBULATORY_RULE } as const;

/** Rules of earlier programs by which this one still makes a value again. */
const EARLIER_RULES = { home: ['home-1'], ambulatory: ['ambulatory-1'] } as const;

/** Whether a value of a series that was made by a rule can be made again here. */
export function isSeriesRule(of: SeriesKind, rule: string): boolean {
  return [SERIES_RULES[of], ...EARLIER_RULES[of]].some((one) => one === rule);
}

/** The rule that a kept series at home is answered by: that of its value where it can be made again here, else today's. */
export function homeRuleOf(rule: string): HomeRuleName {
  return rule === 'home-1' ? rule : HOME_RULE;
}

/** The same of a recording over 24 hours. */
export function ambulatoryRuleOf(rule: string): AmbulatoryRuleName {
  return rule === 'ambulatory-1' ? rule : AMBULATORY_RULE;
}

/** The preset that the value of a series must name under the rules in force; null where none was chosen. */
export function presetOfSeries(of: SeriesKind, { presets }: InForce): string | null {
  return presets[of] ?? null;
}

/** The content of a series, its value made from the evidence by the rules in force. */
export function seriesMade(evidence: SeriesEvidence, inForce: InForce, program: string): SeriesContent {
  const { presetVersion } = inForce;
  const computedBy = {
    program,
    rule: SERIES_RULES[evidence.of],
    preset: presetOfSeries(evidence.of, inForce),
    presetVersion,
  };
  return copied({ ...evidence, value: valueOfSeries(evidence, inForce), computedBy }) as SeriesContent;
}

const MINUTES_PER_DAY = 1440;
const MS_PER_MINUTE = 60_000;

/** The readings of a series as they are judged: the local day and minute by the offset that each was written with. */
export function judgedReadings(readings: SeriesEvidence['readings']): SeriesReading[] {
  return readings.map((kept, place) => {
    const { at: { at }, systolic, diastolic, pulse, asleep, part, site, startedByHand } = kept; // biome-ignore format: one thought
    const atMs = Date.parse(at);
    const localMinutes = Math.floor(atMs / MS_PER_MINUTE) + offsetMinutes(at);
    const localDay = Math.floor(localMinutes / MINUTES_PER_DAY);
    const minuteOfDay = localMinutes - localDay * MINUTES_PER_DAY;
    const said = { systolic, diastolic, pulse, asleep, part, site };
    return {
      ...{ index: place + 1, atMs, localDay, minuteOfDay, ...said },
      ...(startedByHand === true ? { startedByHand } : {}),
    };
  });
}

/** What tells day from night of a recording: the times of a diary, marks beside the readings, or the clock of the rules. */
export function dayNightOf(
  { asleep, nap, readings }: Pick<SeriesEvidence, 'asleep' | 'nap' | 'readings'>,
  { ambulatoryRules: rules }: Pick<InForce, 'ambulatoryRules'>,
): DayNight {
  if (asleep !== null) return { by: 'asleep-range', asleep, nap };
  if (readings.some((one) => one.asleep !== null)) return { by: 'asleep-marks' };
  const { dayFrom, dayTo, nightFrom, nightTo } = rules;
  return { by: 'clock', day: { from: dayFrom, to: dayTo }, night: { from: nightFrom, to: nightTo } };
}

/** What is known of the person, and what hands decided, as `clinical` takes it. */
export function seriesCircumstances(
  { facts }: Pick<SeriesEvidence, 'facts'>,
  byHand: ByHand,
): HomeCircumstances {
  const { ageMonths, isPregnant } = facts;
  return {
    ageYears: ageMonths === null ? null : Math.floor(ageMonths / 12),
    isPregnant: isPregnant === true,
    ...byHand,
  };
}

/**
 * What a protocol makes of a series, with what hands decided. An alert is about every reading that came, also one that
 * a hand took out and a row that was refused: taking it out of the mean does not unsay it.
 *
 * @param rule that of this program, or an earlier one by which a kept value is made again
 */
export function valueOfSeries(
  evidence: SeriesEvidence,
  inForce: InForce,
  byHand: ByHand = NOT_BY_HAND,
  rule: string = SERIES_RULES[evidence.of],
): SeriesValueKept {
  const { features, facts, readings, refused } = evidence;
  const pressures = [...readings, ...refused.map((row) => ({ ...row, pulse: null }))];
  const actNow = seriesAlerts(pressures, features, facts, inForce.roundRules);
  const value =
    evidence.of === 'home'
      ? ofHome(evidence, inForce, byHand, homeRuleOf(rule))
      : ofDay(evidence, inForce, byHand, ambulatoryRuleOf(rule));
  return copied<unknown>({ ...value, actNow }) as SeriesValueKept;
}

/** The value of a kept series with what hands decided since, by the rule that it was kept under. */
export function valueStandingOf(content: SeriesContent, inForce: InForce, byHand: ByHand): SeriesValueKept {
  return valueOfSeries(content, inForce, byHand, content.computedBy.rule);
}

type Made = Omit<SeriesValueKept, 'actNow'>;

function ofHome(evidence: SeriesEvidence, { homeRules }: InForce, byHand: ByHand, rule: HomeRuleName): Made {
  const known = seriesCircumstances(evidence, byHand);
  const result = homeResult(judgedReadings(evidence.readings), known, homeRules, rule);
  const { valid, used, days, mean, morning, evening, high, category } = result;
  // Without a limit to stand beside, a mean is shown whole.
  const shown = {
    systolic: result.shown.systolic ?? shownBeside(mean.systolic, null),
    diastolic: result.shown.diastolic ?? shownBeside(mean.diastolic, null),
  };
  return {
    valid,
    why: plain(result.why),
    used,
    days,
    mean,
    morning,
    evening,
    day: null,
    night: null,
    counts: null,
    dayNightBy: null,
    dip: null,
    high,
    category,
    shown,
    dropped: result.dropped.map(({ index, code, figures }) => ({ index, code, figures: { ...figures } })),
    flags: plain(result.flags),
  };
}

function ofDay(evidence: SeriesEvidence, inForce: InForce, byHand: ByHand, rule: AmbulatoryRuleName): Made {
  const { ambulatoryRules: rules } = inForce;
  const known = {
    ...seriesCircumstances(evidence, byHand),
    scheduled: evidence.scheduled,
    dayNight: dayNightOf(evidence, inForce),
    isAllUsed: false,
  };
  const result = ambulatoryResult(judgedReadings(evidence.readings), known, rules, rule);
  const { valid, counts, all, day, night, dip, high, pattern, dayNightBy } = result;
  // The mean of 24 hours is the one that the rules hold against their limit.
  const mean = { ...result.judged.whole.mean, pulse: all.mean.pulse };
  return {
    valid,
    why: plain(result.why),
    used: counts.kept,
    days: null,
    mean,
    morning: null,
    evening: null,
    day: day.mean,
    night: night.mean,
    counts: { scheduled: counts.scheduled, day: counts.day, night: counts.night, percent: counts.percent },
    dayNightBy,
    dip: { ...dip },
    high,
    category: pattern,
    shown: {
      systolic: shownBeside(mean.systolic, rules.wholeSystolic),
      diastolic: shownBeside(mean.diastolic, rules.wholeDiastolic),
    },
    dropped: result.edited.map(({ index, code, figures }) => ({ index, code, figures: { ...figures } })),
    flags: plain(result.flags),
  };
}

function shownBeside(mmHg: number | null, limit: SidedLimit | null): string | null {
  return mmHg === null ? null : shownPressure(mmHg, limit === null ? [] : [limit]);
}

function plain(
  flags: readonly { readonly code: string; readonly figures: Readonly<Record<string, number>> }[],
) {
  return flags.map(({ code, figures }) => ({ code, figures: { ...figures } }));
}

/** Plain data that shares nothing with what it was made from. */
function copied<Plain>(given: Plain): Plain {
  return JSON.parse(JSON.stringify(given)) as Plain;
}
