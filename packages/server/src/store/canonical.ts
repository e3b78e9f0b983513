import { createHash } from 'node:crypto';
import { canonicalJson } from '@evenfall/clinical';

/** SHA-256 of a value's canonical JSON, lower-case hex: the same content gives the same hash in any key order. */
export function contentHash(value: unknown): string {
  return createHash('sha256').update(canonicalJson(value)).digest('hex');
}
