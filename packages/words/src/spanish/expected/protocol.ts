import { clock } from '../../clock.js';
import type { protocol as english } from '../../english/expected/protocol.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/expected/protocol`. */
export const protocol: Reworded<typeof english> = {
  rising: () => 'valores crecientes',
  'a-time-of-day': () => 'una hora del día como 08:30',
  'within-times-of-day': (f) => `una hora de ${clock(f.value('minimum'))} a ${clock(f.value('maximum'))}`,
  'shorter-than-a-window-offered': () =>
    'menos que la ventana más larga ofrecida, para que se pueda contar un pulso rápido',
  'window-offered': () => 'una ventana que esté entre las ofrecidas',
  'below-fast': (f, say) =>
    `por debajo del límite de frecuencia rápida (${say.short(f.value('fastPerMinute'))} por minuto)`,
  'not-above-margin': (f, say) =>
    `como máximo el propio margen (${say.short(f.value('marginMmHg'))} mmHg), para que no se avise de un margen como el pedido`,
  'not-above-fastest': (f, say) =>
    `como máximo la velocidad mayor (${say.short(f.value('fastestMmHgPerSecond'), 3)} mmHg por segundo)`,
  'never-facts-kept': () =>
    'una lista que conserve fístula, injerto, derivación, vía y amputación: ningún centro puede liberar un brazo así',
  'local-if-replacing': () => 'la fuente «local» donde se sustituye un valor publicado, y solo ahí',
  'a-source': () => 'una fuente en palabras',
  'an-id': () => 'un id en minúsculas con guiones',
  'known-schema': (f, say) =>
    `un número de esquema de ${say.short(f.value('minimum'))} a ${say.short(f.value('maximum'))}`,
  'protocol-here': () => 'una versión del protocolo que se conserve aquí',
  'difference-for-close-pair': () =>
    'una diferencia, porque esta guía promedia dos lecturas que no difieran en más',
  'at-most-stop': (f, say) =>
    `como máximo ${say.short(f.value('stopAtReadings'))}, tras las que no se piden más`,
  'not-after': (f, say) => `como máximo ${say.short(f.value('laterSeconds'))} s, que viene después`,
  'limit-for-names': () => 'indicado, donde la media lleva nombre',
  'below-high-total': (f, say) => `por debajo del total alto (${say.short(f.value('highTotal'))})`,
};
