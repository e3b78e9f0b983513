import type { Table } from '../contract/table.js';

/** Rates a minute of people from one age (months, included) to another (not included); null is not given. */
export type RangeRow = {
  readonly fromMonths: number;
  readonly underMonths: number;
  readonly low: number;
  readonly high: number;
  readonly asleepLow: number | null;
  readonly asleepHigh: number | null;
};

/** Centiles of rates a minute in an age band, months. */
export type CentileRow = {
  readonly fromMonths: number;
  readonly underMonths: number;
  readonly p1: number;
  readonly p10: number;
  readonly p25: number;
  readonly p50: number;
  readonly p75: number;
  readonly p90: number;
  readonly p99: number;
};

const PULSE = 'pulse at rest by age: usual range, both ends included, awake then asleep';
const BREATHS = 'breaths at rest by age: usual range, both ends included';
const PALS_2015 = 'Pediatric Advanced Life Support 2015 (bedside handbook 1.6, 2.4)';
const PALS_2006 = 'Pediatric Advanced Life Support 2006 (bedside handbook 1.6, 2.4)';
const APLS =
  'Advanced Paediatric Life Support, in Fleming 2011, Lancet 377:1011, web appendix (bedside handbook 1.6, 2.4)';
const FLEMING = 'Fleming 2011, Lancet 377:1011, the bands from memory (bedside handbook 1.6)';

// biome-ignore-start format: tables as they are printed
export const PALS_2015_PULSE: Table<RangeRow> = {
  meaning: PULSE,
  unit: '/min',
  source: PALS_2015,
  sure: 'second-hand',
  rows: [
    { fromMonths: 0, underMonths: 1, low: 100, high: 205, asleepLow: 90, asleepHigh: 160 },
    { fromMonths: 1, underMonths: 12, low: 100, high: 190, asleepLow: 90, asleepHigh: 160 },
    { fromMonths: 12, underMonths: 36, low: 98, high: 140, asleepLow: 80, asleepHigh: 120 },
    { fromMonths: 36, underMonths: 72, low: 80, high: 120, asleepLow: 65, asleepHigh: 100 },
    { fromMonths: 72, underMonths: 144, low: 75, high: 118, asleepLow: 58, asleepHigh: 90 },
    { fromMonths: 144, underMonths: 192, low: 60, high: 100, asleepLow: 50, asleepHigh: 90 },
  ],
};

export const PALS_2006_PULSE: Table<RangeRow> = {
  meaning: PULSE,
  unit: '/min',
  source: PALS_2006,
  sure: 'second-hand',
  rows: [
    { fromMonths: 0, underMonths: 3, low: 85, high: 205, asleepLow: 80, asleepHigh: 160 },
    { fromMonths: 3, underMonths: 24, low: 100, high: 190, asleepLow: 75, asleepHigh: 160 },
    { fromMonths: 24, underMonths: 132, low: 60, high: 140, asleepLow: 60, asleepHigh: 90 },
    { fromMonths: 132, underMonths: 216, low: 60, high: 100, asleepLow: 50, asleepHigh: 90 },
  ],
};

export const APLS_PULSE: Table<RangeRow> = {
  meaning: PULSE,
  unit: '/min',
  source: APLS,
  sure: 'found',
  rows: [
    { fromMonths: 0, underMonths: 12, low: 110, high: 160, asleepLow: null, asleepHigh: null },
    { fromMonths: 12, underMonths: 24, low: 100, high: 150, asleepLow: null, asleepHigh: null },
    { fromMonths: 24, underMonths: 60, low: 95, high: 140, asleepLow: null, asleepHigh: null },
    { fromMonths: 60, underMonths: 144, low: 80, high: 120, asleepLow: null, asleepHigh: null },
    { fromMonths: 144, underMonths: 216, low: 60, high: 100, asleepLow: null, asleepHigh: null },
  ],
};

export const PALS_2015_BREATHS: Table<RangeRow> = {
  meaning: BREATHS,
  unit: '/min',
  source: PALS_2015,
  sure: 'second-hand',
  rows: [
    { fromMonths: 0, underMonths: 12, low: 30, high: 53, asleepLow: null, asleepHigh: null },
    { fromMonths: 12, underMonths: 36, low: 22, high: 37, asleepLow: null, asleepHigh: null },
    { fromMonths: 36, underMonths: 72, low: 20, high: 28, asleepLow: null, asleepHigh: null },
    { fromMonths: 72, underMonths: 144, low: 18, high: 25, asleepLow: null, asleepHigh: null },
    { fromMonths: 144, underMonths: 192, low: 12, high: 20, asleepLow: null, asleepHigh: null },
  ],
};

export const PALS_2006_BREATHS: Table<RangeRow> = {
  meaning: BREATHS,
  unit: '/min',
  source: PALS_2006,
  sure: 'second-hand',
  rows: [
    { fromMonths: 0, underMonths: 12, low: 30, high: 60, asleepLow: null, asleepHigh: null },
    { fromMonths: 12, underMonths: 48, low: 24, high: 40, asleepLow: null, asleepHigh: null },
    { fromMonths: 48, underMonths: 72, low: 22, high: 34, asleepLow: null, asleepHigh: null },
    { fromMonths: 72, underMonths: 156, low: 18, high: 30, asleepLow: null, asleepHigh: null },
    { fromMonths: 156, underMonths: 216, low: 12, high: 16, asleepLow: null, asleepHigh: null },
  ],
};

