import type { ChartedSeries } from '@evenfall/record';

/** Said in the address of a series: the other one that it stands beside. */
const BESIDE = 'beside';

/** The other series that an address names; none as an empty text. */
export function besideIn(search: string): string {
  return new URLSearchParams(search).get(BESIDE) ?? '';
}

/**
 * The address of the newest two series of one kind side by side, or else of the newest two; null where there are not two.
 *
 * @param series of one person, newest first
 */
export function besideHref(
  person: string,
  series: readonly Pick<ChartedSeries, 'id' | 'content' | 'isInError'>[],
): string | null {
  const standing = series.filter(({ isInError }) => !isInError);
  const [newest, next] = standing;
  if (newest === undefined || next === undefined) return null;
  for (const [k, one] of standing.entries()) {
    const before = standing.slice(k + 1).find(({ content }) => content.of === one.content.of);
    if (before !== undefined) return href(person, one.id, before.id);
  }
  return href(person, newest.id, next.id);
}

function href(person: string, series: string, other: string): string {
  return `/people/${person}/away/${series}?${BESIDE}=${other}`;
}
