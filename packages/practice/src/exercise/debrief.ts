import { type RunResult, runResult, UNKNOWN_RUN_CIRCUMSTANCES } from '@evenfall/clinical';
import {
  type Gap,
  type Levels,
  type RedFlag,
  type SoundEvent,
  type Truth,
  truth,
} from '@evenfall/physiology';
import { type CountDebrief, countDebrief } from '../counting/countDebrief.js';
import { type TapsDebrief, tapsDebrief } from '../counting/tapsDebrief.js';
import { type Base, baseOf, type LetDown } from '../fault/base.js';
import { type Conduct, conductOf } from '../fault/conduct.js';
import {
  type AsTheyWere,
  asTheyWereOf,
  type Costs,
  costsOf,
  type Had,
  hadOf,
  NO_COSTS,
  NOTHING_HAD,
  type Obtainable,
  visitOf,
} from '../fault/cost.js';
import type { Counterfactual } from '../fault/counterfactual.js';
import { unheardCosts, unsharedCosts } from '../fault/hidBy.js';
import { properInstrument, properOf } from '../fault/proper.js';
import { type Ledger, ledgerOf } from '../ledger/ledger.js';
import { techniqueLines } from '../ledger/techniqueLines.js';
import { firstOfTwo } from '../reading/firstOfTwo.js';
import { asOfEach } from './asOfEach.js';
import type { Counted, CountedSign, Entered, Exercise } from './exercise.js';
import { type FallOf, lastFall, MEANT_MMHG } from './fall.js';
import { fallOfRun } from './fallOfRun.js';
import { type FeltBack, feltBack } from './feltBack.js';
import { gapIn } from './gapIn.js';
import { withGaugeErrorTaken } from './gaugeErrorTaken.js';
import { marksOf } from './marksOf.js';
import { couldBeKnown, redFlagOf } from './redFlagOf.js';
import { circumstancesAt, instrumentAt, type Replay, replay } from './replay.js';
import { type DebriefRules, USUAL_RULES } from './rules.js';
import { isReadByFeel, isUnfelt } from './unfelt.js';
import { isUnheard, isUnmeasured } from './unheard.js';

/** A sound of the visit, and whether a normal ear hears it in a quiet room. */
export type DebriefSound = Pick<SoundEvent, 'atSeconds' | 'beat' | 'cuffMmHg' | 'phase' | 'levelDb'> & {
  readonly isAudible: boolean;
};

/** A moment that was marked, on the visit's clock: what was written, and what cuff and needle really were. */
export type DebriefMark = {
  readonly what: 'first sound' | 'muffled' | 'last sound' | 'pulse back';
  readonly atSeconds: number | null;
  readonly mmHg: number;
  readonly cuffMmHg: number | null;
  /** What the gauge showed but for the swing of the pulse. */
  readonly needleMmHg: number | null;
  /** The sound that it was made on; null: none within reach before it. */
  readonly soundSeconds: number | null;
};

/** Whether a number is accepted: within `withinMmHg` of what was to be had at that very moment; null: no number. */
export type Accepted = {
  readonly withinMmHg: number;
  readonly systolic: boolean | null;
  readonly diastolic: boolean | null;
};

