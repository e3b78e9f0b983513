import type { Gauge } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { standingText } from './standingText.js';

/**
 * That the gauge a reading is taken with failed a check, and what to do: wherever that reading stands before it is signed.
 * Null for a gauge that may be used, and for one that is not known here.
 */
export function failedGauge(gauges: readonly Gauge[], id: string | null, words: Words): string | null {
  const gauge = gauges.find((one) => one.id === id);
  if (gauge === undefined || gauge.standing.state !== 'failed') return null;
  const beware = words.sentence('equipment.beware', {
    name: gauge.named.name,
    text: standingText(gauge, words),
  });
  return `${beware.replace(/\.?$/, '.')} ${words.sentence('equipment.bewareFailed')}`;
}
