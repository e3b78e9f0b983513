import { isLoudInAnyRoom, isUnwell, type Levels } from '@evenfall/physiology';
import type { Entered } from '../exercise/exercise.js';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import { type Base, SIDES, type Side } from './base.js';
import { CONDUCT } from './conduct.js';
import { Counterfactual, type Numbers } from './counterfactual.js';
import {
  CIRCUMSTANCE_FAULTS,
  type DoInstead,
  FAULTS,
  type FaultCode,
  isGaugeOff,
  isOfPreparing,
  isOfSitting,
  isWrongSize,
} from './faults.js';
import { type Habit, mufflingOf } from './habit.js';
import { shapley } from './shapley.js';

/**
 * What a fault cost each number, mmHg: its fair share of the difference to the same visit without any. Null: with some of
 * the faults there is nothing to hear, so that no number can be shared out.
 */
export type Cost = {
  readonly code: FaultCode;
  readonly doInstead:
    | DoInstead
    | 'feel-instead'
    | 'listen-from-above'
    | 'no-time-for-that'
    | (typeof CONDUCT)['muffled-not-written'];
  readonly systolic: number | null;
  readonly diastolic: number | null;
};

/** A number by the book: what was to be had at that very moment, and within what twenty falls begun within five seconds of it lie. */
export type Obtainable = { readonly mmHg: number; readonly lowMmHg: number; readonly highMmHg: number };

/** What was to be had of this person, seed and time by the textbook's hand and an eye on the needle, to the nearest mark. */
export type Had = {
  readonly systolic: Obtainable | null;
  /** Where the muffling was to be heard; null: nowhere. */
  readonly muffled: Obtainable | null;
  readonly diastolic: Obtainable | null;
};

/**
 * What was to be heard at that very moment by the textbook's hand, ear and eye, with the person, the cuff and the place as they
 * were: what is between it and what was written is the observer's own, and what is between it and `Had` is preparing.
 */
export type AsTheyWere = {
  readonly systolic: number | null;
  readonly muffled: number | null;
  readonly diastolic: number | null;
};

/**
 * What the faults of a reading cost. `costs` (largest first) and `left` sum to entered minus best; where the diastolic is where
 * the sounds became muffled, entered and best are of the muffling.
 */
export type Costs = {
  /** What was to be had at that very moment, first sound and last or muffled one; see `Had`. */
  readonly best: Levels | null;
  readonly costs: readonly Cost[];
  /** Not owed to any fault: an ordinary reaction, rounding, where in a breath and between the beats the cuff happened to be. */
  readonly left: { readonly systolic: number | null; readonly diastolic: number | null } | null;
  /** What hid the sounds, where numbers were written of which none was to be heard; null: nothing, or no fault alone. */
  readonly hidBy: FaultCode | null;
};

/** The fall is begun at so many moments about the real one, so many seconds apart: over a breath and all places of a beat. */
const STARTS = 20;
const START_STEP_SECONDS = 0.5;
const EARLIER_SECONDS = (STARTS / 2) * START_STEP_SECONDS;
/** Faults of ear, eye and pen: what they do is read off the same fall. */
const READER: ReadonlySet<FaultCode> = new Set([
  'silent-gap',
  'read-late',
  'misheard',
  'digit-habit',
  'misread-needle',
  'on-no-sound',
  'off-the-sound',
]);

export const NOTHING_HAD: Had = { systolic: null, muffled: null, diastolic: null };
export const NO_COSTS: Costs = { best: null, costs: [], left: null, hidBy: null };

/** The visit of a reading with its faults put right, ready for falls begun as much earlier and later as they are here. */
export function visitOf(base: Base): Counterfactual {
  return new Counterfactual(base, EARLIER_SECONDS);
}

/** What was to be had at the moment of a reading. */
export function hadOf(visit: Counterfactual): Had {
  const then = visit.textbook(0);
  const about = startsOf().map((later) => visit.textbook(later));
  const of = (key: keyof Numbers): Obtainable | null => {
    if (Number.isNaN(then[key])) return null;
    const all = [then, ...about].map((one) => one[key]).filter((one) => !Number.isNaN(one));
    return { mmHg: then[key], lowMmHg: Math.min(...all), highMmHg: Math.max(...all) };
  };
  return { systolic: of('systolic'), muffled: of('muffled'), diastolic: of('diastolic') };
}

/** What was to be heard with what was not prepared left as it was; null: nothing of it was wrong. */
export function asTheyWereOf(base: Base, visit: Counterfactual): AsTheyWere | null {
  const left = new Set(faultsOf(base).filter(isOfPreparing));
  if (left.size === 0) return null;
  const { systolic, muffled, diastolic } = visit.textbook(0, left);
  return {
    systolic: numberOrNull(systolic),
    muffled: numberOrNull(muffled),
    diastolic: numberOrNull(diastolic),
  };
}

function startsOf(): number[] {
  return Array.from({ length: STARTS }, (_, i) => (i - STARTS / 2) * START_STEP_SECONDS);
}

