import type { roundDetails as english } from '../english/roundDetails.js';
import type { Reworded } from '../reworded.js';

/** As in `english/roundDetails`. */
export const roundDetails: Reworded<typeof english> = {
  'longer-count': (f, say) =>
    `La frecuencia tomada hasta ahora pide un recuento más largo: cuente ${say.short(f.value('nextWindowSeconds'))} s.`,
  'first-time-both-arms': () =>
    'Es la primera presión de esta persona aquí: tome también el otro brazo, para saber cuál da más.',
  'both-arms-ahead': () =>
    'Es la primera presión de esta persona aquí: se toman los dos brazos, uno tras otro. Tenga el manguito a mano.',
  'asked-for': () => 'Usted lo pidió en esta ronda.',
  'third-minute-not-measured': (f, say) =>
    `No hay lectura de pie en el minuto ${say.limit(f.value('minutes'))}, así que no se excluye una bajada: para eso hace falta una lectura entonces, si la persona puede estar de pie.`,
  'low-before-standing': (f, say) =>
    `La sistólica es de ${say.short(f.value('systolic'))} mmHg, ${f.has('limitMmHg') ? `menos de ${say.limit(f.value('limitMmHg'))}` : 'muy baja según los límites vigentes aquí'}: no ponga de pie a esta persona sin que lo diga su protocolo local o alguien con más experiencia; deje la lectura de pie, o conserve la ronda como está y avise.`,
  'child-sex-missing': () =>
    'La presión de un niño o niña no se puede clasificar sin su sexo, y no se da por normal: añada «Sexo para las tablas de referencia» entre los datos de esta persona.',
  'child-height-missing': () =>
    'La presión de un niño o niña no se puede clasificar sin su talla, y no se da por normal: mida la talla en esta ronda, en «Otros signos».',
  'child-height-impossible': (f, say) =>
    `Una talla de ${say.length(f.value('heightCm'))} no puede ser a esta edad y con este sexo, así que la presión no se clasifica y no se da por normal: mida la talla de nuevo y revise la fecha de nacimiento.`,
  'under-age-of-scheme': () =>
    'El niño o niña es menor de lo que abarca este esquema, así que nada se dice de la presión: compárela con sus tablas locales.',
};
