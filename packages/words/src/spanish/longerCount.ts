import type { longerCount as english } from '../english/longerCount.js';
import type { Reworded } from '../reworded.js';
import { otherRate } from './countDetails.js';

/** As in `english/longerCount`. */
export const longerCount: Reworded<typeof english> = {
  reasons: {
    'fast-for-window': (f, say) =>
      `${say.beside(f.value('perMinute'), f.value('fastPerMinute'))} por minuto es más de ${say.limit(f.value('fastPerMinute'))}, y una frecuencia rápida contada solo ${say.short(f.value('windowSeconds'))} s no es bastante exacta`,
    'slow-on-short-count': (f, say) =>
      `${say.beside(f.value('perMinute'), f.value('slowPerMinute'))} por minuto es menos de ${say.limit(f.value('slowPerMinute'))}, y se contó solo ${say.short(f.value('windowSeconds'))} s`,
    'fast-on-short-count': (f, say) =>
      `${say.beside(f.value('perMinute'), f.value('fastPerMinute'))} por minuto es más de ${say.limit(f.value('fastPerMinute'))}, y se contó solo ${say.short(f.value('windowSeconds'))} s`,
    'breaths-full-minute': (f, say) =>
      `las respiraciones contadas ${say.short(f.value('windowSeconds'))} s tienden a salir de menos`,
    irregular: () =>
      'se notó irregular, así que un recuento corto puede fallar bastante por exceso o por defecto (comuníquelo)',
    weak: () => 'se notó débil, así que es fácil perder latidos (o pruebe en otro sitio)',
    'first-set': () => 'es la primera serie de esta persona, con la que se compararán otras',
    young: (f, say) =>
      `antes de los ${say.limit(f.value('youngUnderMonths'))} meses (aquí ${say.beside(f.value('ageMonths'), f.value('youngUnderMonths'), 1)}) las frecuencias cambian de un momento a otro`,
    apical: () => 'oído en el ápex (cada par de ruidos es uno)',
    'heart-rate-drug': () =>
      'un fármaco actúa sobre la frecuencia cardiaca (registre si fue antes o después)',
    disagrees: (f, say) =>
      `${say.rate(f.value('perMinute'))} por minuto difiere en ${say.beside(f.value('differencePerMinute'), f.value('disagreementPerMinute'))} de los ${otherRate(f, say)}, más de ${say.limit(f.value('disagreementPerMinute'))}`,
  },
  all: (f, say, reasons) =>
    `Cuente ${say.short(f.seconds)} s, por cada uno de estos motivos: ${reasons.join('; ')}.`,
};
