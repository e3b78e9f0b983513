import type { categoryDetails as english } from '../english/categoryDetails.js';
import type { Reworded } from '../reworded.js';
import { DANGER_SIGNS } from './actNowDetails.js';

/** As in `english/categoryDetails`. */
export const categoryDetails: Reworded<typeof english> = {
  'severe-reading': () =>
    `Una presión tan alta puede ser una emergencia: mire primero a la persona y pregunte por ${DANGER_SIGNS}. Con cualquiera de ellos, o en el embarazo y las seis semanas siguientes, pida ayuda ya según el procedimiento de emergencia de su centro; sin ellos, repita a mano tras un reposo y comuníquelo al profesional responsable. Confirme esta lista con su protocolo local.`,
  'very-low': (f, say) =>
    `Una sistólica de ${say.beside(f.value('systolic'), f.value('limitMmHg'))} es muy baja (${say.limit(f.value('limitMmHg'))} o menos), y una categoría de presiones altas nada dice de eso: mire primero a la persona, repita a mano enseguida y avise según su protocolo local.`,
  'limits-from-memory': () =>
    'Confirme los límites de esta categoría con su protocolo local y, donde una presión pueda ser peligrosa, actúe primero.',
  'also-needs-average': (f, say) =>
    `Este estadio necesita además una media en casa o de día de ${say.limit(f.value('systolic'))}/${say.limit(f.value('diastolic'))} o más: organícela según su protocolo local.`,
  'treatment-rule': () =>
    'Esta es una regla sobre cuándo tratar una presión confirmada, y no una categoría: deje la decisión al profesional responsable.',
  'adult-assumed': () =>
    'No se conoce la edad, así que se tomaron los límites de adultos: indique la edad (la fecha de nacimiento, con la identidad) y no use estos límites con nadie menor de 18 años.',
  'pregnancy-scheme': () =>
    'En el embarazo y las seis semanas siguientes, los límites del embarazo sustituyen a los pedidos.',
  'no-systolic': () =>
    'No se conoce la sistólica, así que no hay categoría: guíese por lo que la diastólica indica por sí sola y tome otra lectura.',
  'no-diastolic': () =>
    'No se conoce la diastólica, como tras una lectura por palpación, así que no hay categoría: guíese por lo que la sistólica indica por sí sola, que es lo mínimo que puede ser, y ausculte si puede.',
  'diastolic-zero': () =>
    'Se oyeron ruidos hasta cero y no se anotó la amortiguación, así que la diastólica no cae en ninguna categoría: ausculte de nuevo para saber dónde se amortiguan los ruidos.',
  'centiles-not-included': () =>
    'Por debajo de 13 años esta guía usa tablas de percentiles que no están incluidas aquí: guíese por su cribado o por el Cuarto Informe con sexo, edad y talla.',
  'child-severe': () =>
    'Muy por encima de los límites de esta edad (confirme el límite con su protocolo local): mire primero al niño o niña, avise según su protocolo local y el procedimiento de emergencia, y repita a mano solo si eso no retrasa la ayuda.',
  'child-low': (f, say) =>
    `Una sistólica de ${say.beside(f.value('systolic'), f.value('limitMmHg'))} está por debajo de ${say.limit(f.value('limitMmHg'))}, baja a esta edad: mire primero al niño o niña, actúe según su protocolo local y el procedimiento de emergencia, y después revise el manguito y la lectura.`,
  'height-far-out': (f, say) =>
    `La talla está a ${say.beside(Math.abs(f.value('heightZ')), f.value('limitZ'), 1)} DE de la mediana de esa edad y sexo: revise la talla, la edad y el sexo, y no se apoye en estos límites.`,
  'printed-table-higher': () =>
    'Las tablas impresas omiten los decimales de un límite, y según ellas esta presión cae una categoría más arriba: diga por cuál de las dos se guía.',
};
