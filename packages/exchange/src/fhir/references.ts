import type { Reference } from 'fhir/r4.js';

/** The address of a resource within its bundle: every id of the record is a UUID. */
export function urn(id: string): string {
  return `urn:uuid:${id}`;
}

/** The id of what is made from something of the record beside it, such as the Provenance of an entry: version 8 in place of 7. */
export function besideId(id: string): string {
  return `${id.slice(0, VERSION_AT)}8${id.slice(VERSION_AT + 1)}`;
}

/** A UUID of the first half of a hash (hex), for what is named by one. */
export function idOfHash(hex: string): string {
  const digits = hex.padEnd(32, '0').slice(0, 32);
  const parts = [
    digits.slice(0, 8),
    digits.slice(8, 12),
    `8${digits.slice(13, 16)}`,
    `8${digits.slice(17, 20)}`,
    digits.slice(20),
  ];
  return parts.join('-');
}

export function reference(id: string): Reference {
  return { reference: urn(id) };
}

/** Where the version stands in a UUID's text. */
const VERSION_AT = 14;
