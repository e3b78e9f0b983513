import type { Circumstances } from '../circumstances/circumstances.js';
import { gaugeFor, gaugeLagSeconds } from '../cuff/gauge.js';
import type { Instrument } from '../cuff/instrument.js';
import { BeatStream } from '../heart/beatStream.js';
import type { Person } from '../person/person.js';
import { FLAT_MMHG } from '../rig/rig.js';
import { Arm, SILENT } from '../sound/arm.js';
import { SOUND_FIGURES } from '../sound/figures.js';
import { Fall } from './fall.js';
import type { LetDownResult } from './letDownResult.js';
import { Meeting } from './meeting.js';
import type { LetDownPlan } from './plan.js';
import type { SoundLog } from './soundLog.js';

// Used again by every call, so that a batch makes no objects. A call begins by starting each afresh.
const STREAM = new BeatStream();
const ARM = new Arm();
const FALL = new Fall();
const MEETING = new Meeting();

/** How long before the start of the fall a first inflation of the visit began, seconds. */
export const INFLATION_SECONDS = 8;
const WRIST_AFTER_SECONDS = SOUND_FIGURES.wristAfterSeconds.value;
const CONGESTED_AFTER_SECONDS = SOUND_FIGURES.congestedAfterSeconds.value;

/** An empty result to be filled again and again. */
export function newLetDownResult(): LetDownResult {
  return {
    firstSeconds: Number.NaN,
    firstCuffMmHg: Number.NaN,
    firstGaugeMmHg: Number.NaN,
    firstBeat: -1,
    firstOfTwoSeconds: Number.NaN,
    firstOfTwoGaugeMmHg: Number.NaN,
    muffledSeconds: Number.NaN,
    muffledGaugeMmHg: Number.NaN,
    lastSeconds: Number.NaN,
    lastCuffMmHg: Number.NaN,
    lastGaugeMmHg: Number.NaN,
    lastBeat: -1,
    pulseSeconds: Number.NaN,
    pulseCuffMmHg: Number.NaN,
    pulseGaugeMmHg: Number.NaN,
    sounds: 0,
    beats: 0,
  };
}

/**
 * The batch face: one letting down, beat by beat and exact, without ticks. Equal to the sample face for the same fall.
 * Steps through every beat from the person's origin on: start plans near it (`movedTo`) where many are run, or give the
 * beats `from` an instant shortly before (`Rig.beatsNow`): those of a visit that was, of which circumstances change the
 * levels alone. Where the log is kept for one ear its threshold goes before that of the plan.
 */
