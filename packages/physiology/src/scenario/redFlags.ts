/** Why a reading of this person should make the observer act at once, by what the number or the pattern calls for. */
export const RED_FLAGS = [
  'severe-pressure',
  'severe-in-pregnancy',
  'shock',
  'paradox',
  'pressure-with-slow-pulse',
  'slow-breathing',
  'fast-breathing',
  'very-slow-pulse',
  'very-fast-pulse',
  'fever-with-fast-pulse',
] as const;

const OF_A_NUMBER: ReadonlySet<string> = new Set(['severe-pressure', 'severe-in-pregnancy']);

/**
 * Whether somebody is unwell now, and not only of a high number: nobody lets them wait for the sake of a reading.
 * Source: bedside handbook 3.15 (very low or unwell: do not wait), 3.16 (a severe pressure alone: rest, repeat, tell).
 */
export function isUnwell({ redFlag }: { readonly redFlag: (typeof RED_FLAGS)[number] | null }): boolean {
  return redFlag !== null && !OF_A_NUMBER.has(redFlag);
}
