import { type FailedGauge, failedGauge, type StoredEntry } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { useKnownEquipment } from '../equipment/useEquipment.js';

/** That a charted pressure was read from a gauge that failed a check, so that nobody goes by it unwarned. */
export function GaugeFailed({ run }: { readonly run: StoredEntry & { readonly kind: 'run' } }) {
  const { words } = useApp();
  const failed = failedGauge(run, useKnownEquipment().equipment?.gauges ?? []);
  return failed === null ? null : <p className="notice">{gaugeFailedText(failed, words)}</p>;
}

export function gaugeFailedText({ name, checks }: FailedGauge, words: Words): string {
  const text = words.say.allOf(checks.map((one) => words.title('gaugeCheck', one).toLowerCase()));
  return words.sentence('chart.gaugeFailed', { name, text });
}
