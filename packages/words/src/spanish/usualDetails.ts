import type { usualDetails as english } from '../english/usualDetails.js';
import type { Reworded } from '../reworded.js';

/** As in `english/usualDetails`. */
export const usualDetails: Reworded<typeof english> = {
  'prior-flat': () => 'Nada se supone de la persona antes de estos números.',
  'prior-age-sex': (f, say) =>
    `Antes de estos números: la presión en consulta de adultos de EE. UU. de esta edad y sexo, media ${say.short(f.value('mean'))}, DE ${say.short(f.value('sd'))}, descontada la variación de cada persona. Para el domicilio y las 24 horas no se hallaron tales cifras.`,
  'office-visits': (f, say) =>
    `Las visitas a la consulta varían un ${say.short(f.value('cvPercent'))} % del nivel en una misma persona; la media dada se toma como de ${say.counted(f.value('visits'), { one: 'visita', other: 'visitas' })}.`,
  'home-variation': (f, say) =>
    `Las semanas en casa varían un ${say.short(f.value('weekCvPercent'))} % del nivel en una misma persona: una parte a largo plazo que más lecturas no reducen, y partes por día y por lectura que sí.`,
  'own-variation': () => 'Las partes por día y por lectura son las de esta misma serie.',
  'ambulatory-variation': (f, say) =>
    `Los registros de 24 horas varían un ${say.short(f.value('cvPercent'))} % del nivel en una misma persona.`,
  'home-offset': (f, say) =>
    `Domicilio menos consulta se toma como ${say.short(f.value('offset'))} mmHg, incierto en ${say.short(f.value('sd'))}; vale cerca de 140/90, menos seguro en otros niveles.`,
  'not-a-diagnosis': () =>
    'Una probabilidad de dónde está el nivel habitual, bajo estos supuestos; nunca la de una enfermedad.',
};
