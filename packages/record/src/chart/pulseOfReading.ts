import type { StoredEntry } from '../entry/entry.js';
import type { AmendedEntry } from './amendmentTree.js';
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
 * count that was put right since is said once and the same wherever it stands. Of several counts of that number it is the
 * nearest to the reading in time of those that stand; where all were entered in error, the nearest.
 */
export function pulseOfReading(
  { content, measuredAt }: StoredEntry & { readonly kind: 'run' },
  { values }: Pick<ChartRound, 'values'>,
): PulseOfReading {
  const { pulsePerMinute: perMinute } = content.evidence.run;
  if (perMinute === null) return { perMinute, was: null, isCounted: false };
  const isIt = (entry: StoredEntry) => ofRate(entry) === 'pulse' && chartedPerMinute(entry) === perMinute;
  const away = (entry: StoredEntry) => Math.abs(Date.parse(entry.measuredAt.at) - Date.parse(measuredAt.at));
  const [counted] = values
    .flatMap((value) => {
      const said = [...value.story, ...value.current].filter(isIt);
      return said.length === 0 ? [] : [{ value, awayMs: Math.min(...said.map(away)) }];
    })
    .toSorted((a, b) => Number(isGone(a.value)) - Number(isGone(b.value)) || a.awayMs - b.awayMs);
  if (counted === undefined) return { perMinute, was: null, isCounted: false };
  const { current } = counted.value;
  if (current.some(isIt)) return { perMinute, was: null, isCounted: true };
  const now = current.at(-1);
  return { perMinute: now === undefined ? null : chartedPerMinute(now), was: perMinute, isCounted: true };
}

function isGone({ current }: AmendedEntry): boolean {
  return current.length === 0;
}
