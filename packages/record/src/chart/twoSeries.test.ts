import { expect, test } from 'vitest';
import type { SeriesReadingKept } from '../content/series.js';
import { H1, homeEvidence, inForceBy, keptReading, seriesContentOf } from '../testing/series.js';
import { frame, idOf, kept } from '../testing/work.js';
import { chartSeries } from './chartSeries.js';
import { twoSeries } from './twoSeries.js';

const ISH = inForceBy({ home: 'ish-2020' });

/** Morning and evening of invented days of a March, all of one number. */
const days = (from: number, until: number, typed: string) =>
  Array.from({ length: until - from + 1 }, (_, day) =>
    ['07:30', '07:31', '20:30', '20:31'].map((clock) =>
      keptReading(`2026-03-${String(from + day).padStart(2, '0')}T${clock}:00.000+00:00`, typed),
    ),
  ).flat();

const charted = (id: number, readings: readonly SeriesReadingKept[]) => {
  const content = seriesContentOf(homeEvidence(readings), ISH);
  const entry = kept(frame('series', content, { id: idOf(id), round: idOf(id + 500) }), 0);
  const [one] = chartSeries([entry], () => ISH);
  if (one === undefined) throw new Error('a series');
  return one;
};

/** The ids in order and how far the mean moved, whichever of the two is opened. */
const said = (one: ReturnType<typeof charted>, other: ReturnType<typeof charted>) =>
  [twoSeries(one, other, () => ISH), twoSeries(other, one, () => ISH)].map(({ first, second, compared }) => [
    first.series.id,
    second.series.id,
    compared.mean.systolic.difference,
  ]);

// The difference is that of two means, each of one number alone: by arithmetic.
test('the earlier of two that overlap is the one that began earlier, whichever is opened', () => {
  const earlier = charted(2, days(1, 7, '150/90 70'));
  const later = charted(1, days(5, 12, '130/80 70'));
  const expected = [idOf(2), idOf(1), -20];
  expect(said(earlier, later)).toEqual([expected, expected]);
});

test('of two that began at once the earlier is the one that ended earlier, else whichever it is, always the same', () => {
  const short = charted(2, days(1, 7, '150/90 70'));
  const long = charted(1, days(1, 9, '130/80 70'));
  const expected = [idOf(2), idOf(1), -20];
  expect(said(short, long)).toEqual([expected, expected]);
  const [one, other] = said(charted(3, H1), charted(4, H1));
  expect(one).toEqual(other);
});
