import type { standingAtOnce as english } from '../english/standingAtOnce.js';
import type { Figures } from '../figures.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';

export const REST = 'si la persona está inestable, que se acueste; regístrelo y comuníquelo.';

/** As in `english/standingAtOnce`. */
export const standingAtOnce: Reworded<typeof english> = {
  'fall-on-standing': (f, say) =>
    `La presión bajó${fallen(f, say)} ${at(f, say)}, lo que alcanza los límites de una bajada al ponerse de pie${still(f, say)}: ${REST}`,
  'symptoms-on-standing': (f, say) =>
    `La persona se encontró mal ${at(f, say)}: pare, acuéstela, registre lo que notó y comuníquelo; pida ayuda si hay dolor en el pecho o un desmayo.`,
  'standing-systolic-low': (f, say) =>
    `La sistólica de pie fue de ${
      f.has('limitMmHg')
        ? `${say.beside(f.value('systolic'), f.value('limitMmHg'))} ${at(f, say)}, menos de ${say.limit(f.value('limitMmHg'))}`
        : `${say.short(f.value('systolic'))} ${at(f, say)}, muy baja según los límites vigentes aquí`
    }: acueste a la persona, mida de nuevo y avise según su protocolo local.`,
};

/** How far which number fell, where it is known. */
export function fallen(f: Figures, say: Say): string {
  const systolic = f.has('systolicFall') ? [`${say.short(f.value('systolicFall'))} la sistólica`] : [];
  const diastolic = f.has('diastolicFall') ? [`${say.short(f.value('diastolicFall'))} la diastólica`] : [];
  const both = [...systolic, ...diastolic];
  return both.length === 0 ? '' : ` ${say.allOf(both)}`;
}

/** What was left of a fall at the third minute, where it lasts. */
function still(f: Figures, say: Say): string {
  if (!f.has('lastMinutes')) return '';
  const systolic = f.has('lastSystolicFall')
    ? [`${say.short(f.value('lastSystolicFall'))} la sistólica`]
    : [];
  const diastolic = f.has('lastDiastolicFall')
    ? [`${say.short(f.value('lastDiastolicFall'))} la diastólica`]
    : [];
  const both = [...systolic, ...diastolic];
  const down = both.length === 0 ? '' : ` (${say.allOf(both)})`;
  return `, y a los ${say.short(f.value('lastMinutes'))} min de pie seguía más baja${down}`;
}

export function at(f: Figures, say: Say): string {
  if (!f.has('minutes')) return 'en un momento que nadie anotó';
  const minutes = f.value('minutes');
  if (minutes === 0) return 'de inmediato';
  return minutes === 1 ? 'al minuto' : `a los ${say.short(minutes)} min`;
}
