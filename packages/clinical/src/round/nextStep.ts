import type { Flag } from '../contract/flag.js';
import { type ArmState, armState } from '../cuff/arms.js';
import { type Posture, SIDES, type Side } from '../cuff/places.js';
import { type PostureReasonCode, postureChoice } from '../cuff/posture.js';
import type { CuffRules } from '../cuff/rules.js';
import { isAtThird } from '../score/falls.js';
import { SCORE_FIGURES as STANDING } from '../score/figures.js';
import { lowUprightLimit } from '../score/lowUpright.js';
import type { RoundRate } from './event.js';
import { type FurtherReadingCode, furtherReading, type ReadingsCircumstances } from './furtherReading.js';
import { isToLieDown } from './lieDown.js';
import { DAY_OF_ROUND, placeFactsOf } from './placeFacts.js';
import type { PlanRules } from './planRules.js';
import { isUpright, readingsOf, seriesOf } from './readingsOf.js';
import type { ReadingsRules } from './readingsRules.js';
import type { RoundFacts } from './roundFacts.js';
import type { RoundReading } from './roundReading.js';
import { isAnswered, type RoundState, valuesOf } from './roundState.js';
import { standingOf } from './standingOf.js';
import { ROUND_SIGNS, type RoundSign, type RoundStep } from './step.js';

/** Why a step comes next, besides the reasons of another reading and of a posture. */
export type StepReasonCode =
  | 'longer-count'
  | 'first-time-both-arms'
  | 'asked-for'
  | 'third-minute-not-measured'
  | 'fall-on-standing'
  | 'low-before-standing';

export type NextStepCode = StepReasonCode | FurtherReadingCode | PostureReasonCode;

/**
 * What comes next, and why if it is not plainly the next thing. `earliestAtSeconds` is on the clock of the round, null
 * for now or not known; `side` and `posture` are those of a step with the cuff, null where nothing decides.
 */
export type NextStep = {
  readonly step: RoundStep;
  readonly why: readonly Flag<NextStepCode>[];
  readonly earliestAtSeconds: number | null;
  /** How long to leave the arm after the last reading before this one; null where nothing asks for a wait. */
  readonly waitSeconds: number | null;
  readonly side: Side | null;
  readonly posture: Posture | null;
};

/** The rules that say what comes next. */
export type StepRules = {
  readonly plan: PlanRules;
  readonly readings: ReadingsRules;
  readonly cuff: CuffRules;
};

/**
 * The step to take next. It is advice: any step may be taken at any time, and what was taken is never asked for again
 * but for a reason that is given.
 *
 * Errors: none. Source: bedside handbook 3.8 (the order), 3.10 to 3.14.
 */
export function nextStep(
  state: RoundState,
  facts: RoundFacts,
  known: ReadingsCircumstances,
  rules: StepRules,
): NextStep {
  if (rules.plan.prepareFirst && state.exceptions === null && state.values.length === 0)
    return step('prepare');
  for (const sign of wantedSigns(state, rules.plan)) {
    if (state.notDone[sign] !== undefined) continue;
    const next = sign === 'pressure' ? pressureStep(state, facts, known, rules) : signStep(state, sign);
    if (next !== null) return next;
  }
  return step('review');
}

/** The signs that need an answer, in the order of a round. */
export function wantedSigns(
  { wanted }: RoundState,
  { wantedSigns: always }: PlanRules,
): readonly RoundSign[] {
  return ROUND_SIGNS.filter((sign) => always.includes(sign) || wanted.includes(sign));
}

/** The signs that still need a value or a reason for having none: without them nothing is signed. */
export function missingSigns(state: RoundState, plan: PlanRules): readonly RoundSign[] {
  return wantedSigns(state, plan).filter((sign) => !isAnswered(state, sign));
}

function step(name: RoundStep, more: Partial<NextStep> = {}): NextStep {
  return {
    step: name,
    why: [],
    earliestAtSeconds: null,
    waitSeconds: null,
    side: null,
    posture: null,
    ...more,
  };
}

function signStep(state: RoundState, sign: Exclude<RoundSign, 'pressure'>): NextStep | null {
  if (!isAnswered(state, sign)) return step(sign);
  const last = valuesOf(state, sign).findLast((value): value is RoundRate => 'nextWindowSeconds' in value);
  if (last === undefined || last.nextWindowSeconds === null) return null;
  const { nextWindowSeconds } = last;
  return step(sign, { why: [{ code: 'longer-count', figures: { nextWindowSeconds } }] });
}

/**
 * What the pressure alone still needs, whatever other signs are open; null for nothing. Whoever has the cuff on goes
 * on with it; whoever is to lie down is asked for nothing on the feet.
 */
export function nextPressureStep(
  state: RoundState,
  facts: RoundFacts,
  known: ReadingsCircumstances,
  rules: StepRules,
): NextStep | null {
  return state.notDone.pressure === undefined ? pressureStep(state, facts, known, rules) : null;
}

function pressureStep(
  state: RoundState,
  facts: RoundFacts,
  known: ReadingsCircumstances,
  rules: StepRules,
): NextStep | null {
  const readings = readingsOf(state);
  const first = readings[0];
  if (first === undefined) return firstReading(state, rules);
  const steps = [
    laidDown(readings, facts, rules),
    again(readings, first, known, rules),
    otherArm(state, first, facts, rules),
    lyingAndStanding(state, facts, rules),
  ].filter((one) => one !== null);
  const isToLie = isToLieDown(readings, facts.ageMonths);
  return steps.find(({ posture }) => !(isToLie && posture === 'stand')) ?? null;
}

