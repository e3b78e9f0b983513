import type { Lone } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { clockText, dayText, pressureText } from '../figure/times.js';

type Pair = { readonly systolic: number | null; readonly diastolic: number | null };

/** Readings that stand far from their neighbours, and what the mean is with and without them; of many the count alone. Null where none does. */
export function loneText(lone: Lone | null, mean: Pair, words: Words): string | null {
  if (lone === null) return null;
  if (lone.without === null) return words.sentence('series.loneMany', { readings: lone.readings.length });
  const of = ({ systolic, diastolic }: Pair) => pressureText(systolic, diastolic, words);
  const exact = (pair: Pair) =>
    [pair.systolic, pair.diastolic].map((one) => (one === null ? '-' : words.say.number(one, 1))).join('/');
  return words.sentence('series.lone', {
    readings: lone.readings.length,
    parts: lone.readings.map(({ reading, before, after }) =>
      words.sentence('series.loneOne', {
        pressure: of(reading),
        day: dayText(reading.localDay, words, true),
        at: clockText(reading.minuteOfDay, words),
        before: of(before),
        after: of(after),
      }),
    ),
    with: exact(mean),
    without: exact(lone.without),
  });
}