export function letDown(
  person: Person,
  circumstances: Circumstances,
  instrument: Instrument,
  plan: LetDownPlan,
  out: LetDownResult = newLetDownResult(),
  log: SoundLog | null = null,
  from: BeatStream | null = null,
): LetDownResult {
  clear(out);
  if (log !== null) log.count = 0;
  FALL.restart(plan);
  if (from === null) STREAM.restart(person, circumstances, plan.startSeconds - INFLATION_SECONDS);
  else {
    STREAM.copyFrom(from);
    STREAM.levels.change(circumstances);
    STREAM.levels.inflateAt(circumstances.firstInflationSeconds ?? plan.startSeconds - INFLATION_SECONDS);
  }
  ARM.restart(person, circumstances, instrument, plan.run);
  while (STREAM.foot < plan.startSeconds) STREAM.begin();
  let openSince = Number.NaN;
  let heardBefore = -2;
  let heardAt = 0;
  const earDb = log === null ? null : log.earDb;
  const thresholdDb = earDb ?? plan.thresholdDb;
  let isLastSure = false;
  for (; STREAM.foot < FALL.endSeconds; STREAM.begin()) {
    out.beats += 1;
    // Nothing is left to be felt, and no sound comes from an artery that is open all the while.
    if (!(Number.isNaN(out.pulseSeconds) || ARM.mayGoOn) && MEETING.isOpenAll(STREAM, ARM, FALL)) {
      if (MEETING.cuffMmHg <= FLAT_MMHG || MEETING.outside < lowestSounding()) break;
      continue;
    }
    // Between the first two sounds and the last an ear asks no more than whether there was one.
    if (
      earDb !== null &&
      log !== null &&
      !(Number.isNaN(out.firstOfTwoSeconds) || Number.isNaN(out.pulseSeconds) || Number.isNaN(openSince)) &&
      MEETING.isSurelyHeard(STREAM, ARM, FALL, earDb) &&
      MEETING.atSeconds - openSince < CONGESTED_AFTER_SECONDS
    ) {
      log.addSure(STREAM.index);
      out.sounds += 1;
      out.muffledSeconds = Number.NaN;
      isLastSure = true;
      continue;
    }
    if (MEETING.isShut(STREAM, ARM, FALL)) {
      openSince = Number.NaN;
      continue;
    }
    MEETING.find(STREAM, ARM, FALL);
    const cuff = MEETING.cuffMmHg;
    if (cuff <= FLAT_MMHG) break;
    const at = MEETING.atSeconds;
    const outside = MEETING.outside;
    if (Number.isNaN(out.pulseSeconds) && ARM.isFelt(STREAM, outside)) {
      out.pulseSeconds = at + WRIST_AFTER_SECONDS;
      out.pulseCuffMmHg = FALL.cuffAt(out.pulseSeconds);
    }
    const level = ARM.levelDb(STREAM, outside);
    if (level === SILENT) {
      if (outside < lowestSounding() && !ARM.mayGoOn) break;
      continue;
    }
    if (outside < STREAM.systolic && outside > STREAM.diastolic) {
      if (Number.isNaN(openSince)) openSince = at;
      else if (at - openSince > CONGESTED_AFTER_SECONDS) ARM.congest();
    }
    const phase = ARM.phaseOf(STREAM, outside);
    if (log !== null) log.add(at, cuff, level, phase, STREAM.index);
    if (level < thresholdDb) continue;
    isLastSure = false;
    out.sounds += 1;
    if (out.sounds === 1) {
      out.firstSeconds = at;
      out.firstCuffMmHg = cuff;
      out.firstBeat = STREAM.index;
    }
    if (Number.isNaN(out.firstOfTwoSeconds) && heardBefore === STREAM.index - 1) {
      out.firstOfTwoSeconds = heardAt;
    }
    if (phase !== 4) {
      out.muffledSeconds = Number.NaN;
    } else if (Number.isNaN(out.muffledSeconds)) {
      out.muffledSeconds = at;
    }
    out.lastSeconds = at;
    out.lastCuffMmHg = cuff;
    out.lastBeat = STREAM.index;
    heardBefore = STREAM.index;
    heardAt = at;
  }
  // The last sound is one that was not worked out after all.
  if (isLastSure && log !== null) {
    log.earDb = null;
    letDown(person, circumstances, instrument, { ...plan, thresholdDb }, out, log, from);
    log.earDb = earDb;
    return out;
  }
  out.firstGaugeMmHg = shown(instrument, out.firstSeconds);
  out.firstOfTwoGaugeMmHg = shown(instrument, out.firstOfTwoSeconds);
  out.muffledGaugeMmHg = shown(instrument, out.muffledSeconds);
  out.lastGaugeMmHg = shown(instrument, out.lastSeconds);
  out.pulseGaugeMmHg = shown(instrument, out.pulseSeconds);
  return out;
}

/** No beat sounds with less than this outside the artery, where sounds do not go on. */
function lowestSounding(): number {
  return STREAM.levels.diastolic - STREAM.lowestBelowMmHg + Math.min(0, ARM.heardDiastolic);
}

/** What the gauge shows at an instant of the fall, its lag included; friction and swing are left to the sample face. */
function shown(instrument: Instrument, seconds: number): number {
  if (Number.isNaN(seconds)) return Number.NaN;
  return gaugeFor(instrument, FALL.cuffAt(seconds) + FALL.rateAt(seconds) * gaugeLagSeconds(instrument));
}

function clear(out: LetDownResult): void {
  out.firstSeconds = Number.NaN;
  out.firstCuffMmHg = Number.NaN;
  out.firstGaugeMmHg = Number.NaN;
  out.firstBeat = -1;
  out.firstOfTwoSeconds = Number.NaN;
  out.firstOfTwoGaugeMmHg = Number.NaN;
  out.muffledSeconds = Number.NaN;
  out.muffledGaugeMmHg = Number.NaN;
  out.lastSeconds = Number.NaN;
  out.lastCuffMmHg = Number.NaN;
  out.lastGaugeMmHg = Number.NaN;
  out.lastBeat = -1;
  out.pulseSeconds = Number.NaN;
  out.pulseCuffMmHg = Number.NaN;
  out.pulseGaugeMmHg = Number.NaN;
  out.sounds = 0;
  out.beats = 0;
}
