import type { Table } from '../contract/table.js';

/** One coefficient of the four regressions. */
export type FourthReportRow = {
  readonly term: 'a' | 'b1' | 'b2' | 'b3' | 'b4' | 'g1' | 'g2' | 'g3' | 'g4' | 'sigma';
  readonly boysSystolic: number;
  readonly boysDiastolic: number;
  readonly girlsSystolic: number;
  readonly girlsDiastolic: number;
};

/**
 * Regression of pressure on age (`b`, powers of years - 10) and height (`g`, powers of its z), with the scatter
 * about it (`sigma`), in mmHg.
 */
export const FOURTH_REPORT: Table<FourthReportRow> = {
  meaning: 'pressure of a child by age and height: coefficients of the regression and its scatter',
  unit: 'mmHg',
  source: 'Fourth Report 2004, Pediatrics 114:555, table B-1 (bedside handbook 6.4)',
  sure: 'second-hand',
  // biome-ignore format: a table as it is printed
  rows: [
    { term: 'a', boysSystolic: 102.19768, boysDiastolic: 61.01217, girlsSystolic: 102.01027, girlsDiastolic: 60.5051 },
    { term: 'b1', boysSystolic: 1.82416, boysDiastolic: 0.68314, girlsSystolic: 1.94397, girlsDiastolic: 1.01301 },
    { term: 'b2', boysSystolic: 0.12776, boysDiastolic: -0.09835, girlsSystolic: 0.00598, girlsDiastolic: 0.01157 },
    { term: 'b3', boysSystolic: 0.00249, boysDiastolic: 0.01711, girlsSystolic: -0.00789, girlsDiastolic: 0.00424 },
    { term: 'b4', boysSystolic: -0.00135, boysDiastolic: 0.00045, girlsSystolic: -0.00059, girlsDiastolic: -0.00137 },
    { term: 'g1', boysSystolic: 2.73157, boysDiastolic: 1.46993, girlsSystolic: 2.03526, girlsDiastolic: 1.16641 },
    { term: 'g2', boysSystolic: -0.19618, boysDiastolic: -0.07849, girlsSystolic: 0.02534, girlsDiastolic: 0.12795 },
    { term: 'g3', boysSystolic: -0.04659, boysDiastolic: -0.03144, girlsSystolic: -0.01884, girlsDiastolic: -0.03869 },
    { term: 'g4', boysSystolic: 0.00947, boysDiastolic: 0.00967, girlsSystolic: 0.00121, girlsDiastolic: -0.00079 },
    { term: 'sigma', boysSystolic: 10.7128, boysDiastolic: 11.6032, girlsSystolic: 10.4855, girlsDiastolic: 10.9573 },
  ],
};
