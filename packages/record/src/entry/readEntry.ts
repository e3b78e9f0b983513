import { type Parsed, refusal } from '@evenfall/clinical';
import { KINDS, type Kind } from '../content/kinds.js';
import { type Entry, entryFrame } from './entry.js';
import { refusalsOf } from './refusals.js';

/**
 * Reads an entry from outside: a request, a backup, a row of the database. Every older schema number is
 * read; a newer one than this program knows is refused by name, never guessed.
 *
 * Errors: every problem of frame and content, at its JSON Pointer.
 */
export function readEntry(input: unknown): Parsed<Entry> {
  const frame = entryFrame.safeParse(input);
  if (!frame.success) return { ok: false, refusals: refusalsOf(frame.error, input) };
  const { kind, schema, content } = frame.data;
  const known: Kind = KINDS[kind];
  if (schema > known.newest) {
    return {
      ok: false,
      refusals: [
        refusal('/schema', 'unknown-id', 'schema-known', `${kind} ${schema}`, {
          figures: { newest: known.newest },
        }),
      ],
    };
  }
  const shape = known.schemas[schema];
  if (shape === undefined) throw new Error(`kind ${kind} lost its schema ${schema}`);
  const read = shape.safeParse(content);
  if (!read.success) return { ok: false, refusals: refusalsOf(read.error, content, '/content') };
  if (kind === 'person' && frame.data.person === null) {
    return { ok: false, refusals: [refusal('/person', 'missing', 'person', null)] };
  }
  return { ok: true, value: { ...frame.data, content: known.upgrade(read.data, schema) } as Entry };
}
