import { gaugeRead } from '@evenfall/clinical';
import type { Reader } from '../observer/observer.js';

/** The ten that a habit goes to, mmHg. */
const TEN = 10;

/** What a reader writes of a needle, mmHg: `earlier` is the reading before (null: none), `chance` decides on the habit of tens. */
export function written(needleMmHg: number, reader: Reader, chance: number, earlier: number | null): number {
  const pulled =
    earlier === null ? needleMmHg : needleMmHg + reader.expectationShare * (earlier - needleMmHg);
  if (chance < reader.tenShare) return gaugeRead(pulled, TEN, 'nearest');
  return reader.markMmHg === null ? pulled : gaugeRead(pulled, reader.markMmHg, 'nearest');
}
