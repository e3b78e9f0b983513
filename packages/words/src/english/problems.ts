import type { RefusalCode } from '@evenfall/clinical';

/**
 * What a message is made of: the field's name, what was expected, and what came, all already in words. `got` is null and
 * `came` empty where something is wrong that cannot be quoted; `came` is what came in brackets after a space.
 */
export type MessageParts = {
  readonly field: string;
  readonly expected: string;
  readonly got: string | null;
  readonly came: string;
};

/** One sentence for each code: what is wrong and what to give instead. */
export const messages = {
  missing: ({ field, expected }) => `${field} is missing: give ${expected}.`,
  'unknown-field': ({ field, expected }) => `${field} is not known here: expected ${expected}.`,
  'unknown-id': ({ field, expected, got }) =>
    `${field} ${got === null ? 'is not known here' : `does not know ${got}`}: give ${expected}.`,
  'unknown-option': ({ field, expected, got }) => `${got ?? field} is not known here: expected ${expected}.`,
  repeated: ({ field, expected, came }) => `${field} was given again${came}: give it ${expected}.`,
  'not-a-number': ({ field, expected, came }) =>
    `${field} is not a number that can be read${came}: give ${expected}.`,
  'not-whole': ({ field, expected, came }) => `${field} is not a whole number${came}: give ${expected}.`,
  'not-a-time': ({ field, expected, came }) => `${field} is not a time${came}: give ${expected}.`,
  'out-of-range': ({ field, expected, came }) => `${field} is out of range${came}: give ${expected}.`,
  'out-of-order': ({ field, expected, came }) => `${field} is out of order${came}: give ${expected}.`,
  'not-below-systolic': ({ field, expected, came }) =>
    `${field}${came} is not below the systolic: give ${expected}.`,
  impossible: ({ field, expected, came }) => `${field} cannot be${came}: give ${expected}.`,
  contradicts: ({ field, expected, came }) =>
    `${field} contradicts something else given${came}: give ${expected}.`,
  ambiguous: ({ field, expected, came }) =>
    `${field} can be read in more than one way${came}: give ${expected}.`,
} as const satisfies Record<RefusalCode, (parts: MessageParts) => string>;

/** What to call the parts of a problem that have no name of their own. */
export const problemWords = {
  theInput: 'The input',
  /** For a code that another version of the program made. */
  unknownCode: ({ code }: { code: string }) =>
    `This version of Evenfall has no sentence for the note “${code}”.`,
} as const;
