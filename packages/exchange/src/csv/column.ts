import type { StoredEntry } from '@evenfall/record';
import type { Cell } from './csv.js';

/** A heading and what stands under it in the row of an entry; empty (null) where the entry has no such thing. */
export type Column = readonly [heading: string, cell: (row: { readonly entry: StoredEntry }) => Cell];
