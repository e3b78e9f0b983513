import type { ExerciseRow } from '@evenfall/api';
import { playsAlike } from '@evenfall/physiology';
import {
  type DebriefRules,
  type Exercise,
  judgeEach,
  type RateRow,
  rateRows,
  resultRows,
  roundOf,
} from '@evenfall/practice';
import { type ExerciseContent, NOTHING_CHOSEN } from '@evenfall/record';
import type { ErrorDrawn } from '@evenfall/report';
import { useEffect, useState } from 'react';
import { useApp } from '../app/context.js';
import { rulesAmong } from '../chart/useRulesOf.js';
import { loadRules } from '../server/load.js';
import { judgedUnder } from './judgedUnder.js';

/** The newest of them: each is played again to be judged. */
const MOST = 20;

export type Judged = {
  readonly row: ExerciseRow;
  readonly errors: {
    readonly systolic: number | null;
    readonly diastolic: number | null;
    readonly withinMmHg: number;
    readonly isAccepted: ErrorDrawn['isAccepted'];
    /** What was written: the average, else the last reading. */
    readonly written: { readonly systolic: number | null; readonly diastolic: number | null };
    readonly readings: number;
    /** Of so many of them it is the average; null: it is of the last one. */
    readonly averaged: number | null;
    /** Pulse and breaths, each off by so much. */
    readonly rates: readonly Pick<RateRow, 'of' | 'error' | 'isAccepted'>[];
  };
};

/** What an exercise was off by from what was to be had, played again: the average of its round, else its last reading. */
export function errorsOf(exercise: Exercise, rules: DebriefRules): Judged['errors'] | null {
  const all = judgeEach(exercise, rules);
  const judged = all.at(-1);
  if (judged === undefined) return null;
  const { withinMmHg } = judged.accepted;
  const round = roundOf(exercise, all, rules);
  const rates = rateRows(judged, exercise.scenario).map(({ of, error, isAccepted }) => ({
    of,
    error,
    isAccepted,
  }));
  const [first, second] = round?.average ?? [];
  if (
    round !== null &&
    first !== undefined &&
    second !== undefined &&
    first.had !== null &&
    second.had !== null
  )
    return {
      systolic: first.written - first.had,
      diastolic: second.written - second.had,
      withinMmHg,
      isAccepted: { systolic: first.isAccepted, diastolic: second.isAccepted },
      written: { systolic: first.written, diastolic: second.written },
      readings: all.length,
      averaged: round.readings.filter(({ isAveraged }) => isAveraged).length,
      rates,
    };
  const [systolic, diastolic] = resultRows(judged);
  return {
    systolic: systolic?.error ?? null,
    diastolic: diastolic?.error ?? null,
    withinMmHg,
    isAccepted: { systolic: judged.accepted.systolic, diastolic: judged.accepted.diastolic },
    written: { systolic: systolic?.written ?? null, diastolic: diastolic?.written ?? null },
    readings: all.length,
    averaged: null,
    rates,
  };
}

/** The errors of the newest exercises, oldest first; they come in one after the other. One that cannot be read is left out. */
export function useErrors(rows: readonly ExerciseRow[]): {
  readonly judged: readonly Judged[];
  /** All of them were looked at. */
  readonly isDone: boolean;
} {
  const app = useApp();
  const [judged, setJudged] = useState<readonly Judged[]>([]);
  const [isDone, setDone] = useState(false);
  useEffect(() => {
    let isOver = false;
    const { server, store } = app;
    /** Each by the protocol of its day; those of the place are asked for once, where it is not the one in force. */
    const rulesFor = async ({ judgedBy }: ExerciseContent) => {
      const version = judgedBy?.presetVersion ?? null;
      const isOther = version !== null && store.get().known.inForce.value?.presetVersion !== version;
      if (isOther && store.get().known.rules.is === 'asked') await loadRules(app);
      const { inForce, rules } = store.get().known;
      return judgedUnder(
        judgedBy,
        inForce.value ?? NOTHING_CHOSEN,
        rulesAmong(inForce.value, rules.value),
        rules.is === 'here',
      ).rules;
    };
    const judge = async () => {
      for (const row of rows.slice(0, MOST).toReversed()) {
        const answer = await server.call('readExercise', { params: { exercise: row.id } });
        if (isOver) return;
        if (!answer.ok) continue;
        const exercise = answer.value.entry.content as ExerciseContent;
        // Another model plays another visit: nothing of that can be held against a hand.
        if (!playsAlike(exercise.model, exercise.scenario)) continue;
        const errors = errorsOf(exercise, await rulesFor(exercise));
        if (isOver) return;
        if (errors !== null)
          setJudged((before) => [...before.filter((one) => one.row.id !== row.id), { row, errors }]);
      }
      setDone(true);
    };
    void judge();
    return () => {
      isOver = true;
    };
  }, [rows, app]);
  return { judged, isDone };
}
