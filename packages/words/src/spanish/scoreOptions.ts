import type { scoreOptions as english } from '../english/scoreOptions.js';
import type { Reworded } from '../reworded.js';

/** As in `english/scoreOptions`. */
export const scoreOptions: Reworded<typeof english> = {
  scoreOf: 'qué puntuación o valor derivado',
  respirations: 'respiraciones por minuto',
  oxygenSaturation: 'saturación de oxígeno en porcentaje',
  oxygenScale: 'escala de la saturación (1 si falta; 2 solo si lo decidió un prescriptor con nombre)',
  onOxygen: 'con oxígeno (con aire ambiente si falta)',
  pulsePerMinute: 'pulso por minuto',
  consciousness: 'nivel de consciencia; confusion es una confusión de nueva aparición',
  temperature: 'temperatura en grados Celsius',
  glasgow: 'total de Glasgow, de 3 a 15',
  eyes: 'escala de Glasgow, ojos: de 1 a 4, o NT si no se puede explorar',
  verbal: 'escala de Glasgow, habla: de 1 a 5, o NT',
  motor: 'escala de Glasgow, movimiento: de 1 a 6, o NT',
  scorePregnant: 'embarazo: se rechaza una puntuación que no esté hecha para él',
  spinalInjury: 'con lesión medular: se rechaza una puntuación que no esté hecha para ella',
  weightKg: 'peso en kg',
  scoreHeightCm: 'talla en cm',
  lying: 'presión y pulso en decúbito, tras 5 min de reposo: 148/84x68',
  sitting: 'presión y pulso en sedestación, en lugar de en decúbito',
  standing: 'presión y pulso de pie, tantos minutos después de levantarse: 112/70x76',
  symptomsAt: 'minutos en los que la persona se encontró mal, separados por comas: 1,3',
  supineHypertension: 'se sabe que la presión es alta en decúbito: se pide una bajada de 30',
  notSinusRhythm: 'un trazado muestra que el corazón no está en su propio ritmo regular',
  pacemaker: 'la persona lleva marcapasos',
  rateSlowingDrug: 'la persona toma un fármaco que frena el corazón',
};
