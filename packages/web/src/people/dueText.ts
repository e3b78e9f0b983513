import type { DueRecheck, Stamp } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { shortStampText } from '../app/times.js';
import { localDate } from '../ports/stampAt.js';

/** Whether the time by which a pressure was to be looked at again has passed. */
export function isLate({ byAt }: Pick<DueRecheck, 'byAt'>, now: Stamp): boolean {
  return byAt !== null && Date.parse(now.at) > Date.parse(byAt);
}

/** When a pressure is to be looked at again; that it is late once its time has passed. */
export function dueText(
  { fromAt, byAt }: Pick<DueRecheck, 'fromAt' | 'byAt'>,
  now: Stamp,
  words: Words,
): string {
  const text = shortStampText(byAt ?? fromAt, localDate(now), words);
  if (byAt === null) return words.sentence('people.recheckFrom', { text });
  return words.sentence(isLate({ byAt }, now) ? 'people.recheckLate' : 'people.recheckBy', { text });
}

/** The rechecks of one round, the earliest first; each with what it is for, where there is more than one. */
export function duesText(
  due: readonly Pick<DueRecheck, 'code' | 'fromAt' | 'byAt'>[],
  now: Stamp,
  words: Words,
): readonly string[] {
  return due
    .toSorted((a, b) => Date.parse(a.byAt ?? a.fromAt) - Date.parse(b.byAt ?? b.fromAt))
    .map((one) => {
      const text = dueText(one, now, words);
      return due.length === 1 ? text : `${text} (${words.title('recheckReason', one.code)})`;
    });
}
