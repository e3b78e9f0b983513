import type { prepare as english } from '../../english/screens/prepare.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/screens/prepare`. */
export const prepare: Reworded<typeof english> = {
  title: 'Preparar',
  lead: 'Cinco minutos tranquilos, en posición sentada. Mire una vez cada cosa.',
  all: 'Todo como debe ser',
  allSoFar: 'Por ahora todo como debe ser: seguir',
  exceptions: '¿Qué no estaba como debe ser?',
  keep: 'Guardar y seguir',
  skip: 'No se miró',
  none: 'Todo como debe ser.',
  some: (f) => `No estaba como debe ser: ${f.text}.`,
  notLooked: 'Nadie miró si la persona estaba preparada.',
  change: 'Cambiar',
  look: 'Mirar ahora',
  rested: 'no reposó cinco minutos',
  'back-supported': 'espalda sin apoyo',
  'feet-flat': 'pies sin apoyar del todo, o piernas cruzadas',
  'arm-supported': 'brazo sin apoyo',
  'arm-at-heart': 'manguito no a la altura del corazón',
  'bladder-empty': 'vejiga llena',
  'not-talking': 'hablaba',
  'arm-bare': 'manguito sobre la ropa',
  'no-caffeine': 'cafeína en la última media hora',
  'no-tobacco': 'tabaco en la última media hora',
  'no-exercise': 'ejercicio en la última media hora',
  'no-meal': 'una comida justo antes',
  'no-alcohol': 'alcohol poco antes',
  warm: 'sala fría o persona con frío',
  calm: 'con dolor, disgusto o miedo',
  'gauge-at-zero': 'la aguja no estaba en cero',
};
