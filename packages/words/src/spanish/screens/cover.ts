import type { cover as english } from '../../english/screens/cover.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/screens/cover`. */
export const cover: Reworded<typeof english> = {
  cover: 'Tapar',
  comeBack: 'Tapado. Toque, o pulse cualquier tecla, para volver.',
};
