import type { standingDetails as english } from '../english/standingDetails.js';
import type { Reworded } from '../reworded.js';
import { at, fallen, REST } from './standingAtOnce.js';

/** As in `english/standingDetails`. */
export const standingDetails: Reworded<typeof english> = {
  'fall-delayed': (f, say) =>
    `La presión bajó${fallen(f, say)} solo ${at(f, say)}, más tarde de tres minutos, una bajada tardía: ${REST}`,
  'fall-recovered': (f, say) =>
    `La bajada había desaparecido ${at(f, say)}: registre ambas lecturas y mida otra vez si la persona la notó.`,
  'pulse-change': (f, say) =>
    f.value('pulseRise') > 0
      ? `El pulso subió de pie ${say.rate(f.value('pulseRise'))} por minuto como máximo.`
      : f.value('pulseRise') < 0
        ? `El pulso no subió de pie: como máximo fue ${say.rate(-f.value('pulseRise'))} por minuto menos que antes.`
        : 'El pulso no subió de pie.',
  'heart-rate-ratio-low': (f, say) =>
    `El pulso subió ${say.beside(f.value('ratio'), f.value('limit'), 2)} por minuto por cada mmHg de bajada, menos de ${say.limit(f.value('limit'))}: un patrón compatible con nervios que no responden a la bajada; es un indicio y nada más, así que comuníquelo al profesional responsable.`,
  'rise-without-fall': (f, say) =>
    `El pulso subió ${say.beside(f.value('pulseRise'), f.value('limitPerMinute'))} por minuto, ${say.limit(f.value('limitPerMinute'))} o más, sin una bajada en las lecturas tomadas: regístrelo con lo que notó la persona y comuníquelo. Confirme este límite con su protocolo local.`,
  'hypertensive-fall-limit': (f, say) =>
    `Juzgado con una bajada de ${say.limit(f.value('limitMmHg'))} de la sistólica, porque se sabe que la presión es alta en decúbito; una bajada menor que se note también se comunica.`,
  'initial-fall-not-seen': () =>
    'Una bajada en el primer cuarto de minuto, que pasa pronto, no se ve con un manguito: pregunte qué se notó al levantarse.',
  'first-minute-not-measured': (f, say) =>
    `No se midió nada en el minuto ${say.limit(f.value('minutes'))}, así que pudo pasarse por alto una bajada temprana: para verla hace falta también una lectura entonces.`,
  'fall-not-comparable': () =>
    'Falta un número en reposo o de pie, así que no se excluye una bajada: mida ambas presiones cada vez.',
  'no-systolic-fall': () =>
    'La sistólica no bajó hasta su límite en los tres minutos de pie, así que la subida del pulso por cada mmHg de bajada no significa nada.',
  'ratio-needs-lying': () =>
    'La subida del pulso por cada mmHg de bajada solo se conoce desde el decúbito: empiece la prueba con la persona acostada.',
  'no-pulse-with-fall': () => 'Falta el pulso con la bajada, o en reposo: cuéntelo cada vez.',
  'rhythm-not-known': () =>
    'La subida del pulso por cada mmHg de bajada vale en el propio ritmo regular del corazón según un trazado, sin marcapasos y sin un fármaco que frene el corazón: averígüelo primero.',
  'rhythm-not-sinus': () =>
    'El corazón no está en su propio ritmo regular: la subida del pulso por cada mmHg de bajada no significa nada aquí.',
  'has-pacemaker': () => 'Con un marcapasos la subida del pulso por cada mmHg de bajada no significa nada.',
  'takes-rate-slowing-drug': () =>
    'Con un fármaco que frena el corazón la subida del pulso por cada mmHg de bajada no significa nada.',
};
