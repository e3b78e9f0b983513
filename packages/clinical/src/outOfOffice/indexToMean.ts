import { correlation } from '../statistics/correlation.js';
import { mean } from '../statistics/mean.js';
import { straightLine } from '../statistics/straightLine.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';

/** Name of this rule; one that gives another answer for the same people has another name. */
export const VARIABILITY_RULE = 'variability-1';

/** How the power is found: by the line of log SD on log mean, or by the smallest sum of squares of the SDs themselves. */
export const VARIABILITY_FITS = ['log-log', 'least-squares'] as const;
export type VariabilityFit = (typeof VARIABILITY_FITS)[number];

/** What describes a reference group: SD grows as `a` x mean to the power of `x`, about the group's mean `mean`. */
export type VariabilityGroup = { readonly x: number; readonly a: number; readonly mean: number };

/** The mean and SD of one person's series. */
export type MeanAndSd = { readonly mean: number; readonly sd: number };

/**
 * How SD goes with the mean over a group. Null for fewer than three people, a mean or SD that is not positive, or means that are all
 * the same. Source: out-of-office handbook 12 (VIM, of which several variants exist: both ways to the power).
 */
export function variabilityGroup(
  people: readonly MeanAndSd[],
  by: VariabilityFit = 'log-log',
): VariabilityGroup | null {
  if (people.some((one) => one.mean <= 0 || one.sd <= 0)) return null;
  const centre = mean(people.map((one) => one.mean));
  const line = straightLine(
    people.map((one) => Math.log(one.mean)),
    people.map((one) => Math.log(one.sd)),
  );
  if (people.length < F.variabilityLeastPeople.value || centre === null || line === null) return null;
  if (by === 'log-log') return { x: line.slope, a: Math.exp(line.intercept), mean: centre };
  const x = powerOfLeastSquares(people, centre, line.slope);
  return { x, a: scaleAt(people, centre, x) / centre ** x, mean: centre };
}

/**
 * Variability independent of the mean: SD / mean^x x (the group's mean)^x. Of one person without a group it does not
 * exist. Source: out-of-office handbook 12.
 */
export function variabilityIndependentOfMean(one: MeanAndSd, group: VariabilityGroup): number {
  return one.sd * (group.mean / one.mean) ** group.x;
}

/** How far SDs lie from the curve of a group: the sum of squares, mmHg squared. */
export function variabilityRest(people: readonly MeanAndSd[], { x, a }: VariabilityGroup): number {
  return people.reduce((sum, one) => sum + (one.sd - a * one.mean ** x) ** 2, 0);
}

/** What a group says of several people: the curve, and how their VIM goes with their mean, which is about 0 as it should be. */
export type GroupVariability = VariabilityGroup & {
  readonly rest: number;
  readonly correlation: number | null;
  /** Of each person, in the order given. */
  readonly each: readonly number[];
};

/** The VIM of everybody in a group; null where the group has none. Source: as above. */
export function groupVariability(people: readonly MeanAndSd[], by: VariabilityFit): GroupVariability | null {
  const group = variabilityGroup(people, by);
  if (group === null) return null;
  const each = people.map((one) => variabilityIndependentOfMean(one, group));
  const means = people.map((one) => one.mean);
  return { ...group, rest: variabilityRest(people, group), correlation: correlation(means, each), each };
}

/** The size at the group's mean that leaves least for a power; with means as shares of it, so that no power overflows. */
function scaleAt(people: readonly MeanAndSd[], centre: number, x: number): number {
  let [both, own] = [0, 0];
  for (const one of people) {
    const power = (one.mean / centre) ** x;
    both += one.sd * power;
    own += power * power;
  }
  return both / own;
}

/** How far from the power of the log-log line the other one is looked for, and how close it is told. Source: decision. */
const REACH = 5;
const CLOSE = 1e-10;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** The power that leaves the smallest sum of squares, by golden section. */
function powerOfLeastSquares(people: readonly MeanAndSd[], centre: number, near: number): number {
  const rest = (x: number) => {
    const scale = scaleAt(people, centre, x);
    return people.reduce((sum, one) => sum + (one.sd - scale * (one.mean / centre) ** x) ** 2, 0);
  };
  let [low, high] = [near - REACH, near + REACH];
  let [a, b] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  while (high - low > CLOSE) {
    if (rest(a) < rest(b)) [high, b, a] = [b, a, b - GOLDEN * (b - low)];
    else [low, a, b] = [a, b, a + GOLDEN * (high - a)];
  }
  return (low + high) / 2;
}