/** The costs of every fault of a reading, by runs of the same seed in which some of them are taken away. */
export function costsOf(base: Base, visit: Counterfactual, had: Had, entered: Entered): Costs {
  const faults = faultsOf(base);
  const worth = worthOf(visit, faults);
  const share = (side: Side) => shapley(faults.length, (set) => worth(set)[side]).map(numberOrNull);
  const [ofSystolic, ofDiastolic] = [share('systolic'), share('diastolic')];
  const costs = faults
    .map((code, i) => ({
      code,
      doInstead: insteadOf(base, code),
      systolic: ofSystolic[i] ?? null,
      diastolic: ofDiastolic[i] ?? null,
    }))
    .sort((a, b) => weight(b) - weight(a));
  const bestOf = (side: Side) => (isMuffling(base, side) ? had.muffled : had[side])?.mmHg ?? null;
  const [systolic, diastolic] = [bestOf('systolic'), bestOf('diastolic')];
  const leftOf = (side: Side): number | null => {
    const written = isMuffling(base, side) ? mufflingOf({ entered }) : entered[side];
    const shares = side === 'systolic' ? ofSystolic : ofDiastolic;
    const best = bestOf(side);
    if (written === null || best === null || shares.includes(null)) return null;
    return shares.reduce<number>((rest, one) => rest - (one ?? 0), written - best);
  };
  return {
    best: systolic === null || diastolic === null ? null : { systolic, diastolic },
    costs,
    left: { systolic: leftOf('systolic'), diastolic: leftOf('diastolic') },
    hidBy: null,
  };
}

/**
 * The reading with some of the faults and none of the others, by a bit mask: the mean over falls begun a little earlier and
 * later, so that where in a breath the cuff happened to be is not counted as a fault's.
 */
function worthOf(visit: Counterfactual, faults: readonly FaultCode[]): (set: number) => Levels {
  const readers = faults.filter((code) => READER.has(code));
  const first = faults.length - readers.length;
  const known = new Map<number, readonly Levels[]>();
  const presentIn = (set: number) => ({
    has: (code: FaultCode) => (set >> faults.indexOf(code)) % 2 === 1 && faults.includes(code),
  });
  const pens = Array.from({ length: 2 ** readers.length }, (_, set) => presentIn(set << first));
  const played = (hands: number): readonly Levels[] => {
    const present = presentIn(hands);
    const sums = pens.map(() => ({ systolic: 0, diastolic: 0 }));
    for (const later of startsOf())
      visit.letDown(present, later, (side, by) => {
        pens.forEach((pen, i) => {
          (sums[i] as Record<Side, number>)[side] += by(pen) / STARTS;
        });
      });
    return sums;
  };
  return (set) => {
    const hands = set % 2 ** first;
    let all = known.get(hands);
    if (all === undefined) {
      all = played(hands);
      known.set(hands, all);
    }
    return all[set >> first] as Levels;
  };
}

function isMuffling({ isByMuffled }: Base, side: Side): boolean {
  return isByMuffled && side === 'diastolic';
}

/** Another sound was taken for the muffling alone: not the last of all mends it. */
function isOfMuffling({ isByMuffled, habits }: Base, code: FaultCode): boolean {
  return isByMuffled && code === 'misheard' && habits.systolic.skipped === 0;
}

function insteadOf(base: Base, code: FaultCode): Cost['doInstead'] {
  if (isOfMuffling(base, code)) return CONDUCT['muffled-not-written'];
  // Whoever felt first and pumped high enough has to be told neither once more.
  if (code === 'silent-gap' && base.feltMmHg !== null) return 'listen-from-above';
  if (isOfSitting(code) && isUnwell(base.person.scenario)) return 'no-time-for-that';
  // What comes through a shut door no room keeps out: there is no quieter place to be advised.
  const isLoudAnywhere = code === 'noise' && isLoudInAnyRoom(base.person.scenario);
  return isLoudAnywhere ? 'feel-instead' : FAULTS[code].doInstead;
}

function numberOrNull(value: number): number | null {
  return Number.isNaN(value) ? null : value;
}

function weight({ systolic, diastolic }: Cost): number {
  return Math.max(Math.abs(systolic ?? 0), Math.abs(diastolic ?? 0));
}

/** Faults of the chest piece: by feel it is not used. */
const OF_PIECE: ReadonlySet<FaultCode> = new Set(['pressed-hard', 'under-cuff', 'chest-piece-off']);

/** Every fault of a reading; those of ear, eye and pen last. */
function faultsOf(base: Base): FaultCode[] {
  const { circumstances, inflatedSeconds, instrument, person, habits, sounding } = base;
  const found: FaultCode[] = CIRCUMSTANCE_FAULTS.filter(
    ({ code, isAt }) => isAt(circumstances, inflatedSeconds) && !(base.isByFeel && OF_PIECE.has(code)),
  ).map(({ code }) => code);
  const either = (is: (habit: Habit) => boolean) => SIDES.some((side) => is(habits[side]));
  const more: readonly (readonly [FaultCode | null, boolean])[] = [
    ['cuff-size', isWrongSize(person.scenario.armCm, instrument)],
    ['gauge-off', isGaugeOff(instrument)],
    ['hose-leaks', base.leakMmHgPerSecond > 0],
    ['too-fast', base.rate === 'fast'],
    ['too-slow', base.rate === 'slow'],
    [base.peakFault, base.peakFault !== null],
    [
      'chest-piece-away',
      base.away.some(([high, low]) => high > sounding.diastolic && low < sounding.systolic),
    ],
    ['not-heard', !base.isByFeel && base.thresholdDb > 0],
    ['noise', !base.isByFeel && base.noiseDb > 0],
    ['read-late', either(({ delaySeconds }) => delaySeconds > F.slowReactionSeconds.value)],
    ['silent-gap', either(({ away }) => away === 'silent-gap')],
    ['misheard', either(({ skipped }) => skipped !== 0)],
    ['digit-habit', either(({ pen }) => pen === 'digit-habit')],
    ['misread-needle', either(({ pen }) => pen === 'misread-needle')],
    ['on-no-sound', either(({ away }) => away === 'on-no-sound')],
    ['off-the-sound', either(({ away }) => away === 'off-the-sound')],
  ];
  return [...found, ...more.flatMap(([code, is]) => (is && code !== null ? [code] : []))];
}
