import type {
  About,
  AgentHere,
  ClassSession,
  ClassSessionRecord,
  EquipmentRecord,
  PersonRecord,
  PersonRow,
  ProtocolRow,
} from '@evenfall/api';
import type { Agent, Book, InForce, ProtocolChoiceMade } from '@evenfall/record';

/** Something asked of the server. What was here once stays here while it is asked again. */
export type Asked<T> =
  | { readonly is: 'asked'; readonly value: null }
  /** `unreadable` entries are kept and left out of the value: the server cannot read them. */
  | { readonly is: 'here'; readonly value: T; readonly unreadable?: number }
  | { readonly is: 'missing' | 'unreachable' | 'failed'; readonly value: T | null };

export const ASKED = { is: 'asked', value: null } as const;

/** A class session that is open, with its people and the newest values of each. */
export type OpenClass = Pick<ClassSessionRecord, 'session'> & { readonly rows: readonly PersonRow[] };

/** The protocol versions that the place keeps, every choice of one or of none, oldest first, and who acts here. */
export type PlaceProtocols = {
  readonly protocols: readonly ProtocolRow[];
  readonly choices: readonly ProtocolChoiceMade[];
  readonly agents: readonly Agent[];
};

/** Under what a record is known: one of a book is never shown in another. */
export function recordKey(book: Book, person: string): string {
  return `${book} ${person}`;
}

/** What the server said, for as long as the page is open: the only copy the page has. */
export type Known = {
  readonly about: Asked<About>;
  readonly inForce: Asked<InForce>;
  /** The rules of every protocol version that a chart may name, by version. */
  readonly rules: Asked<Readonly<Record<string, InForce>>>;
  readonly placeProtocols: Asked<PlaceProtocols>;
  /** Who acts here, and who of them is known to be learning. */
  readonly agents: Asked<readonly AgentHere[]>;
  /** Everything said of the place's equipment, and who acts here. */
  readonly equipment: Asked<EquipmentRecord>;
  readonly people: Asked<readonly PersonRow[]>;
  /** By `recordKey`. */
  readonly records: Readonly<Record<string, Asked<PersonRecord>>>;
  readonly classSessions: Asked<readonly ClassSession[]>;
  /** People of the class book who are in no open session. */
  readonly classKept: Asked<readonly PersonRow[]>;
  /** Open class sessions by id. */
  readonly classes: Readonly<Record<string, Asked<OpenClass>>>;
};

export const NOTHING_KNOWN: Known = {
  about: ASKED,
  inForce: ASKED,
  rules: ASKED,
  placeProtocols: ASKED,
  agents: ASKED,
  equipment: ASKED,
  people: ASKED,
  records: {},
  classSessions: ASKED,
  classKept: ASKED,
  classes: {},
};
