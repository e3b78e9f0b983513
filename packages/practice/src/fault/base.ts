import type { DeflationRules, GaugeReading } from '@evenfall/clinical';
import {
  backgroundThresholdDb,
  type Circumstances,
  type Gap,
  type Instrument,
  type LetDownPlan,
  type Levels,
  noiseOf,
  type Person,
  PHYSIOLOGY_FIGURES,
  type Stretch,
  TICKS_PER_SECOND,
} from '@evenfall/physiology';
import type { DebriefMark } from '../exercise/debrief.js';
import { earThresholdDb, heardIn } from '../exercise/ear.js';
import type { Exercise } from '../exercise/exercise.js';
import type { FallOf } from '../exercise/fall.js';
import { feltMmHg } from '../exercise/felt.js';
import { circumstancesAt, type Replay, traceAt } from '../exercise/replay.js';
import type { DebriefRules } from '../exercise/rules.js';
import { isReadByFeel } from '../exercise/unfelt.js';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import { TOGETHER_BEATS } from '../reading/firstOfTwo.js';
import { leakOf } from './faults.js';
import { type Habit, habitOf, stepOf } from './habit.js';
import { stretchesOf } from './stretches.js';

export type Side = 'systolic' | 'diastolic';
export const SIDES = ['systolic', 'diastolic'] as const;

/** A fault of how high the cuff was pumped; null: high enough, as far as could be known. */
export type PeakFault = 'margin-small' | 'not-felt-first' | 'began-in-sounds' | null;

/** How a cuff was let down from where the sounds begin to where they end. */
export type LetDown = {
  readonly seconds: number;
  readonly mmHgPerSecond: number;
  /** So long that blood gathers in the arm, by the model. */
  readonly isLong: boolean;
};

/** Everything of a reading that a counterfactual changes a part of. */
export type Base = {
  readonly person: Person;
  readonly exercise: Exercise;
  /** At the peak of the fall. */
  readonly circumstances: Circumstances;
  /** When the cuff went up for this reading, seconds of the visit. */
  readonly inflatedSeconds: number;
  readonly instrument: Instrument;
  /** The fall as it was, in straight pieces. */
  readonly plan: LetDownPlan & { readonly fall: readonly Stretch[] };
  /** Pressures at which the chest piece was away, as ranges, high end first. */
  readonly away: readonly (readonly [number, number])[];
  readonly thresholdDb: number;
  readonly noiseDb: number;
  readonly habits: Readonly<Record<Side, Habit>>;
  readonly isByFeel: boolean;
  /** The diastolic is where the sounds became muffled. */
  readonly isByMuffled: boolean;
  readonly bestRate: number;
  /** What the hose lost of itself in this fall, mmHg/s; 0: nothing to speak of, or the hand made up for it. */
  readonly leakMmHgPerSecond: number;
  readonly rate: 'fast' | 'slow' | 'right';
  readonly letDown: LetDown;
  readonly peakFault: PeakFault;
  /** Where the pulse was felt to go before; null: nobody felt for it. */
  readonly feltMmHg: number | null;
  readonly bestPeakMmHg: number;
  /** Where in the cuff the sounds of this visit begin and end on the whole, mmHg. */
  readonly sounding: Levels;
  /** How the gauge is read by the protocol. */
  readonly gauge: { readonly stepMmHg: number; readonly reading: GaugeReading };
};

/** What a debrief knows of a reading when it asks for its costs. */
export type Reading = {
  readonly exercise: Exercise;
  readonly played: Replay;
  readonly fall: FallOf;
  readonly marks: readonly DebriefMark[];
  readonly pulsePerMinute: number;
  readonly sounding: Levels;
  readonly rules: DebriefRules;
  /** The diastolic is judged where the sounds became muffled. */
  readonly isByMuffled: boolean;
  /** Where the sounds of this visit fell silent, mmHg in the cuff, about; null: nowhere. */
  readonly gap: Gap | null;
};

/** Clocks and rounding: a rate this little beyond the limit is not called a fault, mmHg/s. */
const RATE_ROOM = 0.25;
/** A hand that pumps this much again on the way down has done so, mmHg. */
const PUMPED_AGAIN_MMHG = 5;

/** The eye tells no less on the gauge. */
const HALF_MARK_MMHG = 1;

