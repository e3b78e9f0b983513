import type { Problem } from '@evenfall/api';
import { columnOf } from '@evenfall/exchange';
import { problemsOf } from '../http/problems.js';
import type { FileBrought } from './bringFile.js';

/** What of a file was refused, in words: by row and column of a table, by JSON Pointer of a bundle. */
export function problemsOfFile(
  text: string,
  { format, refused }: Pick<FileBrought, 'format' | 'refused'>,
): Problem[] {
  return problemsOf(refused).map((one, at) => ({
    ...one,
    column: format === 'csv' ? columnOf(text, refused[at]?.field ?? '') : null,
  }));
}
