import type { chart as english } from '../../../english/screens/bedside/chart.js';
import type { Reworded } from '../../../reworded.js';
import { SECONDS, TAPS } from '../nouns.js';

/** What the bedside says of it; the rest is in `../chart.ts` and comes later. */
export const chart: Reworded<typeof english> = {
  title: 'Registro',
  voidSays: 'Interrumpido: nulo, sin número.',
  voidAfter: (f, say) => `Interrumpido a los ${say.short(f.seconds, 1)} s: nulo, sin número.`,
  byHand: 'fijado a mano',
  stripCount: (f, say) =>
    `${say.short(f.n)} contados en una ventana de ${say.counted(f.seconds, SECONDS)}, dibujados a intervalos iguales porque no se sabe el momento de cada uno`,
  stripTaps: (f, say) =>
    `${say.counted(f.n, TAPS)} en ${say.counted(f.seconds, SECONDS)}, cada uno dibujado en su momento`,
};
