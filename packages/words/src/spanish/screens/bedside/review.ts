import type { review as english } from '../../../english/screens/bedside/review.js';
import type { Reworded } from '../../../reworded.js';

/** What the bedside says of it; the rest is in `../review.ts` and comes later. */
export const review: Reworded<typeof english> = {
  signAs: 'En función de',
  asLearner: 'Estoy aprendiendo: que quede preliminar hasta que se refrende',
  preliminary: 'La ronda de un estudiante es práctica hasta que alguien cualificado la haya refrendado.',
};
