import type { exchanged as english } from '../english/exchanged.js';
import type { Reworded } from '../reworded.js';
import { BEATS, BREATHS } from './screens/nouns.js';

/** As in `english/exchanged`. */
export const exchanged: Reworded<typeof english> = {
  countedPulse: (f, say) => `${say.counted(f.n, BEATS)} en ${say.short(f.seconds)} s, por recuento`,
  countedBreaths: (f, say) => `${say.counted(f.n, BREATHS)} en ${say.short(f.seconds)} s, por recuento`,
  brokenOff: 'recuento interrumpido: sin número',
  tappedPulse: (f, say) => `${say.counted(f.beats, BEATS)}, tocados uno a uno`,
  tappedBreaths: (f, say) => `${say.counted(f.beats, BREATHS)}, tocadas una a una`,
  siteOf: (f) => `${f.side} ${f.site}`,
  phaseFive: 'auscultación; diastólica al desaparecer los ruidos (fase 5)',
  toZero: (f, say) =>
    `auscultación; ruidos hasta cero, fase 4 (amortiguación) = ${say.short(f.muffled)} mmHg`,
  homeSeries: 'Tomada en casa',
  ambulatorySeries: 'Por un registrador, en 24 horas',
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
  changedAtSource: 'cambiado en su origen',
};
