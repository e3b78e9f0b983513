import { id } from '@evenfall/record';
import { z } from 'zod';
import { problem, storedEntry } from './shapes.js';

/** A file to bring into a chart: a FHIR R4 bundle or a table, as text. */
export const fileToImport = z.object({
  file: z.string(),
  /** Who brings it; whoever is signed in, where somebody is. */
  agent: id,
  /** False to be told what it would add, and keep nothing. */
  keep: z.boolean(),
});

/** A FHIR R4 bundle, as text, of which the pressures of one kind are asked for as a table. */
export const bundleOfSeries = z.object({ file: z.string(), of: z.enum(['home', 'ambulatory']) });

/** A table as it is typed or pasted: a heading, then a line for each reading. */
export const seriesTable = z.object({ text: z.string() });

/** What a file adds to a chart, or would add, and what of it is refused, each by its place in the file. */
export const importedFile = z.object({
  format: z.enum(['fhir', 'csv']),
  /** Whether it was kept; false where it was only asked. */
  kept: z.boolean(),
  added: z.number().int().min(0),
  already: z.number().int().min(0),
  /** The entries of this person that are new, in order of recording. */
  entries: z.array(storedEntry),
  refused: z.array(problem),
  /** Resources or rows that hold no value to take in: their number by type, or by why. */
  passedOver: z.record(z.string(), z.number().int()),
  /** Values that are left as they are: their source said later what is kept of them. */
  older: z.number().int().min(0),
  /** Values that changed what is kept of their source, though nothing tells which was said later: the order of the files decides. */
  byOrder: z.number().int().min(0),
  /** Values kept beside others under their source's name, of which nobody knows whether one corrects another, each by its place. */
  unclear: z.array(problem),
});
export type ImportedFile = z.infer<typeof importedFile>;
