import { typedKey, typedPressure } from './typedPressure.js';

/** No pulse has more digits. */
const PULSE_DIGITS = 3;

/**
 * The text after one more key of the keypad: digits, a stroke, `P` for "by feel", a blank before the pulse. Numbers of a
 * pressure flow as on every keypad; after a blank the digits are the pulse. A key that cannot come next does nothing.
 */
export function setKey(text: string, key: string): string {
  const blank = text.indexOf(' ');
  if (blank !== -1) {
    const pulse = text.slice(blank + 1);
    return /^\d$/.test(key) && pulse.length < PULSE_DIGITS ? text + key : text;
  }
  if (key === ' ') return /\/(\d+|P)$/.test(text) ? `${text} ` : text;
  if (text.endsWith('P')) return text;
  if (key === 'P') return /^\d+\/?$/.test(text) ? `${text.replace('/', '')}/P` : text;
  return typedKey(text, key);
}

/** Numbers and strokes, with a pulse after a blank: what the keys alone can make. */
const OF_KEYS = /^[\d/]*( \d*)?$/;

/** The same for a pressure in a round, where what a keyboard typed otherwise stays as it is, to be refused in words. */
export function pressureKey(typed: string, key: string): string {
  return OF_KEYS.test(typed) ? setKey(typed, key) : typedPressure(typed + key);
}
