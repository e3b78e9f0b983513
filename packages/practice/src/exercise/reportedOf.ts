import {
  COUNT_FIGURES,
  DEFLATION_FIGURES,
  EQUIPMENT_FIGURES,
  minutesUpright,
  SCORE_FIGURES,
  wholeMinutes,
} from '@evenfall/clinical';
import {
  backgroundThresholdDb,
  type Circumstances,
  type Gap,
  isLoudInAnyRoom,
  noiseOf,
  type ReportCode,
  reportOf,
} from '@evenfall/physiology';
import { isGaugeOff, isWrongSize } from '../fault/faults.js';
import { asOfEach } from './asOfEach.js';
import type { Judged } from './debrief.js';
import type { Exercise } from './exercise.js';
import type { FallOf } from './fall.js';
import { EXERCISE_FIGURES as F } from './figures.js';
import { circumstancesAt, instrumentAt } from './replay.js';

/** Whether something that a good observer reports of a person was reported. `not-here`: an exercise has no place to say it. */
export type Reported = { readonly code: ReportCode; readonly is: 'reported' | 'not-reported' | 'not-here' };

/** A reading of which a systolic was written: the exercise as of it, where it was taken, and its letting down; null: none was found. */
type Reading = {
  readonly one: Exercise;
  readonly place: Circumstances;
  readonly fall: FallOf | null;
  /** Where the sounds of it fell silent, mmHg in the cuff; null: nowhere. */
  readonly gap: Gap | null;
};

/**
 * What a good observer reports of this person, each beside whether this one did. Whether a number is right is judged elsewhere.
 *
 * @param judged each of its readings, as of `judgeEach`
 */
export function reportedOf(
  exercise: Exercise,
  judged: readonly Pick<Judged, 'fall' | 'gap' | 'fromNothing'>[],
): readonly Reported[] {
  const readings = asOfEach(exercise).flatMap((one, k): Reading[] => {
    // A number that nobody could have read reports nothing.
    if (one.entered.systolic === null || judged[k]?.fromNothing === 'unmeasured') return [];
    const place = circumstancesAt(exercise, one.evidence.run?.startSeconds ?? 0, null);
    return [{ one, place, fall: judged[k]?.fall ?? null, gap: judged[k]?.gap ?? null }];
  });
  return reportOf(exercise.scenario).map((code) => {
    const has = said(code, exercise, readings);
    return { code, is: has === null ? 'not-here' : has ? 'reported' : 'not-reported' };
  });
}

/** Null: there is no place for it. */
function said(code: ReportCode, exercise: Exercise, readings: readonly Reading[]): boolean | null {
  const { evidence, entered } = exercise;
  const { pulse, breaths, apex = null, taps = {} } = evidence;
  const anyReading = (is: (one: Exercise) => boolean) => readings.some(({ one }) => is(one));
  const isFull = (windowSeconds = 0) => windowSeconds >= COUNT_FIGURES.fullWindowSeconds.value;
  switch (code) {
    case 'both-numbers':
      return anyReading(isOfBoth);
    case 'second-reading':
      return readings.some((reading, k) => isRested(reading, readings.slice(0, k)));
    case 'three-readings':
      return readings.length >= 3;
    case 'palpated-systolic':
      return isFeltFirst(readings);
    case 'muffled':
      return anyReading(isOfThree);
    case 'sounds-to-zero':
      return anyReading(
        (one) => isOfThree(one) && (one.entered.diastolic ?? 0) < DEFLATION_FIGURES.toZeroMmHg.value,
      );
    case 'by-feel':
      return anyReading(
        (one) => one.evidence.run?.run.method === 'palpation' && one.entered.diastolic === null,
      );
    case 'other-arm':
      return isOnBothArms(readings);
    case 'standing-readings':
      return isOnTheFeet(readings);
    case 'cuff-by-arm':
      return anyReading(
        (one) =>
          !isWrongSize(
            exercise.scenario.armCm,
            instrumentAt(exercise, one.evidence.run?.startSeconds ?? exercise.seconds),
          ),
      );
    case 'pulse-rate':
      return entered.pulsePerMinute !== null;
    case 'pulse-full-minute':
      return [pulse, apex].some((one) => isFull(one?.count.windowSeconds));
    case 'pulse-irregular':
      return [pulse, apex, taps.pulse, taps.apex].some((one) => one?.noticed?.rhythmFelt === 'irregular');
    case 'pulse-weak':
      return (pulse ?? taps.pulse)?.noticed?.strength === 'weak';
    case 'pulse-strong':
      return (pulse ?? taps.pulse)?.noticed?.strength === 'strong';
    case 'apex-rate':
      return (
        (entered.apexPerMinute ?? null) !== null &&
        entered.pulsePerMinute !== null &&
        (apex ?? taps.apex) !== undefined &&
        (pulse ?? taps.pulse) !== undefined
      );
    case 'breaths-rate':
      return entered.breathsPerMinute !== null;
    case 'breaths-full-minute':
      return isFull(breaths?.count.windowSeconds);
    case 'breaths-irregular':
      return (breaths ?? taps.breaths)?.noticed?.rhythmFelt === 'irregular';
    case 'temperature':
      return (entered.temperatureC ?? null) !== null;
    case 'gauge-off':
      return isFaultyTaken(exercise);
    case 'noise-of-place':
      // Where no room is quiet enough, it is told by the systolic that was taken by feel.
      if (isLoudInAnyRoom(exercise.scenario))
        return anyReading((one) => one.evidence.run?.run.method === 'palpation');
      return [exercise.circumstances, ...readings.map(({ place }) => place)].some(
        (place) => place.isQuieter && isHeardWellIn(exercise, place),
      );
    case 'act-now':
      return evidence.saysActNow === true;
    case 'gap':
      return isGapSeen(readings);
    case 'paradox-both-numbers':
    case 'strong-weak-by-turns':
    case 'home-readings':
    case 'breaths-depth':
    case 'breaths-pattern':
      return null;
  }
}

