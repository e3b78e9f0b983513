import type { Sureness } from './figure.js';

/**
 * A published table of numbers with everything that must be known about it. Each stands once, in a file `...Table.ts`
 * of its folder, and `docs/sources.md` lists them beside the figures.
 */
export type Table<Row = unknown> = {
  /** What the table is for, in words of the trade. */
  readonly meaning: string;
  readonly unit: string;
  readonly source: string;
  readonly sure: Sureness;
  readonly rows: readonly Row[];
};
