import type { messages as messageTexts, problemWords as problemTexts } from '../english/problems.js';
import type { Reworded } from '../reworded.js';

/** As in `english/problems`. */
export const messages: Reworded<typeof messageTexts> = {
  missing: ({ field, expected }) => `Falta «${field}»: indique ${expected}.`,
  'unknown-field': ({ field, expected }) => `«${field}» no se conoce aquí: se esperaba ${expected}.`,
  'unknown-id': ({ field, expected, got }) =>
    `«${field}» ${got === null ? 'no se conoce aquí' : `no conoce ${got}`}: indique ${expected}.`,
  'unknown-option': ({ field, expected, got }) =>
    `${got ?? `«${field}»`} no se conoce aquí: se esperaba ${expected}.`,
  repeated: ({ field, expected, came }) => `«${field}» se dio otra vez${came}: indíquelo ${expected}.`,
  'not-a-number': ({ field, expected, came }) =>
    `«${field}» no es un número legible${came}: indique ${expected}.`,
  'not-whole': ({ field, expected, came }) =>
    `«${field}» no es un número entero${came}: indique ${expected}.`,
  'not-a-time': ({ field, expected, came }) => `«${field}» no es una hora${came}: indique ${expected}.`,
  'out-of-range': ({ field, expected, came }) =>
    `«${field}» está fuera de los límites${came}: indique ${expected}.`,
  'out-of-order': ({ field, expected, came }) =>
    `«${field}» está fuera de orden${came}: indique ${expected}.`,
  'not-below-systolic': ({ field, expected, came }) =>
    `«${field}»${came} no está por debajo de la sistólica: indique ${expected}.`,
  impossible: ({ field, expected, came }) => `«${field}» no puede ser${came}: indique ${expected}.`,
  contradicts: ({ field, expected, came }) =>
    `«${field}» contradice otra cosa indicada${came}: indique ${expected}.`,
  ambiguous: ({ field, expected, came }) =>
    `«${field}» se puede leer de más de una manera${came}: indique ${expected}.`,
};

export const problemWords: Reworded<typeof problemTexts> = {
  theInput: 'La entrada',
  unknownCode: ({ code }) => `Esta versión de Evenfall no tiene una frase para la nota «${code}».`,
};
