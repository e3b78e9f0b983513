import { followsOn, homeDayOf } from '@evenfall/clinical';
import type { InForce } from './inForce.js';
import type { SeriesContent, SeriesEvidence, SeriesReadingKept } from './series.js';
import { judgedReadings } from './seriesMade.js';
import { MOST_SERIES_READINGS } from './seriesNames.js';

type Before = { readonly content: SeriesContent };

/** What keeps readings apart from a series that they would go on with by their days. */
export const APART_BECAUSE = ['treated', 'diary', 'device', 'site', 'too-many'] as const;
export type ApartBecause = (typeof APART_BECAUSE)[number];

/**
 * The series at home of the same person that new readings go on with, the newest of them; null where there is none. Nothing
 * that is known of both may differ: the device, the site, the diary, whether medicine was taken.
 *
 * @param standing the series of the person that stand as one entry each, newest first
 */
export function continuedSeries<One extends Before>(
  standing: readonly One[],
  more: SeriesEvidence,
  rules: Pick<InForce, 'homeRules'>,
): One | null {
  return (
    byDays(standing, more, rules).find(({ content }) => apartBecause(content, more).length === 0) ?? null
  );
}

/** The newest series that readings would go on with by their days, and all that keeps them apart; null where one is gone on with, or none is near. */
export function keptApart<One extends Before>(
  standing: readonly One[],
  more: SeriesEvidence,
  rules: Pick<InForce, 'homeRules'>,
): { readonly series: One; readonly because: readonly ApartBecause[] } | null {
  const near = byDays(standing, more, rules).map((series) => {
    return { series, because: apartBecause(series.content, more) };
  });
  const [newest] = near;
  return newest === undefined || near.some(({ because }) => because.length === 0) ? null : newest;
}

/** Those of home whose days new readings go on with. */
function byDays<One extends Before>(
  standing: readonly One[],
  more: SeriesEvidence,
  { homeRules }: Pick<InForce, 'homeRules'>,
): One[] {
  const daysOf = (readings: readonly SeriesReadingKept[]) =>
    judgedReadings([...readings]).map((one) => homeDayOf(one, homeRules));
  if (more.of !== 'home' || more.readings.length === 0) return [];
  const firstDay = Math.min(...daysOf(more.readings));
  return standing.filter(({ content }) => {
    if (content.of !== 'home') return false;
    const days = daysOf(content.readings);
    return followsOn({ firstDay: Math.min(...days), lastDay: Math.max(...days) }, firstDay);
  });
}

/**
 * The readings of both, those of the first in their places: what hands decided of them stays decided. A danger sign that
 * was said of the first stays said.
 */
export function addedEvidence(
  { value: _value, computedBy: _by, ...before }: SeriesContent,
  more: SeriesEvidence,
): SeriesEvidence {
  const keyOf = ({ line, got }: SeriesEvidence['refused'][number]) => `${line} ${got}`;
  const known = new Set(before.refused.map(keyOf));
  const said = [...new Set([...(before.features ?? []), ...(more.features ?? [])])];
  const notes = [before.note, more.note].filter((one) => one !== null);
  return {
    ...more,
    diary: more.diary ?? before.diary,
    readings: [...before.readings, ...more.readings],
    refused: [...before.refused, ...more.refused.filter((row) => !known.has(keyOf(row)))],
    treated: more.treated ?? before.treated,
    // That nothing is felt now unsays nothing.
    features: said.length > 0 ? said : more.features,
    note: notes.length === 0 ? null : notes.join('\n'),
  };
}

/** A device as it is compared: one is written now with a comma, now in capitals. */
function plainDevice(device: string | null): string | null {
  return device === null
    ? null
    : device
        .toLowerCase()
        .replace(/[^\p{L}\p{N}]+/gu, ' ')
        .trim();
}

function apartBecause(before: SeriesContent, more: SeriesEvidence): ApartBecause[] {
  const isSame = <Value>(a: Value | null, b: Value | null) => a === null || b === null || a === b;
  const share = (of: (reading: SeriesReadingKept) => string | null) => {
    const all = ({ readings }: Pick<SeriesEvidence, 'readings'>) =>
      new Set(readings.map(of).filter((one) => one !== null));
    const [a, b] = [all(before), all(more)];
    return a.size === 0 || b.size === 0 || [...a].some((one) => b.has(one));
  };
  const is: Readonly<Record<ApartBecause, boolean>> = {
    treated: !isSame(before.treated, more.treated),
    diary: !isSame(before.diary, more.diary),
    device: !share(({ device }) => plainDevice(device)),
    site: !share(({ site }) => site),
    'too-many': before.readings.length + more.readings.length > MOST_SERIES_READINGS,
  };
  return APART_BECAUSE.filter((why) => is[why]);
}
