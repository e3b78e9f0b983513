import type { Sex } from '../child/sex.js';
import type { Table } from '../contract/table.js';

/** Office pressures of adults by age and sex: means of three readings at one visit, in mmHg. */
export type PriorRow = {
  readonly sex: Sex;
  /** Completed years; the last row of a sex has no end. */
  readonly fromYears: number;
  readonly people: number;
  readonly systolicMean: number;
  readonly systolicSd: number;
  readonly diastolicMean: number;
  readonly diastolicSd: number;
};

const row = (
  sex: Sex,
  fromYears: number,
  people: number,
  systolicMean: number,
  systolicSd: number,
  diastolicMean: number,
  diastolicSd: number,
): PriorRow => ({ sex, fromYears, people, systolicMean, systolicSd, diastolicMean, diastolicSd });

/** What is known of a person of an age and sex before anything was measured. */
export const US_ADULTS_2009_2012: Table<PriorRow> = {
  meaning: 'office pressure of adults by sex and age, mean of three readings at one visit',
  unit: 'mmHg',
  source:
    'US National Health and Nutrition Examination Survey 2009 to 2012, weighted by its survey weights (out-of-office handbook 17.3)',
  sure: 'derived',
  rows: [
    row('m', 18, 1160, 117.38, 10.32, 67.51, 10.5),
    row('m', 30, 837, 119.26, 11.44, 73.55, 10.53),
    row('m', 40, 844, 120.7, 13.46, 75.35, 10.54),
    row('m', 50, 819, 126.57, 17.37, 76.59, 10.05),
    row('m', 60, 839, 127.89, 17.62, 71.23, 10.75),
    row('m', 70, 520, 130.88, 18.41, 66.66, 10.47),
    row('m', 80, 300, 135.34, 21.31, 62.1, 12.57),
    row('f', 18, 1143, 108.91, 9.78, 64.5, 9.87),
    row('f', 30, 858, 111.31, 12.52, 69.43, 10.3),
    row('f', 40, 893, 115.87, 13.98, 71.72, 10.02),
    row('f', 50, 783, 122.43, 17.23, 72.52, 9.91),
    row('f', 60, 785, 128.3, 17.62, 70.85, 10.61),
    row('f', 70, 518, 133.88, 19.17, 65.05, 11.17),
    row('f', 80, 323, 140.68, 21.14, 62.22, 11.75),
  ],
};
