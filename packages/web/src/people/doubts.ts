import type { PersonRow } from '@evenfall/api';
import type { Identity } from '@evenfall/record';
import { plain } from './matching.js';

/** Nobody who is measured today was born before; a year like this is a slip. Source: decision of this project. */
const EARLIEST_BIRTH = '1900-01-01';

/** What makes one ask before somebody is added: none of it is an error. */
export type Doubts = {
  /** Who is in the list already with the same name and birth date, or with the same number. */
  readonly same: readonly PersonRow[];
  readonly isBornLongAgo: boolean;
};

export function doubtsAbout(identity: Identity, rows: readonly PersonRow[]): Doubts {
  return {
    same: rows.filter((row) => row.identity !== null && isSame(row.identity, identity)),
    isBornLongAgo: identity.birthDate !== null && identity.birthDate < EARLIEST_BIRTH,
  };
}

export function hasDoubts({ same, isBornLongAgo }: Doubts): boolean {
  return same.length > 0 || isBornLongAgo;
}

function isSame(a: Identity, b: Identity): boolean {
  const isSamePerson = a.birthDate !== null && a.birthDate === b.birthDate && isSameText(a.name, b.name);
  return isSamePerson || (a.number !== null && b.number !== null && isSameText(a.number, b.number));
}

/** Whatever the case, the accents and the blanks between. */
function isSameText(a: string, b: string): boolean {
  const words = (text: string) => plain(text).split(/\s+/).join(' ').trim();
  return words(a) === words(b);
}
