import type { Answer } from '@evenfall/api';
import type { Words } from '@evenfall/words';
import { refusedBecause } from '../server/server.js';

/** Why an answer was none, in words. */
export function refusedText(answer: Extract<Answer<unknown>, { ok: false }>, words: Words): string {
  if (answer.offline) return words.sentence('app.unreachable');
  return words.sentence('app.refusedBy', { text: refusedBecause(answer, words) });
}
