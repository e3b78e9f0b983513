import type { categoryLines as english } from '../english/categoryLines.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';

/** As in `english/categoryLines`. */
export const categoryLines: Reworded<typeof english> = {
  falls: (f) => `${f.pressure} cae en: ${f.category}`,
  fallsInNone: (f) => `${f.pressure} no cae en ninguna categoría`,
  atLeast: (f) => `al menos: ${f.category}`,
  raisedAlone: (f) => `elevada: ${f.which}`,
  pressure: 'Presión',
  scheme: 'Según',
  systolic: 'Sistólica',
  diastolic: 'Diastólica',
  screening: 'Cribado',
  height: 'Talla',
  fromMedian: (f, say) =>
    `${say.number(Math.abs(f.z), 2)} DE por ${f.z < 0 ? 'debajo' : 'encima'} de la mediana de edad y sexo`,
  centile: (f, say) => `${centileText(f.centile, say)} (z ${say.number(f.z, 2)})`,
  limitsOf: 'Límites',
  systolicLimits: (f, say) => `sistólica ${limitsText(f, say)}`,
  diastolicLimits: (f, say) => `diastólica ${limitsText(f, say)}`,
  lowUnder: (f, say) => `sistólica baja a esta edad por debajo de ${say.limit(f.mmHg)}`,
  moreThanOnce: 'Ninguna guía decide por una sola ocasión: esto dice dónde caen estos números, y nada más.',
  fourthReport:
    'Según el Cuarto Informe de 2004. Las tablas de la AAP 2017 quedan de 2 a 3 mmHg por debajo y no están incluidas aquí.',
};

type Limits = { readonly p90: number; readonly p95: number; readonly p99: number };

function limitsText({ p90, p95, p99 }: Limits, say: Say): string {
  return `p90 ${say.number(p90, 1)}; p95 ${say.number(p95, 1)}; p99 ${say.number(p99, 1)}`;
}

/** Ends that are not told apart are said as ends. */
function centileText(centile: number, say: Say): string {
  if (centile < 1) return 'por debajo del percentil 1';
  if (centile > 99) return 'por encima del percentil 99';
  return `percentil ${say.number(centile, 1)}`;
}
