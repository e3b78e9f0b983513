import { type LetDownPlan, type Levels, TICKS_PER_SECOND } from '@evenfall/physiology';
import type { DebriefMark } from '../exercise/debrief.js';
import { earOf } from '../exercise/ear.js';
import type { Exercise } from '../exercise/exercise.js';
import type { FallOf } from '../exercise/fall.js';
import { beatsBefore, circumstancesAt, type Replay, traceAt } from '../exercise/replay.js';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import { bestReadings, type Made, readingWith, type Side } from './again.js';
import {
  CIRCUMSTANCE_FAULTS,
  type DoInstead,
  FAULTS,
  type FaultCode,
  isGaugeOff,
  isWrongSize,
} from './faults.js';
import { type Habit, habitOf } from './habit.js';
import { besidesOf, isMarginSmall, rateFault } from './hand.js';
import { shapley } from './shapley.js';
import { stretchesOf } from './stretches.js';

/**
 * What a fault cost each number, mmHg: its fair share of the difference to the same visit without any. Null: with some of
 * the faults there is nothing to hear, so that no number can be shared out.
 */
export type Cost = {
  readonly code: FaultCode;
  readonly doInstead: DoInstead;
  readonly systolic: number | null;
  readonly diastolic: number | null;
};

/** The lowest and the highest of some readings, mmHg. */
export type Spread = { readonly low: number; readonly high: number };

/** What the faults of a reading cost. `costs` (largest first) and `left` sum to entered minus best. */
export type Costs = {
  /**
   * What was to be had of this person and visit: the textbook's hand and an eye on the needle, to the nearest mark, on
   * average over falls begun a little earlier and later.
   */
  readonly best: Levels | null;
  /** How far those readings lay apart: so much was the heart's and not the hand's. */
  readonly spread: { readonly systolic: Spread; readonly diastolic: Spread } | null;
  readonly costs: readonly Cost[];
  /** What need not have moved a number and still is to be done otherwise. */
  readonly besides: readonly { readonly code: FaultCode; readonly doInstead: DoInstead }[];
  /** Not owed to any fault: an ordinary reaction, rounding, where in a breath and between the beats the cuff happened to be. */
  readonly left: { readonly systolic: number | null; readonly diastolic: number | null } | null;
  /** Whether it is known when the needle was read for each number. */
  readonly isTimed: { readonly systolic: boolean; readonly diastolic: boolean };
};

const NOTHING: Costs = {
  best: null,
  spread: null,
  costs: [],
  besides: [],
  left: null,
  isTimed: { systolic: false, diastolic: false },
};
/** A hand that pumps this much again on the way down has done so, mmHg. */
const PUMPED_AGAIN_MMHG = 5;

/** The costs of every fault of a reading, by runs of the same visit in which some of them are taken away. */
export function costsOf(
  exercise: Exercise,
  played: Replay,
  fall: FallOf | null,
  marks: readonly DebriefMark[],
  pulsePerMinute: number,
  sounding: Levels,
): Costs {
  if (fall === null) return NOTHING;
  const made = madeOf(exercise, played, fall, marks, pulsePerMinute, sounding);
  const { best, spread } = bestOf(bestReadings(made));
  const faults = faultsOf(made, sounding);
  const read = new Map<number, Levels>();
  const worthOf = (set: number) => {
    let got = read.get(set);
    if (got === undefined) {
      got = readingWith(made, new Set(faults.filter((_, i) => (set >> i) % 2 === 1)));
      read.set(set, got);
    }
    return got;
  };
  const share = (side: Side) => shapley(faults.length, (set) => worthOf(set)[side]).map(numberOrNull);
  const [ofSystolic, ofDiastolic] = [share('systolic'), share('diastolic')];
  const costs = faults
    .map((code, i) => ({
      code,
      doInstead: FAULTS[code].doInstead,
      systolic: ofSystolic[i] ?? null,
      diastolic: ofDiastolic[i] ?? null,
    }))
    .sort((a, b) => weight(b) - weight(a));
  const leftOf = (side: Side): number | null => {
    const entered = exercise.entered[side];
    const shares = side === 'systolic' ? ofSystolic : ofDiastolic;
    if (entered === null || best === null || shares.includes(null)) return null;
    return shares.reduce<number>((rest, one) => rest - (one ?? 0), entered - best[side]);
  };
  return {
    best,
    spread,
    costs,
    besides: besidesOf(exercise, played, fall, sounding).map((code) => ({
      code,
      doInstead: FAULTS[code].doInstead,
    })),
    left: { systolic: leftOf('systolic'), diastolic: leftOf('diastolic') },
    isTimed: { systolic: made.habits.systolic.isTimed, diastolic: made.habits.diastolic.isTimed },
  };
}

/** What the textbook would have read of a visit, without looking for faults. */
export function bestFor(
  exercise: Exercise,
  played: Replay,
  fall: FallOf | null,
  marks: readonly DebriefMark[],
  pulsePerMinute: number,
  sounding: Levels,
): Costs {
  if (fall === null) return NOTHING;
  const made = madeOf(exercise, played, fall, marks, pulsePerMinute, sounding);
  return { ...NOTHING, ...bestOf(bestReadings(made)) };
}

