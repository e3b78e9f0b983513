import { DEFAULT_DEFLATION_RULES, DEFAULT_INFLATION_RULES, gaugeRead } from '@evenfall/clinical';
import {
  backgroundThresholdDb,
  type Circumstances,
  cuffOf,
  gaugeFor,
  gaugeLagSeconds,
  type Instrument,
  type LetDownPlan,
  type Levels,
  letDown,
  newLetDownResult,
  type Person,
  SoundLog,
  TICKS_PER_SECOND,
} from '@evenfall/physiology';
import type { DebriefMark } from '../exercise/debrief.js';
import type { Exercise } from '../exercise/exercise.js';
import type { FallOf } from '../exercise/fall.js';
import { circumstancesAt, type Replay, traceAt } from '../exercise/replay.js';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import { firstOfTwo } from '../reading/firstOfTwo.js';
import { hear, newHeard } from '../reading/heard.js';
import {
  CIRCUMSTANCE_FAULTS,
  type DoInstead,
  FAULTS,
  type FaultCode,
  isGaugeOff,
  isWrongSize,
} from './faults.js';
import { properInstrument, properOf } from './proper.js';
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

type Side = 'systolic' | 'diastolic';

/** What the faults of a reading cost. `costs` (largest first) and `left` sum to entered minus best. */
export type Costs = {
  /** What was to be had of this person, seed and time: the textbook's hand and an eye on the needle, to the nearest mark. */
  readonly best: Levels | null;
  readonly costs: readonly Cost[];
  /** Not owed to any fault: an ordinary reaction, rounding, where in a breath and between the beats the cuff happened to be. */
  readonly left: { readonly systolic: number | null; readonly diastolic: number | null } | null;
};

/** What is known of how a number was read. */
type Habit = { readonly skipped: number; readonly delaySeconds: number; readonly offMmHg: number };

/** Everything that a counterfactual changes a part of. */
type Base = {
  readonly person: Person;
  readonly circumstances: Circumstances;
  readonly instrument: Instrument;
  readonly plan: LetDownPlan;
  /** Seconds of the fall at which the chest piece was away, as ranges of pressure in the cuff, high end first. */
  readonly away: readonly (readonly [number, number])[];
  readonly thresholdDb: number;
  readonly noiseDb: number;
  readonly habits: Readonly<Record<Side, Habit>>;
  readonly bestRate: number;
  readonly bestPeak: number;
  readonly rate: 'fast' | 'slow' | 'right';
  readonly isMarginSmall: boolean;
};

const RESULT = newLetDownResult();
const LOG = new SoundLog();
const HEARD = newHeard();
const MARK_MMHG = 2;
/** Clocks and rounding: a rate this little beyond the limit is not called a fault, mmHg/s. */
const RATE_ROOM = 0.25;
/** A hand that pumps this much again on the way down has done so, mmHg. */
const PUMPED_AGAIN_MMHG = 5;

/** The costs of every fault of a reading, by runs of the same seed in which some of them are taken away. */
export function costsOf(
  exercise: Exercise,
  played: Replay,
  fall: FallOf | null,
  marks: readonly DebriefMark[],
  pulsePerMinute: number,
  sounding: Levels,
): Costs {
  if (fall === null) return { best: null, costs: [], left: null };
  const base = baseOf(exercise, played, fall, marks, pulsePerMinute, sounding);
  const faults = faultsOf(base, sounding);
  const read = new Map<number, Levels>();
  const worthOf = (set: number) => {
    let got = read.get(set);
    if (got === undefined) {
      got = readingOf(base, new Set(faults.filter((_, i) => (set >> i) % 2 === 1)));
      read.set(set, got);
    }
    return got;
  };
  const best = bestOf(base);
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
    if (entered === null || shares.includes(null)) return null;
    return numberOrNull(shares.reduce<number>((rest, one) => rest - (one ?? 0), entered - best[side]));
  };
  return {
    best: numberOrNull(best.systolic) === null || numberOrNull(best.diastolic) === null ? null : best,
    costs,
    left: { systolic: leftOf('systolic'), diastolic: leftOf('diastolic') },
  };
}

function numberOrNull(value: number): number | null {
  return Number.isNaN(value) ? null : value;
}

function weight({ systolic, diastolic }: Cost): number {
  return Math.max(Math.abs(systolic ?? 0), Math.abs(diastolic ?? 0));
}

