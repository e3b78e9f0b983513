import { type Refusal, refusal } from '@evenfall/clinical';
import { SIGN_IN } from './figures.js';

/** What is wrong with a new pass phrase: its length, or that it is the name again. It is never repeated in a refusal. */
export function wrongPhrase(phrase: string, names: readonly string[], field: string): Refusal[] {
  const { phraseAtLeast: minimum, phraseAtMost: maximum } = SIGN_IN;
  const long = [...phrase].length;
  if (long < minimum || long > maximum)
    return [refusal(field, 'out-of-range', 'pass-phrase-long', null, { figures: { minimum, maximum } })];
  const said = phrase.toLowerCase().trim();
  if (
    names.some((name) => said === name.toLowerCase().trim()) ||
    new Set(said).size < 4 ||
    /^\d+$/.test(said)
  )
    return [refusal(field, 'contradicts', 'pass-phrase-own', null)];
  return [];
}

/** What is wrong with a new PIN: digits alone, so many, and not one digit again and again or a row of them. */
export function wrongPin(pin: string, field: string): Refusal[] {
  const { pinAtLeast: minimum, pinAtMost: maximum } = SIGN_IN;
  if (!/^\d+$/.test(pin) || pin.length < minimum || pin.length > maximum)
    return [refusal(field, 'out-of-range', 'pin-digits', null, { figures: { minimum, maximum } })];
  const isRow = '01234567890'.includes(pin) || '09876543210'.includes(pin) || new Set(pin).size === 1;
  return isRow ? [refusal(field, 'contradicts', 'pin-no-row', null)] : [];
}
