import { isRaised } from '../category/scheme.js';
import { completedYears } from '../child/years.js';

import type { Posture, Side } from '../cuff/places.js';
import { EARLY_WARNING_PARTS, type EarlyWarning, earlyWarning } from '../score/earlyWarning.js';
import { meanPressure } from '../score/meanPressure.js';
import { pulsePressure } from '../score/pulsePressure.js';
import { NO_SCORE_INPUTS, type ScoreInputs } from '../score/scoreInputs.js';
import type { StandingResult } from '../score/standingResult.js';
import { type ActNowAlert, actNow } from './actNow.js';
import { pregnancyLimits, severeLimits } from './actNowRules.js';
import { type ArmDifference, armDifference, armPairs, comparedReadings } from './armDifference.js';
import { type Asked, askOf } from './ask.js';
import { isAtOnceAfter, isUnwell } from './atOnce.js';
import { averageReadings, type ReadingsAverage } from './averageReadings.js';
import type { AveragingRuleId } from './averagingRules.js';
import { categoryOfRound, type RoundCategory } from './categoryOfRound.js';
import { knownChild, type LimitsOfChild, limitsOfChild, p95ToActBy, raisedFromOf } from './childLimits.js';
import { fullReadings } from './fullReadings.js';
import type { ReadingsCircumstances } from './furtherReading.js';
import type { KnownSigns } from './knownSigns.js';
import { laidDownBy } from './lieDown.js';
import { newestAtRest, newestFirst } from './newestFirst.js';
import { type LeftOutReason, readingsToAverage } from './readingsToAverage.js';
import { RECHECK_CLASSES, type Recheck, type RecheckClass, recheckAfter } from './recheckAfter.js';
import { recheckClass } from './recheckClass.js';
import type { JudgedReading, RoundInput } from './roundInput.js';
import type { RoundRules } from './roundRules.js';
import { type RoundScore, roundScores } from './roundScores.js';
import { standingOf } from './standingOf.js';
import { isScoredAsAdult, isSoonAfterBirth } from './whoseLimits.js';
import { isLowCondition, worstAlerts } from './worstAlerts.js';

/** The version of what is made of a round, as kept beside it. */
export const ROUND_RULE = 'round-6';

/**
 * Every version that can be made again, the oldest first. Since the second an alert names the worst reading of the round,
 * since the third a systolic on the feet is low by the limit of the person's age, since the fourth somebody who felt unwell
 * on their feet is an alert. Since the fifth they are looked at again too, what is read after somebody was laid down from their
 * feet is not averaged with what was read at rest before, and the score goes by the newest pressure where that is very low or
 * was read after it. Since the sixth none of that gives a category either, and only what has both numbers was read at rest.
 */
export const ROUND_RULES = ['round-1', 'round-2', 'round-3', 'round-4', 'round-5', ROUND_RULE] as const;
export type RoundRuleId = (typeof ROUND_RULES)[number];

/** The pressure that a round goes by: the average of the protocol's rule, or why there is none. `used` are ids. */
export type RoundPressure = Omit<ReadingsAverage, 'used'> & {
  /** The guideline whose rule made it. */
  readonly rule: AveragingRuleId;
  /** Whether that rule stands because the place chose none. */
  readonly isGeneral: boolean;
  readonly side: Side | null;
  readonly posture: Posture | null;
  readonly used: readonly string[];
  readonly leftOut: readonly { readonly id: string; readonly reason: LeftOutReason }[];
};

/**
 * What the protocol makes of a round. Nothing rounded; a part that could not be made is null, and what hides behind a
 * missing part is never taken for normal. `actNow` holds for any reading of the round at any site, not only for their average.
 */
export type RoundResult = {
  readonly pressure: RoundPressure | null;
  readonly arms: ArmDifference | null;
  /** Null where the place chose no protocol, or has no scheme for this person. */
  readonly category: RoundCategory | null;
  /** This and the next: null without a diastolic, or where the place does not show it. */
  readonly meanPressureMmHg: number | null;
  readonly pulsePressureMmHg: number | null;
  /**
   * Null for whom the score is not (under 16, in pregnancy, with a spinal injury), where no part of it was taken, or
   * where the place does not show it: its alerts are in `actNow` all the same.
   */
  readonly earlyWarning: EarlyWarning | null;
  readonly scores: readonly RoundScore[];
  /** The test of lying (or sitting) and standing; null where it was not made. */
  readonly standing: StandingResult | null;
  readonly actNow: readonly ActNowAlert[];
  /** What must still be asked of the person before the alerts are whole. */
  readonly ask: Asked;
  readonly recheckClass: RecheckClass | null;
  /** Repeats that are due, counted from the last reading. */
  readonly rechecks: readonly Recheck[];
};

