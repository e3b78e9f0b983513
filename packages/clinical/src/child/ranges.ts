import type { Sureness } from '../contract/figure.js';
import type { Table } from '../contract/table.js';
import {
  APLS_BREATHS,
  APLS_PULSE,
  type CentileRow,
  FLEMING_BREATHS,
  FLEMING_PULSE,
  PALS_2006_BREATHS,
  PALS_2006_PULSE,
  PALS_2015_BREATHS,
  PALS_2015_PULSE,
  type RangeRow,
} from './rangesTable.js';

/** Published sets of ranges; they disagree, so a place chooses one. In the order of the handbook. */
export const RANGE_SETS = ['pals-2015', 'pals-2006', 'apls', 'fleming-2011'] as const;
export type RangeSet = (typeof RANGE_SETS)[number];

/** A usual range for an age, a minute, both ends included, with where it comes from. */
export type ReferenceRange = {
  readonly low: number;
  readonly high: number;
  readonly source: string;
  readonly sure: Sureness;
};

type Rate = 'pulse' | 'breaths';

const RANGES: Readonly<Record<Rate, Readonly<Record<Exclude<RangeSet, 'fleming-2011'>, Table<RangeRow>>>>> = {
  pulse: { 'pals-2015': PALS_2015_PULSE, 'pals-2006': PALS_2006_PULSE, apls: APLS_PULSE },
  breaths: { 'pals-2015': PALS_2015_BREATHS, 'pals-2006': PALS_2006_BREATHS, apls: APLS_BREATHS },
};
const CENTILES: Readonly<Record<Rate, Table<CentileRow>>> = {
  pulse: FLEMING_PULSE,
  breaths: FLEMING_BREATHS,
};

/**
 * The usual range of a rate for an age in months by one set; null where the set has none for that age, or none for
 * sleep. `fleming-2011` gives the 1st to the 99th centile. Say "usual for age", never "normal for you".
 *
 * Source: bedside handbook 1.6, 2.4, 7.5.
 */
export function referenceRange(
  of: Rate,
  set: RangeSet,
  ageMonths: number,
  state: 'awake' | 'asleep' = 'awake',
): ReferenceRange | null {
  if (set === 'fleming-2011') {
    const centiles = rateCentiles(of, ageMonths);
    if (centiles === null || state === 'asleep') return null;
    const { source, sure } = CENTILES[of];
    return { low: centiles.p1, high: centiles.p99, source, sure };
  }
  const { rows, source, sure } = RANGES[of][set];
  const row = atAge(rows, ageMonths);
  const [low, high] =
    state === 'awake' ? [row?.low, row?.high] : [row?.asleepLow ?? undefined, row?.asleepHigh ?? undefined];
  return low === undefined || high === undefined ? null : { low, high, source, sure };
}

/** The centiles of a rate for an age in months, from memory; null from 18 years on. Source: bedside handbook 1.6. */
export function rateCentiles(of: Rate, ageMonths: number): CentileRow | null {
  return atAge(CENTILES[of].rows, ageMonths) ?? null;
}

/** Where a rate a minute stands beside a range. */
export function besideRange({ low, high }: ReferenceRange, perMinute: number): 'below' | 'in' | 'above' {
  if (perMinute < low) return 'below';
  return perMinute > high ? 'above' : 'in';
}

function atAge<Row extends { readonly fromMonths: number; readonly underMonths: number }>(
  rows: readonly Row[],
  ageMonths: number,
): Row | undefined {
  return rows.find(({ fromMonths, underMonths }) => ageMonths >= fromMonths && ageMonths < underMonths);
}
