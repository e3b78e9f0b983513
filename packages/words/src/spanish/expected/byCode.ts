import type { expectedByCode as english } from '../../english/expected/byCode.js';
import type { Figures } from '../../figures.js';
import type { Reworded } from '../../reworded.js';
import type { Say } from '../../say.js';

/** As in `english/expected/byCode`. */
export const expectedByCode: Reworded<typeof english> = {
  missing: (_f, say, choices) => (choices.length === 0 ? 'un valor' : say.anyOf(choices)),
  'unknown-field': () => 'un campo que exista',
  'unknown-id': (_f, say, choices) => (choices.length === 0 ? 'un id que exista' : say.anyOf(choices)),
  'unknown-option': () => 'una opción que exista',
  repeated: () => 'una sola vez',
  'not-a-number': () => 'un número',
  'not-whole': () => 'un número entero',
  'not-a-time': () => 'una hora',
  'out-of-range': (f, say) => limits(f, say),
  'out-of-order': () => 'un valor que siga al anterior',
  'not-below-systolic': () => 'una diastólica por debajo de la sistólica',
  impossible: () => 'un valor posible',
  contradicts: () => 'valores que concuerden entre sí',
  ambiguous: () => 'un valor que se pueda leer de una sola manera',
};

function limits(f: Figures, say: Say): string {
  const least = f.has('minimum') ? [`como mínimo ${say.short(f.value('minimum'))}`] : [];
  const most = f.has('maximum') ? [`como máximo ${say.short(f.value('maximum'))}`] : [];
  const both = [...least, ...most];
  return both.length === 0 ? 'un valor dentro de los límites' : say.allOf(both);
}
