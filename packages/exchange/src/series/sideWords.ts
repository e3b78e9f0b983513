import { plainWord } from './seriesWords.js';

/** Words for a side in English, Spanish, Portuguese, French, Italian, German, Dutch, Arabic and Hebrew; from memory. */
const LEFT =
  /(^| )(left|lt|izq|izqda|izqdo|izquierd[oa]|esq|esquerd[oa]|gauche|sinistr[oa]|sx|links|linker|linke[rsn]?)( |$)|يسار|يسرى|ايسر|أيسر|שמאל/;
const RIGHT =
  /(^| )(right|rt|dcha|dcho|derech[oa]|direit[oa]|droite?|destr[oa]|dx|rechts|rechter|rechte[rsn]?)( |$)|يمين|يمنى|ايمن|أيمن|ימין/;

/** Short for a side where nothing else stands: left and right arm, upper arm, brazo izquierdo and derecho. Common practice, no source. */
const SHORT: Readonly<Record<string, 'left' | 'right'>> = {
  l: 'left',
  la: 'left',
  lua: 'left',
  bi: 'left',
  r: 'right',
  der: 'right',
  'brazo der': 'right',
  ra: 'right',
  rua: 'right',
  bd: 'right',
};

/** The side that a cell names of an arm or a site, by itself or among other words; null where it names none, or both. */
export function sideOf(cell: string): 'left' | 'right' | null {
  const words = plainWord(cell);
  if (Object.hasOwn(SHORT, words)) return SHORT[words] ?? null;
  const [isLeft, isRight] = [LEFT.test(words), RIGHT.test(words)];
  if (isLeft === isRight) return null;
  return isLeft ? 'left' : 'right';
}
