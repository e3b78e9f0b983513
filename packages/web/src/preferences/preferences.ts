import { DATE_ORDERS, LANGUAGE_IDS, type Language, type Manner, USUAL_MANNER } from '@evenfall/words';
import type { Shelf } from '../store/store.js';

/** What somebody chose for this device: nothing of anybody, so it stays also where several sign in. */
export type Preferences = Manner & {
  /** Null for the browser's. */
  readonly language: Language | null;
  /** What lies in the printer. */
  readonly paper: 'a4' | 'letter';
};

export const USUAL_PREFERENCES: Preferences = { ...USUAL_MANNER, language: null, paper: 'a4' };

/** What there is to choose from; the first of each is the usual one. */
export const CHOICES = {
  language: [null, ...LANGUAGE_IDS],
  dates: [null, ...DATE_ORDERS],
  hours: [24, 12],
  temperature: ['Cel', '[degF]'],
  length: ['cm', '[in_i]'],
  mass: ['kg', '[lb_av]'],
  paper: ['a4', 'letter'],
} as const satisfies { readonly [Key in keyof Preferences]: readonly Preferences[Key][] };

export const PREFERENCES_KEY = 'evenfall.preferences';

export type KeptPreferences = {
  readonly get: () => Preferences;
  readonly change: (change: Partial<Preferences>) => void;
  readonly subscribe: (onChange: () => void) => () => void;
  /** Whether a later visit will find them. */
  readonly isKeeping: () => boolean;
};

/** Reads what was kept, part by part: what there is no choice of (damage, a newer program's) is the usual one. */
export function readPreferences(text: string | null): Preferences {
  const kept = parsed(text);
  const chosen = Object.entries(CHOICES).map(([key, choices]) => [
    key,
    (choices as readonly unknown[]).includes(kept[key]) ? kept[key] : choices[0],
  ]);
  return Object.fromEntries(chosen) as Preferences;
}

function parsed(text: string | null): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(text ?? '{}');
    return typeof kept === 'object' && kept !== null ? (kept as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}

/** The preferences of this device; on a shelf that refuses they hold for this visit. */
export function createPreferences(shelf: Shelf | null): KeptPreferences {
  const listeners = new Set<() => void>();
  let isKeeping = shelf !== null;
  let now = USUAL_PREFERENCES;
  try {
    now = readPreferences(shelf?.getItem(PREFERENCES_KEY) ?? null);
  } catch {
    isKeeping = false;
  }
  return {
    get: () => now,
    isKeeping: () => isKeeping,
    subscribe(onChange) {
      listeners.add(onChange);
      return () => listeners.delete(onChange);
    },
    change(change) {
      now = { ...now, ...change };
      try {
        shelf?.setItem(PREFERENCES_KEY, JSON.stringify(now));
      } catch {
        isKeeping = false;
      }
      for (const listener of listeners) listener();
    },
  };
}