/** What came of an exercise but for what each fault cost. Times are seconds of the visit. */
export type Judged = {
  /** The letting down that the reading was made in; null: the cuff was never pumped up. */
  readonly fall: FallOf | null;
  readonly marks: readonly DebriefMark[];
  readonly entered: Entered;
  /** What the bedside's own rules say of the run; null: no run. */
  readonly reading: RunResult | null;
  /** What was true at the middle of the reading, with everything that was at work then. */
  readonly truth: Truth;
  /** Where the sounds of this visit fell silent between two phases, mmHg in the cuff, about; null: nowhere. */
  readonly gap: Gap | null;
  /** The first sound after the silence was taken for the first of all. */
  readonly isAfterGap: boolean;
  /** The arm was raised before the cuff was pumped up: that shortens a gap. */
  readonly isArmRaised: boolean;
  /** What was true: the mean of the minute about the reading, as the textbook prepares. */
  readonly reference: Levels & { readonly muffled: number | null };
  /** What was to be had at that very moment, prepared by the book and by its hand, with the same heartbeats: what a reading is judged by. */
  readonly had: Had;
  /** What was to be heard then with the person, the cuff and the place as they were; null: nothing of that was wrong. */
  readonly asTheyWere: AsTheyWere | null;
  readonly ledger: { readonly systolic: Ledger | null; readonly diastolic: Ledger | null };
  /** The sounds of this very fall went on far below the diastolic. */
  readonly hasGoneOn: boolean;
  /** The diastolic is judged where they became muffled: that was to be heard. */
  readonly isByMuffled: boolean;
  readonly isByFeel: boolean;
  /**
   * Numbers were written where nothing was let down (`unmeasured`), or nothing was to be heard, or by feel was felt, that they could
   * be of: they are not judged by what they are. Null: there was something.
   */
  readonly fromNothing: 'unmeasured' | 'unheard' | 'unfelt' | null;
  readonly accepted: Accepted;
  /** Pulse and breaths as they were counted beside what was true; null: not counted. */
  readonly counts: {
    readonly pulse: CountDebrief | null;
    readonly breaths: CountDebrief | null;
    /** The heart, counted at its apex. */
    readonly apex: CountDebrief | null;
  };
  /** Taps beside what was to be tapped; null: none were made. */
  readonly taps: Readonly<Record<CountedSign, TapsDebrief | null>>;
  /** Of a reading by feel what was there to be felt; null: it was made by ear, or none was. */
  readonly feltBack: FeltBack | null;
  /**
   * What the pulse and the breaths were in the minute about each count; without a count, about the reading. The beats that did
   * not arrive are of one minute: that of the apex count, else of the pulse.
   */
  readonly rates: {
    readonly wristPerMinute: number;
    readonly heartPerMinute: number;
    readonly deficitPerMinute: number;
    readonly breathsPerMinute: number;
  };
  /** What could not wait, and whether it was said; `isKnowable`: whether the observer could know of it, by what was written. */
  readonly redFlag: {
    readonly code: RedFlag;
    readonly isSeen: boolean;
    readonly isKnowable: boolean;
  } | null;
};

/** Everything that a page of an exercise draws. */
export type Debrief = Judged & {
  readonly seconds: number;
  readonly tracePerSecond: number;
  readonly cuffMmHg: Float64Array;
  readonly needleMmHg: Float64Array;
  readonly arterialMmHg: Float64Array;
  readonly sounds: readonly DebriefSound[];
  /** How the cuff was let down past the sounds; null: it was never pumped up. */
  readonly letDown: LetDown | null;
  /** What each fault of this reading cost. */
  readonly costs: Costs;
  /** What was not done by the protocol, whether it cost anything or not, the gravest first. */
  readonly conduct: readonly Conduct[];
};

type Found = {
  readonly played: Replay;
  readonly judged: Judged;
  readonly base: Base | null;
  readonly visit: Counterfactual | null;
};

/** What came of the last reading of an exercise but for what each fault cost: fast. */
export function judge(exercise: Exercise, rules: DebriefRules = USUAL_RULES): Judged {
  return found(exercise, rules, replay(exercise), isSeveral(exercise)).judged;
}

/** What came of the last reading of an exercise, by the rules of a protocol. Plays the visit again from its data alone. */
export function debrief(exercise: Exercise, rules: DebriefRules = USUAL_RULES): Debrief {
  const whole = found(exercise, rules, replay(exercise), isSeveral(exercise));
  return wholeOf(exercise, rules, whole, [0, exercise.seconds]);
}

/** The same as `judge` of every reading of an exercise, in the order in which they were made. */
export function judgeEach(exercise: Exercise, rules: DebriefRules = USUAL_RULES): readonly Judged[] {
  return eachOf(exercise, rules).map(({ one }) => one.judged);
}

/** The same as `debrief` of every reading of an exercise, in the order in which they were made. */
export function debriefEach(exercise: Exercise, rules: DebriefRules = USUAL_RULES): readonly Debrief[] {
  const all = eachOf(exercise, rules);
  const ends = all.map(({ one: { judged } }) => judged.fall?.endSeconds ?? 0);
  return all.map(({ asOf, one }, k) => {
    // What was done between two readings goes with the later one, and what was done after all with the last.
    const to = k === all.length - 1 ? exercise.seconds : (ends[k] ?? 0);
    return wholeOf(asOf, rules, one, [ends[k - 1] ?? 0, to]);
  });
}

