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
  SoundLog,
} from '@evenfall/physiology';
import { beatsAt } from '../exercise/replay.js';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import { hear, newHeard } from '../reading/heard.js';
import { type Base, SIDES, type Side } from './base.js';
import { CIRCUMSTANCE_FAULTS, type FaultCode, isGaugeOff, putRight } from './faults.js';
import { properInstrument } from './proper.js';

/** A set of faults that are left in. */
export type Present = { readonly has: (code: FaultCode) => boolean };
export const NO_FAULT: Present = { has: () => false };

/** The three numbers of a reading; NaN where there was nothing to hear or feel. `muffled`: the first of the muffled sounds at the end. */
export type Numbers = Levels & { readonly muffled: number };

const RESULT = newLetDownResult();
const LOG = new SoundLog();
const HEARD = newHeard();

/** No fall begins before this second of the visit: falls that would begin all sooner are all begun later. */
const EARLIEST_SECONDS = 1;
/** Beats are taken up so long before the first fall: more than the longest one. */
const HEAD_SECONDS = 4;

/** A visit in which some faults are left and the others put right. The beats are those of the visit that was, met by every fall in it. */
export class Counterfactual {
  private readonly beats: BeatStream;
  /** All falls are begun so much later that the longest of them begins within the visit. */
  private readonly shiftSeconds: number;
  private readonly base: Base;

  /** @param earlierSeconds so much before the fall as it was the first one is begun */
  constructor(base: Base, earlierSeconds: number) {
    this.base = base;
    const starts = SIDES.map((side) => bestFall(base, side).startSeconds);
    const earliest = Math.min(base.plan.startSeconds, ...starts) - earlierSeconds;
    this.shiftSeconds = Math.max(0, EARLIEST_SECONDS - earliest);
    this.beats = beatsAt(base.exercise, earliest + this.shiftSeconds - HEAD_SECONDS);
  }

  /**
   * Lets the cuff down with some of the faults, so much later than it was, and calls `read` for each number with a way to read
   * it: by what of ear, eye and pen, mmHg.
   */
  letDown(
    present: Present,
    laterSeconds: number,
    read: (side: Side, by: (pen: Present) => number) => void,
  ): void {
    const { base } = this;
    const circumstances = circumstancesOf(base, present);
    const instrument = instrumentOf(base, present);
    const thresholdDb =
      (present.has('not-heard') ? base.thresholdDb : 0) + (present.has('noise') ? base.noiseDb : 0);
    const away = present.has('chest-piece-away') ? base.away : [];
    let plan: LetDownPlan | null = null;
    for (const side of SIDES) {
      const own = fallOf(base, present, side);
      if (plan === null || own !== plan) {
        plan = own;
        const startSeconds = own.startSeconds + laterSeconds + this.shiftSeconds;
        this.listen({ ...own, startSeconds }, circumstances, instrument, thresholdDb, away);
      }
      const begun = { ...own, startSeconds: own.startSeconds + laterSeconds + this.shiftSeconds };
      read(side, (pen) => writtenOf(side, base, pen, instrument, begun, thresholdDb));
    }
  }

  /**
   * The book's hand and an eye on the needle, so much later than it was, with nothing wrong but what is left in. The muffling is
   * of the fall of the diastolic.
   */
  textbook(laterSeconds: number, present: Present = NO_FAULT): Numbers {
    const { base } = this;
    const got = { systolic: Number.NaN, diastolic: Number.NaN, muffled: Number.NaN };
    const instrument = instrumentOf(base, present);
    this.letDown(present, laterSeconds, (side) => {
      const own = fallOf(base, present, side);
      const begun = { ...own, startSeconds: own.startSeconds + laterSeconds + this.shiftSeconds };
      const needle = (seconds: number) =>
        Number.isNaN(seconds)
          ? seconds
          : gaugeRead(
              gaugeFor(instrument, cuffOf(begun, seconds - gaugeLagSeconds(instrument))),
              base.gauge.stepMmHg,
              base.gauge.reading,
            );
      const soundAt = (i: number) => (i < 0 ? Number.NaN : (LOG.atSeconds[i] as number));
      if (side === 'systolic')
        got.systolic = needle(base.isByFeel ? RESULT.pulseSeconds : soundAt(HEARD.first));
      else {
        got.diastolic = base.isByFeel ? Number.NaN : needle(soundAt(HEARD.last));
        got.muffled = base.isByFeel ? Number.NaN : needle(soundAt(HEARD.muffled));
      }
    });
    return got;
  }

  private listen(
    plan: LetDownPlan,
    circumstances: Circumstances,
    instrument: Instrument,
    thresholdDb: number,
    away: Base['away'],
  ): void {
    letDown(this.base.person, circumstances, instrument, plan, RESULT, LOG, this.beats);
    for (let i = 0; away.length > 0 && i < LOG.count; i++) {
      const cuff = LOG.cuffMmHg[i] as number;
      if (away.some(([high, low]) => cuff <= high && cuff >= low)) LOG.levelDb[i] = Number.NEGATIVE_INFINITY;
    }
    hear(LOG, thresholdDb, 'first-of-two', HEARD);
  }
}

/** How the person sits and the cuff lies with the faults that are left. */
function circumstancesOf({ circumstances, inflatedSeconds }: Base, present: Present): Circumstances {
  return CIRCUMSTANCE_FAULTS.filter(
    ({ code, isAt }) => isAt(circumstances, inflatedSeconds) && !present.has(code),
  ).reduce((now, fault) => putRight(fault, now, inflatedSeconds), circumstances);
}

