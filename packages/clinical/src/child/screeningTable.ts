import type { Table } from '../contract/table.js';

/** One completed year of age; the last row is for that age and over. Pressures in mmHg. */
export type ScreeningRow = {
  readonly years: number;
  readonly boysSystolic: number;
  readonly boysDiastolic: number;
  readonly girlsSystolic: number;
  readonly girlsDiastolic: number;
};

/** A pressure at or above these needs a full assessment; it is no diagnosis. */
export const SCREENING: Table<ScreeningRow> = {
  meaning:
    'screening: at or above either number a full assessment is due; by completed years, 13 and over alike',
  unit: 'mmHg',
  source: 'AAP 2017 (Flynn, Pediatrics 140:e20171904), simplified table (bedside handbook 6.3)',
  sure: 'second-hand',
  // biome-ignore format: a table as it is printed
  rows: [
    { years: 1, boysSystolic: 98, boysDiastolic: 52, girlsSystolic: 98, girlsDiastolic: 54 },
    { years: 2, boysSystolic: 100, boysDiastolic: 55, girlsSystolic: 101, girlsDiastolic: 58 },
    { years: 3, boysSystolic: 101, boysDiastolic: 58, girlsSystolic: 102, girlsDiastolic: 60 },
    { years: 4, boysSystolic: 102, boysDiastolic: 60, girlsSystolic: 103, girlsDiastolic: 62 },
    { years: 5, boysSystolic: 103, boysDiastolic: 63, girlsSystolic: 104, girlsDiastolic: 64 },
    { years: 6, boysSystolic: 105, boysDiastolic: 66, girlsSystolic: 105, girlsDiastolic: 67 },
    { years: 7, boysSystolic: 106, boysDiastolic: 68, girlsSystolic: 106, girlsDiastolic: 68 },
    { years: 8, boysSystolic: 107, boysDiastolic: 69, girlsSystolic: 107, girlsDiastolic: 69 },
    { years: 9, boysSystolic: 107, boysDiastolic: 70, girlsSystolic: 108, girlsDiastolic: 71 },
    { years: 10, boysSystolic: 108, boysDiastolic: 72, girlsSystolic: 109, girlsDiastolic: 72 },
    { years: 11, boysSystolic: 110, boysDiastolic: 74, girlsSystolic: 111, girlsDiastolic: 74 },
    { years: 12, boysSystolic: 113, boysDiastolic: 75, girlsSystolic: 114, girlsDiastolic: 75 },
    { years: 13, boysSystolic: 120, boysDiastolic: 80, girlsSystolic: 120, girlsDiastolic: 80 },
  ],
};
