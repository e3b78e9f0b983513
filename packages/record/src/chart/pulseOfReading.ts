import type { StoredEntry } from '../entry/entry.js';
import { chartedPerMinute } from './chartedPerMinute.js';
import { ofRate } from './ofRate.js';
import type { ChartRound } from './projectChart.js';

/**
 * The pulse that stands beside a reading, per minute; null where there is none, or where it was entered in error. `was` is
 * what the reading was signed with, where that count was amended or marked since; `isCounted` says that it is a pulse of
 * the round, which stands in its own place too.
 */
export type PulseOfReading = {
  readonly perMinute: number | null;
  readonly was: number | null;
  readonly isCounted: boolean;
};

/**
 * The pulse of a reading as the round has it now: a reading keeps the pulse that it was made with as its evidence, and a
 * count that was put right since is said once and the same wherever it stands.
 */
export function pulseOfReading(
  { content }: StoredEntry & { readonly kind: 'run' },
  { values }: Pick<ChartRound, 'values'>,
): PulseOfReading {
  const { pulsePerMinute: perMinute } = content.evidence.run;
  if (perMinute === null) return { perMinute, was: null, isCounted: false };
  const isIt = (entry: StoredEntry) => ofRate(entry) === 'pulse' && chartedPerMinute(entry) === perMinute;
  if (values.some(({ current }) => current.some(isIt))) return { perMinute, was: null, isCounted: true };
  const counted = values.find(({ story }) => story.some(isIt));
  if (counted === undefined) return { perMinute, was: null, isCounted: false };
  const now = counted.current.at(-1);
  return { perMinute: now === undefined ? null : chartedPerMinute(now), was: perMinute, isCounted: true };
}
