import type { CountOf } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';

export function signText(sign: CountOf, words: Words): string {
  return words.sentence(sign === 'pulse' ? 'app.pulse' : 'app.breaths');
}
