import type { SeriesContent } from '../content/series.js';
import type { SeriesValueKept } from '../content/seriesValue.js';

/** Two numbers side by side, and the second minus the first; null where one is not known. */
export type Compared = {
  readonly first: number | null;
  readonly second: number | null;
  readonly difference: number | null;
};
type ComparedMeans = { readonly [M in 'systolic' | 'diastolic' | 'pulse']: Compared };

/** What two series come to, side by side: before and after a change. Differences are the second minus the first. */
export type SeriesComparison = {
  readonly mean: ComparedMeans;
  readonly morning: ComparedMeans | null;
  readonly evening: ComparedMeans | null;
  readonly day: ComparedMeans | null;
  readonly night: ComparedMeans | null;
  /** Whether both are of one kind and both have enough readings; else the difference is of unlike things. */
  readonly isLike: boolean;
};

/** Compares two series under whatever rules their values were made by. */
export function compareSeries(
  first: { readonly of: SeriesContent['of']; readonly value: SeriesValueKept },
  second: { readonly of: SeriesContent['of']; readonly value: SeriesValueKept },
): SeriesComparison {
  const of = (part: 'morning' | 'evening' | 'day' | 'night') => {
    const [a, b] = [first.value[part], second.value[part]];
    return a === null || b === null ? null : means(a, b);
  };
  return {
    mean: means(first.value.mean, second.value.mean),
    morning: of('morning'),
    evening: of('evening'),
    day: of('day'),
    night: of('night'),
    isLike: first.of === second.of && first.value.valid && second.value.valid,
  };
}

type Means = SeriesValueKept['mean'];

function means(first: Means, second: Means): ComparedMeans {
  const compared = (of: keyof Means): Compared => {
    const [a, b] = [first[of], second[of]];
    return { first: a, second: b, difference: a === null || b === null ? null : b - a };
  };
  return { systolic: compared('systolic'), diastolic: compared('diastolic'), pulse: compared('pulse') };
}