/** Whether the place no longer hides a soft sound: asked for or not, a place still loud did not become quiet. */
function isHeardWellIn({ scenario }: Exercise, place: Circumstances): boolean {
  return backgroundThresholdDb(noiseOf(scenario, place)) === 0;
}

/** Whether both are marks of the gauge is judged where each is looked at. */
function isOfBoth({ entered: { systolic, diastolic } }: Exercise): boolean {
  return systolic !== null && diastolic !== null;
}

/** The first number is there, or it were no reading. */
function isOfThree({ entered: { muffled, diastolic } }: Exercise): boolean {
  return muffled !== null && diastolic !== null;
}

/** Whether the arm had rested since the last reading before that was taken as this one is: on that arm, in that posture. */
function isRested({ place, fall }: Reading, before: readonly Reading[]): boolean {
  const last = before.findLast((one) => one.place.arm === place.arm && one.place.posture === place.posture);
  if (last === undefined || last.fall === null || fall === null) return false;
  const rest = fall.inflatedSeconds - last.fall.endSeconds;
  return rest + F.restRoomSeconds.value >= DEFLATION_FIGURES.waitAfterReadingSeconds.value;
}

/** Whether the pulse was felt for before a reading by ear: within it, or as a reading by feel before it. */
function isFeltFirst(readings: readonly Reading[]): boolean {
  const methods = readings.map(({ one }) => one.evidence.run?.run.method);
  const isEstimated = ({ one: { evidence } }: Reading) => {
    const palpated = evidence.run?.run.palpated;
    return (palpated?.lostMmHg ?? palpated?.backMmHg ?? null) !== null;
  };
  return readings.some(
    (reading, k) =>
      methods[k] === 'auscultation' && (isEstimated(reading) || methods.slice(0, k).includes('palpation')),
  );
}

/** Whether a sound above the silent gap was written as the first: that is how a gap shows in numbers. Null: there is none. */
function isGapSeen(readings: readonly Reading[]): boolean | null {
  if (readings.length > 0 && readings.every(({ gap }) => gap === null)) return null;
  return readings.some(
    ({ one: { evidence, entered }, gap }) =>
      gap !== null &&
      evidence.run?.run.method === 'auscultation' &&
      (entered.systolic ?? 0) > (gap.topMmHg + gap.bottomMmHg) / 2,
  );
}

/** Whether both numbers of both arms stand written, of one posture: which arm is the higher can then be seen. */
function isOnBothArms(readings: readonly Reading[]): boolean {
  const whole = readings.filter(({ one }) => one.entered.diastolic !== null).map(({ place }) => place);
  return whole.some(({ arm, posture }) =>
    whole.some((other) => other.posture === posture && other.arm !== arm),
  );
}

/** Whether the cuff went up about one and about three minutes after standing up, and once before. */
function isOnTheFeet(readings: readonly Reading[]): boolean {
  const first = readings.findIndex(({ place }) => place.posture === 'standing');
  const at = readings.flatMap(({ place, fall }) => {
    if (place.posture !== 'standing' || fall === null) return [];
    const minutes = minutesUpright(60 * place.standingMinutes + fall.inflatedSeconds);
    return minutes === null ? [] : [wholeMinutes(minutes)];
  });
  const { standingFirstMinutes, standingWithinMinutes } = SCORE_FIGURES;
  return first > 0 && [standingFirstMinutes, standingWithinMinutes].every(({ value }) => at.includes(value));
}

/** Whether another gauge was taken in place of one that does not rest at zero, shows too much or too little, or leaks. */
function isFaultyTaken({ instrument, actions }: Exercise): boolean {
  const taken = actions.findIndex(({ kind }) => kind === 'gauge');
  if (taken < 0) return false;
  const before = instrumentAt({ instrument, actions: actions.slice(0, taken) }, Infinity);
  return isGaugeOff(before) || before.leakMmHgPerMinute > EQUIPMENT_FIGURES.mostLeakMmHgPerMinute.value;
}
