import type { Sureness } from './figure.js';

/** What a cell of a published table can hold; null is an empty cell. */
export type Cell = number | string | null;

/**
 * A published table of numbers with everything that must be known about it. Each stands once, in a file `...Table.ts`
 * of its folder, and `docs/sources.md` lists them beside the figures.
 */
export type Table<Row extends Readonly<Record<string, Cell>> = Readonly<Record<string, Cell>>> = {
  /** What the table is for, in words of the trade. */
  readonly meaning: string;
  readonly unit: string;
  readonly source: string;
  readonly sure: Sureness;
  readonly rows: readonly Row[];
};
