import type { Flag, RoundNotes } from '@evenfall/clinical';
import { type ChartRound, openReasons, type StoredEntry } from '@evenfall/record';
import { flagsOfCharted } from '../parts/charted.js';
import { contentOfEntry } from './contentOfEntry.js';

/**
 * What must be said beside a value that stands in a round: its own flags, why a longer count was asked for and did not
 * come, and what is said beside a reading.
 */
export function flagsStanding(
  entry: StoredEntry,
  round: Pick<ChartRound, 'values'>,
  notes: RoundNotes,
): readonly Flag[] {
  const given = contentOfEntry(entry);
  const own = given === null ? [] : flagsOfCharted(given);
  return [...own, ...openReasons(entry, round), ...(notes.ofReading[entry.id] ?? [])];
}
