import { createInterface } from 'node:readline';
import type { Readable } from 'node:stream';

/** The lines of a stream of UTF-8, without their ends; a line is only ever held once. */
export function linesOf(from: Readable): AsyncIterable<string> {
  return createInterface({ input: from, crlfDelay: Number.POSITIVE_INFINITY });
}
