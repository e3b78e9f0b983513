import type { taps as english } from '../../english/screens/taps.js';
import type { Reworded } from '../../reworded.js';
import { TAPS } from './nouns.js';

/** As in `english/screens/taps`. */
export const taps: Reworded<typeof english> = {
  title: 'Tocar',
  tapEachBeat: 'Toque cada vez que note un latido.',
  tapEach: 'Toque cada una cuando empieza.',
  begin: 'Empiece con el primer toque. Pulgar o barra espaciadora.',
  area: 'Toque aquí',
  soFar: (f, say) => `${say.counted(f.taps, TAPS)} hasta ahora`,
  more: (f, say) =>
    f.taps === 0
      ? 'Toques suficientes.'
      : `unos ${say.counted(f.taps, TAPS)} más para un intervalo más estrecho`,
  until: (f, say) =>
    `Siga durante ${say.short(f.seconds)} s desde el primer toque: unos ${say.counted(f.taps, TAPS)} más.`,
  enough: 'Suficiente.',
  undo: 'Retirar el último toque',
  stop: 'Parar',
  again: 'Tocar de nuevo desde el principio',
  tooFew: 'Una frecuencia necesita al menos dos toques. Siga tocando.',
  repairs: 'Los toques perdidos añadidos y los dobles retirados se dibujan de otro modo y se listan abajo.',
  missed: (f, say) =>
    `Tras el toque ${say.short(f.index)}: ${say.counted(f.added, { one: 'toque perdido, añadido', other: 'toques perdidos, añadidos' })}.`,
  doubled: (f, say) => `Toque ${say.short(f.index)}: doble, retirado.`,
};
