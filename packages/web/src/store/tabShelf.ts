import { bookOfWaiting } from '../round/waiting.js';
import { type Asked, type Known, NOTHING_KNOWN, recordKey } from './known.js';
import type { State } from './store.js';

/** The part of `sessionStorage` that the tab's shelf needs. It is the tab's own, and gone with it. */
export type TabShelf = {
  readonly getItem: (key: string) => string | null;
  readonly setItem: (key: string, text: string) => void;
  readonly removeItem: (key: string) => void;
};

export const TAB_KEY = 'evenfall.tab';

const FORM_AWAY = /^away ([0-9a-f-]{36})$/;

/** Of whom a round or readings of the charts are under way, or wait to be sent. */
function underWay({ drafts, waiting, forms }: State['kept']): readonly string[] {
  return [
    ...new Set([
      ...Object.entries(drafts).flatMap(([person, { book }]) => (book === 'care' ? [person] : [])),
      ...waiting.flatMap((one) =>
        one.person !== null && bookOfWaiting(one).book === 'care' ? [one.person] : [],
      ),
      ...Object.keys(forms).flatMap((name) => FORM_AWAY.exec(name)?.[1] ?? []),
    ]),
  ];
}

/**
 * What a round under way needs of the server, so that it goes on after a reload without one: the rules in force,
 * and who is measured, of people of whom a round or readings are under way or wait. Null while there are none.
 */
export function tabText({ kept, known }: Pick<State, 'kept' | 'known'>): string | null {
  const people = underWay(kept);
  if (people.length === 0) return null;
  const records = people.flatMap((person) => {
    const key = recordKey('care', person);
    const record = known.records[key];
    return record === undefined || record.value === null ? [] : [[key, record.value] as const];
  });
  return JSON.stringify({
    about: known.about.value,
    inForce: known.inForce.value,
    agents: known.agents.value,
    equipment: known.equipment.value,
    records: Object.fromEntries(records),
  });
}

/** What the tab knew before it was loaded again; nothing where it kept nothing, or nothing that can be read. */
export function knownInTab(shelf: TabShelf | null): Known {
  try {
    const text = shelf?.getItem(TAB_KEY) ?? null;
    if (text === null) return NOTHING_KNOWN;
    const { about, inForce, agents, equipment = null, records } = JSON.parse(text) as Values;
    return {
      ...NOTHING_KNOWN,
      about: here(about),
      inForce: here(inForce),
      agents: here(agents),
      equipment: here(equipment),
      records: Object.fromEntries(Object.entries(records).map(([key, record]) => [key, here(record)])),
    };
  } catch {
    return NOTHING_KNOWN;
  }
}

type Values = {
  readonly about: Known['about']['value'];
  readonly inForce: Known['inForce']['value'];
  readonly agents: Known['agents']['value'];
  readonly equipment?: Known['equipment']['value'];
  readonly records: Readonly<Record<string, Known['records'][string]['value']>>;
};

function here<T>(value: T | null): Asked<T> {
  return value === null ? { is: 'asked', value: null } : { is: 'here', value };
}

/** Keeps the tab's shelf as the store is. A shelf that refuses keeps nothing: the page then waits for the server. */
export function keepTab(
  store: { readonly get: () => State; readonly subscribe: (onChange: () => void) => () => void },
  shelf: TabShelf | null,
): void {
  let was: string | null = null;
  let seen: readonly unknown[] = [];
  const keep = () => {
    const { kept, known } = store.get();
    // A record may be long: it is written again only when it, or who has a round under way, changed.
    const now = [known, ...underWay(kept)];
    if (shelf === null || (now.length === seen.length && now.every((one, index) => one === seen[index])))
      return;
    seen = now;
    const text = tabText({ kept, known });
    if (text === was) return;
    try {
      if (text === null) shelf.removeItem(TAB_KEY);
      else shelf.setItem(TAB_KEY, text);
      was = text;
    } catch {
      was = null;
    }
  };
  keep();
  store.subscribe(keep);
}
