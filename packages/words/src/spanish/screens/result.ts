import type { result as english } from '../../english/screens/result.js';
import type { Reworded } from '../../reworded.js';
import type { Say } from '../../say.js';

/** As in `english/screens/result`. */
export const result: Reworded<typeof english> = {
  title: 'Lo que resulta de la ronda',
  average: 'Media',
  furtherNumbers: 'Otros números',
  by: (f) => `según ${f.text}`,
  byGeneral: (f) => `según la regla general (la de ${f.text}), pues aquí no se eligió ningún protocolo`,
  ofReadings: (f, say) => `de ${say.counted(f.readings, { one: 'lectura', other: 'lecturas' })}`,
  noAverage: 'Todavía sin media',
  category: 'Categoría',
  fallsIn: (f) => `${f.pressure} cae en «${f.category}» según ${f.guideline}.`,
  fallsInOne: (f, say) =>
    `${highest(f, say)}, y todavía sin media: cae en «${f.category}» según ${f.guideline}.`,
  atLeastIn: (f) =>
    `La ${f.pressure} por sí sola cae en «${f.category}» según ${f.guideline}; sin el otro número no hay categoría.`,
  noneOfLow: 'No se nombra ninguna: las categorías son de presión alta, y esta es baja.',
  highAlone: 'Una categoría habla solo de la presión alta, no de una baja.',
  notPlaced: 'No se puede poner en una categoría.',
  noProtocol: 'Aquí no se eligió ningún protocolo, así que no se muestra ninguna categoría.',
  earlyWarning: 'Puntuación de alerta temprana',
  points: (f, say) => `${say.short(f.points)}`,
  atLeast: (f, say) =>
    `sin completar${f.points === 0 ? '' : `, al menos ${say.short(f.points)}`}: ${f.parts.length === 1 ? 'falta' : 'faltan'} ${say.counted(f.parts.length, { one: 'parte', other: 'partes' })} (${say.allOf(f.parts)})`,
  college: 'Números del Royal College of Physicians, Londres 2017.',
  notWhole: 'incompleta: faltan partes',
  meanPressure: 'Presión media',
  pulsePressure: 'Presión de pulso',
  byLast: 'su presión solo por la última lectura y no por la media',
  mmHgOfLast: (f, say) => `${say.number(f.mmHg)} mmHg, solo de la última lectura`,
  mmHg: (f, say) => `${say.number(f.mmHg)} mmHg`,
  arms: 'Los dos brazos',
  standing: 'En decúbito y de pie',
  rechecks: 'Para mirar de nuevo',
  dueFrom: (f) => `desde las ${f.from}`,
  dueFromBy: (f) => `desde las ${f.from}, antes de las ${f.by}`,
  unwell: 'La persona tiene mal aspecto o se encuentra mal',
  wanted: 'También se toma en esta ronda',
  wantPain: 'Otros signos',
  other: 'Otros signos',
};

/** A single reading, or which of several it is. */
function highest(
  { pressure, highestOf }: { readonly pressure: string; readonly highestOf: number },
  say: Say,
): string {
  if (highestOf < 2) return `Una lectura, ${pressure}`;
  return `${pressure}, la ${highestOf === 2 ? 'mayor' : 'más alta'} de ${say.short(highestOf)} lecturas`;
}