/**
 * Makes the result of a round. It may be made at any time; with nothing taken it says nothing.
 *
 * @param rule the version under which it is made: an older one makes again what was kept under it
 *
 * Errors: none. Source: bedside handbook 3.10 to 3.17, 5 and 6; docs/conventions.md sections 6 and 7.
 */
export function roundResult(
  input: RoundInput,
  rules: RoundRules,
  rule: RoundRuleId = ROUND_RULE,
): RoundResult {
  const child = knownChild(input);
  const limits = child === null ? null : limitsOfChild(child);
  const isByNow = isSince(rule, 'round-5');
  const laidDown = isByNow
    ? (laidDownBy(input.readings, input.facts.ageMonths, rules.actNow)?.id ?? null)
    : null;
  const isByWhole = isSince(rule, 'round-6');
  const pressure = pressureOf(input, limits, rules, { laidDown, isByWhole });
  const used = pressureUsed(input, pressure, isByNow ? rules.actNow : null);
  const inputs = scoreInputs(input, used);
  const { score: shows } = rules;
  const score = scoreOf(input, inputs);
  const shared = sharedSigns(input, score, limits);
  const isPregnancy = input.facts.isPregnant === true || isSoonAfterBirth(shared, rules.actNow);
  const notAtRest = isByWhole ? laidDownOf(pressure) : [];
  const category = categoryOfRound(pressure, input, isPregnancy, rules.category, notAtRest);
  const each = knownEach(input.readings, shared, isSince(rule, 'round-4'));
  const again = recheckOf(input, isByNow ? each : knownEach(input.readings, shared, false), category, rules);
  return {
    pressure,
    arms: armsOf(input.readings, rules),
    category,
    meanPressureMmHg: shows.meanPressure ? meanPressure(inputs).value : null,
    pulsePressureMmHg: shows.pulsePressure ? pulsePressure(inputs).value : null,
    earlyWarning: shows.earlyWarning ? score : null,
    scores: roundScores(inputs, input.facts.ageMonths, shows),
    standing: standingOf(input, isSince(rule, 'round-3') ? 'age' : 'adult'),
    actNow: rule === 'round-1' ? firstAlertsOf(each, rules) : alertsOf(each, input.readings, rules),
    ask: askOf(each, input.facts, limits !== null, rules.actNow),
    recheckClass: again,
    rechecks: again === null ? [] : stillDue(recheckAfter(again, rules.recheck), input),
  };
}

/** Whether a version of the rule is another one or came after it. */
export function isSince(rule: RoundRuleId, since: RoundRuleId): boolean {
  return ROUND_RULES.indexOf(rule) >= ROUND_RULES.indexOf(since);
}

const NO_PRESSURE = { systolic: null, diastolic: null } as const;

type Judged = Pick<RoundInput, 'isFeltIrregular' | 'facts' | 'readings' | 'features' | 'unwell'>;

/** What readings are judged by in this round: the rhythm, the limits of this person, and whether nobody may wait. */
export function readingsCircumstances(
  input: Judged & Pick<RoundInput, 'heightCm'>,
  rules: RoundRules,
): ReadingsCircumstances {
  const child = knownChild(input);
  return circumstancesOf(input, child === null ? null : limitsOfChild(child), rules);
}

function circumstancesOf(
  { isFeltIrregular, facts, ...taken }: Judged,
  limits: LimitsOfChild | null,
  { actNow: rules }: RoundRules,
): ReadingsCircumstances {
  const raisedFrom = raisedFromOf(facts, limits);
  const isPregnancy =
    facts.isPregnant === true || isSoonAfterBirth({ weeksAfterBirth: facts.weeksAfterBirth }, rules);
  const severe = isPregnancy ? pregnancyLimits(rules) : severeLimits(rules);
  // A rhythm that is known to be irregular can feel regular for a while; the pressure scatters all the same.
  const irregular = facts.hasIrregularRhythm ? true : isFeltIrregular;
  const atOnce = isAtOnce({ ...taken, facts }, rules);
  const p95 = p95ToActBy(facts, limits);
  return { irregular, raisedFrom, severe, atOnce, p95, unwell: isUnwell(taken) };
}

