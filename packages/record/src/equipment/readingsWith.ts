import type { GaugeDoubt } from '@evenfall/clinical';
import { gatherAmendments } from '../chart/amendmentTree.js';
import { pressureWritten } from '../chart/pressureWritten.js';
import type { StoredEntry } from '../entry/entry.js';

/** A pressure that stands and says which gauge it was read from. */
export type GaugeReading = {
  readonly entry: string;
  readonly person: string;
  readonly round: string;
  /** RFC 3339, with the offset of where it was taken. */
  readonly measuredAt: string;
  /** As the trade writes it: `148/92`. */
  readonly written: string;
};

/**
 * The pressures that were read from a gauge, in order of reading: as they stand after amendments, so that one whose
 * gauge was put right is with the right gauge, and one entered in error is nowhere.
 */
export function readingsWith(gauge: string, entries: readonly StoredEntry[]): GaugeReading[] {
  const runs = entries.filter(({ kind }) => kind === 'run' || kind === 'entered-in-error');
  return gatherAmendments(runs)
    .flatMap(({ current }) => current)
    .flatMap((entry): GaugeReading[] => {
      if (entry.kind !== 'run' || entry.content.evidence.gauge !== gauge) return [];
      const { id, person, round, measuredAt, content } = entry;
      if (person === null || round === null) return [];
      return [{ entry: id, person, round, measuredAt: measuredAt.at, written: pressureWritten(content) }];
    })
    .sort((a, b) => Date.parse(a.measuredAt) - Date.parse(b.measuredAt));
}

/** Of readings of a gauge, those that a failed check of it puts in doubt. */
export function readingsInDoubt<Reading extends Pick<GaugeReading, 'measuredAt'>>(
  readings: readonly Reading[],
  { afterMs, untilMs }: Pick<GaugeDoubt, 'afterMs' | 'untilMs'>,
): Reading[] {
  return readings.filter(({ measuredAt }) => {
    const at = Date.parse(measuredAt);
    return (afterMs === null || at > afterMs) && (untilMs === null || at < untilMs);
  });
}
