import type { Problem } from '@evenfall/api';
import type { Refusal } from '@evenfall/clinical';
import { columnOf } from '@evenfall/exchange';
import { problemsOf } from '../http/problems.js';
import type { FileBrought } from './bringFile.js';

/** What of a file was refused, or kept and asked about, in words: by row and column of a table, by JSON Pointer of a bundle. */
export function problemsOfFile(
  text: string,
  format: FileBrought['format'],
  refused: readonly Refusal[],
): Problem[] {
  return problemsOf(refused).map((one, at) => ({
    ...one,
    column: format === 'csv' ? columnOf(text, refused[at]?.field ?? '') : null,
  }));
}
