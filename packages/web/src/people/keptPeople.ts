import type { PersonRecord } from '@evenfall/api';
import type { Known } from '../store/known.js';

/** The people of the charts whom this device knows without asking, by name; who was erased is nobody. */
export function keptPeople(records: Known['records']): readonly PersonRecord[] {
  return Object.entries(records)
    .flatMap(([key, { value }]) => (key.startsWith('care ') && value !== null ? [value] : []))
    .filter(({ identity }) => identity !== null)
    .toSorted((a, b) => (a.identity?.name ?? '').localeCompare(b.identity?.name ?? ''));
}
