import type { ExerciseRow } from '@evenfall/api';
import { MODEL } from '@evenfall/physiology';
import { type DebriefRules, type Exercise, judge } from '@evenfall/practice';
import type { ErrorDrawn } from '@evenfall/report';
import { useEffect, useState } from 'react';
import { useApp } from '../app/context.js';
import { resultRows } from './resultRows.js';
import { useDebriefRules } from './useDebriefRules.js';

/** The newest of them: each is played again to be judged. */
const MOST = 20;

export type Judged = {
  readonly row: ExerciseRow;
  readonly errors: {
    readonly systolic: number | null;
    readonly diastolic: number | null;
    readonly withinMmHg: number;
    readonly isAccepted: ErrorDrawn['isAccepted'];
  };
};

/** What an exercise was off by from what was to be had, played again. */
export function errorsOf(exercise: Exercise, rules: DebriefRules): Judged['errors'] {
  const judged = judge(exercise, rules);
  const [systolic, diastolic] = resultRows(judged);
  return {
    systolic: systolic?.error ?? null,
    diastolic: diastolic?.error ?? null,
    withinMmHg: judged.accepted.withinMmHg,
    isAccepted: { systolic: judged.accepted.systolic, diastolic: judged.accepted.diastolic },
  };
}

/** The errors of the newest exercises, oldest first; they come in one after the other. One that cannot be read is left out. */
export function useErrors(rows: readonly ExerciseRow[]): {
  readonly judged: readonly Judged[];
  /** All of them were looked at. */
  readonly isDone: boolean;
} {
  const { server } = useApp();
  const rules = useDebriefRules();
  const [judged, setJudged] = useState<readonly Judged[]>([]);
  const [isDone, setDone] = useState(false);
  useEffect(() => {
    let isOver = false;
    const judge = async () => {
      for (const row of rows.slice(0, MOST).toReversed()) {
        const answer = await server.call('readExercise', { params: { exercise: row.id } });
        if (isOver) return;
        if (!answer.ok) continue;
        const exercise = answer.value.entry.content as Exercise;
        // Another model plays another visit: nothing of that can be held against a hand.
        if (exercise.model !== MODEL) continue;
        const errors = errorsOf(exercise, rules);
        setJudged((before) => [...before.filter((one) => one.row.id !== row.id), { row, errors }]);
      }
      setDone(true);
    };
    void judge();
    return () => {
      isOver = true;
    };
  }, [rows, server, rules]);
  return { judged, isDone };
}
