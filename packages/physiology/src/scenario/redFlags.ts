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