/** Everything of a reading that a counterfactual changes a part of. */
export function baseOf(reading: Reading): Base {
  const { exercise, played, fall, pulsePerMinute, sounding, rules } = reading;
  const { inflation, deflation } = rules.runRules;
  const { person, firstInflationSeconds } = played;
  const now = circumstancesAt(exercise, fall.peakSeconds, firstInflationSeconds);
  const wasReinflated = now.wasReinflated || fall.pumpedAgainMmHg >= PUMPED_AGAIN_MMHG;
  const before = played.inflations.filter((seconds) => seconds <= fall.peakSeconds).length - 1;
  const plan = {
    startSeconds: fall.peakSeconds,
    peakMmHg: fall.peakMmHg,
    fall: isReadByFeel(exercise) ? heldOn(played, fall) : stretchesOf(played, fall),
    thresholdDb: Number.NEGATIVE_INFINITY,
    run: Math.max(0, before),
  };
  const felt = feltMmHg(exercise, played, fall);
  const isByFeel = isReadByFeel(exercise);
  const habit = (side: Side) => habitOf(side, reading, isByFeel);
  return {
    person,
    circumstances: { ...now, wasReinflated },
    exercise,
    inflatedSeconds: fall.inflatedSeconds,
    instrument: exercise.instrument,
    plan,
    away: isByFeel ? [] : awayOf(exercise, played, fall),
    thresholdDb: earThresholdDb(exercise.evidence),
    noiseDb: exercise.evidence.wasShown ? 0 : backgroundThresholdDb(noiseOf(person.scenario, now)),
    habits: { systolic: habit('systolic'), diastolic: habit('diastolic') },
    isByFeel,
    isByMuffled: reading.isByMuffled,
    bestRate: bestRateOf(deflation, pulsePerMinute),
    leakMmHgPerSecond: isLetDownEvenly(exercise, fall) ? 0 : leakOf(exercise.instrument),
    rate: rateOf(plan, person, pulsePerMinute, sounding, deflation),
    letDown: letDownOf(plan, sounding),
    peakFault: peakFaultOf(reading, felt, isByFeel),
    feltMmHg: felt,
    bestPeakMmHg: Math.max(fall.peakMmHg, Math.max(felt ?? 0, sounding.systolic) + inflation.marginMmHg),
    sounding,
    gauge: { stepMmHg: stepOf(exercise, rules), reading: deflation.gaugeReading },
  };
}

/** A fall by feel, gone on with as it was when the pulse came back: from there on the cuff may be let go. */
function heldOn(played: Replay, fall: FallOf): readonly Stretch[] {
  const all = stretchesOf(played, fall);
  const back = played.felt.find(
    ({ isFelt, atSeconds }) => isFelt && atSeconds > fall.peakSeconds && atSeconds <= fall.endSeconds,
  );
  if (back === undefined) return all;
  const backMmHg = traceAt(played.cuffMmHg, played.tracePerSecond, back.atSeconds);
  const at = all.findIndex(({ toMmHg }) => toMmHg <= backMmHg);
  const last = all[at];
  return last === undefined ? all : [...all.slice(0, at), { ...last, toMmHg: 0 }];
}

/** Whether a hand let the cuff down evenly, whatever the hose lost: then it made up for it. */
function isLetDownEvenly({ actions }: Exercise, { peakSeconds, endSeconds }: FallOf): boolean {
  const within = (tick: number) =>
    tick >= peakSeconds * TICKS_PER_SECOND - 1 && tick <= endSeconds * TICKS_PER_SECOND;
  return actions.some(({ kind, tick }) => kind === 'steady-fall' && within(tick));
}

/** Pressures at which nobody listened, from the actions. */
function awayOf(exercise: Exercise, played: Replay, fall: FallOf): [number, number][] {
  const at = (seconds: number) => traceAt(played.cuffMmHg, played.tracePerSecond, seconds);
  const away: [number, number][] = [];
  let since: number | null = null;
  for (const action of exercise.actions) {
    // The one chest piece is not on the arm while it lies at the apex, nor when it is taken from there.
    if (action.kind !== 'chest-piece' && action.kind !== 'apex') continue;
    const seconds = Math.max(fall.peakSeconds, Math.min(fall.endSeconds, action.tick / TICKS_PER_SECOND));
    if (action.kind === 'apex' || action.offMm === null) since ??= seconds;
    else if (since !== null) {
      if (seconds > since) away.push([at(since), at(seconds)]);
      since = null;
    }
  }
  if (since !== null && since < fall.endSeconds) away.push([at(since), 0]);
  return away;
}

/**
 * Whether the cuff was to be pumped higher, by what the observer could know: too little was added to where the pulse was
 * felt to go, or nobody felt for it and it was too low, or sounds were there from the first beat on.
 */
function peakFaultOf(
  { exercise, played, fall, sounding, rules }: Reading,
  felt: number | null,
  isByFeel: boolean,
): PeakFault {
  const small = rules.runRules.inflation.smallMarginMmHg;
  if (felt === null && !isByFeel && fall.peakMmHg < sounding.systolic + small) return 'not-felt-first';
  if (felt !== null && fall.peakMmHg + HALF_MARK_MMHG <= felt + small) return 'margin-small';
  return !isByFeel && beganInSounds(exercise, played, fall) ? 'began-in-sounds' : null;
}

