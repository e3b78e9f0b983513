import type { tapsDetails as english } from '../english/tapsDetails.js';
import type { Reworded } from '../reworded.js';

const INTERVALS = { one: 'intervalo', other: 'intervalos' };
const BEATS = { one: 'latido', other: 'latidos' };
const TAPS = { one: 'toque', other: 'toques' };
const READINGS = { one: 'lectura con ambos números', other: 'lecturas con ambos números' };

/** As in `english/tapsDetails`. */
export const tapsDetails: Reworded<typeof english> = {
  'too-few': (f, say) =>
    f.has('readings')
      ? `${say.counted(f.value('readings'), READINGS)} ${say.form(f.value('readings'), { one: 'es', other: 'son' })} muy poco para una media, que aquí necesita ${say.short(f.value('needs'))}.`
      : `De ${say.counted(f.value('taps'), TAPS)} no sale ninguna frecuencia; hacen falta al menos ${say.short(f.value('needs'))}: siga tocando.`,
  'tapping-paused': (f, say) =>
    `Hay un hueco de ${say.short(f.value('seconds'))} s tras el toque ${say.short(f.value('afterTap'))}, más largo de lo que explican toques perdidos, así que no hay frecuencia. Si se dejó de tocar, toque de nuevo; si se detuvo lo que tocaba, mire primero a la persona y actúe según su protocolo local, y después cuente un minuto entero.`,
  'too-few-for-statistics': (f, say) =>
    `No se puede decir cuánto varían los intervalos con ${say.counted(f.value('intervals'), INTERVALS)}: hacen falta ${say.short(f.value('needs'))} seguidos.`,
  'too-few-for-range': (f, say) =>
    `No se puede decir hasta qué punto es fiable la frecuencia con ${say.counted(f.value('intervals'), INTERVALS)}: toque hasta que haya ${say.short(f.value('needs'))}.`,
  'too-few-for-jitter': (f, say) =>
    `No se puede separar su precisión del ritmo de la persona con ${say.counted(f.value('intervals'), INTERVALS)}: hacen falta ${say.short(f.value('needs'))}.`,
  'jitter-cannot-be-told': () =>
    'Con este ritmo no se puede separar su precisión de los cambios propios de la persona, así que no se da: para conocer la suya, toque siguiendo un compás estable.',
  'touch-bounces': (f, say) =>
    `${say.counted(f.value('removed'), TAPS)} a menos de ${say.short(f.value('limitMs'))} ms del anterior se tomaron por el mismo contacto: separe bien el dedo entre latidos.`,
  'irregular-not-repaired': (f, say) =>
    `Los toques varían demasiado (${say.percentBeside(f.value('spread'), f.value('limit'))} %, límite ${say.short(100 * f.value('limit'))} %) para distinguir un descuido del ritmo, así que no se corrigió ninguno: si se notó irregular, cuente un minuto entero (un pulso, también en el ápex) y comuníquelo.`,
  'steady-not-sure': (f, say) =>
    `Parece haber un descuido, pero los demás intervalos varían un ${say.percentBeside(f.value('variation'), f.value('limit'), 1)} %, y con ${say.counted(f.value('intervals'), INTERVALS)} solo un ${say.short(100 * f.value('limit'))} % o menos es con seguridad un ritmo estable, así que no se corrigió ninguno: siga tocando, o cuente un minuto entero.`,
  'too-many-missed': (f, say) =>
    `En ${say.short(f.value('gaps'))} de ${say.counted(f.value('intervals'), INTERVALS)} parece faltar un latido, demasiados para ser descuidos, así que no se añadió ninguno: cuente un minuto entero (un pulso, también en el ápex) y comuníquelo.`,
  'missed-in-turn': (f, say) =>
    `Parece faltar un latido cada ${say.counted(Math.round(f.value('everyIntervals')), INTERVALS)} más o menos (${say.short(f.value('gaps'))} veces): eso guarda un compás, así que se toma como propio de la persona y no se añadió ninguno: cuente un minuto entero (un pulso, también en el ápex) y comuníquelo.`,
  'beats-put-in': (f, say) =>
    `La frecuencia incluye ${say.counted(f.value('added'), BEATS)} que nadie tocó, por tomarlo como descuido; lo tocado da ${say.number(f.value('tappedPerMinute'))} por minuto. Si pudo faltar un latido, cuente un minuto entero.`,
  'rhythm-irregular': () =>
    'Irregular, según los toques o lo notado: cuente un minuto entero (un pulso, también en el ápex) y comuníquelo; ninguna frecuencia de un tramo corto lo representa.',
  'too-few-for-rhythm': (f, say) =>
    `No se puede nombrar el ritmo con ${say.counted(f.value('intervals'), INTERVALS)}; hacen falta ${say.short(f.value('needs'))}: siga tocando si se notó irregular.`,
  'many-missed': (f, say) =>
    `Faltan toques en ${say.short(f.value('gaps'))} de ${say.counted(f.value('intervals'), INTERVALS)}, por descuidos o por latidos que no se notaron: cuente un minuto entero (un pulso, también en el ápex) y comuníquelo.`,
  'rhythm-not-clear': (f, say) =>
    `Los intervalos varían un ${say.percent(f.value('nrmssd'))} de uno al siguiente y un ${say.percent(f.value('cv'))} en conjunto, demasiado para llamarlo regular y sin un patrón bastante claro para nombrarlo: toque de nuevo, o cuente un minuto entero.`,
  'rate-impossible': (f, say) =>
    `${say.beside(f.value('perMinute'), f.value('ceilingPerMinute'))} por minuto es más de lo que nadie tiene (${say.short(f.value('ceilingPerMinute'))}): no lo registre, toque de nuevo.`,
};
