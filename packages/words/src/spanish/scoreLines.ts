import type { scoreLines as english } from '../english/scoreLines.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';

/** As in `english/scoreLines`. */
export const scoreLines: Reworded<typeof english> = {
  total: (f, say) => `${say.number(f.total)}, ${f.band}`,
  atLeast: (f, say) => `al menos ${say.number(f.atLeast)}, sin total`,
  noTotal: 'sin total',
  noValue: 'sin valor',
  part: (f, say) => `${f.part} ${say.number(f.points)}`,
  parts: 'Partes',
  missing: 'Falta',
  alert: 'Alerta',
  checks: 'Controles',
  formFactor: (f, say) => `${say.number(f.mmHg)} mmHg con el factor de forma de ${say.number(0.4, 1)}`,
  rateCorrected: (f, say) => `${say.number(f.mmHg)} mmHg corregida por la frecuencia`,
  fell: 'Bajada',
  fellWithin: 'una bajada al ponerse de pie según los límites habituales',
  fellLater: 'una bajada tardía al ponerse de pie según los límites habituales',
  fellNot: 'sin bajada hasta los límites en las lecturas tomadas',
  fellUnknown: 'no se excluye una bajada al ponerse de pie',
  atMinutes: (f, say) => `a los ${say.short(f.minutes)} min`,
  systolicFell: (f, say) => `sistólica ${changed(-f.mmHg, say)}`,
  diastolicFell: (f, say) => `diastólica ${changed(-f.mmHg, say)}`,
  pulseRose: (f, say) => `pulso ${changed(f.perMinute, say)}`,
  ratio: 'Pulso por cada mmHg',
  ratioOf: (f, say) =>
    `${say.beside(f.ratio, f.limit, 2)} por minuto por cada mmHg de bajada (límite ${say.limit(f.limit)})`,
};

/** A change with its sign. */
function changed(by: number, say: Say): string {
  return by > 0 ? `+${say.short(by)}` : say.short(by);
}
