import type { scoreDetails as english } from '../english/scoreDetails.js';
import type { Figures } from '../figures.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';

const LOCAL = 'Prevalecen los números y plazos de su protocolo local.';
const CONFIRM = 'Confirme este límite con su protocolo local.';

const NO_LIFE =
  'mire primero a la persona; si no responde o no respira con normalidad, pida ayuda ya según el procedimiento de emergencia de su centro y empiece la reanimación como se le enseñó; si no, cuente de nuevo enseguida.';
const THREE = `es lo máximo que puede dar una parte: que un profesional de la planta revise a la persona con urgencia, y controle al menos cada hora, sea cual sea el total. ${LOCAL}`;

/** As in `english/scoreDetails`. */
export const scoreDetails: Reworded<typeof english> = {
  'no-breath-counted': () => `No se contó ninguna respiración: ${NO_LIFE}`,
  'no-pulse-counted': () => `No se contó ningún latido: ${NO_LIFE}`,
  'three-points-respirations': (f, say) =>
    `Una respiración de ${say.number(f.value('value'))} por minuto puntúa 3; ${THREE}`,
  'three-points-oxygen-saturation': (f, say) =>
    `Una saturación de ${say.number(f.value('value'))} % puntúa 3; ${THREE}`,
  'three-points-systolic': (f, say) =>
    `Una presión sistólica de ${say.number(f.value('value'))} puntúa 3; ${THREE}`,
  'three-points-pulse': (f, say) =>
    `Un pulso de ${say.number(f.value('value'))} por minuto puntúa 3; ${THREE}`,
  'three-points-consciousness': () => `No estar alerta, o una confusión reciente, puntúa 3; ${THREE}`,
  'three-points-temperature': (f, say) =>
    `Una temperatura de ${say.temperature(f.value('value'))} puntúa 3; ${THREE}`,
  'early-warning-medium': (f, say) =>
    `Al menos ${say.number(f.value('atLeast'))} puntos, y desde ${say.limit(f.value('limit'))} es media: que un profesional con experiencia en enfermedad aguda valore a la persona con urgencia. ${LOCAL}`,
  'early-warning-high': (f, say) =>
    `Al menos ${say.number(f.value('atLeast'))} puntos, y desde ${say.limit(f.value('limit'))} es alta: llame ya al equipo de emergencias, según el procedimiento de su centro, y quédese con la persona.`,
  'score-age-not-known': (f, say) =>
    `No se conoce la edad: esta puntuación vale desde los ${say.limit(f.value('fromYears'))} años, no en el embarazo ni con una lesión medular; compruebe que es para esta persona.`,
  'air-assumed': () =>
    'Puntuado como si respirara aire ambiente, porque no se dio --on-oxygen: con oxígeno la puntuación es mayor.',
  'saturation-doubtful': (f, say) =>
    `Esta puntuación incluye una saturación que no es fiable (${say.counted(f.value('points'), { one: 'punto', other: 'puntos' })} de ella): lea la saturación de nuevo y vuelva a puntuar, y actúe entretanto según lo que hay.`,
  'scale-two': () =>
    'Puntuado con la escala 2: solo donde un prescriptor, nombrado en el registro, lo decidió así para esta persona; si no, puntúe con la escala 1.',
  'parts-missing': (f, say) =>
    `${f.value('missing') === 1 ? 'Falta' : 'Faltan'} ${say.counted(f.value('missing'), { one: 'parte', other: 'partes' })}, así que no hay total: lo conocido da al menos ${say.number(f.value('atLeast'))}. Tome lo que falta; no lo lea como normal.`,
  'response-routine': () => 'Siga con los controles habituales.',
  'response-nurse-decides': () =>
    'Una enfermera o enfermero titulado mira a la persona y decide si controlar más a menudo o avisar.',
  'response-ward-review': () =>
    `Una parte con 3: un profesional de la planta revisa a la persona con urgencia y decide si avisar. ${LOCAL}`,
  'response-urgent-assessment': () =>
    `Un profesional con experiencia en enfermedad aguda valora a la persona con urgencia. ${LOCAL}`,
  'response-emergency-team': () =>
    `Un equipo con experiencia en cuidados críticos valora a la persona como una emergencia: llame ya. ${LOCAL}`,
  'check-every-hours': (f, say) =>
    f.value('hours') === 1
      ? `Controle al menos cada hora. ${LOCAL}`
      : `Controle al menos cada ${say.short(f.value('hours'))} horas. ${LOCAL}`,
  'check-between-hours': (f, say) =>
    `Controle al menos cada ${say.short(f.value('fromHours'))} a ${say.short(f.value('toHours'))} horas. ${LOCAL}`,
  'check-continuously': () => `Vigile todos los signos sin interrupción. ${LOCAL}`,
  'sepsis-screen-positive': (f, say) =>
    `Al menos ${say.number(f.value('atLeast'))} de 3 puntos, y desde ${say.limit(f.value('limit'))} es positivo: que se valore enseguida a la persona por si falla un órgano y por si hay infección, según su protocolo local. ${CONFIRM}`,
  'negative-does-not-reassure': () =>
    'Menos de dos puntos no tranquiliza: este cribado pasa por alto a muchas personas y no debe ser el único para la sepsis. Guíese por la persona y por su protocolo local.',
  'mean-pressure-low': (f, say) =>
    `Una presión media de ${besideOf(f, say)} es menos de ${limitOf(f, say)}: mire primero a la persona, mida de nuevo a mano sin demora y avise según su protocolo local. ${CONFIRM}`,
  'pulse-pressure-narrow': (f, say) =>
    `Una presión de pulso de ${besideOf(f, say)} es menos de un cuarto de la sistólica (${limitOf(f, say)}): compruebe el último ruido, mida de nuevo y mire a la persona. ${CONFIRM}`,
  'pulse-pressure-wide': (f, say) =>
    `Una presión de pulso de ${besideOf(f, say)} es ${limitOf(f, say)} o más, lo que en adultos mayores se llama amplia: compruebe el último ruido y mida de nuevo. ${CONFIRM}`,
  'shock-index-raised': (f, say) =>
    `Un índice de choque de ${besideOf(f, say, 2)} es más de ${limitOf(f, say)}, donde a las personas con lesiones les fue peor: mire primero a la persona y avise según su protocolo local.`,
  'shock-index-high': (f, say) =>
    `Un índice de choque de ${besideOf(f, say, 2)} es ${limitOf(f, say)} o más, el pulso tan alto como la sistólica: mire primero a la persona y pida ayuda ya según el procedimiento de su centro.`,
  'modified-shock-index-low': (f, say) =>
    `Un índice de choque modificado de ${besideOf(f, say, 2)} es menos de ${limitOf(f, say)}: mire a la persona y comuníquelo al profesional responsable. ${CONFIRM}`,
  'modified-shock-index-high': (f, say) =>
    `Un índice de choque modificado de ${besideOf(f, say, 2)} es más de ${limitOf(f, say)}: mire primero a la persona y avise según su protocolo local.`,
  'age-shock-index-high': (f, say) =>
    `Un índice de choque por edad de ${besideOf(f, say, 1)} es más de ${limitOf(f, say)}: mire primero a la persona y avise según su protocolo local. ${CONFIRM}`,
  'paediatric-shock-index-high': (f, say) =>
    `Un índice de choque de ${besideOf(f, say, 2)} a los ${say.number(f.value('age'))} años es más de ${limitOf(f, say)}: mire primero al niño o niña y avise según su protocolo local.`,
  'value-needs-diastolic': () =>
    'No hay una diastólica utilizable, como tras una presión palpada u oída hasta cero, así que esto no tiene valor: ausculte ambos ruidos, y la amortiguación, cuando pueda.',
  'inputs-missing': (f, say) =>
    `${f.value('missing') === 1 ? 'Falta' : 'Faltan'} ${say.counted(f.value('missing'), { one: 'número', other: 'números' })}, así que esto no tiene valor: tome lo que falta.`,
  'no-limit-for-age': (f, say) =>
    `No hay límite para ${say.number(f.value('age'))} años, solo de ${say.limit(f.value('fromYears'))} a ${say.limit(f.value('toYears'))}: el valor queda sin palabra.`,
  'adult-bands-only': (f, say) =>
    `Las palabras para este valor son para adultos desde los ${say.limit(f.value('fromYears'))} años (aquí ${say.number(f.value('age'))}): el valor queda sin palabra.`,
  'glasgow-severe': (f, say) =>
    `Un total de Glasgow de ${say.number(f.value('total'))} es ${say.limit(f.value('limit'))} o menos: pida ayuda ya, mantenga abierta la vía aérea y quédese con la persona. ${CONFIRM}`,
  'glasgow-part-missing': (f, say) =>
    `${f.value('missing') === 1 ? 'Falta' : 'Faltan'} ${say.counted(f.value('missing'), { one: 'parte', other: 'partes' })} de la escala de Glasgow, así que no hay total: explore lo que falta.`,
};

/** A value on its own side of the limit that it is told beside. */
function besideOf(f: Figures, say: Say, decimals = 0): string {
  return say.beside(f.value('value'), f.value('limit'), decimals);
}

function limitOf(f: Figures, say: Say): string {
  return say.limit(f.value('limit'));
}