/** Mean and spread of readings; where one of them heard nothing there is none to be had. */
function bestOf(readings: readonly Levels[]): Pick<Costs, 'best' | 'spread'> {
  const of = (side: Side) => readings.map((one) => one[side]);
  const all = { systolic: of('systolic'), diastolic: of('diastolic') };
  if ([...all.systolic, ...all.diastolic].some(Number.isNaN)) return { best: null, spread: null };
  const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length;
  const spread = (values: readonly number[]) => ({ low: Math.min(...values), high: Math.max(...values) });
  return {
    best: { systolic: mean(all.systolic), diastolic: mean(all.diastolic) },
    spread: { systolic: spread(all.systolic), diastolic: spread(all.diastolic) },
  };
}

function numberOrNull(value: number): number | null {
  return Number.isNaN(value) ? null : value;
}

function weight({ systolic, diastolic }: Cost): number {
  return Math.max(Math.abs(systolic ?? 0), Math.abs(diastolic ?? 0));
}

function madeOf(
  exercise: Exercise,
  played: Replay,
  fall: FallOf,
  marks: readonly DebriefMark[],
  pulsePerMinute: number,
  sounding: Levels,
): Made {
  const { person } = played;
  const now = circumstancesAt(exercise, fall.peakSeconds, played.firstInflationSeconds);
  const wasReinflated = now.wasReinflated || fall.pumpedAgainMmHg >= PUMPED_AGAIN_MMHG;
  const plan: LetDownPlan = {
    startSeconds: fall.peakSeconds,
    peakMmHg: fall.peakMmHg,
    fall: stretchesOf(played, fall),
    thresholdDb: Number.NEGATIVE_INFINITY,
    run: Math.max(0, played.inflationSeconds.filter((one) => one <= fall.peakSeconds).length - 1),
  };
  const ear = earOf(exercise, played);
  const habit = (side: Side) => habitOf(side, exercise, played, marks, fall, ear.thresholdDb + ear.noiseDb);
  const lostMmHg = exercise.evidence.run?.run.palpated.lostMmHg ?? null;
  return {
    person,
    circumstances: { ...now, wasReinflated },
    instrument: exercise.instrument,
    plan,
    pumpedSeconds: fall.inflatedSeconds,
    beatsBefore: (seconds) => beatsBefore(played, seconds),
    rate: rateFault(plan, pulsePerMinute, sounding),
    isMarginSmall: isMarginSmall(fall, lostMmHg, sounding),
    away: awayOf(exercise, played, fall),
    ...ear,
    bestRate: Math.min(F.rateMmHgPerSecond.value, (F.perBeatMmHg.value * pulsePerMinute) / 60),
    bestPeak: Math.max(fall.peakMmHg, sounding.systolic + F.marginMmHg.value),
    habits: { systolic: habit('systolic'), diastolic: habit('diastolic') },
  };
}

/** Pressures at which nobody listened, from the actions. */
function awayOf(exercise: Exercise, played: Replay, fall: FallOf): [number, number][] {
  const at = (seconds: number) => traceAt(played.cuffMmHg, played.tracePerSecond, seconds);
  const away: [number, number][] = [];
  let since: number | null = null;
  for (const action of exercise.actions) {
    if (action.kind !== 'chest-piece') continue;
    const seconds = Math.max(fall.peakSeconds, Math.min(fall.endSeconds, action.tick / TICKS_PER_SECOND));
    if (action.offMm === null) since ??= seconds;
    else if (since !== null) {
      if (seconds > since) away.push([at(since), at(seconds)]);
      since = null;
    }
  }
  if (since !== null && since < fall.endSeconds) away.push([at(since), 0]);
  return away;
}

function faultsOf(made: Made, sounding: Levels): FaultCode[] {
  const { circumstances, instrument, person, habits } = made;
  const found: FaultCode[] = CIRCUMSTANCE_FAULTS.filter(({ isAt }) =>
    isAt(circumstances, made.pumpedSeconds),
  ).map(({ code }) => code);
  const either = (is: (habit: Habit) => boolean) => is(habits.systolic) || is(habits.diastolic);
  const more: readonly (readonly [FaultCode, boolean])[] = [
    ['cuff-size', isWrongSize(person.scenario.armCm, instrument)],
    ['gauge-off', isGaugeOff(instrument)],
    ['too-fast', made.rate === 'fast'],
    ['too-slow', made.rate === 'slow'],
    ['margin-small', made.isMarginSmall],
    [
      'chest-piece-away',
      made.away.some(([high, low]) => high > sounding.diastolic && low < sounding.systolic),
    ],
    ['read-late', either(({ delaySeconds }) => delaySeconds > F.slowReactionSeconds.value)],
    ['misheard', either(({ skipped, shiftMmHg }) => skipped !== 0 || shiftMmHg !== 0)],
    ['misread', either(({ pen }) => pen === 'misread')],
    ['digit-habit', either(({ pen }) => pen === 'digit-habit')],
    ['not-heard', made.thresholdDb > 0],
    ['noise', made.noiseDb > 0],
  ];
  return [...found, ...more.flatMap(([code, is]) => (is ? [code] : []))];
}
