import type { GaugeDoubt } from '@evenfall/clinical';
import type { StoredEntry } from '../entry/entry.js';
import type { Gauge } from './placeEquipment.js';
import { readingsInDoubt } from './readingsWith.js';

/** The gauge that a reading was read from, and which of its checks put the reading in doubt, each once. */
export type FailedGauge = { readonly name: string; readonly checks: readonly GaugeDoubt['of'][] };

/**
 * The gauge of a pressure, where a check of it failed so that the reading is in doubt (`readingsInDoubt`); null where none did, or the
 * reading names no gauge that is known here.
 *
 * @param gauges of the place, as they stand now
 */
export function failedGauge(
  { measuredAt, content }: StoredEntry & { readonly kind: 'run' },
  gauges: readonly Pick<Gauge, 'id' | 'named' | 'standing'>[],
): FailedGauge | null {
  const gauge = gauges.find(({ id }) => id === content.evidence.gauge);
  if (gauge === undefined) return null;
  const doubts = gauge.standing.doubts.filter(
    (doubt) => readingsInDoubt([{ measuredAt: measuredAt.at }], doubt).length > 0,
  );
  const checks = [...new Set(doubts.map(({ of }) => of))];
  return checks.length === 0 ? null : { name: gauge.named.name, checks };
}
