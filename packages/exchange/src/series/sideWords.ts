import { plainWord } from './seriesWords.js';

/** Words for a side in English, Spanish, Portuguese, French, Italian, German, Dutch, Arabic and Hebrew; from memory. */
const LEFT =
  /^(left|lt|l|izq|izqda|izqdo|izquierd[oa]|esq|esquerd[oa]|gauche|sinistr[oa]|sx|links|linker|linke[rsn]?|(ال)?(يسار|يسرى|ايسر)|שמאל)$/;
const RIGHT =
  /^(right|rt|r|dcha|dcho|derech[oa]|direit[oa]|droite?|destr[oa]|dx|rechts|rechter|rechte[rsn]?|(ال)?(يمين|يمنى|ايمن)|ימין)$/;

/** Words for what of a body a cuff goes round, and the small words beside them, in the same languages; from memory. */
const PLACE =
  /^(arm|upper|upperarm|lower|forearm|wrist|limb|side|the|on|non|dominant|brazo|antebrazo|muneca|lado|superior|el|la|en|no|dominante|braco|antebraco|punho|pulso|o|a|bras|avant|poignet|cote|le|du|au|braccio|avambraccio|polso|lato|il|al|del|oberarm|unterarm|handgelenk|seite|am|der|dem|die|das|bovenarm|onderarm|pols|zijde|de|(ال)?(ذراع|معصم|عضد)|זרוע|יד|הזרוע|פרק)$/;

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

/**
 * The side that a cell names of an arm or a site: by itself or beside words for a place; null where it names none, or
 * both, or says anything else, as of the size of a cuff or of the hand somebody writes with.
 */
export function sideOf(cell: string): 'left' | 'right' | null {
  const words = plainWord(cell);
  if (Object.hasOwn(SHORT, words)) return SHORT[words] ?? null;
  const all = words.split(' ');
  if (!all.every((word) => LEFT.test(word) || RIGHT.test(word) || PLACE.test(word))) return null;
  const [isLeft, isRight] = [LEFT, RIGHT].map((side) => all.some((word) => side.test(word)));
  if (isLeft === isRight) return null;
  return isLeft ? 'left' : 'right';
}
