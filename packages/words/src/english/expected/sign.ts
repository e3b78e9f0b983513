import type { Unit } from '@evenfall/clinical';
import type { Say } from '../../say.js';
import type { Expectation } from './expectation.js';

type Example = readonly [value: number, unit: Unit];

/** How a measure may be typed: an example in each of its units. */
function measures(say: Say, ...examples: readonly Example[]): string {
  return `a number with its unit, such as ${say.anyOf(examples.map(([value, unit]) => say.asTyped({ value, unit })))}`;
}

/** Rules of the signs that are neither counted nor taken with a cuff. */
export const sign = {
  'nothing-on-air': () => 'nothing here on air, or that the person is on oxygen',
  'named-prescriber': () => 'the name of whoever decided on scale 2',
  'prescriber-of-scale-two': () => 'a prescriber only beside scale 2',
  'word-not-score': () => 'a word and no score with the verbal tool',
  'score-not-word': () => 'a score and no word with this tool',
  'even-number': () => 'an even number: 0, 2, 4, 6, 8 or 10',
  'a-temperature': (_f, say) => measures(say, [37.2, 'Cel'], [99, '[degF]']),
  'a-weight': (_f, say) => measures(say, [68, 'kg'], [150, '[lb_av]']),
  'a-height': (_f, say) => measures(say, [168, 'cm'], [66, '[in_i]']),
  'a-length-of-arm': (_f, say) => measures(say, [31.5, 'cm'], [12.5, '[in_i]']),
  'feet-and-inches': () =>
    'feet and inches, such as 5 ft 11 in, since a part of a foot can be read in two ways',
  'stones-and-pounds': () =>
    'stones and pounds, such as 10 st 10 lb, since a part of a stone can be read in two ways',
  'a-decimal-point': () => 'the number without a comma, a point before its decimals',
  'which-unit': (f, say, choices) => {
    const value = say.short(f.value('value'), 3);
    const units = choices.slice(0, -1).map((unit) => `${value} ${say.unit(unit)}`);
    return `${say.anyOf(units)} if that is what was read, else from ${say.short(f.value('minimum'), 3)} to ${say.short(f.value('maximum'), 3)} ${say.unit(choices.at(-1) ?? '')}`;
  },
  'within-limits': (f, say) =>
    `from ${say.short(f.value('minimum'), 3)} to ${say.short(f.value('maximum'), 3)}`,
} as const satisfies Record<string, Expectation>;
