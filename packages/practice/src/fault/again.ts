import { gaugeRead } from '@evenfall/clinical';
import {
  type BeatStream,
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
  type Stretch,
} from '@evenfall/physiology';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import { hear, newHeard } from '../reading/heard.js';
import { CIRCUMSTANCE_FAULTS, type FaultCode, isGaugeOff } from './faults.js';
import { type Habit, MARK_MMHG } from './habit.js';
import { properInstrument, properOf } from './proper.js';

export type Side = 'systolic' | 'diastolic';

/** A reading as it was made: everything of which a counterfactual changes a part. */
export type Made = {
  readonly person: Person;
  readonly circumstances: Circumstances;
  readonly instrument: Instrument;
  readonly plan: LetDownPlan;
  /** Seconds of the visit at which the cuff was pumped up. */
  readonly pumpedSeconds: number;
  /** The beats of the visit from shortly before a second of it. */
  readonly beatsBefore: (seconds: number) => BeatStream | null;
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

/** The fall is begun at so many moments about the real one, so many seconds apart: over a breath and all places of a beat. */
export const STARTS = 20;
const START_STEP_SECONDS = 0.5;
/** Beats are taken up this long before a fall. */
const LEAD_SECONDS = 1;

/** The fall of a reading begun a little earlier or later, `i` of `STARTS`; never before the visit itself. */
function begunAt(made: Made, i: number): Made {
  const { startSeconds } = made.plan;
  const earliest = Math.max(startSeconds - (STARTS / 2) * START_STEP_SECONDS, higherSeconds(made));
  return { ...made, plan: { ...made.plan, startSeconds: earliest + i * START_STEP_SECONDS } };
}

/** How much earlier the fall begins where the cuff is pumped as high as it should have been. */
function higherSeconds({ plan, isMarginSmall, bestPeak, bestRate }: Made): number {
  return isMarginSmall ? Math.max(0, bestPeak - plan.peakMmHg) / bestRate : 0;
}

/**
 * The reading with some of the faults and none of the others: the mean over falls begun a little earlier and later, so
 * that where in a breath the cuff happened to be is not counted as a fault's.
 */
export function readingWith(made: Made, present: ReadonlySet<FaultCode>): Levels {
  let systolic = 0;
  let diastolic = 0;
  for (let i = 0; i < STARTS; i++) {
    const one = oneWith(begunAt(made, i), present);
    systolic += one.systolic;
    diastolic += one.diastolic;
  }
  return { systolic: systolic / STARTS, diastolic: diastolic / STARTS };
}

/** The readings of the textbook in everything, an eye on the needle at the instant: one for each start. */
export function bestReadings(made: Made): Levels[] {
  const circumstances = properOf(made.circumstances, made.pumpedSeconds);
  const instrument = properInstrument(made.person, made.instrument);
  return Array.from({ length: STARTS }, (_, i) => {
    const begun = begunAt(made, i);
    const plan = planWith(begun, new Set());
    listen(begun, circumstances, instrument, plan, 0, []);
    const at = (sound: number) =>
      sound < 0
        ? Number.NaN
        : gaugeRead(
            gaugeFor(
              instrument,
              cuffOf(plan, (LOG.atSeconds[sound] as number) - gaugeLagSeconds(instrument)),
            ),
            MARK_MMHG,
            'nearest',
          );
    return { systolic: at(HEARD.first), diastolic: at(HEARD.last) };
  });
}

function oneWith(made: Made, present: ReadonlySet<FaultCode>): Levels {
  let { circumstances } = made;
  for (const { code, isAt, proper } of CIRCUMSTANCE_FAULTS)
    if (isAt(made.circumstances, made.pumpedSeconds) && !present.has(code))
      circumstances = {
        ...circumstances,
        ...(typeof proper === 'function' ? proper(made.pumpedSeconds) : proper),
      };
  const sound = properInstrument(made.person, made.instrument);
  const instrument: Instrument = {
    ...made.instrument,
    ...(present.has('cuff-size') ? {} : { bladder: sound.bladder }),
    ...(present.has('gauge-off') || !isGaugeOff(made.instrument) ? {} : { zeroOffsetMmHg: 0, scaleError: 0 }),
  };
  const plan = planWith(made, present);
  const thresholdDb =
    (present.has('not-heard') ? made.thresholdDb : 0) + (present.has('noise') ? made.noiseDb : 0);
  listen(
    made,
    circumstances,
    instrument,
    plan,
    thresholdDb,
    present.has('chest-piece-away') ? made.away : [],
  );
  return {
    systolic: writtenOf('systolic', made, present, instrument, plan),
    diastolic: writtenOf('diastolic', made, present, instrument, plan),
  };
}

/** The fall with the faults of the hand that are left; a part that the textbook does better is replaced by what it does. */
function planWith(made: Made, present: ReadonlySet<FaultCode>): LetDownPlan {
  const { plan, bestRate, bestPeak } = made;
  const isOwnRate = present.has('too-fast') || present.has('too-slow') || made.rate === 'right';
  const fall = isOwnRate ? plan.fall : bestRate;
  if (present.has('margin-small') || !made.isMarginSmall || bestPeak <= plan.peakMmHg)
    return { ...plan, fall };
  // From higher up, and begun so much earlier that the rest of the fall meets the very beats that it met.
  const rest: readonly Stretch[] = typeof fall === 'number' ? [{ mmHgPerSecond: fall, toMmHg: 0 }] : fall;
  return {
    ...plan,
    startSeconds: plan.startSeconds - higherSeconds(made),
    peakMmHg: bestPeak,
    fall: [{ mmHgPerSecond: bestRate, toMmHg: plan.peakMmHg }, ...rest],
  };
}

function listen(
  made: Made,
  circumstances: Circumstances,
  instrument: Instrument,
  plan: LetDownPlan,
  thresholdDb: number,
  away: Made['away'],
): void {
  const beats = made.beatsBefore(plan.startSeconds - LEAD_SECONDS);
  letDown(made.person, circumstances, instrument, plan, RESULT, LOG, beats);
  for (let i = 0; away.length > 0 && i < LOG.count; i++) {
    const cuff = LOG.cuffMmHg[i] as number;
    if (away.some(([high, low]) => cuff <= high && cuff >= low)) LOG.levelDb[i] = Number.NEGATIVE_INFINITY;
  }
  hear(LOG, thresholdDb, 'first-of-two', HEARD);
}

function writtenOf(
  side: Side,
  made: Made,
  present: ReadonlySet<FaultCode>,
  instrument: Instrument,
  plan: LetDownPlan,
): number {
  const right = side === 'systolic' ? HEARD.first : HEARD.last;
  if (right < 0) return Number.NaN;
  const habit = made.habits[side];
  const isMisheard = present.has('misheard');
  const took = Math.max(0, Math.min(LOG.count - 1, right + (isMisheard ? habit.skipped : 0)));
  const ordinary = F.reactionSeconds.value;
  const delay = present.has('read-late') ? habit.delaySeconds : Math.min(habit.delaySeconds, ordinary);
  const at = (LOG.atSeconds[took] as number) + delay - gaugeLagSeconds(instrument);
  const needle = gaugeFor(instrument, cuffOf(plan, at)) + (isMisheard ? habit.shiftMmHg : 0);
  return habit.pen !== null && present.has(habit.pen)
    ? needle + habit.offMmHg
    : gaugeRead(needle, MARK_MMHG, 'nearest');
}