/** Whether the last reading is very low, or the person unwell: then nobody waits. Source: bedside handbook 3.15. */
function isAtOnce(
  { readings, facts, features, unwell }: Pick<RoundInput, 'readings' | 'facts' | 'features' | 'unwell'>,
  rules: RoundRules['actNow'],
): boolean {
  const { systolic, diastolic } = readings.at(-1) ?? NO_PRESSURE;
  return isAtOnceAfter({ systolic, diastolic }, { facts, features, unwell }, rules);
}

function pressureOf(
  input: RoundInput,
  limits: LimitsOfChild | null,
  rules: RoundRules,
  { laidDown, isByWhole }: { readonly laidDown: string | null; readonly isByWhole: boolean },
): RoundPressure | null {
  if (input.readings.length === 0) return null;
  const { readings, leftOut } = readingsToAverage(input.readings, input.facts.higherArm, laidDown, isByWhole);
  const { used, ...average } = averageReadings(
    readings,
    circumstancesOf(input, limits, rules),
    rules.readings,
  );
  const first = readings[0];
  return {
    ...average,
    rule: rules.readings.rule,
    isGeneral: rules.readings.isGeneral === true,
    side: first?.side ?? null,
    posture: first?.posture ?? null,
    used: used.map((index) => readings[index - 1]?.id ?? '').filter((id) => id !== ''),
    leftOut,
  };
}

/** What was read after somebody was laid down, and left out of the average for it. */
function laidDownOf(pressure: RoundPressure | null): readonly string[] {
  return (pressure?.leftOut ?? []).filter(({ reason }) => reason === 'laid-down').map(({ id }) => id);
}

/**
 * The pressure that scores go by: the average, or with too few the last reading at the upper arm, which goes before any average by
 * {@link newestFirst}.
 *
 * @param actNow the limits of very low; null where the average always goes before
 */
function pressureUsed(
  { readings, facts: { ageMonths } }: RoundInput,
  pressure: RoundPressure | null,
  actNow: RoundRules['actNow'] | null,
): { readonly systolic: number | null; readonly diastolic: number | null } {
  const first = actNow === null ? null : newestFirst(readings, ageMonths, actNow);
  const isAveraged = first === null && pressure !== null && pressure.systolic !== null;
  const { systolic, diastolic } = isAveraged ? pressure : (first ?? newestAtRest(readings) ?? NO_PRESSURE);
  return { systolic, diastolic };
}

/** What the scores of a round are made from. */
function scoreInputs(
  { facts, oxygen, heightCm, weightKg, ...taken }: RoundInput,
  used: { readonly systolic: number | null; readonly diastolic: number | null },
): ScoreInputs {
  const { ageMonths, isPregnant, hasSpinalInjury, oxygenScale } = facts;
  return {
    ...NO_SCORE_INPUTS,
    ...used,
    respirations: taken.breaths,
    oxygenSaturation: oxygen?.percent ?? null,
    scale: oxygenScale,
    onOxygen: oxygen?.onOxygen ?? null,
    pulse: taken.pulse,
    consciousness: taken.consciousness,
    temperature: taken.temperature,
    age: ageMonths === null ? null : completedYears(ageMonths),
    pregnant: isPregnant,
    spinalInjury: hasSpinalInjury,
    heightCm: heightCm ?? facts.heightCm,
    weightKg,
  };
}

/** The score of those for whom it is; null for the others, and where no part of it was taken. */
function scoreOf({ facts, oxygen }: RoundInput, inputs: ScoreInputs): EarlyWarning | null {
  const { ageMonths, isPregnant, hasSpinalInjury } = facts;
  if (!isScoredAsAdult({ ageMonths }) || isPregnant === true || hasSpinalInjury) return null;
  const isAnyKnown = EARLY_WARNING_PARTS.some((part) => part !== 'onOxygen' && inputs[part] !== null);
  return isAnyKnown ? withDoubt(earlyWarning(inputs), oxygen?.isDoubtful === true) : null;
}

/** A score goes by a saturation that nobody should rely on, and says so; its alerts stay. */
function withDoubt(score: EarlyWarning, isDoubtful: boolean): EarlyWarning {
  if (!isDoubtful) return score;
  const points = score.parts.oxygenSaturation ?? 0;
  return { ...score, flags: [{ code: 'saturation-doubtful', figures: { points } }, ...score.flags] };
}

