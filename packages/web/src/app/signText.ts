import type { RoundSign } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';

/** What a sign is called. */
export function signText(sign: RoundSign, words: Words): string {
  return words.sentence(`app.${sign}`);
}
