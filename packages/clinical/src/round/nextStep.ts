import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import { type ArmState, armState } from '../cuff/arms.js';
import { type CuffSite, type Posture, SIDES, type Side } from '../cuff/places.js';
import { type PostureChoice, type PostureReasonCode, postureChoice } from '../cuff/posture.js';
import type { CuffRules } from '../cuff/rules.js';
import { isAtThird } from '../score/falls.js';
import { SCORE_FIGURES as STANDING } from '../score/figures.js';
import type { ActNowRules } from './actNowRules.js';
import type { ArmsCode } from './armDifference.js';
import { armsAgain } from './armsAgain.js';
import type { ArmsRules } from './armsRules.js';
import { isAtOnceAfter } from './atOnce.js';
import { ROUND_COMPARISONS as SIDE } from './comparisons.js';
import type { RoundRate } from './event.js';
import { type FurtherReadingCode, furtherReading, type ReadingsCircumstances } from './furtherReading.js';
import { isToLieDown, laidDownBy } from './lieDown.js';
import { DAY_OF_ROUND, placeFactsOf } from './placeFacts.js';
import type { PlanRules } from './planRules.js';
import { isOnePlace, isUpright, readingsOf, seriesOf } from './readingsOf.js';
import type { ReadingsRules } from './readingsRules.js';
import { isReadAtRest } from './readingsToAverage.js';
import type { RecheckRules } from './recheckRules.js';
import type { RoundFacts } from './roundFacts.js';
import type { RoundReading } from './roundReading.js';
import { isAnswered, type RoundState, valuesOf } from './roundState.js';
import { severeRest } from './severeRest.js';
import { standingOf } from './standingOf.js';
import { ROUND_SIGNS, type RoundSign, type RoundStep } from './step.js';
import { tooLowToStand } from './tooLowToStand.js';

/** Why a step comes next, besides the reasons of another reading and of a posture. */
export type StepReasonCode =
  | 'longer-count'
  | 'first-time-both-arms'
  | 'both-arms-ahead'
  | 'asked-for'
  | 'third-minute-not-measured'
  | 'fall-on-standing'
  | 'low-before-standing';

export type NextStepCode = StepReasonCode | FurtherReadingCode | PostureReasonCode | ArmsCode;

/**
 * What comes next, and why if it is not plainly the next thing. `earliestAtSeconds` is on the clock of the round, null
 * for now or not known; `side`, `site` and `posture` are those of a step with the cuff, null where nothing decides.
 */
export type NextStep = {
  readonly step: RoundStep;
  readonly why: readonly Flag<NextStepCode>[];
  readonly earliestAtSeconds: number | null;
  /** How long to leave the arm after the last reading before this one; null where nothing asks for a wait. */
  readonly waitSeconds: number | null;
  readonly side: Side | null;
  readonly site: CuffSite | null;
  readonly posture: Posture | null;
};

/** The rules that say what comes next. */
export type StepRules = {
  readonly plan: PlanRules;
  readonly readings: ReadingsRules;
  readonly arms: ArmsRules;
  readonly cuff: CuffRules;
  readonly actNow: ActNowRules;
  readonly recheck: RecheckRules;
};

/**
 * The step to take next. It is advice: any step may be taken at any time, and what was taken is never asked for again
 * but for a reason that is given. A pressure that nobody may wait for comes before any other sign.
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
  const now = readingsOf(state).length > 0 ? nextPressureStep(state, facts, known, rules) : null;
  if (now?.why.some(({ code }) => code === 'again-at-once') === true) return now;
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
    site: null,
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
  const last = readings.at(-1);
  if (last === undefined) return firstReading(state, facts, rules);
  const isLaid = isLaidDown(readings, facts, known, rules);
  const now =
    isLaid && isUpright(last) ? lyingNow(last, facts, rules) : againHere(readings, facts, known, rules);
  if (now !== null) return now;
  const isNobodyWaiting = known.atOnce === true || known.unwell === true;
  const arms = isLaid || isNobodyWaiting ? null : bothArmsAgain(readings, facts, rules);
  const postures = lyingAndStanding(state, facts, known, rules);
  // Whoever is measured in another posture already is not brought back for the arms in the middle of it.
  const isElsewhere = arms !== null && arms.posture !== last.posture;
  const steps = [
    standingStill(state, facts, known, rules),
    isLaid ? againLaidDown(readings, facts, known, rules) : again(readings, facts, known, rules),
    otherArm(state, isLaid || isNobodyWaiting, facts, rules),
    ...(isElsewhere ? [postures, arms] : [arms, postures]),
  ].filter((one) => one !== null);
  const isFlatBarred = lyingDown(facts, rules.cuff).posture !== 'lie';
  // Nobody who was laid down is brought up again, nor anybody flat onto the back who is not to lie so.
  const isAsked = ({ posture }: NextStep) =>
    posture === last.posture ||
    !((isLaid && (posture === 'sit' || posture === 'stand')) || (isFlatBarred && posture === 'lie'));
  return steps.find(isAsked) ?? null;
}

/** What a reading says by itself leaves out how the person is at every reading. */
const NOBODY_SAID = { features: null, unwell: null };