function baseOf(
  exercise: Exercise,
  played: Replay,
  fall: FallOf,
  marks: readonly DebriefMark[],
  pulsePerMinute: number,
  sounding: Levels,
): Base {
  const { person } = played;
  const now = circumstancesAt(exercise, fall.peakSeconds, played.firstInflationSeconds);
  const wasReinflated = now.wasReinflated || fall.pumpedAgainMmHg >= PUMPED_AGAIN_MMHG;
  const plan: LetDownPlan = {
    startSeconds: fall.peakSeconds,
    peakMmHg: fall.peakMmHg,
    fall: stretchesOf(played, fall),
    thresholdDb: Number.NEGATIVE_INFINITY,
  };
  const base = {
    person,
    circumstances: { ...now, wasReinflated },
    instrument: exercise.instrument,
    plan,
    rate: rateFault(plan, pulsePerMinute, sounding),
    isMarginSmall: fall.peakMmHg < sounding.systolic + DEFAULT_INFLATION_RULES.smallMarginMmHg,
    away: awayOf(exercise, played, fall),
    thresholdDb: exercise.evidence.wasShown ? 0 : Math.max(0, exercise.evidence.thresholdDb ?? 0),
    noiseDb: exercise.evidence.wasShown ? 0 : backgroundThresholdDb(person.scenario.noiseDbA),
    bestRate: Math.min(F.rateMmHgPerSecond.value, (F.perBeatMmHg.value * pulsePerMinute) / 60),
    bestPeak: Math.max(fall.peakMmHg, sounding.systolic + F.marginMmHg.value),
  };
  const habits = {
    systolic: habitOf('systolic', exercise, played, marks, fall, base),
    diastolic: habitOf('diastolic', exercise, played, marks, fall, base),
  };
  return { ...base, habits };
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

/** How a number was read: sounds passed over before (after) it, how late the eye was, what the pen made of the needle. */
function habitOf(
  side: Side,
  exercise: Exercise,
  played: Replay,
  marks: readonly DebriefMark[],
  fall: FallOf,
  { thresholdDb, noiseDb }: Pick<Base, 'thresholdDb' | 'noiseDb'>,
): Habit {
  const mark = marks.find(({ what }) => what === (side === 'systolic' ? 'first sound' : 'last sound'));
  const entered = exercise.entered[side];
  const none = { skipped: 0, delaySeconds: 0, offMmHg: 0 };
  if (mark === undefined || mark.needleMmHg === null || mark.atSeconds === null || entered === null)
    return none;
  // As this ear could have heard it in the visit itself.
  const heard = played.sounds.filter(
    ({ atSeconds, levelDb }) =>
      levelDb >= thresholdDb + noiseDb && atSeconds >= fall.peakSeconds && atSeconds <= fall.endSeconds,
  );
  const right = side === 'systolic' ? firstOfTwo(heard) : heard.at(-1);
  const took = heard.findIndex(({ atSeconds }) => atSeconds === mark.soundSeconds);
  if (right === undefined || took < 0) return { ...none, offMmHg: entered - mark.needleMmHg };
  return {
    skipped: took - heard.indexOf(right),
    delaySeconds: Math.max(0, mark.atSeconds - (heard[took]?.atSeconds ?? mark.atSeconds)),
    offMmHg: entered - mark.needleMmHg,
  };
}

function faultsOf(base: Base, sounding: Levels): FaultCode[] {
  const { circumstances, instrument, person, habits } = base;
  const found: FaultCode[] = CIRCUMSTANCE_FAULTS.filter(({ isAt }) => isAt(circumstances)).map(
    ({ code }) => code,
  );
  const either = (is: (habit: Habit) => boolean) => is(habits.systolic) || is(habits.diastolic);
  const more: readonly (readonly [FaultCode, boolean])[] = [
    ['cuff-size', isWrongSize(person.scenario.armCm, instrument)],
    ['gauge-off', isGaugeOff(instrument)],
    ['too-fast', base.rate === 'fast'],
    ['too-slow', base.rate === 'slow'],
    ['margin-small', base.isMarginSmall],
    [
      'chest-piece-away',
      base.away.some(([high, low]) => high > sounding.diastolic && low < sounding.systolic),
    ],
    ['read-late', either(({ delaySeconds }) => delaySeconds > F.slowReactionSeconds.value)],
    ['misheard', either(({ skipped }) => skipped !== 0)],
    ['digit-habit', either(({ offMmHg }) => Math.abs(offMmHg) > MARK_MMHG / 2 + 1e-6)],
    ['not-heard', base.thresholdDb > 0],
    ['noise', base.noiseDb > 0],
  ];
  return [...found, ...more.flatMap(([code, is]) => (is ? [code] : []))];
}

/** Whether a fall was too fast, or too slow, where the sounds begin or end. */
function rateFault(plan: LetDownPlan, pulsePerMinute: number, sounding: Levels): Base['rate'] {
  const rules = DEFAULT_DEFLATION_RULES;
  const isSlow = pulsePerMinute < rules.slowPulsePerMinute;
  const most = isSlow
    ? Math.min(rules.fastestMmHgPerSecond, (rules.fastestPerBeatMmHg * pulsePerMinute) / 60)
    : rules.fastestMmHgPerSecond;
  const rates = [rateAt(plan, sounding.systolic), rateAt(plan, sounding.diastolic)];
  if (rates.some((rate) => rate > most + RATE_ROOM)) return 'fast';
  const least = Math.min(rules.slowestMmHgPerSecond, most);
  return rates.every((rate) => rate < least - RATE_ROOM) ? 'slow' : 'right';
}

/** How fast a plan falls at a pressure, mmHg/s. */
function rateAt({ fall }: LetDownPlan, mmHg: number): number {
  if (typeof fall === 'number') return fall;
  return (fall.find(({ toMmHg }) => toMmHg <= mmHg) ?? fall.at(-1))?.mmHgPerSecond ?? 0;
}

/** The fall is begun at so many moments about the real one, so many seconds apart: over a breath and all places of a beat. */
const STARTS = 20;
const START_STEP_SECONDS = 0.5;

/**
 * The reading with some of the faults and none of the others: the mean over falls begun a little earlier and later, so
 * that where in a breath the cuff happened to be is not counted as a fault's.
 */
function readingOf(base: Base, present: ReadonlySet<FaultCode>): Levels {
  let systolic = 0;
  let diastolic = 0;
  for (let i = 0; i < STARTS; i++) {
    const later = (i - STARTS / 2) * START_STEP_SECONDS;
    const startSeconds = Math.max(0, base.plan.startSeconds + later);
    const one = oneReadingOf({ ...base, plan: { ...base.plan, startSeconds } }, present);
    systolic += one.systolic;
    diastolic += one.diastolic;
  }
  return { systolic: systolic / STARTS, diastolic: diastolic / STARTS };
}

function oneReadingOf(base: Base, present: ReadonlySet<FaultCode>): Levels {
  let circumstances = base.circumstances;
  for (const { code, isAt, proper } of CIRCUMSTANCE_FAULTS)
    if (isAt(base.circumstances) && !present.has(code)) circumstances = { ...circumstances, ...proper };
  const sound = properInstrument(base.person, base.instrument);
  const instrument: Instrument = {
    ...base.instrument,
    ...(present.has('cuff-size') ? {} : { bladder: sound.bladder }),
    ...(present.has('gauge-off') || !isGaugeOff(base.instrument) ? {} : { zeroOffsetMmHg: 0, scaleError: 0 }),
  };
  const plan = planOf(base, present);
  const thresholdDb =
    (present.has('not-heard') ? base.thresholdDb : 0) + (present.has('noise') ? base.noiseDb : 0);
  listen(
    base.person,
    circumstances,
    instrument,
    plan,
    thresholdDb,
    present.has('chest-piece-away') ? base.away : [],
  );
  return {
    systolic: writtenOf('systolic', base, present, instrument, plan),
    diastolic: writtenOf('diastolic', base, present, instrument, plan),
  };
}

/** The fall with the faults of the hand that are left; a part that the textbook does better is replaced by what it does. */
function planOf(base: Base, present: ReadonlySet<FaultCode>): LetDownPlan {
  const { plan } = base;
  const isOwnRate = present.has('too-fast') || present.has('too-slow') || base.rate === 'right';
  return {
    ...plan,
    peakMmHg: present.has('margin-small') || !base.isMarginSmall ? plan.peakMmHg : base.bestPeak,
    fall: isOwnRate ? plan.fall : base.bestRate,
  };
}

function listen(
  person: Person,
  circumstances: Circumstances,
  instrument: Instrument,
  plan: LetDownPlan,
  thresholdDb: number,
  away: Base['away'],
): void {
  letDown(person, circumstances, instrument, plan, RESULT, LOG);
  for (let i = 0; away.length > 0 && i < LOG.count; i++) {
    const cuff = LOG.cuffMmHg[i] as number;
    if (away.some(([high, low]) => cuff <= high && cuff >= low)) LOG.levelDb[i] = Number.NEGATIVE_INFINITY;
  }
  hear(LOG, thresholdDb, 'first-of-two', HEARD);
}

function writtenOf(
  side: Side,
  base: Base,
  present: ReadonlySet<FaultCode>,
  instrument: Instrument,
  plan: LetDownPlan,
): number {
  const right = side === 'systolic' ? HEARD.first : HEARD.last;
  if (right < 0) return Number.NaN;
  const habit = base.habits[side];
  const skipped = present.has('misheard') ? habit.skipped : 0;
  const took = Math.max(0, Math.min(LOG.count - 1, right + skipped));
  const delay = present.has('read-late')
    ? habit.delaySeconds
    : Math.min(habit.delaySeconds, F.reactionSeconds.value);
  const at = (LOG.atSeconds[took] as number) + delay - gaugeLagSeconds(instrument);
  const needle = gaugeFor(instrument, cuffOf(plan, at));
  return present.has('digit-habit') ? needle + habit.offMmHg : gaugeRead(needle, MARK_MMHG, 'nearest');
}

/** The textbook in everything, an eye on the needle at the instant. What was right of the hand stays as it was. */
function bestOf(base: Base): Levels {
  const circumstances = properOf(base.circumstances);
  const instrument = properInstrument(base.person, base.instrument);
  const plan = planOf(base, new Set());
  listen(base.person, circumstances, instrument, plan, 0, []);
  const at = (sound: number) =>
    sound < 0
      ? Number.NaN
      : gaugeRead(
          gaugeFor(instrument, cuffOf(plan, (LOG.atSeconds[sound] as number) - gaugeLagSeconds(instrument))),
          MARK_MMHG,
          'nearest',
        );
  return { systolic: at(HEARD.first), diastolic: at(HEARD.last) };
}
