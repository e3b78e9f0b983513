import type { classSession as english } from '../../english/expected/classSession.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/expected/classSession`. */
export const classSession: Reworded<typeof english> = {
  'two-identifiers-or-pseudonym': () => 'dos identificadores, o en el libro de clase un seudónimo y nada más',
  'class-session': () => 'la sesión de clase a la que pertenece',
  'open-session': () => 'una sesión de clase que se empezó aquí y no ha terminado',
  'no-session': () => 'nada: solo el libro de clase tiene sesiones',
  'same-session': () => 'la sesión de clase nombrada en la dirección',
  'entry-of-session': () => 'una entrada de la misma sesión de clase',
  'person-of-session': () => 'una persona de esta sesión de clase',
  'person-once': () => 'cada persona una vez',
  'own-id': () => 'el id de esta misma entrada',
  nobody: () => 'nada: esto no trata de nadie',
  'agreed-by-both': () => 'el acuerdo tanto del docente como de la persona',
  'kind-of-class': () => 'una lectura o lo que se dice de ella: una clase no guarda nada más de una persona',
  'pseudonym-not-name': () => 'un seudónimo, no el nombre de alguien que actúa aquí',
  'new-pseudonym': () => 'un seudónimo que nadie más tenga en esta sesión',
  'end-ahead': (f, say) =>
    `una hora que esté por venir, como máximo ${say.short(f.value('hoursAhead'))} h por delante del reloj del servidor`,
};