function again(
  readings: readonly RoundReading[],
  first: RoundReading,
  known: ReadingsCircumstances,
  rules: StepRules,
): NextStep | null {
  const further = furtherReading(seriesOf(readings, first), known, rules.readings);
  if (!further.isNeeded) return null;
  const { why, earliestAtSeconds, waitSeconds } = further;
  const { side, posture } = first;
  return step('repeat', { why, earliestAtSeconds, waitSeconds, side, posture });
}

function firstReading({ place, estimates }: RoundState, { plan }: StepRules): NextStep {
  if (place === null) return step('cuff');
  const { side, posture } = place;
  const isFelt = estimates.some((estimate) => estimate.side === side);
  return step(plan.palpateFirst && !isFelt ? 'palpate' : 'listen', { side, posture });
}

/**
 * Whoever was low or unwell on their feet is measured again at once, lying: asked for until a reading off their feet is in.
 * Source: bedside handbook 3.14 (stop: lie down) and 3.15 (very low or unwell: at once, by hand; common practice).
 */
function laidDown(
  readings: readonly RoundReading[],
  facts: RoundFacts,
  { cuff }: StepRules,
): NextStep | null {
  const last = readings.at(-1);
  if (last === undefined || !isUpright(last) || !isToLieDown([last], facts.ageMonths)) return null;
  const { posture, why } = postureChoice('lie', placeFactsOf(facts), DAY_OF_ROUND, cuff);
  const asked: Flag<NextStepCode> = { code: 'again-at-once', figures: {} };
  return step('lying', { why: [asked, ...why], waitSeconds: 0, side: last.side, posture });
}

/** The other arm at a person's first pressure, or when somebody asked for it; an arm that is barred is not asked for. */
function otherArm(
  state: RoundState,
  { side, posture, site }: RoundReading,
  facts: RoundFacts,
  { plan, cuff }: StepRules,
): NextStep | null {
  const isAsked = state.wanted.includes('other-arm');
  const isFirstTime = plan.bothArmsFirstTime && facts.isFirstPressure;
  const other = SIDES.find((one) => one !== side) as Side;
  const isThere = readingsOf(state).some((reading) => reading.side === other && reading.site === site);
  if (site !== 'upper-arm' || isThere || !(isAsked || isFirstTime)) return null;
  const { level }: ArmState = armState(other, placeFactsOf(facts), DAY_OF_ROUND, cuff);
  if (level === 'never' || (level === 'prefer-other' && !isAsked)) return null;
  const code = isAsked ? 'asked-for' : 'first-time-both-arms';
  return step('other-arm', { why: [{ code, figures: {} }], side: other, posture });
}

/** A fall may come as late as 3 minutes on the feet (bedside handbook 3.14); minutes that nobody noted are not asked. */
function isThirdMinuteOver({ uprightMinutes: minutes }: RoundReading): boolean {
  return minutes === null || isAtThird({ minutes }) || minutes > STANDING.standingWithinMinutes.value;
}

function lyingAndStanding(state: RoundState, facts: RoundFacts, { cuff }: StepRules): NextStep | null {
  if (!state.wanted.includes('lying-and-standing')) return null;
  const readings = readingsOf(state);
  const side = readings.at(-1)?.side ?? null;
  for (const [name, wanted, isTaken] of [
    ['lying', 'lie', readings.some(({ posture }) => posture === 'lie' || posture === 'lie-left')],
    ['standing', 'stand', readings.some((one) => isUpright(one) && isThirdMinuteOver(one))],
  ] as const) {
    const { posture, why } = postureChoice(wanted, placeFactsOf(facts), DAY_OF_ROUND, cuff);
    const isSitting = posture === 'sit' && readings.some((one) => one.posture === 'sit');
    if (isTaken || isSitting) continue;
    const asked: Flag<StepReasonCode> =
      name === 'standing' && readings.some(isUpright)
        ? whyThirdMinute(readings, facts)
        : { code: 'asked-for', figures: {} };
    const low = name === 'standing' ? lowBeforeStanding(readings, facts) : [];
    return step(name, { why: [...low, ...why, asked], side, posture });
  }
  return null;
}

/**
 * A systolic so low before standing that nobody is asked onto their feet as a matter of course: the newest one. On the feet
 * {@link isToLieDown} says so.
 * Source: bedside handbook 3.14 (a systolic below 90 on standing); that it holds before it too: common practice, no source.
 */
function lowBeforeStanding(
  readings: readonly RoundReading[],
  { ageMonths }: RoundFacts,
): Flag<StepReasonCode>[] {
  const systolic = readings.at(-1)?.systolic;
  if (systolic === undefined) return [];
  const limitMmHg = lowUprightLimit(systolic, ageMonths);
  return limitMmHg === null ? [] : [{ code: 'low-before-standing', figures: { systolic, limitMmHg } }];
}

/** A fall that an early reading met already is said; only where none was met is a later one not excluded. */
function whyThirdMinute(readings: readonly RoundReading[], facts: RoundFacts): Flag<StepReasonCode> {
  const result = standingOf({ readings, isFeltIrregular: null, facts });
  const figures = result?.flags.find(({ code }) => code === 'fall-on-standing')?.figures;
  if (figures !== undefined) return { code: 'fall-on-standing', figures };
  return { code: 'third-minute-not-measured', figures: { minutes: STANDING.standingWithinMinutes.value } };
}
