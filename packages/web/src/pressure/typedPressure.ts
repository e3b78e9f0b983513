/** A systolic of this first digit has three digits; of any other, most often two. */
const THREE_DIGITS = /^[12]/;
/** Three numbers of three digits and two strokes. */
const LONGEST = 11;

/**
 * The numbers after one more key. A stroke is put in for whoever types on after a whole systolic; nothing is rounded and
 * nothing is guessed. A systolic of two digits is parted only when four were typed (9860), and no stroke is put in before
 * a 0: 400 stays 400, to be refused, and never becomes 40/0. Any stroke can be typed by hand.
 */
export function typedKey(typed: string, key: string): string {
  if (typed.length >= LONGEST) return typed;
  if (key === '/') return typed === '' || typed.endsWith('/') || strokesIn(typed) > 1 ? typed : `${typed}/`;
  if (!/^\d$/.test(key)) return typed;
  const last = typed.split('/').at(-1) ?? '';
  if (last === '0') return typed;
  if (strokesIn(typed) > 0) {
    return last.length >= (THREE_DIGITS.test(last) ? 3 : 2) ? typed : typed + key;
  }
  if (last.length < 3) return typed + key;
  if (THREE_DIGITS.test(last)) return key === '0' ? typed : `${typed}/${key}`;
  const [systolic, diastolic] = [last.slice(0, 2), last.slice(2) + key];
  const isPressure = !diastolic.startsWith('0') && Number(diastolic) < Number(systolic);
  return isPressure ? `${systolic}/${diastolic}` : typed;
}

/** A pressure typed whole, mmHg: of three digits, or of two that cannot go on to a third on a gauge. */
export function isWhole(typed: string): boolean {
  return /^(\d{3}|[4-9]\d)$/.test(typed);
}

/** More signs than any pressure has, so that a text that was cut is no number that could be one. */
const MOST_TYPED = 24;

/**
 * What was typed or pasted for a pressure. Digits and strokes flow as on the keypad; any other sign stays as it is, to be
 * refused in words when it is done, and is never left out in silence (147.5 is not 147/5).
 */
export function typedPressure(text: string): string {
  const kept = text.trimStart().slice(0, MOST_TYPED);
  return /^[\d/]*$/.test(kept) ? [...kept].reduce(typedKey, '') : kept;
}

/**
 * The two numbers of a pressure the other way round, where the second is over the first; null where it is not, or where there are
 * more than two. What follows them stays. It is offered, and never taken for what was meant.
 *
 * @example otherWayRound('88/142 76') // '142/88 76'
 */
export function otherWayRound(typed: string): string | null {
  const [, first = '', second = '', rest = ''] = /^\s*(\d{2,3})\/(\d{2,3})(\s[^/]*)?$/.exec(typed) ?? [];
  return Number(second) > Number(first) ? `${second}/${first}${rest}` : null;
}

function strokesIn(typed: string): number {
  return [...typed].filter((one) => one === '/').length;
}
