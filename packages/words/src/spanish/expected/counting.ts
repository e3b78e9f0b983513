import type { counting as english } from '../../english/expected/counting.js';
import { nearest } from '../../english/expected/expectation.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/expected/counting`. */
export const counting: Reworded<typeof english> = {
  'an-object': () => 'un objeto con campos con nombre',
  'known-field': (_f, say, choices) =>
    choices.length === 0 ? 'ningún campo así' : `uno de los campos ${say.anyOf(choices)}`,
  'a-number': () => 'un número en cifras, con su decimal si hace falta y sin nada más',
  'a-whole-number': () => 'un número entero',
  'a-value': () => 'un valor',
  'a-list': () => 'una lista de valores',
  'one-of': (_f, say, choices) => say.anyOf(choices),
  once: () => 'una sola vez',
  'not-negative': (f, say) => `${say.short(f.value('minimum'))} o más`,
  'at-least-first-beat': (f, say) =>
    `como mínimo ${say.short(f.value('minimum'))}, porque el reloj empezó en un latido al que se llamó uno`,
  'at-most-per-minute': (f, say) =>
    `como máximo ${say.short(f.value('ceilingPerMinute'))} por minuto (esto da ${say.beside(f.value('perMinute'), f.value('ceilingPerMinute'))})`,
  'reachable-in-window': (f, say) =>
    `una frecuencia que ${say.short(f.value('windowSeconds'))} s puedan dar, como ${say.anyOf(nearest(f).map((rate) => say.number(rate)))}, u otra ventana`,
  'rate-by-hand': (f, say) =>
    `un número mayor de 0 y como máximo ${say.short(f.value('ceilingPerMinute'))} por minuto (no haber contado ninguno es un recuento de 0)`,
  'window-over-zero-at-most': (f, say) =>
    `segundos, más de 0 y como máximo ${say.short(f.value('longestWindowSeconds'))}`,
  'window-at-least': (f, say) => `${say.short(f.value('shortestWindowSeconds'), 3)} s o más`,
  'before-window-ends': (f, say) =>
    `un momento antes de que acabara la ventana de ${say.short(f.value('windowSeconds'))} s`,
  'at-least-one-time': () => 'al menos un tiempo, en segundos, uno por línea',
  'later-than-the-one-before': (f, say) =>
    `un tiempo posterior al anterior (${say.short(f.value('beforeSeconds'), 3)})`,
  'nearer-to-zero-than': (f, say) =>
    `un tiempo más cercano a cero que ${say.short(f.value('furthestSeconds'))} s`,
};
