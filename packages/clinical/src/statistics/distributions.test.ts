import { readFileSync } from 'node:fs';
// @ts-expect-error: jstat ships no types
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { betaQuantile } from './beta.js';
import { binomialCdf } from './binomial.js';
import { chiSquareCdf, chiSquareQuantile } from './chiSquare.js';
import { fCdf, fQuantile } from './fDistribution.js';
import { normalCdf, normalQuantile } from './normal.js';
import { tCdf, tQuantile } from './studentT.js';

const ours = {
  normalCdf,
  normalQuantile,
  tCdf,
  tQuantile,
  chiSquareCdf,
  chiSquareQuantile,
  fCdf,
  fQuantile,
  binomialCdf,
  betaQuantile,
};

type Name = keyof typeof ours;
type Case = { given: number[]; expected: string };

const references: Record<Name, Case[]> = JSON.parse(
  readFileSync(new URL('../../fixtures/distributions.json', import.meta.url), 'utf8'),
);

/** jstat under our names and parametrisation. */
const SECOND: Record<Name, (...given: number[]) => number> = {
  normalCdf: (z) => jstat.normal.cdf(z, 0, 1),
  normalQuantile: (p) => jstat.normal.inv(p, 0, 1),
  tCdf: jstat.studentt.cdf,
  tQuantile: jstat.studentt.inv,
  chiSquareCdf: jstat.chisquare.cdf,
  chiSquareQuantile: jstat.chisquare.inv,
  fCdf: jstat.centralF.cdf,
  fQuantile: jstat.centralF.inv,
  binomialCdf: jstat.binomial.cdf,
  betaQuantile: jstat.beta.inv,
};

/** Largest relative error against 40 digits. The normal quantile far out in the tail is the library's weak place. */
const TOLERANCE: Partial<Record<Name, number>> = { normalQuantile: 3e-9, binomialCdf: 1e-12 };

const cases = Object.entries(references).flatMap(([name, rows]) =>
  rows.map((row) => ({ name: name as Name, ...row })),
);

test('there is a reference for every function', () => {
  expect(Object.keys(references).sort()).toEqual(Object.keys(ours).sort());
});

describe('distribution functions', () => {
  // fixtures/README.md: computed with mpmath from the defining integrals.
  test.each(cases)('$name of $given is $expected', ({ name, given, expected }) => {
    const value = call(name, given);
    const wanted = Number(expected);
    const error = wanted === 0 ? Math.abs(value) : Math.abs(value / wanted - 1);
    expect(error).toBeLessThan(TOLERANCE[name] ?? 1e-13);
  });

  // The second library is good to about 1e-7, and in absolute terms only in the tails (its normal cdf at -8).
  test.each(cases)('$name of $given agrees with a second library', ({ name, given }) => {
    const value = call(name, given);
    expect(Math.abs(value - SECOND[name](...given))).toBeLessThan(1e-7 * Math.max(1, Math.abs(value)));
  });

  test.each([
    ['no degrees of freedom', () => tQuantile(0.975, 0)],
    ['a probability over 1', () => normalQuantile(1.5)],
    ['a share that is no number', () => binomialCdf(1, 10, Number.NaN)],
    ['a negative shape', () => betaQuantile(0.5, -1, 2)],
  ])('throws for %s', (_, wrong) => {
    expect(wrong).toThrow(RangeError);
  });
});

function call(name: Name, given: number[]): number {
  return (ours[name] as (...given: number[]) => number)(...given);
}
