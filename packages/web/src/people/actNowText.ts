import type { Words } from '@evenfall/words';

/** That alerts are open, by the most urgent of them; a row of a server that does not name it says how many. */
export function actNowText(alerts: number, first: string | null | undefined, words: Words): string {
  return first == null
    ? words.sentence('people.actNow', { alerts })
    : words.sentence('people.actNowOf', { text: words.title('condition', first), others: alerts - 1 });
}
