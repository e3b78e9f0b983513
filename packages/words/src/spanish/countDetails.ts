import type { countDetails as english } from '../english/countDetails.js';
import type { Figures } from '../figures.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';

/** As in `english/countDetails`. */
export const countDetails: Reworded<typeof english> = {
  'very-slow': (f, say) =>
    `${say.beside(f.value('perMinute'), f.value('limitPerMinute'))} por minuto es muy lento para un adulto: mire primero a la persona, actúe según su protocolo local y el procedimiento de emergencia, y después cuente de nuevo.`,
  'very-fast': (f, say) =>
    `${say.beside(f.value('perMinute'), f.value('limitPerMinute'))} por minuto es muy rápido para un adulto: mire primero a la persona, actúe según su protocolo local y el procedimiento de emergencia, y después cuente de nuevo.`,
  'convention-shifts-rate': (f, say) => {
    const shift = f.value('averageShiftPerMinute');
    const by = say.short(Math.abs(shift));
    return `Contada así, la frecuencia sale en promedio unos ${by} por minuto ${shift > 0 ? 'de más' : 'de menos'}: lo que en promedio no se desvía es empezar el reloj en cualquier momento y llamar uno al primer latido.`;
  },
  'range-assumes-regular': (f, say) =>
    `El intervalo de ${say.short(f.value('lowPerMinute'))} a ${say.short(f.value('highPerMinute'))} vale para un ritmo regular; este se notó irregular, así que no se fíe de él.`,
  'count-apex': () =>
    'Se notó irregular: ausculte además el ápex durante un minuto entero y comunique lo que halle.',
  'none-counted': (f, say) =>
    `No se contó nada en ${say.short(f.value('windowSeconds'))} s: mire a la persona antes que el reloj, actúe según su protocolo local y no tome esto por una frecuencia hasta haberlo comprobado.`,
  'shorter-than-offered': (f, say) =>
    `${say.beside(f.value('windowSeconds'), f.value('shortestWindowSeconds'), 1)} s es menos que cualquier ventana de las reglas vigentes: cuente ${say.limit(f.value('shortestWindowSeconds'))} s.`,
  'fast-for-window': (f, say) =>
    `${say.beside(f.value('perMinute'), f.value('fastPerMinute'))} por minuto es más de ${say.limit(f.value('fastPerMinute'))}, y una frecuencia rápida contada solo ${say.short(f.value('windowSeconds'))} s no es bastante exacta: cuente ${f.has('fullWindowSeconds') ? `${say.short(f.value('fullWindowSeconds'))} s antes de fiarse` : 'más tiempo'}.`,
  'slow-on-short-count': (f, say) =>
    `${say.beside(f.value('perMinute'), f.value('slowPerMinute'))} por minuto es menos de ${say.limit(f.value('slowPerMinute'))}, y se contó solo ${say.short(f.value('windowSeconds'))} s: cuente ${say.short(f.value('fullWindowSeconds'))} s antes de fiarse.`,
  'fast-on-short-count': (f, say) =>
    `${say.beside(f.value('perMinute'), f.value('fastPerMinute'))} por minuto es más de ${say.limit(f.value('fastPerMinute'))}, y se contó solo ${say.short(f.value('windowSeconds'))} s: cuente ${say.short(f.value('fullWindowSeconds'))} s antes de fiarse.`,
  'breaths-full-minute': (f, say) =>
    `Las respiraciones contadas ${say.short(f.value('windowSeconds'))} s tienden a salir de menos: cuente ${say.short(f.value('fullWindowSeconds'))} s.`,
  irregular: (f, say) =>
    `Se notó irregular: un recuento corto puede fallar bastante por exceso o por defecto, así que cuente ${say.short(f.value('fullWindowSeconds'))} s y comuníquelo.`,
  'irregular-known': (f, say) =>
    `Se sabe que el pulso es irregular: cuente ${say.short(f.value('fullWindowSeconds'))} s desde el principio.`,
  weak: (f, say) =>
    `Se notó débil: es fácil perder latidos, así que cuente ${say.short(f.value('fullWindowSeconds'))} s o pruebe en otro sitio.`,
  'first-set': (f, say) =>
    `Es la primera serie de esta persona y con ella se compararán otras: cuente ${say.short(f.value('fullWindowSeconds'))} s.`,
  young: (f, say) =>
    `Antes de los ${say.limit(f.value('youngUnderMonths'))} meses (aquí ${say.beside(f.value('ageMonths'), f.value('youngUnderMonths'), 1)}) las frecuencias cambian de un momento a otro: cuente ${say.short(f.value('fullWindowSeconds'))} s.`,
  apical: (f, say) =>
    `Oído en el ápex: cuente ${say.short(f.value('fullWindowSeconds'))} s, cada par de ruidos como uno.`,
  'heart-rate-drug': (f, say) =>
    `Un fármaco actúa sobre la frecuencia cardiaca: cuente ${say.short(f.value('fullWindowSeconds'))} s y registre si fue antes o después.`,
  disagrees: (f, say) =>
    `${say.rate(f.value('perMinute'))} por minuto difiere en ${say.beside(f.value('differencePerMinute'), f.value('disagreementPerMinute'))} de los ${otherRate(f, say)}, más de ${say.limit(f.value('disagreementPerMinute'))}: cuente ${say.short(f.value('fullWindowSeconds'))} s.`,
  interrupted: (f, say) =>
    f.has('atSeconds')
      ? `El recuento se interrumpió a los ${say.short(f.value('atSeconds'))} s y no tiene valor: espere un momento y empiece de nuevo.`
      : 'El recuento se interrumpió y no tiene valor: espere un momento y empiece de nuevo.',
  'not-simultaneous': () =>
    'El ápex y la muñeca no se contaron en el mismo minuto, así que pueden diferir solo por eso: que dos observadores cuenten con un mismo reloj.',
  'negative-deficit': (f, say) => {
    const [wrist, apex] = say.apart(f.value('radialPerMinute'), f.value('apicalPerMinute'));
    return `La muñeca (${wrist}) no puede latir más que el ápex (${apex}): uno de los dos se contó mal, así que cuente ambos de nuevo.`;
  },
  'deficit-to-report': (f, say) =>
    `${say.beside(f.value('deficitPerMinute'), f.value('reportAbovePerMinute'))} por minuto de los latidos oídos en el ápex no se notaron en la muñeca, más de ${say.limit(f.value('reportAbovePerMinute'))}: comuníquelo.`,
  deficit: (f, say) =>
    `${say.beside(f.value('deficitPerMinute'), 0)} por minuto de los latidos oídos en el ápex no se notaron en la muñeca: cuente ambos de nuevo y comuníquelo si se repite.`,
};

/** The rate that a count is unlike: on a display, or taken before. */
export function otherRate(f: Figures, say: Say): string {
  return f.has('devicePerMinute')
    ? `${say.rate(f.value('devicePerMinute'))} que muestra un aparato`
    : `${say.rate(f.value('previousPerMinute'))} de antes`;
}
