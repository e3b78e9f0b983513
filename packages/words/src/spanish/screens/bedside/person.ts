import type { person as english } from '../../../english/screens/bedside/person.js';
import type { Reworded } from '../../../reworded.js';

/** What the bedside says of it; the rest is in `../person.ts` and comes later. */
export const person: Reworded<typeof english> = {
  name: 'Nombre',
  birthDate: 'Fecha de nacimiento',
  number: 'Número',
  nameMissing: 'Escriba el nombre.',
  erasedNoRound: 'Sin identidad no se puede tomar una ronda nueva.',
};