function eachOf(exercise: Exercise, rules: DebriefRules): { readonly asOf: Exercise; readonly one: Found }[] {
  const played = replay(exercise);
  const all = asOfEach(exercise).map((asOf) => ({
    asOf,
    one: found(asOf, rules, played, isSeveral(exercise)),
  }));
  // What cannot wait was asked once, of the whole visit.
  const flags = all.flatMap(({ one }) => one.judged.redFlag ?? []);
  const redFlag = flags.find(({ isKnowable }) => isKnowable) ?? flags[0] ?? null;
  return all.map(({ asOf, one }) => ({ asOf, one: { ...one, judged: { ...one.judged, redFlag } } }));
}

/** @param span the part of the visit that goes with this reading, seconds */
function wholeOf(
  exercise: Exercise,
  rules: DebriefRules,
  { played, judged, base, visit }: Found,
  span: readonly [from: number, to: number],
): Debrief {
  const shared =
    base === null || visit === null ? NO_COSTS : costsOf(base, visit, judged.had, exercise.entered);
  const costs = costsBy(judged.fromNothing, shared, visit);
  return {
    ...judged,
    seconds: exercise.seconds,
    tracePerSecond: played.tracePerSecond,
    cuffMmHg: played.cuffMmHg,
    needleMmHg: played.needleMmHg,
    arterialMmHg: played.arterialMmHg,
    sounds: played.sounds.map(({ atSeconds, beat, cuffMmHg, phase, levelDb }) => ({
      atSeconds,
      beat,
      cuffMmHg,
      phase,
      levelDb,
      isAudible: levelDb >= 0,
    })),
    letDown: base?.letDown ?? null,
    costs,
    conduct: conductOf(exercise, played, judged, base, rules, span),
  };
}

function costsBy(fromNothing: Judged['fromNothing'], shared: Costs, visit: Counterfactual | null): Costs {
  if (fromNothing === null) return shared;
  return fromNothing === 'unheard' ? unheardCosts(shared, visit) : unsharedCosts(shared);
}

function isSeveral({ earlier }: Exercise): boolean {
  return earlier.length > 0;
}

