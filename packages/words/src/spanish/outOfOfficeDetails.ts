import type { outOfOfficeDetails as english } from '../english/outOfOfficeDetails.js';
import type { Reworded } from '../reworded.js';

const READINGS = { one: 'lectura', other: 'lecturas' };

/** As in `english/outOfOfficeDetails`. */
export const outOfOfficeDetails: Reworded<typeof english> = {
  'dropped-day': (f, say) =>
    `Una lectura del día ${say.short(f.value('day'))} de medición, que este conjunto de reglas deja fuera.`,
  'first-of-sitting': () => 'La primera lectura de su toma, que este conjunto de reglas deja fuera.',
  'beyond-two': (f, say) =>
    `Lectura ${say.short(f.value('place'))} de su toma: este conjunto de reglas usa las dos primeras.`,
  duplicate: () => 'La misma hora y los mismos números ya están: se cuenta una vez.',
  wrist: () =>
    'Tomada en la muñeca: nunca se promedia con lecturas del brazo, y una muñeca por debajo del corazón da de más, por encima da de menos.',
  rejected: () => 'Retirada a mano.',
  'too-few-readings': (f, say) =>
    `Muy pocas lecturas para este conjunto de reglas: ${say.short(f.value('readings'))} después de dejar fuera, y pide ${say.short(f.value('least'))}. La media se muestra; no se da categoría.`,
  'too-few-days': (f, say) =>
    `Muy pocos días para este conjunto de reglas: ${say.short(f.value('days'))} con alguna lectura, y pide ${say.short(f.value('least'))}. La media se muestra; no se da categoría.`,
  'no-readings': () => 'No queda ninguna lectura que promediar.',
  'refused-file': () => 'Este archivo fue rechazado.',
  'not-valid-series': () => 'Lecturas insuficientes para el conjunto de reglas.',
  'no-spread': () => 'No tiene dispersión, o media, de sistólica o diastólica.',
  'few-mornings': (f, say) =>
    `La variación de la sistólica de día a día pide dos lecturas en ${say.short(f.value('least'))} mañanas o más: aquí ${say.short(f.value('mornings'))}.`,
  'no-limit': () => 'Este conjunto de reglas no da límite, así que nada se llama alto ni no alto.',
  child: (f, say) =>
    `La persona tiene ${say.short(f.value('ageYears'))} años: los límites de adultos no valen y no se da categoría.`,
  pregnancy: () =>
    'En el embarazo valen otros límites: aquí no se da categoría. Actúe según su protocolo local.',
  'sittings-first': (f, say) =>
    `Según estas reglas cada toma se promedia antes: las medias son de ${say.counted(f.value('sittings'), { one: 'toma', other: 'tomas' })}, no de las lecturas.`,
  'same-time-other-value': (f, say) =>
    `${say.form(f.value('readings'), { one: 'Una lectura tiene', other: `${say.short(f.value('readings'))} lecturas tienen` })} la misma hora que otra y otros números: se guardan ambas. Compruebe el papel.`,
  failed: () => 'El registrador no dio presión: una medición fallida.',
  'after-24-hours': () =>
    'Más de 24 horas después de la primera lectura: no se usa salvo que se pidan todas.',
  'systolic-not-over-diastolic': () => 'La sistólica no supera a la diastólica: se toma por un artefacto.',
  'systolic-range': () =>
    'La sistólica está fuera del intervalo de la regla de edición: se toma por un artefacto.',
  'diastolic-range': () =>
    'La diastólica está fuera del intervalo de la regla de edición: se toma por un artefacto.',
  'pulse-range': () => 'El pulso está fuera del intervalo de la regla de edición: se toma por un artefacto.',
  'pulse-pressure-range': () =>
    'La sistólica menos la diastólica está fuera del intervalo de la regla de edición: se toma por un artefacto.',
  'ratio-range': () =>
    'La razón entre sistólica y diastólica está fuera del intervalo de la regla de edición: se toma por un artefacto.',
  'far-from-mean': (f, say) =>
    `A más de ${say.short(f.value('sds'), 2)} DE de la media de su período: se toma por un artefacto.`,
  'too-few-percent': (f, say) =>
    `Se conserva el ${say.short(f.value('percent'), 1)} % de las lecturas programadas, y este conjunto de reglas pide el ${say.short(f.value('leastPercent'))} %: repita el registro.`,
  'schedule-not-known': (f, say) =>
    `Todas las lecturas son de inicio manual: no se sabe cuánto llegó de lo programado, y este conjunto de reglas pide el ${say.short(f.value('leastPercent'))} %. Diga cuántas lecturas se programaron.`,
  'too-few-day': (f, say) =>
    `${say.counted(f.value('readings'), READINGS)} de día, y este conjunto de reglas pide ${say.short(f.value('least'))}: repita el registro.`,
  'too-few-night': (f, say) =>
    `${say.counted(f.value('readings'), READINGS)} de noche, y este conjunto de reglas pide ${say.short(f.value('least'))}: repita el registro.`,
  'too-long-empty': (f, say) =>
    `Hay ${say.short(f.value('hours'), 1)} horas seguidas sin lecturas, y este conjunto de reglas no usa un registro con ${say.short(f.value('longest'), 1)} o más: repita el registro.`,
  'too-few-asleep-for-class': (f, say) =>
    `Muy pocas lecturas durante el sueño para clasificar la bajada nocturna: ${say.short(f.value('readings'))}, y se piden ${say.short(f.value('least'))}.`,
  'few-for-variability': (f, say) =>
    `${say.counted(f.value('readings'), READINGS)}: los índices de variabilidad son débiles con menos de ${say.short(f.value('least'))} en 24 horas.`,
  'longest-gap': (f, say) =>
    `El hueco más largo sin lecturas es de ${say.short(f.value('hours'), 1)} horas: no se traza línea a través de él, pero las medias en el tiempo y los pasos de lectura a lectura pasan por él.`,
  'night-by-clock': () =>
    'No se dan horas de sueño ni hay lecturas marcadas como dormido, así que día y noche son horas del reloj: de quien trabaja de noche o durmió de día solo los dicen sus propias horas de sueño.',
  'under-a-day': (f, say) =>
    `De la primera lectura al final duró ${say.short(f.value('hours'), 1)} horas, y esta guía pide ${say.short(f.value('least'))} o más.`,
  'far-apart-by-day': (f, say) =>
    `De día hay una lectura cada ${say.short(f.value('minutes'))} minutos: dispersión, descenso y curva son más seguros con una cada ${say.short(f.value('most'))} o menos.`,
  'far-apart-by-night': (f, say) =>
    `De noche hay una lectura cada ${say.short(f.value('minutes'))} minutos: dispersión, descenso y curva son más seguros con una cada ${say.short(f.value('most'))} o menos.`,
  'recording-longer': (f, say) =>
    `El registro dura más de ${say.short(f.value('hours'))} horas: no se usan ${say.counted(f.value('readings'), READINGS)} de después.`,
  'started-by-hand': (f, say) =>
    `${say.counted(f.value('readings'), READINGS)} de inicio manual, ${say.short(f.value('used'))} en uso: cuentan como lecturas del día, de la noche y del total, y en ningún porcentaje de lo programado.`,
  'class-is-weak': (f, say) =>
    `Un solo registro dice poco de la bajada nocturna: el ${say.short(f.value('changesPercent'))} % de las personas cambia de clase en el segundo.`,
};
