import { type ReportCode, reportOf } from '@evenfall/physiology';
import { isWrongSize } from '../fault/faults.js';
import { asOfEach } from './asOfEach.js';
import type { Exercise } from './exercise.js';
import { circumstancesAt, instrumentAt } from './replay.js';

/** Whether something that a good observer reports of a person was reported. `not-here`: an exercise has no place to say it. */
export type Reported = { readonly code: ReportCode; readonly is: 'reported' | 'not-reported' | 'not-here' };

const FULL_MINUTE_SECONDS = 60;
/** Sounds that end below this are written as going on to zero. Source: docs/conventions.md section 6. */
const TO_ZERO_MMHG = 10;

/** What a good observer reports of this person, each beside whether this one did. Whether a number is right is judged elsewhere. */
export function reportedOf(exercise: Exercise): readonly Reported[] {
  return reportOf(exercise.scenario).map((code) => {
    const has = said(code, exercise);
    return { code, is: has === null ? 'not-here' : has ? 'reported' : 'not-reported' };
  });
}

/** Null: there is no place for it. */
function said(code: ReportCode, exercise: Exercise): boolean | null {
  const { evidence, entered } = exercise;
  const { pulse, breaths, apex = null, taps = {} } = evidence;
  const readings = asOfEach(exercise).filter((one) => one.entered.systolic !== null);
  const anyReading = (is: (one: Exercise) => boolean) => readings.some(is);
  const placed = () =>
    readings.map((one) => circumstancesAt(exercise, one.evidence.run?.startSeconds ?? 0, null));
  switch (code) {
    case 'both-numbers':
      return anyReading((one) => one.entered.diastolic !== null);
    case 'second-reading':
      return readings.length >= 2;
    case 'three-readings':
      return readings.length >= 3;
    case 'palpated-systolic':
      return anyReading(({ evidence: { run } }) => {
        const { lostMmHg, backMmHg } = run?.run.palpated ?? { lostMmHg: null, backMmHg: null };
        return lostMmHg !== null || backMmHg !== null || run?.run.method === 'palpation';
      });
    case 'muffled':
      return anyReading((one) => one.entered.muffled !== null);
    case 'sounds-to-zero':
      return anyReading(
        ({ entered: { muffled, diastolic } }) =>
          muffled !== null && diastolic !== null && diastolic < TO_ZERO_MMHG,
      );
    case 'by-feel':
      return anyReading((one) => one.evidence.run?.run.method === 'palpation');
    case 'other-arm':
      return new Set(placed().map(({ arm }) => arm)).size > 1;
    case 'standing-readings': {
      const upright = placed().filter(({ posture }) => posture === 'standing').length;
      return upright >= 2 && upright < readings.length;
    }
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
      return [pulse, apex].some((one) => (one?.count.windowSeconds ?? 0) >= FULL_MINUTE_SECONDS);
    case 'pulse-irregular':
      return [pulse, apex, taps.pulse, taps.apex].some((one) => one?.noticed?.rhythmFelt === 'irregular');
    case 'pulse-weak':
      return (pulse ?? taps.pulse)?.noticed?.strength === 'weak';
    case 'pulse-strong':
      return (pulse ?? taps.pulse)?.noticed?.strength === 'strong';
    case 'apex-rate':
      return (entered.apexPerMinute ?? null) !== null;
    case 'breaths-rate':
      return entered.breathsPerMinute !== null;
    case 'breaths-full-minute':
      return (breaths?.count.windowSeconds ?? 0) >= FULL_MINUTE_SECONDS;
    case 'breaths-irregular':
      return (breaths ?? taps.breaths)?.noticed?.rhythmFelt === 'irregular';
    case 'temperature':
      return (entered.temperatureC ?? null) !== null;
    case 'gauge-off':
      return exercise.actions.some(({ kind }) => kind === 'gauge');
    case 'noise-of-place':
      return exercise.circumstances.isQuieter || placed().some(({ isQuieter }) => isQuieter);
    case 'act-now':
      return evidence.saysActNow === true;
    case 'gap':
    case 'paradox-both-numbers':
    case 'strong-weak-by-turns':
    case 'home-readings':
    case 'breaths-depth':
    case 'breaths-pattern':
      return null;
  }
}
