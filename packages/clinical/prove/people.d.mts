/** Types of people.mjs for the tests that draw from it. */
export type Chance = {
  uniform(low?: number, high?: number): number;
  normal(): number;
  whole(low: number, high: number): number;
};
export type Slowness = { correlation: number; breathsPerMinute: number; breathingShare: number };
export type NamedRhythm =
  | 'regular'
  | 'regular-with-breathing'
  | 'occasionally-irregular'
  | 'regularly-irregular'
  | 'irregularly-irregular';

export function generator(seed: number): Chance;
export function independentIntervals(chance: Chance, n: number, mean: number, cv: number): number[];
export function slowIntervals(chance: Chance, n: number, mean: number, cv: number, how: Slowness): number[];
export function timesOf(intervals: readonly number[]): number[];
export function tapped(chance: Chance, intervals: readonly number[], jitterSeconds: number): number[];
export const RHYTHMS: Record<NamedRhythm, (chance: Chance, n: number, mean: number) => number[]>;
