import type { cautions as english } from '../english/cautions.js';
import type { Reworded } from '../reworded.js';

/** As in `english/cautions`. */
export const cautions: Reworded<typeof english> = {
  aid: 'Una ayuda para registrar y enseñar, para personas formadas. No diagnostica, y no sustituye ni su juicio ni su protocolo local ni el procedimiento de emergencia: alguien con mal aspecto va antes que cualquier número.',
  confirmLocally: 'Confírmelo con su protocolo local.',
};
