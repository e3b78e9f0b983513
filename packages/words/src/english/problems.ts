import type { RefusalCode } from '@evenfall/clinical';

/** What a message is made of: the field's name, what was expected and what came, all already in words. */
export type MessageParts = { readonly field: string; readonly expected: string; readonly got: string };

/** One sentence for each code: what is wrong and what to give instead. */
export const messages = {
  missing: ({ field, expected }) => `${field} is missing: give ${expected}.`,
  'unknown-field': ({ field, expected }) => `${field} is not known here: expected ${expected}.`,
  'unknown-id': ({ field, expected, got }) => `${field} does not know ${got}: give ${expected}.`,
  'unknown-option': ({ expected, got }) => `${got} is not known here: expected ${expected}.`,
  repeated: ({ field, expected, got }) => `${field} was given again (${got}): give it ${expected}.`,
  'not-a-number': ({ field, expected, got }) =>
    `${field} is not a number that can be read (${got}): give ${expected}.`,
  'not-whole': ({ field, expected, got }) => `${field} is not a whole number (${got}): give ${expected}.`,
  'not-a-time': ({ field, expected, got }) => `${field} is not a time (${got}): give ${expected}.`,
  'out-of-range': ({ field, expected, got }) => `${field} is out of range (${got}): give ${expected}.`,
  'out-of-order': ({ field, expected, got }) => `${field} is out of order (${got}): give ${expected}.`,
  'not-below-systolic': ({ field, expected, got }) =>
    `${field} is not below the systolic (${got}): give ${expected}.`,
  impossible: ({ field, expected, got }) => `${field} cannot be (${got}): give ${expected}.`,
  contradicts: ({ field, expected, got }) =>
    `${field} contradicts something else given (${got}): give ${expected}.`,
  ambiguous: ({ field, expected, got }) =>
    `${field} can be read in more than one way (${got}): give ${expected}.`,
} as const satisfies Record<RefusalCode, (parts: MessageParts) => string>;

/** What to call the parts of a problem that have no name of their own. */
export const problemWords = {
  theInput: 'The input',
  nothing: 'nothing',
  /** For a code that another version of the program made. */
  unknownCode: ({ code }: { code: string }) =>
    `This version of Evenfall has no sentence for the note “${code}”.`,
} as const;
