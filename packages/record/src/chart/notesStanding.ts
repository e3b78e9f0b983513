import { type RoundNotes, roundNotes } from '@evenfall/clinical';
import type { ChartRound } from './projectChart.js';

/**
 * What is said beside what a round comes to, from its readings as they stand: made anew each time, of evidence that is
 * kept, and part of no kept value. Of one that amendments dispute, every claim is looked at.
 */
export function notesStanding({ values }: Pick<ChartRound, 'values'>): RoundNotes {
  return roundNotes(
    values.flatMap(({ current }) =>
      current.flatMap((entry) => {
        if (entry.kind !== 'run') return [];
        const { run, place } = entry.content.evidence;
        return [{ ...place, method: run.method }];
      }),
    ),
  );
}
