/**
 * The one text of a JSON value: keys sorted by UTF-16 code units at every level, no spaces, numbers and strings
 * as ECMAScript writes them. Two values have the same text exactly when they are the same value.
 *
 * Errors: throws on what JSON cannot hold (undefined, a function, NaN, an infinity), so that nothing is left out
 * of a hash in silence.
 * Source: RFC 8785 (JSON Canonicalization Scheme).
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') return JSON.stringify(value);
  if (typeof value === 'number' && Number.isFinite(value)) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${Array.from(value, canonicalJson).join(',')}]`;
  if (typeof value === 'object') {
    const members = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${members.map(([key, member]) => `${JSON.stringify(key)}:${canonicalJson(member)}`).join(',')}}`;
  }
  throw new Error(`JSON cannot hold ${String(value)}`);
}