/** @param isOneOfSeveral the last fall of the visit is then not taken for that of a reading that was made in none */
function found(given: Exercise, rules: DebriefRules, played: Replay, isOneOfSeveral: boolean): Found {
  const { person } = played;
  const run = given.evidence.run;
  const own = run === null ? null : fallOfRun(given, played, run);
  const fall = own ?? (isOneOfSeveral ? null : lastFall(played, MEANT_MMHG));
  const exercise = withGaugeErrorTaken(
    { ...given, instrument: instrumentAt(given, fall?.peakSeconds ?? given.seconds) },
    played,
    fall,
    rules,
  );
  const marks = marksOf(exercise, played, fall);
  const from = marks[0]?.atSeconds ?? fall?.peakSeconds ?? 0;
  const to = marks.at(-1)?.atSeconds ?? fall?.endSeconds ?? exercise.seconds;
  const middle = (from + to) / 2;
  const circumstances = circumstancesAt(exercise, from, played.firstInflationSeconds);
  const proper = properOf(circumstances, fall?.inflatedSeconds ?? middle);
  const asItWas = truth(person, circumstances, middle, exercise.instrument);
  const asItShould = truth(person, proper, middle, properInstrument(person, exercise.instrument));
  const onCuff = (of: 'systolic' | 'diastolic') =>
    techniqueLines(asItWas, asItShould, of).onCuff.reduce((sum, { mmHg }) => sum + mmHg, 0);
  /** Where in the cuff the sounds of this visit begin and end on the whole. */
  const sounding = {
    systolic: asItWas.longRun.systolic + onCuff('systolic'),
    diastolic: asItWas.longRun.diastolic + onCuff('diastolic'),
  };
  const pulsePerMinute = asItWas.pulsePerMinute;
  const gap = gapIn(person, circumstances, sounding);
  const baseBy = (isByMuffled: boolean) =>
    fall === null
      ? null
      : baseOf({ exercise, played, fall, marks, pulsePerMinute, sounding, rules, isByMuffled, gap });
  const baseOfLast = baseBy(false);
  const visitOfLast = baseOfLast === null ? null : visitOf(baseOfLast);
  const had = visitOfLast === null ? NOTHING_HAD : hadOf(visitOfLast);
  const { entered } = exercise;
  const hasGoneOn =
    had.diastolic !== null && had.diastolic.mmHg < asItShould.longRun.diastolic - GONE_ON_MMHG;
  // It stands for the diastolic where it can be heard in this person at all.
  const isByMuffled =
    hasGoneOn &&
    asItShould.muffled !== null &&
    had.muffled !== null &&
    (had.diastolic?.mmHg ?? 0) < had.muffled.mmHg - GONE_ON_MMHG;
  const base = isByMuffled ? baseBy(true) : baseOfLast;
  const visit = !isByMuffled || base === null ? visitOfLast : visitOf(base);
  const felt = fall === null ? null : feltBack(exercise, played, fall.peakSeconds, fall.endSeconds);
  const fromNothing = isUnmeasured(exercise, fall)
    ? 'unmeasured'
    : isUnfelt(exercise, felt)
      ? 'unfelt'
      : isUnheard(exercise, played, fall, marks)
        ? 'unheard'
        : null;
  const ledgerFrom = (of: 'systolic' | 'diastolic') =>
    fromNothing !== null
      ? null
      : ledgerFor(
          of,
          of === 'diastolic' && isByMuffled,
          exercise,
          played,
          marks,
          fall,
          asItWas,
          asItShould,
          base?.habits[of].away === 'on-no-sound',
        );
  const wasToBeHad = { systolic: had.systolic?.mmHg ?? null, diastolic: had.diastolic?.mmHg ?? null };
  const redFlag = redFlagOf(exercise.scenario, [wasToBeHad, entered], rules.roundRules.actNow);
  const counted = (one: Counted | null, site: 'wrist' | 'apex' = 'wrist') =>
    one === null ? null : countDebrief(one, exercise, played, rules.countRules, site);
  const counts = {
    pulse: counted(exercise.evidence.pulse),
    breaths: counted(exercise.evidence.breaths),
    apex: counted(exercise.evidence.apex ?? null, 'apex'),
  };
  const tapped = (of: CountedSign) => {
    const made = exercise.evidence.taps?.[of];
    return made === undefined ? null : tapsDebrief(of, made, exercise, played);
  };
  const taps = { pulse: tapped('pulse'), apex: tapped('apex'), breaths: tapped('breaths') };
  const judged: Judged = {
    fall,
    marks,
    entered,
    reading: run === null ? null : runResult(run.run, UNKNOWN_RUN_CIRCUMSTANCES, rules.runRules),
    truth: asItWas,
    gap,
    isAfterGap: base?.habits.systolic.away === 'silent-gap',
    isArmRaised: circumstances.wasArmRaised,
    reference: { ...asItShould.longRun, muffled: asItShould.muffled },
    had,
    asTheyWere: base === null || visit === null ? null : asTheyWereOf(base, visit),
    ledger: { systolic: ledgerFrom('systolic'), diastolic: ledgerFrom('diastolic') },
    hasGoneOn,
    isByMuffled,
    isByFeel: base?.isByFeel ?? false,
    fromNothing,
    accepted: acceptedOf(
      entered,
      fromNothing === null ? had : NOTHING_HAD,
      isByMuffled,
      person.scenario.acceptedWithinMmHg,
    ),
    counts,
    taps,
    rates: {
      wristPerMinute: (counts.pulse ?? taps.pulse)?.truePerMinute ?? asItWas.wristPerMinute,
      heartPerMinute:
        (counts.apex ?? taps.apex ?? counts.pulse ?? taps.pulse)?.heartPerMinute ?? asItWas.pulsePerMinute,
      deficitPerMinute: deficitOf(counts.apex ?? taps.apex ?? counts.pulse ?? taps.pulse, asItWas),
      breathsPerMinute: (counts.breaths ?? taps.breaths)?.truePerMinute ?? asItWas.breathsPerMinute,
    },
    feltBack: isReadByFeel(exercise) ? felt : null,
    redFlag:
      redFlag === null
        ? null
        : {
            code: redFlag,
            isSeen: exercise.evidence.saysActNow === true,
            isKnowable: couldBeKnown(
              exercise.scenario,
              [...exercise.earlier.map((one) => one.entered), entered],
              rules.roundRules.actNow,
            ),
          },
  };
  return { played, judged, base, visit };
}

