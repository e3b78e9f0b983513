/**
 * The heading under which our table says which reading of a sitting a row is, from 1. All of a sitting have the time of the
 * sitting there, which is all that was said; by this number they are several, and each is again where the record keeps it.
 */
export const READING_OF_SITTING = 'readingOfSitting';

const MOST = 4;
const MINUTE_MS = 60_000;

/**
 * How long after the time in its row the record keeps a reading, ms: a minute for each reading of its sitting before it.
 *
 * @param cell what stands under that heading; anything but 2 to 4 is none
 */
export function afterSittingMs(cell: string | null | undefined): number {
  const place = /^[2-9]$/.test(cell ?? '') ? Number(cell) : 1;
  return place > MOST ? 0 : (place - 1) * MINUTE_MS;
}
