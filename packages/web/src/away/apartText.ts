import type { ApartBecause } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { dayText } from '../app/times.js';

/** Why readings stand apart from a series that they would go on with. */
export type Apart = {
  readonly series: { readonly from: string; readonly until: string };
  readonly because: readonly ApartBecause[];
};

/** The same in words, and what to do where it is not so: that both would be too many nothing said here changes. */
export function apartText({ series, because }: Apart, readings: number, words: Words): string {
  const text = words.sentence('away.keptApart', {
    from: dayText(series.from, words),
    until: dayText(series.until, words),
    readings,
    why: words.say.allOf(because.map((why) => words.sentence(`away.apart-${why}`))),
  });
  const canPutRight = because.some((why) => why !== 'too-many');
  return canPutRight ? `${text} ${words.sentence('away.keptApartPutRight')}` : text;
}
