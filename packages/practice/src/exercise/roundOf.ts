import {
  averageReadings,
  type Flag,
  type LeftOutReason,
  pregnancyLimits,
  type ReadingsAverage,
  readingsToAverage,
  severeLimits,
} from '@evenfall/clinical';
import type { Circumstances } from '@evenfall/physiology';
import { IRREGULAR_RHYTHMS } from '../counting/rhythmOf.js';
import { asOfEach } from './asOfEach.js';
import type { Judged } from './debrief.js';
import type { Exercise } from './exercise.js';
import { circumstancesAt } from './replay.js';
import { type ResultRow, resultRows } from './resultRows.js';
import type { DebriefRules } from './rules.js';

/** One reading among several: where it was taken, and what the protocol does with it. */
export type ReadingOfRound = {
  /** From 1, in the order in which they were made. */
  readonly number: number;
  readonly arm: Circumstances['arm'];
  readonly posture: Circumstances['posture'];
  readonly rows: readonly ResultRow[];
  readonly isAveraged: boolean;
  /** Why it is not averaged; null: it is, or the rule of the protocol takes others of its place. */
  readonly leftOut: LeftOutReason | 'no-diastolic' | null;
};

/** The average of a round beside that of what was to be had and of what was true, of the same readings, mmHg. */
export type RoundAverage = {
  readonly of: ResultRow['of'];
  readonly written: number;
  /** Null: of one of them nothing was to be had, or nothing heard or felt as it was let down. */
  readonly had: number | null;
  readonly truth: number;
  /** Null: it is not judged, since of one of them `had` is null. */
  readonly isAccepted: boolean | null;
};

/** Several readings of one visit as the round that they are. */
export type RoundOfReadings = {
  readonly readings: readonly ReadingOfRound[];
  /** Both numbers; empty where the protocol makes no average of these. */
  readonly average: readonly RoundAverage[];
  readonly withinMmHg: number;
  /** What the protocol still asked for, and why there is no average. */
  readonly needs: ReadingsAverage['needs'];
  readonly why: ReadingsAverage['why'];
  readonly flags: readonly Flag<string>[];
};

/**
 * What the protocol makes of the readings of an exercise: which it averages, and how far that average lies from the average of
 * what was to be had at the same moments. Null: there were not several.
 *
 * @param judged each of its readings, as of `judgeEach`
 * Source: docs/conventions.md section 6; bedside handbook 3.10 to 3.14.
 */
export function roundOf(
  exercise: Exercise,
  judged: readonly Judged[],
  { roundRules }: DebriefRules,
): RoundOfReadings | null {
  const all = asOfEach(exercise);
  if (all.length < 2 || exercise.evidence.run === null) return null;
  const taken = all.map((one, k) => {
    const startSeconds = one.evidence.run?.startSeconds ?? 0;
    const { arm, posture } = circumstancesAt(exercise, startSeconds, null);
    return { number: k + 1, arm, posture, rows: resultRows(judged[k] as Judged), startSeconds };
  });
  const placed = taken.flatMap(({ number, arm, posture, rows, startSeconds }) => {
    const [systolic, diastolic] = rows.map(({ written }) => written);
    if (systolic == null) return [];
    return [
      {
        id: String(number),
        site: 'upper-arm' as const,
        side: arm,
        posture: posture === 'standing' ? ('stand' as const) : ('sit' as const),
        systolic,
        diastolic: diastolic ?? null,
        atSeconds: startSeconds,
      },
    ];
  });
  const { readings, leftOut } = readingsToAverage(placed, null);
  const { scenario } = exercise;
  const { actNow } = roundRules;
  const known = {
    irregular: IRREGULAR_RHYTHMS.has(scenario.rhythm.kind),
    raisedFrom: null,
    severe: scenario.traits.isPregnant ? pregnancyLimits(actNow) : severeLimits(actNow),
  };
  const made = averageReadings(readings, known, roundRules.readings);
  const used = made.used.map((at) => Number(readings[at - 1]?.id));
  const withinMmHg = judged[0]?.accepted.withinMmHg ?? Number.NaN;
  const rowsOf = (k: 0 | 1) =>
    taken.filter(({ number }) => used.includes(number)).flatMap(({ rows }) => rows[k] ?? []);
  const averageOf = (k: 0 | 1, written: number): RoundAverage => {
    const rows = rowsOf(k);
    const had = rows.map((row) => (row.isFromNothing ? null : row.had)).filter((one) => one !== null);
    const best = had.length === rows.length ? meanOf(had) : null;
    return {
      of: k === 0 ? 'systolic' : 'diastolic',
      written,
      had: best,
      truth: meanOf(rows.map(({ truth }) => truth)),
      isAccepted: best === null ? null : Math.abs(written - best) <= withinMmHg,
    };
  };
  const { systolic, diastolic } = made;
  const whyLeftOut = (number: number): ReadingOfRound['leftOut'] => {
    const reason = leftOut.find(({ id }) => id === String(number))?.reason;
    if (reason !== undefined) return reason;
    return placed.some(({ id, diastolic: low }) => id === String(number) && low === null)
      ? 'no-diastolic'
      : null;
  };
  return {
    readings: taken.map(({ startSeconds: _, ...one }) => ({
      ...one,
      isAveraged: used.includes(one.number),
      leftOut: whyLeftOut(one.number),
    })),
    average: systolic === null || diastolic === null ? [] : [averageOf(0, systolic), averageOf(1, diastolic)],
    withinMmHg,
    needs: made.needs,
    why: made.why,
    flags: made.flags,
  };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0) / values.length;
}
