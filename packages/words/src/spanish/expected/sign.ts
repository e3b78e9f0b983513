import type { Unit } from '@evenfall/clinical';
import type { sign as english } from '../../english/expected/sign.js';
import type { Reworded } from '../../reworded.js';
import type { Say } from '../../say.js';

function measures(say: Say, ...examples: readonly (readonly [number, Unit])[]): string {
  return `un número con su unidad, como ${say.anyOf(examples.map(([value, unit]) => say.asTyped({ value, unit })))}`;
}

/** As in `english/expected/sign`. */
export const sign: Reworded<typeof english> = {
  'nothing-on-air': () => 'nada aquí con aire ambiente, o que la persona recibe oxígeno',
  'named-prescriber': () => 'el nombre de quien decidió usar la escala 2',
  'prescriber-of-scale-two': () => 'un prescriptor solo junto a la escala 2',
  'word-not-score': () => 'una palabra y ninguna puntuación con la escala verbal',
  'score-not-word': () => 'una puntuación y ninguna palabra con esta escala',
  'even-number': () => 'un número par: 0, 2, 4, 6, 8 o 10',
  'a-temperature': (_f, say) => measures(say, [37.2, 'Cel'], [99, '[degF]']),
  'a-weight': (_f, say) => measures(say, [68, 'kg'], [150, '[lb_av]']),
  'a-height': (_f, say) => measures(say, [168, 'cm'], [66, '[in_i]']),
  'a-length-of-arm': (_f, say) => measures(say, [31.5, 'cm'], [12.5, '[in_i]']),
  'feet-and-inches': () =>
    'pies y pulgadas, como 5 ft 11 in, porque los decimales de un pie se pueden leer de dos maneras',
  'stones-and-pounds': () =>
    'stones y libras, como 10 st 10 lb, porque los decimales de un stone se pueden leer de dos maneras',
  'a-decimal-point': () => 'el número sin coma, con un punto antes de los decimales',
  'which-unit': (f, say, choices) => {
    const value = say.short(f.value('value'), 3);
    const units = choices.slice(0, -1).map((unit) => `${value} ${say.unit(unit)}`);
    return `${say.anyOf(units)} si es eso lo que se leyó; si no, de ${say.short(f.value('minimum'), 3)} a ${say.short(f.value('maximum'), 3)} ${say.unit(choices.at(-1) ?? '')}`;
  },
  'within-limits': (f, say) => `de ${say.short(f.value('minimum'), 3)} a ${say.short(f.value('maximum'), 3)}`,
};
