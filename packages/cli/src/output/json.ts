import type { Json } from '../answer.js';

/**
 * One object on one line. Keys keep their order.
 *
 * Errors: throws on a number that JSON cannot carry. NaN would come out as null, which means "not known" and
 * would hide a fault. Source: docs/conventions.md section 3.
 */
export function jsonLine(object: Json): string {
  return `${JSON.stringify(object, refuseUnfit)}\n`;
}

function refuseUnfit(key: string, value: unknown): unknown {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${key} came out as ${value}`);
  return value;
}