/** Whether the very first beats of a fall were heard, one soon after the other. */
function beganInSounds(exercise: Exercise, played: Replay, fall: FallOf): boolean {
  const [first, second] = heardIn(exercise, played, fall);
  if (first === undefined || second === undefined || second.beat - first.beat > TOGETHER_BEATS) return false;
  const before = played.felt.filter(
    ({ atSeconds }) => atSeconds > fall.peakSeconds && atSeconds < first.atSeconds,
  );
  return before.length === 0 && first.atSeconds - fall.peakSeconds < second.atSeconds - first.atSeconds;
}

/** The book's own hand: the middle of what is taught, and no faster for each beat than may be. */
function bestRateOf(rules: DeflationRules, pulsePerMinute: number): number {
  const { slowestMmHgPerSecond, fastestMmHgPerSecond, fastestPerBeatMmHg, perBeatWhen } = rules;
  const usual = Math.max(slowestMmHgPerSecond, Math.min(fastestMmHgPerSecond, F.rateMmHgPerSecond.value));
  return perBeatWhen === 'never' ? usual : Math.min(usual, (fastestPerBeatMmHg * pulsePerMinute) / 60);
}

/** Whether a fall was too fast, or too slow, where the sounds begin or end. The book's own hand is never too slow. */
function rateOf(
  plan: Base['plan'],
  { breathingSwingMmHg }: Person,
  pulsePerMinute: number,
  sounding: Levels,
  rules: DeflationRules,
): Base['rate'] {
  const perBeat = (rules.fastestPerBeatMmHg * pulsePerMinute) / 60;
  const isByBeat =
    rules.perBeatWhen === 'always' ||
    (rules.perBeatWhen === 'slow-or-irregular' && pulsePerMinute < rules.slowPulsePerMinute);
  const most = isByBeat ? Math.min(rules.fastestMmHgPerSecond, perBeat) : rules.fastestMmHgPerSecond;
  const rates = [rateAt(plan, sounding.systolic), rateAt(plan, sounding.diastolic)];
  if (rates.some((rate) => rate > most + RATE_ROOM)) return 'fast';
  // Past a paradox the cuff is let down slowly on purpose.
  const taught =
    breathingSwingMmHg > F.paradoxMmHg.value ? F.paradoxMmHgPerSecond.value : rules.slowestMmHgPerSecond;
  const least = Math.min(taught, bestRateOf(rules, pulsePerMinute)) - RATE_ROOM;
  const within = piecesWithin(plan, sounding);
  const slowly = within.filter(({ rate }) => rate < least);
  const mmHgOf = (pieces: typeof within) => pieces.reduce((sum, { mmHg }) => sum + mmHg, 0);
  // By the way that was gone slowly and not by its time: a stop on the way is one of its own.
  const isMostly = mmHgOf(slowly) > mmHgOf(within) / 2;
  return isMostly || rates.every((rate) => rate < least) ? 'slow' : 'right';
}

/** The pieces of a fall between where the sounds begin and where they end. */
function piecesWithin(
  { peakMmHg, fall }: Base['plan'],
  { systolic, diastolic }: Levels,
): readonly { readonly mmHg: number; readonly rate: number }[] {
  let top = peakMmHg;
  return fall.flatMap(({ mmHgPerSecond, toMmHg }) => {
    const mmHg = Math.min(top, systolic) - Math.max(toMmHg, diastolic);
    top = toMmHg;
    return mmHg > 0 ? [{ mmHg, rate: mmHgPerSecond }] : [];
  });
}

function letDownOf(plan: Base['plan'], sounding: Levels): LetDown {
  const within = piecesWithin(plan, sounding);
  const seconds = within.reduce((sum, { mmHg, rate }) => sum + mmHg / rate, 0);
  const mmHg = within.reduce((sum, one) => sum + one.mmHg, 0);
  return {
    seconds,
    mmHgPerSecond: seconds === 0 ? 0 : mmHg / seconds,
    isLong: seconds > PHYSIOLOGY_FIGURES.sound.congestedAfterSeconds.value,
  };
}

/** How fast a plan falls at a pressure, mmHg/s. */
function rateAt({ fall }: LetDownPlan, mmHg: number): number {
  if (typeof fall === 'number') return fall;
  return (fall.find(({ toMmHg }) => toMmHg <= mmHg) ?? fall.at(-1))?.mmHgPerSecond ?? 0;
}
