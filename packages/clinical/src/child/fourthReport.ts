import type { Component } from '../category/scheme.js';
import { normalCdf } from '../statistics/normal.js';
import { CHILD_FIGURES as F } from './figures.js';
import { FOURTH_REPORT, type FourthReportRow } from './fourthReportTable.js';
import type { Sex } from './sex.js';
import { yearsOf } from './years.js';

/** Pressures that 90, 95 and 99 of 100 children of that sex, age and height do not reach, in mmHg, not rounded. */
export type Centiles = { readonly p90: number; readonly p95: number; readonly p99: number };

/** Where a pressure stands among children of that sex, age and height: SD from their mean, and centile 0 to 100. */
export type Standing = { readonly z: number; readonly centile: number };

/** A child as the regression sees one: age in months, height as SD from the median of its age. */
export type Grown = { readonly sex: Sex; readonly ageMonths: number; readonly heightZ: number };

type Column = Exclude<keyof FourthReportRow, 'term'>;
const COLUMNS: Readonly<Record<Sex, Readonly<Record<Component, Column>>>> = {
  m: { systolic: 'boysSystolic', diastolic: 'boysDiastolic' },
  f: { systolic: 'girlsSystolic', diastolic: 'girlsDiastolic' },
};
const BY_AGE = ['b1', 'b2', 'b3', 'b4'] as const;
const BY_HEIGHT = ['g1', 'g2', 'g3', 'g4'] as const;

/** The regression counts years from here. */
const YEARS_FROM = 10;
const PERCENT = 100;

/**
 * The mean pressure of children of that sex, age and height, in mmHg.
 * Source: Fourth Report 2004, table B-1 (bedside handbook 6.4).
 */
export function expectedPressure({ sex, ageMonths, heightZ }: Grown, component: Component): number {
  const coefficient = coefficientsOf(sex, component);
  const years = yearsOf(ageMonths) - YEARS_FROM;
  return (
    coefficient('a') + powers(BY_AGE.map(coefficient), years) + powers(BY_HEIGHT.map(coefficient), heightZ)
  );
}

/** Where a pressure in mmHg stands. Source: as {@link expectedPressure}. */
export function standingOf(child: Grown, component: Component, mmHg: number): Standing {
  const z = (mmHg - expectedPressure(child, component)) / coefficientsOf(child.sex, component)('sigma');
  return { z, centile: PERCENT * normalCdf(z) };
}

/** The limits, not rounded. The printed tables leave the decimals off. Source: as {@link expectedPressure}. */
export function centilesOf(child: Grown, component: Component): Centiles {
  const mean = expectedPressure(child, component);
  const sigma = coefficientsOf(child.sex, component)('sigma');
  return {
    p90: mean + F.p90Z.value * sigma,
    p95: mean + F.p95Z.value * sigma,
    p99: mean + F.p99Z.value * sigma,
  };
}

function coefficientsOf(sex: Sex, component: Component): (term: FourthReportRow['term']) => number {
  const column = COLUMNS[sex][component];
  return (term) => (FOURTH_REPORT.rows.find((row) => row.term === term) as FourthReportRow)[column];
}

/** c1 x + c2 x^2 + c3 x^3 ... */
function powers(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => (sum + coefficient) * x, 0);
}
