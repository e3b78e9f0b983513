import {
  backgroundThresholdDb,
  type Circumstances,
  cuffOf,
  gaugeFor,
  gaugeLagSeconds,
  type Instrument,
  type LetDownPlan,
  letDown,
  newLetDownResult,
  noiseOf,
  type Person,
  SoundLog,
} from '@evenfall/physiology';
import { observerNormal, observerUniform } from '../observer/chance.js';
import type { Reader } from '../observer/observer.js';
import { hear, newHeard } from './heard.js';
import { written } from './written.js';

/** One number of a reading on its way from the person to the paper: mmHg in the cuff or on the gauge, seconds of the visit. */
export type Taken = {
  /** The beat whose sound was taken. */
  beat: number;
  soundSeconds: number;
  /** In the cuff at that sound, then when the eye was on the needle; what the gauge showed; what was written. */
  soundMmHg: number;
  markSeconds: number;
  markMmHg: number;
  needleMmHg: number;
  writtenMmHg: number;
};

/** A reading by ear; NaN and -1 throughout a number that was not heard. Used again and again. */
export type Auscultated = {
  readonly first: Taken;
  readonly muffled: Taken;
  readonly last: Taken;
  /** Sounds that this ear heard, and beats while the cuff fell. */
  sounds: number;
  beats: number;
  /** The first pulse felt at the wrist: pressure in the cuff, and the gauge. */
  pulseMmHg: number;
  pulseNeedleMmHg: number;
};

export function newAuscultated(): Auscultated {
  return {
    first: newTaken(),
    muffled: newTaken(),
    last: newTaken(),
    sounds: 0,
    beats: 0,
    pulseMmHg: Number.NaN,
    pulseNeedleMmHg: Number.NaN,
  };
}

// Used again by every call, so that a batch makes no objects.
const LOG = new SoundLog();
const RESULT = newLetDownResult();
const HEARD = newHeard();

/** The readings written before this one on the same arm, mmHg; null: the first. */
export type Earlier = { readonly systolic: number; readonly diastolic: number } | null;

/**
 * One letting down, heard and written by a reader. `key` and `reading` name its chance (see `observerKey`).
 * Without friction and swing of the needle; those belong to a run by ticks.
 */
export function auscultate(
  person: Person,
  circumstances: Circumstances,
  instrument: Instrument,
  plan: LetDownPlan,
  reader: Reader,
  key: number,
  reading: number,
  earlier: Earlier = null,
  out: Auscultated = newAuscultated(),
): Auscultated {
  const thresholdDb = reader.thresholdDb + backgroundThresholdDb(noiseOf(person.scenario, circumstances));
  LOG.earDb = thresholdDb;
  letDown(person, circumstances, instrument, plan, RESULT, LOG);
  hear(LOG, thresholdDb, reader.firstSound, HEARD);
  out.sounds = HEARD.sounds;
  out.beats = RESULT.beats;
  out.pulseMmHg = RESULT.pulseCuffMmHg;
  out.pulseNeedleMmHg = RESULT.pulseGaugeMmHg;
  const delay = (lane: 'reactionFirst' | 'reactionLast' | 'reactionMuffled') =>
    reader.reactionSdSeconds === 0
      ? reader.reactionSeconds
      : Math.max(0, reader.reactionSeconds + reader.reactionSdSeconds * observerNormal(key, reading, lane));
  const chance = (lane: 'tenFirst' | 'tenLast' | 'tenMuffled') =>
    reader.tenShare === 0 ? 1 : observerUniform(key, reading, lane);
  const systolic = earlier?.systolic ?? null;
  const diastolic = earlier?.diastolic ?? null;
  take(
    out.first,
    HEARD.first,
    plan,
    instrument,
    delay('reactionFirst'),
    reader,
    chance('tenFirst'),
    systolic,
  );
  take(out.last, HEARD.last, plan, instrument, delay('reactionLast'), reader, chance('tenLast'), diastolic);
  if (HEARD.muffled < 0) clear(out.muffled);
  else
    take(
      out.muffled,
      HEARD.muffled,
      plan,
      instrument,
      delay('reactionMuffled'),
      reader,
      chance('tenMuffled'),
      null,
    );
  return out;
}

function take(
  out: Taken,
  sound: number,
  plan: LetDownPlan,
  instrument: Instrument,
  delaySeconds: number,
  reader: Reader,
  chance: number,
  earlier: number | null,
): void {
  if (sound < 0) {
    clear(out);
    return;
  }
  out.beat = LOG.beat[sound] as number;
  out.soundSeconds = LOG.atSeconds[sound] as number;
  out.soundMmHg = LOG.cuffMmHg[sound] as number;
  out.markSeconds = out.soundSeconds + delaySeconds;
  out.markMmHg = delaySeconds === 0 ? out.soundMmHg : pressureAt(plan, out.markSeconds);
  out.needleMmHg = gaugeFor(instrument, pressureAt(plan, out.markSeconds - gaugeLagSeconds(instrument)));
  out.writtenMmHg = written(out.needleMmHg, reader, chance, earlier);
}

function pressureAt(plan: LetDownPlan, seconds: number): number {
  if (typeof plan.fall !== 'number') return cuffOf(plan, seconds);
  if (seconds <= plan.startSeconds) return plan.peakMmHg;
  return Math.max(0, plan.peakMmHg - plan.fall * (seconds - plan.startSeconds));
}

function newTaken(): Taken {
  const none = Number.NaN;
  return {
    beat: -1,
    soundSeconds: none,
    soundMmHg: none,
    markSeconds: none,
    markMmHg: none,
    needleMmHg: none,
    writtenMmHg: none,
  };
}

function clear(out: Taken): void {
  out.beat = -1;
  out.soundSeconds = Number.NaN;
  out.soundMmHg = Number.NaN;
  out.markSeconds = Number.NaN;
  out.markMmHg = Number.NaN;
  out.needleMmHg = Number.NaN;
  out.writtenMmHg = Number.NaN;
}
