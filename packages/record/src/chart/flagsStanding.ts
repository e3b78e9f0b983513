import type { Flag, RoundNotes } from '@evenfall/clinical';
import type { StoredEntry } from '../entry/entry.js';
import { openReasons } from './openReasons.js';
import type { ChartRound } from './projectChart.js';

/**
 * What must be said beside a value that stands in a round, on a screen, on paper and in a text alike: its own flags, why a
 * longer count was asked for and did not come, and what is said beside a reading. None of an entry that charts no value.
 *
 * @param notes what is said beside the round (`notesStanding`)
 */
export function flagsStanding(
  entry: StoredEntry,
  round: Pick<ChartRound, 'values'>,
  notes: RoundNotes,
): readonly Flag[] {
  return [...ownFlags(entry), ...openReasons(entry, round), ...(notes.ofReading[entry.id] ?? [])];
}

function ownFlags(entry: StoredEntry): readonly Flag[] {
  switch (entry.kind) {
    case 'count':
    case 'taps':
    case 'run':
    case 'sign':
      return entry.content.value?.flags ?? [];
    default:
      return [];
  }
}
