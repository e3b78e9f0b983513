import type { series as english } from '../../english/expected/series.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/expected/series`. */
export const series: Reworded<typeof english> = {
  'date-order': (_f, say, choices) =>
    `fechas que se lean de una sola manera: indique su orden, ${say.anyOf(choices)} (--dates)`,
  'zone-of-times': () => 'una hora con su desfase, o la zona del reloj (--zone Europe/Lisbon)',
  'iana-zone': () => 'una zona por su nombre, como Europe/Lisbon',
  'unit-of-pressures': (_f, say, choices) =>
    `presiones en mmHg; estas parecen kPa: indique cuál es, ${say.anyOf(choices)} (--unit)`,
  'systolic-over-diastolic': (f, say) =>
    `la sistólica por encima de la diastólica; no lo está en ${say.short(f.value('swapped'))} de ${say.short(f.value('rows'))} filas, así que las columnas parecen cambiadas: indique cuál es cuál (--columns)`,
  'column-of-series': () =>
    'una columna para ello: encabezados time, systolic, diastolic, pulse, o indique qué es cada columna (--columns)',
  'columns-of-series': (_f, say, choices) => `columnas separadas por comas: ${say.anyOf(choices)}, o -`,
  'time-of-reading': () => 'una fecha y una hora del día',
  'number-within': (f, say) =>
    `un número de ${say.short(f.value('minimum'))} a ${say.short(f.value('maximum'))}`,
  'number-of-cell': () => 'un número como 142',
  'number-without-zero': () => 'un número que no empiece por 0',
  'yes-or-no': () => 'sí o no',
  'pressure-of-row': () => 'una presión',
  'same-pressure': () => 'la misma presión en todas las celdas de la fila',
  'same-pulse': () => 'el mismo pulso en todas las celdas de la fila',
  'diastolic-below-this': (f, say) =>
    `una diastólica por debajo de la sistólica de ${say.short(f.value('systolic'))}`,
  'part-of-day': () => 'mañana, tarde u otra',
  'clock-range': () => 'un intervalo del reloj, como 23:00-07:00',
  'day-and-night': () => '--day y --night juntas, y sin --asleep a su lado',
  'nap-apart': () => '--nap junto a --asleep, y ninguna hora en las dos',
  'night-by-diary': () => 'ni --day ni --night: el propio archivo dice cuándo durmió la persona',
  'pressure-that-stands': () =>
    'una tensión arterial no retirada, o una frecuencia cardíaca a la hora de una',
  'age-and-sex': () => '--age y --sex juntas',
  'whole-from': (f, say) =>
    `un número entero de ${say.short(f.value('minimum'))} a ${say.short(f.value('maximum'))}`,
  'dated-pressures': () =>
    'presiones cada una con su día, con comas, como 2026-11-01=148/92,2026-11-08=150/90',
  'mean-and-count': () => 'una media y de cuántas es, como 138/86x24',
  'days-of-home': () => '--days: en cuántos días se tomaron las lecturas en casa',
  'some-pressure': () => '--office, --home o --ambulatory',
  'both-pressures': () => 'sistólica y diastólica, como 135/85',
  'reading-not-kept': () => 'una lectura que no esté ya en otra serie de esta persona',
  'readings-on-days': () => 'no más días que lecturas',
};
