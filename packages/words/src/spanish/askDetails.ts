import type { askDetails as english } from '../english/askDetails.js';
import type { Figures } from '../figures.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';

/** As in `english/askDetails`. */
export const askDetails: Reworded<typeof english> = {
  'severe-asks': (f, say) => `${reading(f, say)} es grave y puede ser una emergencia.`,
  'child-high-asks': (f, say) =>
    `${reading(f, say)} es alta para esta edad, sexo y talla (percentil 95 o más): con cualquiera de estos signos es una emergencia.`,
  'short-child-high-asks': (f, say) =>
    `${reading(f, say)} puede ser alta para este niño o niña, cuyos límites propios no se conocen: está en el percentil 95 o más de alguien de baja talla de esa edad, y con cualquiera de estos signos es una emergencia.`,
  'read-implausible': (f, say) => `${reading(f, say)} no es lo que suele dar un brazo.`,
  'read-very-low': (f, say) => `${reading(f, say)} es muy baja.`,
  'read-far-from-before': (f, say) =>
    `La sistólica de ${say.short(f.value('systolic'))} está lejos de la de ${say.short(f.value('beforeSystolic'))}, de ${say.counted(Math.floor(f.value('minutesAgo')), { one: 'minuto', other: 'minutos' })} antes.`,
  'read-diastolic-far-from-before': (f, say) =>
    `La diastólica de ${say.short(f.value('diastolic'))} está lejos de la de ${say.short(f.value('beforeDiastolic'))}, de ${say.counted(Math.floor(f.value('minutesAgo')), { one: 'minuto', other: 'minutos' })} antes.`,
};

/** The reading as far as it has numbers. */
function reading(f: Figures, say: Say): string {
  if (!f.has('diastolic')) return `La sistólica de ${say.short(f.value('systolic'))}`;
  if (!f.has('systolic')) return `La diastólica de ${say.short(f.value('diastolic'))}`;
  return `La lectura de ${say.short(f.value('systolic'))}/${say.short(f.value('diastolic'))}`;
}
