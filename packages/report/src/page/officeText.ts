import { OUT_OF_OFFICE_FIGURES } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { DAY_MS, dayText } from '../figure/times.js';

type Pair = { readonly systolic: number; readonly diastolic: number };
/** Visits to the office with their mean, mmHg; `date` is a local day, `YYYY-MM-DD`. */
export type VisitsSaid = Pair & {
  readonly visits: readonly (Pair & { readonly date: string; readonly rounds: number })[];
};

/** What the visits to the office about a series came to, each with its day; and which of them are taken at all. */
export function officeText({ visits, ...mean }: VisitsSaid, words: Words): { was: string; which: string } {
  const say = words.sentence;
  const pressure = ({ systolic, diastolic }: Pair) =>
    `${words.say.number(systolic)}/${words.say.number(diastolic)}`;
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
    which: say('away.officeWithin', { days: OUT_OF_OFFICE_FIGURES.officeWithinDays.value }),
  };
}
