import type { DueRecheck, Stamp } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { shortStampText } from '../app/times.js';
import { localDate } from '../ports/stampAt.js';

/** When a pressure is to be looked at again; that it is late once its time has passed. */
export function dueText(
  { fromAt, byAt }: Pick<DueRecheck, 'fromAt' | 'byAt'>,
  now: Stamp,
  words: Words,
): string {
  const text = shortStampText(byAt ?? fromAt, localDate(now), words);
  if (byAt === null) return words.sentence('people.recheckFrom', { text });
  const isLate = Date.parse(now.at) > Date.parse(byAt);
  return words.sentence(isLate ? 'people.recheckLate' : 'people.recheckBy', { text });
}
