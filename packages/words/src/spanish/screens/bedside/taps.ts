import type { taps as english } from '../../../english/screens/bedside/taps.js';
import type { Reworded } from '../../../reworded.js';
import { TAPS } from '../nouns.js';

/** As in `english/screens/bedside/taps`. */
export const taps: Reworded<typeof english> = {
  rangeSays:
    'Si el pulso o la respiración siguieran como mientras usted tocaba, la frecuencia a la larga estaría dentro de su intervalo en 95 de cada 100 series así. Un cambio de un minuto a otro no está incluido.',
  recorded: 'se sabe el momento de cada toque',
  tapsInSeconds: (f, say) => `${say.counted(f.n, TAPS)} en ${say.short(f.seconds, 1)} s`,
};