/** Whether a reading of this round laid the person down, or they stood and are unwell at every reading. */
function isLaidDown(
  readings: readonly RoundReading[],
  { ageMonths }: RoundFacts,
  known: ReadingsCircumstances,
  { actNow }: StepRules,
): boolean {
  return isToLieDown(readings, ageMonths, actNow) || (known.unwell === true && readings.some(isUpright));
}

/**
 * Whoever was low or unwell on their feet is measured again at once, lying: asked for until a reading off their feet is in.
 * Source: bedside handbook 3.14 (stop: lie down) and 3.15 (very low or unwell: at once, by hand; common practice).
 */
function lyingNow({ side, site }: RoundReading, facts: RoundFacts, { cuff }: StepRules): NextStep {
  const { posture, why } = lyingDown(facts, cuff);
  return step('lying', { why: [AT_ONCE, ...why], waitSeconds: 0, side, site, posture });
}

const AT_ONCE: Flag<NextStepCode> = { code: 'again-at-once', figures: {} };

/**
 * One repeat at the place of a reading that was very low, or of the last one of somebody unwell, before anything else: that it was
 * so, or was not, is known with it. Another arm, or another site of it, does not make up for it; another posture does: nobody is
 * brought back into the one they were low in. Whoever is not to lie flat has it on the left side.
 * Source: bedside handbook 3.15 (very low or unwell: at once, by hand). That it is one, and at its place: common practice, no source.
 */
function againHere(
  readings: readonly RoundReading[],
  facts: RoundFacts,
  known: ReadingsCircumstances,
  { cuff, actNow }: StepRules,
): NextStep | null {
  const isLow = (one: RoundReading) => isAtOnceAfter(one, { ...NOBODY_SAID, facts }, actNow);
  const last = readings.at(-1) as RoundReading;
  const found =
    known.unwell === true
      ? last
      : readings.findLast((one) => one.posture === last.posture && !isUpright(one) && isLow(one));
  if (found === undefined) return null;
  const at = readings.indexOf(found);
  const isRepeated = readings.slice(at + 1).some((one) => isOnePlace(one, found));
  const before = readings[at - 1];
  const isRepeat =
    before !== undefined && (known.unwell === true || isLow(before)) && isOnePlace(before, found);
  if (isRepeated || isRepeat) return null;
  const { side, site } = found;
  const { posture, why } = postureChoice(found.posture, placeFactsOf(facts), DAY_OF_ROUND, cuff);
  const earliestAtSeconds = last.atSeconds;
  return step('repeat', { why: [AT_ONCE, ...why], earliestAtSeconds, waitSeconds: 0, side, site, posture });
}

/** How this person lies: late in pregnancy on the left side. */
function lyingDown(facts: RoundFacts, cuff: CuffRules): PostureChoice {
  return postureChoice('lie', placeFactsOf(facts), DAY_OF_ROUND, cuff);
}

/** The posture in which whoever is laid down is measured: on the back, late in pregnancy on the left side. */
export function postureLaidDown(facts: RoundFacts, { cuff }: Pick<StepRules, 'cuff'>): Posture {
  return lyingDown(facts, cuff).posture;
}

/**
 * Another reading of the place of the first one; whatever became of them, as many as are taken at most are asked for. Where nobody
 * waits, {@link againHere} asks for the one repeat: then other signs and help come first, and no average needs a third. After a
 * severe one the person rests for as long as it is looked at again, and not for the gap of the arm alone: there is one wait.
 */
function again(
  readings: readonly RoundReading[],
  facts: RoundFacts,
  known: ReadingsCircumstances,
  { readings: rules, recheck, actNow }: StepRules,
): NextStep | null {
  if (known.atOnce === true || known.unwell === true) return null;
  const first = readings[0] as RoundReading;
  const series = seriesOf(readings, first);
  const further = furtherReading(series, known, rules);
  if (!further.isNeeded || passes(series.length, SIDE.stopAtReadings, rules.stopAtReadings)) return null;
  const { why } = further;
  const last = readings.at(-1) as RoundReading;
  const restSeconds = severeRest(readings, facts, known, { actNow, recheck });
  const waitSeconds = Math.max(further.waitSeconds ?? 0, restSeconds);
  const earliestAtSeconds = last.atSeconds === null ? null : last.atSeconds + waitSeconds;
  const { side, site, posture } = first;
  return step('repeat', { why, earliestAtSeconds, waitSeconds, side, site, posture });
}

