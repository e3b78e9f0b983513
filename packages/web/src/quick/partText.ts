import type { Words } from '@evenfall/words';

/** The number of a set that is wrong, by its short name. */
export function partText(field: string, words: Words): string {
  return words.sentence(field === '/pulse' ? 'app.pulse' : 'app.pressure');
}
