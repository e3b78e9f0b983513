import { type Parsed, refusal } from '@evenfall/clinical';
import { SIGN_IN_LIMITS } from '@evenfall/record';
import type { Context } from '../command.js';

/**
 * A new pass phrase: typed twice where somebody sits at a terminal, without showing it; else the first line of standard
 * input.
 *
 * Errors: `contradicts` where the second is not the first, `missing` where there is none.
 */
export async function newPassPhrase({ askSecret, stdin, words }: Context): Promise<Parsed<string>> {
  const missing = {
    ok: false,
    refusals: [refusal('pass phrase', 'missing', 'pass-phrase-line', null)],
  } as const;
  if (askSecret === null) {
    const first = await firstLine(stdin);
    return first === '' ? missing : { ok: true, value: first };
  }
  const typed = await askSecret(words.sentence('commandLine.newPassPhrase', SIGN_IN_LIMITS));
  if (typed === '') return missing;
  const again = await askSecret(words.sentence('commandLine.passPhraseAgain'));
  if (typed === again) return { ok: true, value: typed };
  return { ok: false, refusals: [refusal('pass phrase', 'contradicts', 'pass-phrase-twice', null)] };
}

async function firstLine(stdin: AsyncIterable<Uint8Array>): Promise<string> {
  const decoder = new TextDecoder();
  let text = '';
  for await (const chunk of stdin) {
    text += decoder.decode(chunk, { stream: true });
    if (text.includes('\n')) break;
  }
  return text.split(/\r?\n/, 1)[0] ?? '';
}