export const APLS_BREATHS: Table<RangeRow> = {
  meaning: BREATHS,
  unit: '/min',
  source: APLS,
  sure: 'found',
  rows: [
    { fromMonths: 0, underMonths: 12, low: 30, high: 40, asleepLow: null, asleepHigh: null },
    { fromMonths: 12, underMonths: 24, low: 25, high: 35, asleepLow: null, asleepHigh: null },
    { fromMonths: 24, underMonths: 60, low: 25, high: 30, asleepLow: null, asleepHigh: null },
    { fromMonths: 60, underMonths: 144, low: 20, high: 25, asleepLow: null, asleepHigh: null },
    { fromMonths: 144, underMonths: 216, low: 15, high: 20, asleepLow: null, asleepHigh: null },
  ],
};

export const FLEMING_PULSE: Table<CentileRow> = {
  meaning: 'pulse of children by age: centiles',
  unit: '/min',
  source: FLEMING,
  sure: 'memory',
  rows: [
    { fromMonths: 0, underMonths: 3, p1: 107, p10: 123, p25: 133, p50: 143, p75: 154, p90: 164, p99: 181 },
    { fromMonths: 3, underMonths: 6, p1: 104, p10: 120, p25: 129, p50: 140, p75: 150, p90: 159, p99: 175 },
    { fromMonths: 6, underMonths: 9, p1: 98, p10: 114, p25: 123, p50: 134, p75: 143, p90: 152, p99: 168 },
    { fromMonths: 9, underMonths: 12, p1: 93, p10: 109, p25: 118, p50: 128, p75: 137, p90: 145, p99: 161 },
    { fromMonths: 12, underMonths: 18, p1: 88, p10: 103, p25: 112, p50: 123, p75: 132, p90: 140, p99: 156 },
    { fromMonths: 18, underMonths: 24, p1: 82, p10: 98, p25: 106, p50: 116, p75: 126, p90: 135, p99: 149 },
    { fromMonths: 24, underMonths: 36, p1: 76, p10: 92, p25: 100, p50: 110, p75: 119, p90: 128, p99: 142 },
    { fromMonths: 36, underMonths: 48, p1: 70, p10: 86, p25: 94, p50: 104, p75: 113, p90: 123, p99: 136 },
    { fromMonths: 48, underMonths: 72, p1: 65, p10: 81, p25: 89, p50: 98, p75: 108, p90: 117, p99: 131 },
    { fromMonths: 72, underMonths: 96, p1: 59, p10: 74, p25: 82, p50: 91, p75: 101, p90: 111, p99: 123 },
    { fromMonths: 96, underMonths: 144, p1: 52, p10: 67, p25: 75, p50: 84, p75: 93, p90: 103, p99: 115 },
    { fromMonths: 144, underMonths: 180, p1: 47, p10: 62, p25: 69, p50: 78, p75: 87, p90: 96, p99: 108 },
    { fromMonths: 180, underMonths: 216, p1: 43, p10: 58, p25: 65, p50: 73, p75: 82, p90: 92, p99: 104 },
  ],
};

export const FLEMING_BREATHS: Table<CentileRow> = {
  meaning: 'breaths of children by age: centiles',
  unit: '/min',
  source: FLEMING,
  sure: 'memory',
  rows: [
    { fromMonths: 0, underMonths: 3, p1: 25, p10: 34, p25: 40, p50: 43, p75: 52, p90: 57, p99: 66 },
    { fromMonths: 3, underMonths: 6, p1: 24, p10: 33, p25: 38, p50: 41, p75: 49, p90: 55, p99: 64 },
    { fromMonths: 6, underMonths: 9, p1: 23, p10: 31, p25: 36, p50: 39, p75: 47, p90: 52, p99: 61 },
    { fromMonths: 9, underMonths: 12, p1: 22, p10: 30, p25: 35, p50: 37, p75: 45, p90: 50, p99: 58 },
    { fromMonths: 12, underMonths: 18, p1: 21, p10: 28, p25: 32, p50: 35, p75: 42, p90: 46, p99: 53 },
    { fromMonths: 18, underMonths: 24, p1: 19, p10: 25, p25: 29, p50: 31, p75: 36, p90: 40, p99: 46 },
    { fromMonths: 24, underMonths: 36, p1: 18, p10: 22, p25: 25, p50: 28, p75: 31, p90: 34, p99: 38 },
    { fromMonths: 36, underMonths: 48, p1: 17, p10: 21, p25: 23, p50: 25, p75: 27, p90: 29, p99: 33 },
    { fromMonths: 48, underMonths: 72, p1: 17, p10: 20, p25: 21, p50: 23, p75: 25, p90: 27, p99: 29 },
    { fromMonths: 72, underMonths: 96, p1: 16, p10: 18, p25: 20, p50: 21, p75: 23, p90: 24, p99: 27 },
    { fromMonths: 96, underMonths: 144, p1: 14, p10: 16, p25: 18, p50: 19, p75: 21, p90: 22, p99: 25 },
    { fromMonths: 144, underMonths: 180, p1: 12, p10: 15, p25: 16, p50: 18, p75: 19, p90: 21, p99: 23 },
    { fromMonths: 180, underMonths: 216, p1: 11, p10: 13, p25: 15, p50: 16, p75: 18, p90: 19, p99: 22 },
  ],
};
// biome-ignore-end format: tables as they are printed
