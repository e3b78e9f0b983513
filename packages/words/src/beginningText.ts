import type { Beginning } from '@evenfall/record';
import type { Words } from './words.js';

/** How a round began, in one line. What was as usual is not said, but that the person agreed always is. */
export function beginningText(begun: Beginning, words: Words): string {
  const { identifiers, consent, chaperone, interpreter, who } = begun;
  const known = identifiers.map((one) => words.sentence(`begun.${one}`)).join(', ');
  const parts = [
    known === '' ? null : words.sentence('begun.knownBy', { text: known }),
    words.sentence(`begun.${consent}`),
    chaperone === 'present'
      ? words.sentence('begun.withChaperone')
      : chaperone === 'offered-declined'
        ? words.sentence('begun.chaperoneDeclined')
        : null,
    interpreter === 'present'
      ? words.sentence('begun.withInterpreter')
      : interpreter === 'offered-declined'
        ? words.sentence('begun.interpreterDeclined')
        : null,
    who,
  ];
  return parts.filter((part) => part !== null).join(' · ');
}
