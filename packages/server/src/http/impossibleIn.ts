import { setImmediate } from 'node:timers/promises';
import type { Refusal } from '@evenfall/clinical';
import { type Entry, impossibleMovements } from '@evenfall/record';

/**
 * What no hand can have done in the exercises among entries that are sent. Each is played to know, which takes a while:
 * whoever else asks meanwhile is answered between two of them.
 */
export async function impossibleIn(sent: readonly { readonly entry: Entry }[]): Promise<Refusal[]> {
  const impossible: Refusal[] = [];
  for (const [at, { entry }] of sent.entries()) {
    if (entry.kind !== 'exercise') continue;
    const found = impossibleMovements(entry.content);
    impossible.push(...found.map((one) => ({ ...one, field: `/entries/${at}/content${one.field}` })));
    await setImmediate();
  }
  return impossible;
}
