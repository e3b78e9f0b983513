import type { run as english } from '../../english/expected/run.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/expected/run`. */
export const run: Reworded<typeof english> = {
  moment: (_f, say, choices) => `el momento «${say.anyOf(choices)}»`,
  'moment-of-method': (_f, say, choices) => `un momento de este método: ${say.anyOf(choices)}`,
  'after-first-sound': () => 'un lugar después del primer ruido',
  'before-last-sound': () => 'un lugar antes del último ruido',
  'later-than-before': (f, say) =>
    `un tiempo después del anterior (${say.short(f.value('beforeSeconds'), 3)} s)`,
  'not-above-moment-before': (f, say) =>
    `como máximo la presión anterior, de ${say.short(f.value('beforeMmHg'), 3)} mmHg`,
  'not-above-peak': (f, say) =>
    `como máximo la presión más alta, de ${say.short(f.value('peakMmHg'), 3)} mmHg, a la que se abrió la válvula`,
  'below-systolic': (f, say) => `menos que la sistólica de ${say.short(f.value('systolic'), 3)} mmHg`,
  'diastolic-below': () => 'una diastólica por debajo de la sistólica',
  'same-as-moment': (f, say) =>
    `lo mismo que el momento «vuelve el pulso» (${say.short(f.value('momentMmHg'), 3)} mmHg), o solo uno de los dos`,
  'at-least': (f, say) => `${say.short(f.value('minimum'), 3)} o más`,
  'over-zero': () => 'más de 0',
  'over-zero-at-most': (f, say) => `más de 0 y como máximo ${say.short(f.value('maximum'), 3)}`,
  'one-reading': () => 'una lectura tal como se tomó, no una media de varias',
  pressure: () => 'una presión como 148/92, 118/62/0 o 122/P',
  'numbers-in-mmhg': () =>
    'solo números en mmHg, como 148/92, 118/62/0 o 122/P, y después el pulso: 148/92 76',
  'second-number': (f, say) => {
    const systolic = say.short(f.value('systolic'), 3);
    return `un segundo número tras ${systolic}, como 148/92, o ${systolic}/P si solo se palpó`;
  },
  'two-or-three-numbers': () => 'dos números (148/92) o tres (118/62/0)',
  'two-numbers-of-a-device': () => 'dos números donde los mostró un aparato',
  'gap-limits': () => 'dónde se fueron los ruidos y dónde volvieron, como 186-152',
  'gap-falling': () => 'primero el número más alto, como 186-152',
  'gap-by-ear-only': () => 'una laguna solo junto a una sistólica y una diastólica que se oyeron',
  'gap-between-sounds': (f, say) =>
    `una laguna entre ${say.short(f.value('systolic'), 3)} y ${say.short(f.value('lowestMmHg'), 3)} mmHg`,
  'marker-of-each-time': () => 'de cada momento con tiempo, quién lo marcó, y de ninguno sin él',
  'cuff-of-scheme': () => 'un manguito de ese esquema, o una letra (S, M, L, XL) donde no hay esquema',
};
