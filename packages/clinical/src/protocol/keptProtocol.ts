import { type Parsed, refusal } from '../contract/refusal.js';
import { hasPresets } from './document.js';
import { PROTOCOL_SCHEMA, type Presets, type Protocol } from './protocol.js';

/** A protocol as `parseProtocol` read it when it was kept, in the form of its schema. */
type KeptDocument = Omit<Protocol, 'presets'> & { readonly presets?: Presets; readonly preset?: string };

/**
 * Takes a protocol that this program has kept: `parseProtocol` read every field of it when it came in, and a kept version
 * never changes. For whoever gets it from the record (a page), so that what each field may hold need not come along.
 *
 * Errors: a schema that this program does not know, as a newer one is, is refused by name (`/schema`).
 */
export function keptProtocol(content: unknown): Parsed<Protocol> {
  const schema: unknown = (content as { schema?: unknown } | null)?.schema;
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 1 || schema > PROTOCOL_SCHEMA) {
    const figures = { minimum: 1, maximum: PROTOCOL_SCHEMA };
    return { ok: false, refusals: [refusal('/schema', 'out-of-range', 'known-schema', schema, { figures })] };
  }
  const { presets, preset = '', sections } = content as KeptDocument;
  if (typeof sections?.count !== 'object') {
    return {
      ok: false,
      refusals: [refusal('/sections/count', 'missing', 'an-object', sections?.count)],
    };
  }
  const named = hasPresets(schema) ? presets : { count: preset };
  if (typeof named !== 'object') {
    return { ok: false, refusals: [refusal('/presets', 'missing', 'an-object', named)] };
  }
  return { ok: true, value: { schema, presets: named, sections } };
}
