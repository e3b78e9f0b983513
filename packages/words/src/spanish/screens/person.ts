import type { person as english } from '../../english/screens/person.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/screens/person`. */
export const person: Reworded<typeof english> = {
  addTitle: 'Añadir una persona',
  lead: 'Al menos dos identificadores, para que los números lleguen al registro correcto: el nombre, y una fecha de nacimiento o un número.',
  numberHint: 'De una pulsera, una tarjeta o su propia lista.',
  add: 'Añadir a esta persona',
  addAllTheSame: 'Añadir de todos modos',
  sameHere: 'Ya hay aquí alguien así. Un segundo registro separaría los números de una misma persona:',
  bornLongAgo: 'Esa fecha de nacimiento es anterior a 1900. ¿Es correcto el año?',
  nameLong: 'Como máximo 200 caracteres.',
  numberLong: 'Como máximo 60 caracteres.',
  secondMissing: 'Indique también una fecha de nacimiento o un número: un solo identificador no basta.',
  birthDateWrong: 'Escriba una fecha que exista, no posterior a hoy.',
  measuringFirst: 'Elija quién mide antes de añadir a una persona.',
  putRight: 'Corregir la identidad',
  correctTitle: 'Corregir la identidad',
  correctLead:
    'Lo que consta ahora se sustituye. Se conserva que se corrigió, quién lo hizo y qué partes; el nombre, la fecha de nacimiento o el número antiguos ya no se muestran.',
  correct: 'Corregirla',
  nothingChanged: 'No se cambió nada.',
  erase: 'Borrar quién es esta persona …',
  eraseTitle: 'Borrar esta identidad',
  eraseWhat:
    'El nombre, la fecha de nacimiento y el número se eliminan para siempre. Lo medido permanece, sin nombre, y también consta que se borró una identidad, quién lo hizo y por qué. No se puede deshacer.',
  eraseReason: '¿Por qué se borra?',
  eraseReasonMissing: 'Escriba por qué.',
  eraseTyped: (f) => `Escriba el nombre, ${f.text}, para confirmar`,
  eraseTypedWrong: 'Este no es el nombre tal como consta.',
  eraseNow: 'Borrar esta identidad',
  erased: 'La identidad de esta persona se borró.',
};