/**
 * Another reading of whoever was laid down from their feet, as they lie. An average of what was read at rest before takes none of
 * these (`readingsToAverage`), so then only a severe one is asked for again.
 */
function againLaidDown(
  readings: readonly RoundReading[],
  facts: RoundFacts,
  known: ReadingsCircumstances,
  rules: StepRules,
): NextStep | null {
  const by = laidDownBy(readings, facts.ageMonths, rules.actNow);
  const at = by === null ? readings.length : readings.indexOf(by);
  const after = readings.slice(at + 1).filter((one) => !isUpright(one));
  if (after.length === 0) return null;
  const next = again(after, facts, known, rules);
  const wasAtRest = readings.slice(0, at).some(isReadAtRest);
  return !wasAtRest || next?.why.some(({ code }) => code === 'severe-again') === true ? next : null;
}

/** The first reading of a person at a place that takes both arms says so before the cuff is on: it can stay at hand then. */
function firstReading({ place, estimates }: RoundState, facts: RoundFacts, rules: StepRules): NextStep {
  const { plan } = rules;
  const why: Flag<StepReasonCode>[] = areBothToCome(place, facts, rules)
    ? [{ code: 'both-arms-ahead', figures: {} }]
    : [];
  if (place === null) return step('cuff', { why });
  const { side, site, posture } = place;
  const isFelt = estimates.some((estimate) => estimate.side === side);
  return step(plan.palpateFirst && !isFelt ? 'palpate' : 'listen', { why, side, site, posture });
}

/** Whether the other arm is asked for as a matter of course after the first one; as of {@link otherArm}. */
function areBothToCome(place: RoundState['place'], facts: RoundFacts, { plan, cuff }: StepRules): boolean {
  if (!plan.bothArmsFirstTime || !facts.isFirstPressure) return false;
  const others = SIDES.filter((side) => side !== place?.side);
  const isFree = (side: Side) => armState(side, placeFactsOf(facts), DAY_OF_ROUND, cuff).level === 'free';
  return (place === null || place.site === 'upper-arm') && others.every(isFree);
}

/**
 * The other arm at a person's first pressure, or when somebody asked for it; an arm that is barred is not asked for. Of whoever was
 * laid down, is very low or unwell it is asked for where somebody wants it alone, as they are.
 */
function otherArm(
  state: RoundState,
  isWantedAlone: boolean,
  facts: RoundFacts,
  { plan, cuff }: StepRules,
): NextStep | null {
  const readings = readingsOf(state);
  const [first, last] = [readings[0] as RoundReading, readings.at(-1) as RoundReading];
  const { side, site } = first;
  const isAsked = state.wanted.includes('other-arm');
  const isFirstTime = plan.bothArmsFirstTime && facts.isFirstPressure && !isWantedAlone;
  const other = SIDES.find((one) => one !== side) as Side;
  if (!isOtherArmOpen(readings, facts, { cuff }) || !(isAsked || isFirstTime)) return null;
  const { level }: ArmState = armState(other, placeFactsOf(facts), DAY_OF_ROUND, cuff);
  if (level === 'prefer-other' && !isAsked) return null;
  const code = isAsked ? 'asked-for' : 'first-time-both-arms';
  const { posture } = isWantedAlone ? last : first;
  return step('other-arm', { why: [{ code, figures: {} }], side: other, site, posture });
}

/** Whether the arm that was not measured yet can be asked for: both are at the upper arm, and neither is barred. */
export function isOtherArmOpen(
  readings: readonly RoundReading[],
  facts: RoundFacts,
  { cuff }: Pick<StepRules, 'cuff'>,
): boolean {
  const first = readings[0];
  if (first === undefined || first.site !== 'upper-arm') return false;
  const other = SIDES.find((one) => one !== first.side) as Side;
  const isThere = readings.some(({ side, site }) => side === other && site === first.site);
  return !isThere && armState(other, placeFactsOf(facts), DAY_OF_ROUND, cuff).level !== 'never';
}

