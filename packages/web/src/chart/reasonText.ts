import type { Amends } from '@evenfall/record';
import type { Words } from '@evenfall/words';

/** Why an entry was amended, in words; the text that was written says it best. */
export function reasonText({ reason, text }: Amends, words: Words): string {
  const said = words.sentence(`amend.${reason}`);
  if (text === null) return said;
  return reason === 'other' ? text : `${said}; ${text}`;
}
