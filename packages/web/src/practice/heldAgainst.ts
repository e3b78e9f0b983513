import type { Judged } from '@evenfall/practice';
import { resultRows } from '@evenfall/practice';
import type { Said } from './said.js';

/** Two numbers, mmHg; null: there is none. */
export type Two = { readonly systolic: number | null; readonly diastolic: number | null };

/** What a room is told of a visit: what was to be had at that moment, and what was true on average; the diastolic where muffled, if so. */
export type HeldAgainst = { readonly had: Two; readonly truth: Two; readonly isMuffled: boolean };

/** By the same rows as the debrief of one learner. */
export function heldAgainst(judged: Judged): HeldAgainst {
  const rows = resultRows(judged);
  const of = (what: 'had' | 'truth'): Two => {
    const [systolic, diastolic] = rows.map((row) => row[what]);
    return { systolic: systolic ?? null, diastolic: diastolic ?? null };
  };
  return { had: of('had'), truth: of('truth'), isMuffled: rows.some(({ isMuffled }) => isMuffled) };
}

/** How far what was said lies from what was to be had, mmHg; null: not said, or not to be had. */
export function saidOff({ first, last }: Said, { had }: Pick<HeldAgainst, 'had'>): Two {
  const off = (said: number | null, one: number | null) =>
    said === null || one === null ? null : said - one;
  return { systolic: off(first, had.systolic), diastolic: off(last, had.diastolic) };
}
