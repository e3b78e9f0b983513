import { inTimeOrder, type SeriesReading } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { DataTable } from '../figure/figure.js';
import { type TimesSaid, timeOfReading } from '../figure/times.js';

/** Every reading in order of time, with what became of it. `beside` is by `index`; `about` what was said of the times. */
export function readingList(
  readings: readonly SeriesReading[],
  left: ReadonlyMap<number, string>,
  beside: ReadonlyMap<number, readonly string[]>,
  about: TimesSaid | undefined,
  usedAs: (reading: SeriesReading) => string,
  words: Words,
): DataTable {
  const shown = (value: number | null) => (value === null ? '-' : words.say.short(value));
  return {
    caption: words.sentence('report.list'),
    columns: [
      words.sentence('report.number'),
      words.sentence('report.when'),
      words.sentence('report.systolic'),
      words.sentence('report.diastolic'),
      words.sentence('report.pulse'),
      words.sentence('report.status'),
    ],
    rows: inTimeOrder(readings).map((one) => {
      const why = left.get(one.index);
      return [
        String(one.index),
        timeOfReading(one, about, words),
        shown(one.systolic),
        shown(one.diastolic),
        shown(one.pulse),
        [
          why === undefined ? usedAs(one) : words.sentence('report.notUsed', { why }),
          ...(one.site === 'wrist' ? [words.sentence('report.wrist')] : []),
          ...(beside.get(one.index) ?? []),
        ].reduce((said, one) => `${said}${said.endsWith('.') ? ' ' : '; '}${one}`),
      ];
    }),
  };
}
