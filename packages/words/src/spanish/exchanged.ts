import type { exchanged as english } from '../english/exchanged.js';
import type { Reworded } from '../reworded.js';
import { BEATS, BREATHS } from './screens/nouns.js';

const READINGS = { one: 'lectura', other: 'lecturas' };
const DAYS = { one: 'día', other: 'días' };

/** As in `english/exchanged`. */
export const exchanged: Reworded<typeof english> = {
  countedPulse: (f, say) => `${say.counted(f.n, BEATS)} en ${say.short(f.seconds)} s, por recuento`,
  countedBreaths: (f, say) => `${say.counted(f.n, BREATHS)} en ${say.short(f.seconds)} s, por recuento`,
  typedRate: 'se escribió una frecuencia; no se sabe cómo se contó',
  typedRateOver: (f, say) => `se escribió una frecuencia, contada durante ${say.short(f.seconds)} s`,
  brokenOff: 'recuento interrumpido: sin número',
  tappedPulse: (f, say) => `${say.counted(f.beats, BEATS)}, tocados uno a uno`,
  tappedBreaths: (f, say) => `${say.counted(f.beats, BREATHS)}, tocadas una a una`,
  phaseFive: 'auscultación; diastólica al desaparecer los ruidos (fase 5)',
  toZero: (f, say) =>
    `auscultación; ruidos hasta cero, fase 4 (amortiguación) = ${say.short(f.muffled)} mmHg`,
  homeSeries: 'Tomada en casa',
  ambulatorySeries: 'Por un registrador, en 24 horas',
  startedByHand: 'Inicio manual.',
  timeNotWritten: 'Nadie anotó la hora: es la habitual de su sesión.',
  minuteNotWritten: (f, say) =>
    `Lectura ${say.short(f.place)} de la sesión de las ${f.at}: su minuto propio no se anotó.`,
  homeFromTo: (f) => `Lecturas en casa, del ${f.from} al ${f.until}.`,
  recordingFromTo: (f) => `Registro de 24 horas, del ${f.from} al ${f.until}.`,
  byRuleSet: (f) => `Promediado según ${f.title} (${f.preset}), regla ${f.rule}.`,
  notByRuleSet: (f) =>
    `Promediado con las reglas generales, regla ${f.rule}: aquello con lo que llegó (${f.preset}) no se guarda aquí.`,
  noRuleSet: (f) =>
    `No se eligió ningún conjunto de reglas; promediado con las reglas generales, regla ${f.rule}.`,
  meanOfSeries: (f) => `Media ${f.mean} mmHg. ${f.rule}`,
  noMean: (f) => `Sin media. ${f.rule}`,
  homeMeanOf: (f, say) =>
    `Usadas: ${say.counted(f.used, READINGS)} en ${say.counted(f.days, DAYS)}; dejadas fuera: ${say.short(f.left)}.`,
  recordingOf: (f, say) => `Usadas: ${say.counted(f.used, READINGS)}; dejadas fuera: ${say.short(f.left)}.`,
  dayLongMeanOf: (f, say) =>
    `Media de 24 horas (${f.weighting}); usadas: ${say.counted(f.used, READINGS)}; dejadas fuera: ${say.short(f.left)}.`,
  dayMeanOf: (f, say) => `Media de día, de ${say.counted(f.used, READINGS)}; ${f.by}.`,
  nightMeanOf: (f, say) => `Media de noche, de ${say.counted(f.used, READINGS)}; ${f.by}.`,
  dayAndNight: (f, say) =>
    `De día ${f.day} mmHg (${say.counted(f.dayUsed, READINGS)}), de noche ${f.night} mmHg (${say.short(f.nightUsed)}); ${f.by}.`,
  leftOutFor: (f, say) => `Fuera de la media, ${say.counted(f.readings, READINGS)}: ${f.reason}`,
  decidedByHand: (f, say) =>
    `Decidido a mano, dentro o fuera de la media: ${say.counted(f.readings, READINGS)}.`,
  actNow: (f) => `Actúe ya: ${f.text}`,
  palpation: 'palpación: se notó volver el pulso',
  device: 'números leídos en la pantalla de un aparato',
  cuffIs: (f) => `Manguito: ${f.cuff}${f.scheme}`,
  armIs: (f, say) => `Brazo: ${say.short(f.cm, 1)} cm`,
  setByHand: (f) => `Fijado a mano: ${f.reason}`,
  contested: 'Dos enmiendas no concuerdan sobre este valor; se escribe cada una.',
  unsigned: 'Ninguna firma nombra este valor.',
  onAir: 'Con aire ambiente',
  onOxygen: 'Con oxígeno',
  category: (f) => `Categoría ${f.category} según ${f.guideline}`,
  underProtocol: (f) => `Protocolo local, versión ${f.version}`,
  averageOf: (f, say) =>
    `Media de ${say.counted(f.readings, { one: 'lectura', other: 'lecturas' })} de una ronda, regla ${f.rule}`,
  madeBy: (f) => `${f.program}, regla ${f.rule}`,
  created: 'registrado',
  amended: (f) => `enmendado: ${f.reason}`,
  inError: (f) => `registrado por error: ${f.reason}`,
  roundBegan: (f) => `Cómo empezó la ronda: ${f.text}`,
  takenOutByHand: (f) => `Excluida de la media a mano: ${f.reason}.`,
  takenOutAtSource: 'retirado en su origen',
  homeMean: 'Media de la presión arterial en casa',
  wholeMean: 'Media de la presión arterial en 24 horas',
  dayMean: 'Media de la presión arterial de día',
  nightMean: 'Media de la presión arterial de noche',
  changedAtSource: 'cambiado en su origen',
  saidAgainAtSource: 'dicho de nuevo en su origen',
};
