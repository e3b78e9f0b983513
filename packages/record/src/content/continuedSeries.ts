import { followsOn, homeDayOf } from '@evenfall/clinical';
import type { InForce } from './inForce.js';
import type { SeriesContent, SeriesEvidence, SeriesReadingKept } from './series.js';
import { judgedReadings } from './seriesMade.js';
import { MOST_SERIES_READINGS } from './seriesNames.js';

type Before = { readonly content: SeriesContent };

/**
 * The series at home of the same person that new readings go on with, the newest of them; null where there is none. Nothing
 * that is known of both may differ: the device, the site, the diary, whether medicine was taken.
 *
 * @param standing the series of the person that stand as one entry each, newest first
 */
export function continuedSeries<One extends Before>(
  standing: readonly One[],
  more: SeriesEvidence,
  { homeRules }: Pick<InForce, 'homeRules'>,
): One | null {
  const daysOf = (readings: readonly SeriesReadingKept[]) =>
    judgedReadings([...readings]).map((one) => homeDayOf(one, homeRules));
  if (more.of !== 'home' || more.readings.length === 0) return null;
  const firstDay = Math.min(...daysOf(more.readings));
  const found = standing.find(({ content }) => {
    if (content.of !== 'home' || !isAlike(content, more)) return false;
    if (content.readings.length + more.readings.length > MOST_SERIES_READINGS) return false;
    const days = daysOf(content.readings);
    return followsOn({ firstDay: Math.min(...days), lastDay: Math.max(...days) }, firstDay);
  });
  return found ?? null;
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

function isAlike(before: SeriesContent, more: SeriesEvidence): boolean {
  const isSame = <Value>(a: Value | null, b: Value | null) => a === null || b === null || a === b;
  const share = (of: (reading: SeriesReadingKept) => string | null) => {
    const all = ({ readings }: Pick<SeriesEvidence, 'readings'>) =>
      new Set(readings.map(of).filter((one) => one !== null));
    const [a, b] = [all(before), all(more)];
    return a.size === 0 || b.size === 0 || [...a].some((one) => b.has(one));
  };
  return (
    isSame(before.treated, more.treated) &&
    isSame(before.diary, more.diary) &&
    share(({ device }) => plainDevice(device)) &&
    share(({ site }) => site)
  );
}
