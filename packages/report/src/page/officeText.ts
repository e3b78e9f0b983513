import { type OfficeBeside, OUT_OF_OFFICE_FIGURES } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { DAY_MS, dayText, meansText } from '../figure/times.js';

type Pair = { readonly systolic: number; readonly diastolic: number };
/** Visits to the office with their mean, mmHg; `date` is a local day, `YYYY-MM-DD`; and the rounds that are not taken, by why. */
export type VisitsSaid = Pair & {
  readonly visits: readonly (Pair & { readonly date: string; readonly rounds: number })[];
  readonly leftOut: readonly {
    readonly why: 'not-countersigned' | 'disputed' | 'no-mean';
    readonly rounds: number;
  }[];
};

/**
 * What the visits to the office about a series came to, each with its day, as it stands beside the limits of the office;
 * and which of them are taken, which are not.
 */
export function officeText(
  { visits, leftOut, ...mean }: VisitsSaid,
  { highSystolic, highDiastolic }: OfficeBeside['limits'],
  words: Words,
): { was: string; which: string } {
  const say = words.sentence;
  const pressure = (of: Pair) => meansText(of, highSystolic, highDiastolic, words) ?? '';
  const each = visits.map((one) =>
    say('away.officeVisit', {
      pressure: pressure(one),
      // A date is not cut where the line ends.
      at: dayText(Date.parse(`${one.date}T00:00:00Z`) / DAY_MS, words).replaceAll(' ', '\u00a0'),
      rounds: one.rounds,
    }),
  );
  return {
    was: say('away.officeWas', {
      pressure: pressure(mean),
      visits: visits.length,
      each: words.say.allOf(each),
    }),
    which: [
      say('away.officeWithin', { days: OUT_OF_OFFICE_FIGURES.officeWithinDays.value }),
      ...(leftOut.length === 0 ? [] : [say('away.officeLeft', { text: leftText(leftOut, words) })]),
    ].join(' '),
  };
}

/** That no office round stands beside a series though some are near, and why none is taken; null where none is near. */
export function officeNoneText(leftOut: VisitsSaid['leftOut'], words: Words): string | null {
  if (leftOut.length === 0) return null;
  const days = OUT_OF_OFFICE_FIGURES.officeWithinDays.value;
  return words.sentence('away.officeNone', { days, text: leftText(leftOut, words) });
}

function leftText(leftOut: VisitsSaid['leftOut'], words: Words): string {
  return words.say.allOf(
    leftOut.map(({ why, rounds }) => words.sentence(`away.officeLeft-${why}`, { rounds })),
  );
}
