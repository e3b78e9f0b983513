/**
 * How sure a number is. `found` was read in the named source; `second-hand` in a page that quotes it;
 * `memory` and `memory-low` were not re-read; `practice` is common practice without a source; `derived` is
 * arithmetic; `decision` is this project's own choice.
 */
export type Sureness =
  | 'found'
  | 'second-hand'
  | 'memory'
  | 'memory-low'
  | 'practice'
  | 'derived'
  | 'decision';

/**
 * A number of the trade with everything that must be known about it. Each lives once, in the `figures.ts` of
 * its folder, and `docs/sources.md` lists them all (a test holds the page against the code).
 */
export type Figure = {
  readonly value: number;
  readonly unit: string;
  /** What the number is for, in words of the trade. */
  readonly meaning: string;
  readonly source: string;
  readonly sure: Sureness;
};

/** Keeps the ids of a table of figures as literal keys while checking each row. */
export function figures<Id extends string>(rows: Record<Id, Figure>): Readonly<Record<Id, Figure>> {
  return rows;
}