/** Both arms again where they differ too much, by the rule that says so of the round; an arm that is barred is not asked for. */
function bothArmsAgain(
  readings: readonly RoundReading[],
  facts: RoundFacts,
  { arms, cuff, readings: { stopAtReadings, gapSeconds } }: StepRules,
): NextStep | null {
  const asked = armsAgain(readings, arms, stopAtReadings);
  if (asked === null) return null;
  const { side, posture, why } = asked;
  if (armState(side, placeFactsOf(facts), DAY_OF_ROUND, cuff).level === 'never') return null;
  const last = readings.at(-1) as RoundReading;
  const at = { why, side, site: 'upper-arm', posture } as const;
  if (side !== last.side) return step('other-arm', at);
  const earliestAtSeconds = last.atSeconds === null ? null : last.atSeconds + gapSeconds;
  return step('repeat', { ...at, earliestAtSeconds, waitSeconds: gapSeconds });
}

/** A fall may come as late as 3 minutes on the feet (bedside handbook 3.14); minutes that nobody noted are not asked. */
function isThirdMinuteOver({ uprightMinutes: minutes }: RoundReading): boolean {
  return minutes === null || isAtThird({ minutes }) || minutes > STANDING.standingWithinMinutes.value;
}

function lyingAndStanding(
  state: RoundState,
  facts: RoundFacts,
  known: ReadingsCircumstances,
  rules: StepRules,
): NextStep | null {
  if (!state.wanted.includes('lying-and-standing')) return null;
  return openPosture(['lying', 'standing'], readingsOf(state), facts, known, rules);
}

/**
 * The next reading of whoever still stands and was read off their feet before: nobody is sat down before the third minute, and
 * stood up again for it. Where the cuff was put since says that somebody does not stand any more.
 * Source: bedside handbook 3.14 (at 1 and at 3 minutes).
 */
function standingStill(
  state: RoundState,
  facts: RoundFacts,
  known: ReadingsCircumstances,
  rules: StepRules,
): NextStep | null {
  const readings = readingsOf(state);
  const last = readings.at(-1);
  const isStanding = last !== undefined && isUpright(last) && (state.place?.posture ?? 'stand') === 'stand';
  if (!isStanding || readings.every(isUpright)) return null;
  const next = openPosture(['standing'], readings, facts, known, rules);
  return next?.posture === 'stand' ? next : null;
}

/** The first of these postures in which nobody was measured yet; on the feet to the third minute. */
function openPosture(
  names: readonly ('lying' | 'standing')[],
  readings: readonly RoundReading[],
  facts: RoundFacts,
  known: ReadingsCircumstances,
  { cuff, actNow }: StepRules,
): NextStep | null {
  const { side = null, site = null } = readings.at(-1) ?? {};
  for (const name of names) {
    const isStanding = name === 'standing';
    const isTaken = isStanding
      ? readings.some((one) => isUpright(one) && isThirdMinuteOver(one))
      : readings.some(({ posture }) => posture === 'lie' || posture === 'lie-left');
    const wanted = isStanding ? 'stand' : 'lie';
    const { posture, why } = postureChoice(wanted, placeFactsOf(facts), DAY_OF_ROUND, cuff);
    const isSitting = posture === 'sit' && readings.some((one) => one.posture === 'sit');
    // Source: bedside handbook 3.14 (stop if unwell); that whoever is unwell before it is not stood up: common practice, no source.
    if (isTaken || isSitting || (isStanding && known.unwell === true)) continue;
    const asked: Flag<StepReasonCode> =
      isStanding && readings.some(isUpright)
        ? whyThirdMinute(readings, facts)
        : { code: 'asked-for', figures: {} };
    const low = isStanding ? lowBeforeStanding(readings, facts, actNow) : [];
    return step(name, { why: [...low, ...why, asked], side, site, posture });
  }
  return null;
}

/**
 * A systolic so low before standing that nobody is asked onto their feet as a matter of course: the newest one. On the feet
 * {@link isToLieDown} says so, by the same limits.
 * Source: as of {@link tooLowToStand}; that it holds before standing too: common practice, no source.
 */
function lowBeforeStanding(
  readings: readonly RoundReading[],
  { ageMonths }: RoundFacts,
  rules: ActNowRules,
): Flag<StepReasonCode>[] {
  const systolic = readings.at(-1)?.systolic;
  const figures = systolic === undefined ? null : tooLowToStand(systolic, ageMonths, rules);
  return figures === null ? [] : [{ code: 'low-before-standing', figures }];
}

/** A fall that an early reading met already is said; only where none was met is a later one not excluded. */
function whyThirdMinute(readings: readonly RoundReading[], facts: RoundFacts): Flag<StepReasonCode> {
  const result = standingOf({ readings, isFeltIrregular: null, facts });
  const figures = result?.flags.find(({ code }) => code === 'fall-on-standing')?.figures;
  if (figures !== undefined) return { code: 'fall-on-standing', figures };
  return { code: 'third-minute-not-measured', figures: { minutes: STANDING.standingWithinMinutes.value } };
}
