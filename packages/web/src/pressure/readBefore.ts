import { chartedPressure, projectNewest, type StoredEntry } from '@evenfall/record';
import type { RoundDraft } from '../round/draft.js';
import { readingsSoFar } from '../round/standing.js';
import type { Round } from '../round/useRound.js';

const MINUTE_MS = 60_000;

/**
 * The newest reading of a person before one that is typed, in the round under way or else in the chart, its diastolic as it is
 * used, and how long ago, negative where it seems later; null for none.
 *
 * @param nowMs when the one that is typed was taken, ms
 */
export function readBefore(
  draft: RoundDraft,
  entries: readonly StoredEntry[],
  nowMs: number,
  under: Pick<Round, 'facts' | 'inForce'> & { readonly program: string },
): { readonly systolic: number; readonly diastolic: number | null; readonly minutesAgo: number } | null {
  const here = readingsSoFar(draft, under).at(-1);
  const charted = projectNewest(entries).pressure;
  const entry = entries.find(({ id }) => id === charted?.entry);
  const kept = entry === undefined ? null : chartedPressure(entry);
  const read = here ?? (kept === null ? null : { systolic: kept.systolic, diastolic: kept.diastolicUsed });
  const at = here === undefined ? charted?.measuredAt : draft.pressure.values.at(-1)?.measuredAt.at;
  if (read == null || at === undefined) return null;
  const { systolic, diastolic } = read;
  const minutesAgo = (nowMs - Date.parse(at)) / MINUTE_MS;
  return { systolic, diastolic, minutesAgo };
}
