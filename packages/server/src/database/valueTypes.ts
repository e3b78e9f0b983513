import { types } from 'pg';

type Parsers = { getTypeParser: typeof types.getTypeParser };

const DATE = 1082;

/**
 * How values arrive. Only `date` differs from the driver's way: it stays the text that was stored
 * (`2026-11-25`), since a Date would be an instant in somebody's time zone.
 *
 * `bigint` and `numeric` arrive as text, never as a number that may have lost digits: count(*) is cast to int
 * in SQL where it is known to be small, and anything else is parsed by who knows its range. `timestamptz`
 * arrives as a Date, so instants are kept to the millisecond.
 */
export const VALUE_TYPES: Parsers = {
  getTypeParser: ((oid: number, format?: 'text' | 'binary') =>
    oid === DATE && format !== 'binary'
      ? (text: string) => text
      : types.getTypeParser(oid, format)) as Parsers['getTypeParser'],
};