/** Beats that did not arrive at the wrist, per minute, in the minute about a count; without one, about the reading. */
function deficitOf(
  count: Pick<CountDebrief, 'heartPerMinute' | 'wristPerMinute'> | null,
  { pulsePerMinute, wristPerMinute }: Truth,
): number {
  const heart = count?.heartPerMinute ?? pulsePerMinute;
  const wrist = count?.wristPerMinute ?? wristPerMinute;
  return Math.max(0, heart - wrist);
}

function acceptedOf(entered: Entered, had: Had, isByMuffled: boolean, withinMmHg: number): Accepted {
  const is = (written: number | null, one: Obtainable | null) =>
    written === null ? null : one !== null && Math.abs(written - one.mmHg) <= withinMmHg;
  // Three numbers are to be written there: the last sound alone is not the diastolic.
  const diastolic = isByMuffled
    ? is(entered.muffled ?? entered.diastolic, had.muffled)
    : is(entered.diastolic, had.diastolic);
  return { withinMmHg, systolic: is(entered.systolic, had.systolic), diastolic };
}

function ledgerFor(
  of: 'systolic' | 'diastolic',
  isMuffled: boolean,
  exercise: Exercise,
  played: Replay,
  marks: readonly DebriefMark[],
  fall: FallOf | null,
  asItWas: Truth,
  asItShould: Truth,
  isImagined: boolean,
): Ledger | null {
  if (fall === null) return null;
  const inFall = played.sounds.filter(
    ({ atSeconds, levelDb }) => levelDb >= 0 && atSeconds >= fall.peakSeconds && atSeconds <= fall.endSeconds,
  );
  const isWritten = isMuffled && exercise.entered.muffled !== null;
  const entered = isWritten ? exercise.entered.muffled : exercise.entered[of];
  const last = isMuffled ? inFall[inFall.findLastIndex((one) => !one.isMuffled) + 1] : inFall.at(-1);
  const audible = of === 'systolic' ? firstOfTwo(inFall) : last;
  if (entered === null || audible === undefined) return null;
  const caught = played.beats.find(({ index }) => index === audible.beat);
  if (caught === undefined) return null;
  const what = of === 'systolic' ? 'first sound' : isWritten ? 'muffled' : 'last sound';
  // By feel there is no first sound: the pulse came back instead.
  const isByFeel = of === 'systolic' && isReadByFeel(exercise);
  const mark = marks.find((one) => one.what === (isByFeel ? 'pulse back' : what));
  const isTimed = mark !== undefined && mark.cuffMmHg !== null && mark.needleMmHg !== null;
  const sound = played.sounds.find(({ atSeconds }) => atSeconds === mark?.soundSeconds);
  // A mark on no sound was a sound imagined: the ear's error, and no lag.
  const taken = (isImagined ? null : sound?.cuffMmHg) ?? mark?.cuffMmHg ?? audible.cuffMmHg;
  const over = isMuffled ? (asItShould.muffled ?? 0) - asItShould.longRun.diastolic : 0;
  return ledgerOf({
    longRun: asItShould.longRun[of] + over,
    beat: caught[of] + over,
    ...techniqueLines(asItWas, asItShould, of),
    audible: audible.cuffMmHg,
    taken,
    isImagined,
    marked: isTimed ? { cuff: mark.cuffMmHg ?? 0, needle: mark.needleMmHg ?? 0 } : null,
    entered,
  });
}

/** How far below the diastolic sounds end that went on, mmHg. Source: docs/conventions.md section 6 (three numbers are written). */
const GONE_ON_MMHG = 10;
