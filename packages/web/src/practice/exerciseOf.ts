import type { Run } from '@evenfall/clinical';
import { MODEL } from '@evenfall/physiology';
import {
  ACTION_LIMITS,
  type Counted,
  type CountNoticed,
  type EarlierReading,
  type Entered,
  EXERCISE_SCHEMA,
} from '@evenfall/practice';
import type { ExerciseContent, InForce } from '@evenfall/record';
import { chartedRate } from '../round/chartedRate.js';
import { isVoidValue, type SignDraft } from '../round/draft.js';
import type { PracticeDraft } from './keptPractice.js';
import { withValuesFrom } from './valuesFrom.js';

/** The schema number of the entry of an exercise. */
export const EXERCISE_ENTRY_SCHEMA = 4;

/** What is kept of an exercise that is over: what was done and written, and nothing that can be worked out from it. */
export function exerciseOf(given: PracticeDraft, inForce: InForce): ExerciseContent {
  const draft = withValuesFrom(given);
  const { visit, round, valuesFrom = {} } = draft;
  const { tick, ...played } = visit;
  const readings = readingsIn(draft);
  const last = readings.at(-1) ?? null;
  const apex = draft.apex === undefined ? null : countedIn(draft.apex, valuesFrom);
  const taps = tapsIn(draft);
  return {
    schema: EXERCISE_SCHEMA,
    model: MODEL,
    ...played,
    seconds: Math.min(LONGEST_SECONDS, Math.max(SHORTEST_SECONDS, tick / TICKS_A_SECOND)),
    earlier: readings.slice(0, -1),
    evidence: {
      run: last === null ? null : { startSeconds: last.startSeconds, run: last.run },
      pulse: countedIn(round.pulse, valuesFrom),
      breaths: countedIn(round.breaths, valuesFrom),
      ...(apex === null ? {} : { apex }),
      ...(Object.keys(taps).length === 0 ? {} : { taps }),
      saysActNow: draft.saysActNow,
      wasShown: draft.wasShown,
      thresholdDb: draft.thresholdDb,
    },
    entered: {
      ...(last?.entered ?? NO_PRESSURE),
      ...ratesOf(draft, inForce),
      ...(draft.temperatureC === undefined ? {} : { temperatureC: draft.temperatureC }),
    },
    aids: draft.aids,
    judgedBy: { presetVersion: inForce.presetVersion },
  };
}

const NO_PRESSURE = { systolic: null, muffled: null, diastolic: null } as const;

/** Every reading that was made, in order, each with the highest point of the cuff before it, seconds of the visit. */
function readingsIn({ round, runsFrom, runFrom, peakSeconds }: PracticeDraft): readonly EarlierReading[] {
  const { values } = round.pressure;
  return values.map(({ entry, run }, k) => {
    const ofLast = k === values.length - 1 ? (runFrom ?? peakSeconds) : null;
    return { startSeconds: runsFrom?.[entry] ?? ofLast ?? 0, run, entered: pressureOf(run) };
  });
}

/** The last reading belongs to the inflation that it was written of, however often the cuff goes up afterwards. */
export function withReadingKept(draft: PracticeDraft): PracticeDraft {
  const runFrom = draft.writtenFrom ?? null;
  const entry = draft.round.pressure.values.at(-1)?.entry;
  const runsFrom = entry === undefined ? draft.runsFrom : { ...draft.runsFrom, [entry]: runFrom };
  return { ...draft, runFrom, ...(runsFrom === undefined ? {} : { runsFrom }) };
}

const TICKS_A_SECOND = 200;
/** A visit that is left at once is kept as one of a second; at the longest that can be kept, the room ends it. */
export const [SHORTEST_SECONDS, LONGEST_SECONDS] = ACTION_LIMITS.seconds;

function pressureOf(run: Run): Pick<Entered, 'systolic' | 'muffled' | 'diastolic'> {
  const at = (...what: Run['moments'][number]['what'][]) =>
    run.moments.find((one) => what.includes(one.what))?.mmHg ?? null;
  return {
    systolic: at('first sound', 'pulse back'),
    muffled: at('muffled'),
    diastolic: run.moments.findLast(({ what }) => what === 'last sound')?.mmHg ?? null,
  };
}

function ratesOf({ round, apex }: PracticeDraft, inForce: InForce) {
  const rate = (sign: SignDraft) => {
    const last = sign.values.findLast((value) => !isVoidValue(value));
    return last === undefined ? null : chartedRate(last, inForce);
  };
  const apexPerMinute = apex === undefined ? null : rate(apex);
  return {
    pulsePerMinute: rate(round.pulse),
    breathsPerMinute: rate(round.breaths),
    ...(apexPerMinute === null ? {} : { apexPerMinute }),
  };
}

/** Taps that were made last of a sign, with when the first of them was. */
function tapsIn({
  round,
  apex,
  valuesFrom = {},
}: PracticeDraft): NonNullable<ExerciseContent['evidence']['taps']> {
  const signs = [
    ['pulse', round.pulse],
    ['apex', apex],
    ['breaths', round.breaths],
  ] as const;
  return Object.fromEntries(
    signs.flatMap(([of, sign]) => {
      const last = sign?.values.findLast((value) => !isVoidValue(value));
      if (last?.kind !== 'taps') return [];
      const startSeconds = valuesFrom[last.entry];
      if (startSeconds === undefined) return [];
      return [[of, { startSeconds, seconds: last.taps.seconds, ...saidIn(last.noticed) }]];
    }),
  );
}

/** What was noticed, where anything was. */
function saidIn(noticed: CountNoticed): { readonly noticed?: CountNoticed } {
  return Object.values(noticed).some((one) => one !== null) ? { noticed } : {};
}

/** The last count that was not broken off, with when it began and what was noticed with it; null for none. */
function countedIn(
  { values }: SignDraft,
  valuesFrom: NonNullable<PracticeDraft['valuesFrom']>,
): Counted | null {
  const last = values.findLast((value) => !isVoidValue(value));
  if (last?.kind !== 'count' || 'interrupted' in last.count) return null;
  const startSeconds = valuesFrom[last.entry];
  if (startSeconds === undefined) return null;
  const { count, noticed } = last;
  return { startSeconds, count, ...saidIn(noticed) };
}
