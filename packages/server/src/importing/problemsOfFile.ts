import type { Problem } from '@evenfall/api';
import { columnOf } from '@evenfall/exchange';
import { wordsFor } from '@evenfall/words';
import type { FileBrought } from './bringFile.js';

/** What of a file was refused, in words: by row and column of a table, by JSON Pointer of a bundle. */
export function problemsOfFile(
  text: string,
  { format, refused }: Pick<FileBrought, 'format' | 'refused'>,
): Problem[] {
  const words = wordsFor('en-GB');
  return refused.map((one) => {
    const { expected: rule, figures, choices } = one;
    const place = { column: format === 'csv' ? columnOf(text, one.field) : null };
    return { ...words.problem(one, place), rule, figures: { ...figures }, choices: [...choices] };
  });
}
