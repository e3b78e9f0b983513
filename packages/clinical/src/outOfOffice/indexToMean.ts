import { mean } from '../statistics/mean.js';

/** What describes a reference group: SD grows as `a` x mean to the power of `x`, about the group's mean `mean`. */
export type VariabilityGroup = { readonly x: number; readonly a: number; readonly mean: number };

/** The mean and SD of one person's series. */
export type MeanAndSd = { readonly mean: number; readonly sd: number };

/**
 * How SD goes with the mean over a group, by the line of log SD on log mean. Null for fewer than two people, a mean or
 * SD that is not positive, or means that are all the same. Source: out-of-office handbook 12 (VIM).
 */
export function variabilityGroup(people: readonly MeanAndSd[]): VariabilityGroup | null {
  if (people.some((one) => one.mean <= 0 || one.sd <= 0)) return null;
  const xs = people.map((one) => Math.log(one.mean));
  const ys = people.map((one) => Math.log(one.sd));
  const [x0, y0, centre] = [mean(xs), mean(ys), mean(people.map((one) => one.mean))];
  if (x0 === null || y0 === null || centre === null) return null;
  let [xx, xy] = [0, 0];
  xs.forEach((one, i) => {
    xx += (one - x0) ** 2;
    xy += (one - x0) * ((ys[i] as number) - y0);
  });
  if (people.length < 2 || xx === 0) return null;
  const x = xy / xx;
  return { x, a: Math.exp(y0 - x * x0), mean: centre };
}

/**
 * Variability independent of the mean: SD / mean^x x (the group's mean)^x. Of one person without a group it does not
 * exist. Source: out-of-office handbook 12.
 */
export function variabilityIndependentOfMean(one: MeanAndSd, group: VariabilityGroup): number {
  return one.sd * (group.mean / one.mean) ** group.x;
}
