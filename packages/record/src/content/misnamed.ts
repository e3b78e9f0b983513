import { signOf } from '../chart/signOf.js';
import type { Entry } from '../entry/entry.js';

type Signing = Entry & { readonly kind: 'round' };

/**
 * What a signing names that is not of its own person, round and sign, or not there: its place in the content, as a
 * JSON Pointer, and its id. A round of one person never rests on a value of another.
 *
 * @param entries among them those that the signing names, by id
 */
export function misnamed(
  signing: Signing,
  entries: ReadonlyMap<string, Entry>,
): readonly { readonly at: string; readonly id: string }[] {
  return signing.content.signs.flatMap((sign, place) => {
    if (!('entries' in sign)) return [];
    return sign.entries.flatMap((id, at) => {
      const entry = entries.get(id);
      const isOfRound =
        entry !== undefined &&
        entry.person === signing.person &&
        entry.round === signing.round &&
        signOf(entry) === sign.sign;
      return isOfRound ? [] : [{ at: `/content/signs/${place}/entries/${at}`, id }];
    });
  });
}
