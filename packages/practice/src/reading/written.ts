import { gaugeRead } from '@evenfall/clinical';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import type { Reader } from '../observer/observer.js';

/** The ten that a habit goes to, mmHg. */
const TEN = 10;

/** What a reader writes of a needle, mmHg: `earlier` is the reading before (null: none), `chance` decides on the habit of tens. */
export function written(needleMmHg: number, reader: Reader, chance: number, earlier: number | null): number {
  const seen = needleMmHg + parallaxMmHg(reader.offAxisDegrees);
  const pulled = earlier === null ? seen : seen + reader.expectationShare * (earlier - seen);
  if (chance < reader.tenShare) return gaugeRead(pulled, TEN, 'nearest');
  return reader.markMmHg === null ? pulled : gaugeRead(pulled, reader.markMmHg, 'nearest');
}

/**
 * How far a needle seems to stand from where it does, looked at from beside, mmHg: in proportion to the angle, which is right within
 * four percent up to 30 degrees. Source: physiology handbook 6.3.
 */
export function parallaxMmHg(offAxisDegrees: number): number {
  return (F.parallaxMmHg.value * offAxisDegrees) / F.offAxisDegrees.value;
}
