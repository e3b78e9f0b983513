import type { Json } from '../answer.js';

/**
 * One object on one line. Keys keep their order.
 *
 * Errors: throws on a number that JSON cannot carry. NaN would come out as null, which means "not known" and
 * would hide a fault. Source: docs/conventions.md section 3.
 */
export function jsonLine(object: Json): string {
  refuseUnfit('', object);
  return `${JSON.stringify(object)}\n`;
}

/** Before it is written: to be asked for each value while it is written takes several times as long. */
function refuseUnfit(key: string, value: unknown): void {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`${key} came out as ${value}`);
  } else if (typeof value === 'object' && value !== null) {
    for (const name in value) refuseUnfit(name, (value as Json)[name]);
  }
}