/** What is known of the person at every reading of the round. */
type SharedSigns = Omit<KnownSigns, 'systolic' | 'diastolic' | 'isUnwellUpright'>;

function sharedSigns(
  input: RoundInput,
  score: EarlyWarning | null,
  limits: LimitsOfChild | null,
): SharedSigns {
  const { facts, oxygen } = input;
  return {
    ageMonths: facts.ageMonths,
    pregnant: facts.isPregnant,
    weeksAfterBirth: facts.weeksAfterBirth,
    pulsePerMinute: input.pulse,
    breathsPerMinute: input.breaths,
    percentOxygen: oxygen?.percent ?? null,
    scale: facts.oxygenScale,
    consciousness: input.consciousness,
    features: input.features,
    earlyWarning: score,
    p95: p95ToActBy(facts, limits),
  };
}

/**
 * What is known at each reading, in order; once without a pressure where there is no reading. Of every site: where
 * both arms are barred there is no other pressure to alarm by, and a low one at the leg is lower still at the arm.
 *
 * @param isFeltUpright whether how somebody felt on their feet is an alert of its own
 */
function knownEach(
  readings: readonly JudgedReading[],
  shared: SharedSigns,
  isFeltUpright: boolean,
): readonly KnownSigns[] {
  if (readings.length === 0) return [{ ...shared, ...NO_PRESSURE, isUnwellUpright: null }];
  return readings.map(({ systolic, diastolic, ...felt }) => ({
    ...shared,
    systolic,
    diastolic,
    isUnwellUpright: isFeltUpright ? isUnwellOnFeet(felt) : null,
  }));
}

function isUnwellOnFeet({ posture, isUnwellUpright }: Pick<JudgedReading, 'posture' | 'isUnwellUpright'>) {
  return posture === 'stand' && isUnwellUpright === true;
}

/**
 * Each condition once, with the figures of the worst reading that met it; of a low one whether they felt unwell on their
 * feet, which is then no second alert.
 */
function alertsOf(
  each: readonly KnownSigns[],
  readings: readonly JudgedReading[],
  { actNow: rules, actNowOrigins }: RoundRules,
): ActNowAlert[] {
  const isUnwell = readings.some(isUnwellOnFeet);
  const alerts = worstAlerts(each.flatMap((known) => actNow(known, rules, actNowOrigins)));
  const isSaid = alerts.some(({ condition }) => isLowCondition(condition));
  return alerts
    .filter(({ condition }) => !(isSaid && condition === 'unwell-upright'))
    .map((alert) =>
      isUnwell && isLowCondition(alert.condition)
        ? { ...alert, figures: { ...alert.figures, unwellUpright: 1 } }
        : alert,
    );
}

/** Under the first version: each condition once, with the figures of the first reading that met it. */
function firstAlertsOf(
  each: readonly KnownSigns[],
  { actNow: rules, actNowOrigins }: RoundRules,
): ActNowAlert[] {
  const alerts = each.flatMap((known) => actNow(known, rules, actNowOrigins));
  return alerts.filter(({ condition }, at) => alerts.findIndex((one) => one.condition === condition) === at);
}

function armsOf(readings: readonly JudgedReading[], { arms }: RoundRules): ArmDifference | null {
  return armDifference(armPairs(comparedReadings(readings)), arms);
}

/** The most urgent class of the last reading at each side, or of what the round comes to. */
function recheckOf(
  input: RoundInput,
  each: readonly KnownSigns[],
  category: RoundCategory | null,
  { actNow: rules }: RoundRules,
): RecheckClass | null {
  const level = category?.level ?? null;
  const abnormal = level === null ? null : isRaised(level);
  const { unwell, readings } = input;
  const isLastOfSide = (at: number) =>
    !readings.slice(at + 1).some(({ side }) => side === readings[at]?.side);
  const found = each
    .filter((_known, at) => isLastOfSide(at))
    .map((known) => recheckClass(known, { unwell, abnormal }, rules));
  return RECHECK_CLASSES.find((one) => found.includes(one)) ?? null;
}

/** The soon repeat of an abnormal pressure was made already where the round has another whole reading of that arm. */
function stillDue(rechecks: readonly Recheck[], { readings, facts }: RoundInput): readonly Recheck[] {
  const isRepeated = fullReadings(readingsToAverage(readings, facts.higherArm).readings).length > 1;
  return isRepeated ? rechecks.filter(({ code }) => code !== 'recheck-abnormal-soon') : rechecks;
}
