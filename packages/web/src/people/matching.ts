import type { PersonRow } from '@evenfall/api';

/** The people whose name or number holds every word typed, whatever the case and the accents. */
export function matching(rows: readonly PersonRow[], wanted: string): readonly PersonRow[] {
  const parts = plain(wanted)
    .split(/\s+/)
    .filter((part) => part !== '');
  if (parts.length === 0) return rows;
  return rows.filter(({ identity }) => {
    const text = plain(`${identity?.name ?? ''} ${identity?.number ?? ''}`);
    return parts.every((part) => text.includes(part));
  });
}

/** A text without case and accents. */
export function plain(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}
