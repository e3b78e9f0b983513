import type { Side } from '@evenfall/clinical';
import type { SeriesContent } from '../content/series.js';

/** How and by whose clock the readings of a series were taken; each once, in their order; none where nobody said. */
export type SeriesAbout = {
  readonly devices: readonly string[];
  readonly arms: readonly Side[];
  /** By name, as the devices that wrote them had them. */
  readonly zones: readonly string[];
};

/** What page and PDF say at their head of how a series was taken. Source: out-of-office handbook 18, point 1. */
export function seriesAbout({ readings }: Pick<SeriesContent, 'readings'>): SeriesAbout {
  return {
    devices: eachOnce(readings.map(({ device }) => device)),
    arms: eachOnce(readings.map(({ arm }) => arm)),
    zones: eachOnce(readings.map(({ at }) => at.zone)),
  };
}

function eachOnce<Said>(said: readonly (Said | null)[]): Said[] {
  return [...new Set(said.filter((one) => one !== null))];
}
