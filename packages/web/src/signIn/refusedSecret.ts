import type { Answer } from '@evenfall/api';
import { SIGN_IN_LIMITS } from '@evenfall/record';
import type { Words } from '@evenfall/words';

/** What the server said to a secret, for beside its field. */
export function refusedSecret(answer: Extract<Answer<unknown>, { ok: false }>, words: Words): string {
  if (answer.offline) return words.sentence('signIn.unreachable');
  const [first] = answer.problem?.problems ?? [];
  if (first === undefined) return words.sentence('app.failed');
  const { expected, message } = words.sentProblem(first);
  switch (answer.status) {
    case 401:
      return first.field === '/pin'
        ? words.sentence('signIn.wrongPin', SIGN_IN_LIMITS)
        : words.sentence('signIn.wrongPhrase');
    case 429:
      return words.sentence('signIn.tooOften', { text: expected ?? '' });
    default:
      return words.sentence('signIn.give', { text: expected ?? message });
  }
}
