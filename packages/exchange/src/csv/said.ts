import type { ReportedValue, StoredEntry } from '@evenfall/record';

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
