import type { About, PersonRecord, PersonRow } from '@evenfall/api';
import type { Agent, InForce } from '@evenfall/record';

/** Something asked of the server. What was here once stays here while it is asked again. */
export type Asked<T> =
  | { readonly is: 'asked'; readonly value: null }
  /** `unreadable` entries are kept and left out of the value: the server cannot read them. */
  | { readonly is: 'here'; readonly value: T; readonly unreadable?: number }
  | { readonly is: 'missing' | 'unreachable' | 'failed'; readonly value: T | null };

export const ASKED = { is: 'asked', value: null } as const;

/** What the server said, for as long as the page is open: the only copy the page has. */
export type Known = {
  readonly about: Asked<About>;
  readonly inForce: Asked<InForce>;
  readonly agents: Asked<readonly Agent[]>;
  readonly people: Asked<readonly PersonRow[]>;
  readonly records: Readonly<Record<string, Asked<PersonRecord>>>;
};

export const NOTHING_KNOWN: Known = {
  about: ASKED,
  inForce: ASKED,
  agents: ASKED,
  people: ASKED,
  records: {},
};
