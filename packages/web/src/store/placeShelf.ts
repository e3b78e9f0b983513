import { type Asked, type Known, NOTHING_KNOWN } from './known.js';
import type { Shelf, State } from './store.js';

export const PLACE_KEY = 'evenfall.place';

/**
 * What this place is, as it was last heard: whether everybody in it is invented, and the rules in force. Nobody's name is in
 * it. It stays on the device, so that an invented clinic says so and readings are counted by the place's rules without
 * network too. Null while nothing was heard.
 */
export function placeText({ about, inForce }: Pick<Known, 'about' | 'inForce'>): string | null {
  if (about.value === null) return null;
  return JSON.stringify({ about: about.value, inForce: inForce.value });
}

/** What is known of the place before the server is heard; nothing where nothing was kept, or nothing that can be read. */
export function placeKnown(shelf: Shelf | null): Pick<Known, 'about' | 'inForce'> {
  try {
    const text = shelf?.getItem(PLACE_KEY) ?? null;
    const kept = text === null ? null : (JSON.parse(text) as PlaceValues);
    if (typeof kept?.about?.site?.invented !== 'boolean') return NOTHING_KNOWN;
    return { about: here(kept.about), inForce: here(kept.inForce) };
  } catch {
    return NOTHING_KNOWN;
  }
}

type PlaceValues = {
  readonly about: Known['about']['value'];
  readonly inForce: Known['inForce']['value'];
};

function here<T>(value: T | null): Asked<T> {
  return value === null ? { is: 'asked', value: null } : { is: 'here', value };
}

/** Keeps on the device what the store knows of the place; a shelf that refuses keeps what it has. */
export function keepPlace(
  store: { readonly get: () => State; readonly subscribe: (onChange: () => void) => () => void },
  shelf: Shelf | null,
): void {
  let about: unknown = null;
  let inForce: unknown = null;
  store.subscribe(() => {
    const { known } = store.get();
    if (known.about.value === about && known.inForce.value === inForce) return;
    about = known.about.value;
    inForce = known.inForce.value;
    const text = placeText(known);
    try {
      if (text !== null) shelf?.setItem(PLACE_KEY, text);
    } catch {
      // Without it the page waits for the server, as it did before.
    }
  });
}
