import type { ReportedContent, ReportedValue, StoredEntry } from '@evenfall/record';

/** What a value from elsewhere says; null for any other entry. */
export function saidIn(entry: StoredEntry): ReportedValue | null {
  return entry.kind === 'reported' ? entry.content.value : null;
}

/** A number of a value from elsewhere by its key; null where it has none, or for any other entry. */
export function numberSaid(entry: StoredEntry, key: string): number | null {
  const said = saidIn(entry) as Readonly<Record<string, unknown>> | null;
  const number = said?.[key];
  return typeof number === 'number' ? number : null;
}

/** How long somebody had stood or lain at a pressure and how they felt on their feet, charted here or said elsewhere; null for any other entry. */
export function posedIn(
  entry: StoredEntry,
): Pick<ReportedContent, 'uprightMinutes' | 'lyingMinutes' | 'unwellUpright'> | null {
  if (entry.kind === 'run') return entry.content.evidence.circumstances;
  return entry.kind === 'reported' ? entry.content : null;
}

/** How somebody was placed at a pressure: an id where it was charted here, in the words of its source where it was not. */
export function postureIn(entry: StoredEntry): string | null {
  if (entry.kind === 'run') return entry.content.evidence.place.posture;
  return entry.kind === 'reported' ? entry.content.posture : null;
}
