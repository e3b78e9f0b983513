import type { sign as english } from '../../english/expected/sign.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/expected/sign`. */
export const sign: Reworded<typeof english> = {
  'nothing-on-air': () => 'nada aquí con aire ambiente, o que la persona recibe oxígeno',
  'named-prescriber': () => 'el nombre de quien decidió usar la escala 2',
  'prescriber-of-scale-two': () => 'un prescriptor solo junto a la escala 2',
  'word-not-score': () => 'una palabra y ninguna puntuación con la escala verbal',
  'score-not-word': () => 'una puntuación y ninguna palabra con esta escala',
  'even-number': () => 'un número par: 0, 2, 4, 6, 8 o 10',
  'within-limits': (f, say) => `de ${say.short(f.value('minimum'), 3)} a ${say.short(f.value('maximum'), 3)}`,
};
