import type { score as english } from '../../english/expected/score.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/expected/score`. */
export const score: Reworded<typeof english> = {
  'score-from-age': (f, say) =>
    `una persona de ${say.short(f.value('fromYears'))} años o más para esta puntuación`,
  'score-not-in-pregnancy': () => 'una persona no embarazada: esta puntuación no está hecha para el embarazo',
  'score-not-in-spinal-injury': () =>
    'una persona sin lesión medular: esta puntuación no está hecha para ella',
  'numbers-at-rest': () => 'los números en reposo, en decúbito o en sedestación, como 148/84x68',
  'a-reading-on-the-feet': () => 'al menos una lectura de pie, como 112/70x76',
  'one-at-rest': () => 'una lectura en reposo: acostado o sentado',
  'later-minutes': (f, say) => `un tiempo posterior a ${say.short(f.value('beforeMinutes'))} min`,
  'pressure-and-pulse': () => 'una presión, después x y el pulso: 148/84x68, 122/Px80, o solo 148/84',
  'pulse-not-readings': () => 'un pulso tras la x; la media de varias lecturas no se toma aquí',
  'minutes-of-a-reading': (_f, say, choices) =>
    `minutos en los que hay una lectura, separados por comas: ${say.allOf(choices)}`,
};
