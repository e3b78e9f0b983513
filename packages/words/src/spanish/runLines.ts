import type { runLines as english } from '../english/runLines.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';

/** As in `english/runLines`. */
export const runLines: Reworded<typeof english> = {
  systolic: 'Sistólica',
  diastolic: 'Diastólica',
  muffled: 'Amortiguados',
  byFeel: 'por palpación',
  none: 'ninguna',
  cannotBeUsed: (f, say) => `${say.short(f.mmHg)}, que no se puede usar`,
  usedInPlace: (f, say) => `se usa ${say.short(f.used)} (el último ruido fue en ${say.short(f.heard)})`,
  rangeAlone: (f, say) =>
    `intervalo solo por desinflado y manómetro: ${say.around(f.low, f.high).join(' a ')}`,
  scatter: (f, say) =>
    `Las lecturas de una misma persona con minutos de diferencia se dispersan con una DE de unos ${say.short(f.mmHg)} mmHg.`,
  deflation: 'Desinflado',
  early: (f, say) => `${say.short(f.rate)} mmHg por segundo al principio`,
  mean: (f, say) => `${say.short(f.rate)} en conjunto`,
  perBeat: (f, say) => `${say.short(f.mmHg)} por latido`,
  felt: 'Por palpación, antes de auscultar',
  feltLost: (f, say) => `el pulso desapareció en ${say.short(f.mmHg)} al inflar`,
  feltBack: (f, say) => `volvió en ${say.short(f.mmHg)} al bajar`,
  pumpedTo: (f, say) =>
    f.above === null ? `hasta ${say.short(f.mmHg)}` : `hasta ${say.short(f.mmHg)}: ${f.above}`,
  notWritten: 'no se anotó hasta dónde',
  notTimed: 'no se cronometró',
  margin: 'Inflado',
  marginAbove: (f, say) =>
    f.mmHg < 0
      ? `hasta ${say.short(-f.mmHg)} mmHg por debajo de donde desapareció el pulso`
      : `${say.short(f.mmHg)} mmHg por encima de donde desapareció el pulso`,
  gap: 'Laguna',
  gapBetween: (f, say) => `de ${say.short(f.from)} a ${say.short(f.to)}`,
  meanOf: (f, say) => `una media de ${say.counted(f.readings, { one: 'lectura', other: 'lecturas' })}`,
  writtenOnly: 'Solo con números escritos no se puede dar velocidad, intervalo ni margen.',
  cuff: 'Manguito',
  noCuff: 'ninguno de este esquema',
  bladder: (f, say) => `cámara de ${say.short(f.width)} x ${say.short(f.length)} cm`,
  smallestBladder: (f, say) =>
    `un brazo así necesita una cámara de al menos ${say.short(f.width)} x ${say.short(f.length)} cm`,
  scheme: 'Según',
  bias: 'Talla del manguito',
  biasOf: (f, say) =>
    f.systolic === 0 && f.diastolic === 0
      ? 'es la del brazo: no se espera error por ella'
      : `se espera que desvíe la lectura ${signed(f.systolic, say)}/${signed(f.diastolic, say)} mmHg en promedio; la lectura queda como se tomó`,
  biasSpan: (f, say) =>
    `en muchos estudios sistólica de ${signed(f.systolicLow, say)} a ${signed(f.systolicHigh, say)}, diastólica de ${signed(f.diastolicLow, say)} a ${signed(f.diastolicHigh, say)} mmHg`,
};

function signed(value: number, say: Say): string {
  if (value === 0) return '0';
  return `${value > 0 ? '+' : '−'}${say.short(Math.abs(value), 2)}`;
}