function instrumentOf({ person, instrument }: Base, present: Present): Instrument {
  return {
    ...instrument,
    ...(present.has('cuff-size') ? {} : { bladder: properInstrument(person, instrument).bladder }),
    ...(present.has('gauge-off') || !isGaugeOff(instrument) ? {} : { zeroOffsetMmHg: 0, scaleError: 0 }),
  };
}

/** The fall with the faults of hand and hose that are left. The same object where nothing of it is put right. */
function fallOf(base: Base, present: Present, side: Side): LetDownPlan {
  const isOwnRate = base.rate === 'right' || present.has('too-fast') || present.has('too-slow');
  const isOwnPeak = base.peakFault === null || present.has(base.peakFault);
  const isTight = base.leakMmHgPerSecond === 0 || present.has('hose-leaks');
  const own = isOwnRate && !isTight ? { ...base, plan: tight(base, side) } : base;
  return isOwnRate && isOwnPeak ? own.plan : righted(own, isOwnRate, isOwnPeak, side);
}

/**
 * The same movements of the valve with a hose that holds: each piece of the fall slower by what leaked, and the place where the number is
 * read passed at the very second at which it was. Where the valve let out little or nothing the cuff would have all but stood still, of
 * which a plan knows nothing: no piece is made slower than by half.
 */
function tight({ plan, leakMmHgPerSecond, sounding }: Base, side: Side): Base['plan'] {
  const fall = plan.fall.map(({ mmHgPerSecond, toMmHg }) => ({
    mmHgPerSecond: Math.max(mmHgPerSecond - leakMmHgPerSecond, mmHgPerSecond / 2),
    toMmHg,
  }));
  const slower = { ...plan, fall };
  const placeMmHg = Math.min(plan.peakMmHg, sounding[side]);
  const later = passesAt(plan, placeMmHg) - passesAt(slower, placeMmHg);
  return { ...slower, startSeconds: plan.startSeconds + later };
}

/** The fall as the book has it. */
function bestFall(base: Base, side: Side): LetDownPlan {
  return fallOf(base, NO_FAULT, side);
}

/**
 * A part of the fall that the textbook does better is replaced by what it does, so that the cuff passes the place where the
 * number is read at the very second at which it did: then the same beats are met, and no other heartbeat is taken for a fault.
 */
function righted(
  { plan, bestPeakMmHg, bestRate, sounding }: Base,
  isOwnRate: boolean,
  isOwnPeak: boolean,
  side: Side,
): LetDownPlan {
  const peakMmHg = isOwnPeak ? plan.peakMmHg : bestPeakMmHg;
  const before = (peakMmHg - plan.peakMmHg) / bestRate;
  if (isOwnRate)
    return {
      ...plan,
      peakMmHg,
      startSeconds: plan.startSeconds - before,
      fall: [{ mmHgPerSecond: bestRate, toMmHg: plan.peakMmHg }, ...plan.fall],
    };
  const placeMmHg = Math.min(plan.peakMmHg, sounding[side]);
  return {
    ...plan,
    peakMmHg,
    startSeconds: passesAt(plan, placeMmHg) - (peakMmHg - placeMmHg) / bestRate,
    fall: bestRate,
  };
}

/** When a fall passes a pressure, seconds of the visit. */
function passesAt({ startSeconds, peakMmHg, fall }: Base['plan'], mmHg: number): number {
  let at = startSeconds;
  let top = peakMmHg;
  for (const { mmHgPerSecond, toMmHg } of fall) {
    if (mmHg >= toMmHg) return at + (top - mmHg) / mmHgPerSecond;
    at += (top - toMmHg) / mmHgPerSecond;
    top = toMmHg;
  }
  return at;
}

/** What is written of the last fall: the sound taken, when the eye is on the needle, what the pen makes of it. */
function writtenOf(
  side: Side,
  base: Base,
  pen: Present,
  instrument: Instrument,
  plan: LetDownPlan,
  thresholdDb: number,
): number {
  const habit = base.habits[side];
  const from = base.isByFeel
    ? feltAt(side)
    : soundAt(side, base.isByMuffled, pen.has('misheard') ? habit.skipped : 0, thresholdDb);
  if (Number.isNaN(from)) return from;
  const delay = pen.has('read-late')
    ? habit.delaySeconds
    : Math.min(habit.delaySeconds, F.reactionSeconds.value);
  const needle = gaugeFor(instrument, cuffOf(plan, from + delay - gaugeLagSeconds(instrument)));
  if (habit.away !== null && pen.has(habit.away)) return needle + habit.awayMmHg;
  const isOwn = habit.pen !== null && pen.has(habit.pen);
  return isOwn ? needle + habit.offMmHg : gaugeRead(needle, base.gauge.stepMmHg, base.gauge.reading);
}

function feltAt(side: Side): number {
  return side === 'systolic' ? RESULT.pulseSeconds : Number.NaN;
}

/** When the right sound came, or the one so many heard sounds after it; NaN where nothing was heard. */
function soundAt(side: Side, isByMuffled: boolean, skipped: number, thresholdDb: number): number {
  let at = side === 'systolic' ? HEARD.first : isByMuffled ? HEARD.muffled : HEARD.last;
  if (at < 0) return Number.NaN;
  const step = Math.sign(skipped);
  for (let left = Math.abs(skipped); left > 0; left--) {
    let next = at + step;
    while (next >= 0 && next < LOG.count && (LOG.levelDb[next] as number) < thresholdDb) next += step;
    if (next < 0 || next >= LOG.count) break;
    at = next;
  }
  return LOG.atSeconds[at] as number;
}
