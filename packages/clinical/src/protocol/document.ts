import type { Protocol } from './protocol.js';

/** The schema from which each section has a preset of its own; before it there was one `preset`, of `count`. */
const PRESETS_SINCE = 2;

/** Whether a document of that schema names a preset for each section. */
export function hasPresets(schema: number): boolean {
  return schema >= PRESETS_SINCE;
}

/**
 * The protocol as a document of its own schema: what is kept, sent and hashed. `parseProtocol` reads it back.
 * It shares its parts with the protocol given.
 */
export function protocolDocument(protocol: Protocol): Readonly<Record<string, unknown>> {
  const { schema, presets, sections } = protocol;
  return hasPresets(schema) ? { schema, presets, sections } : { schema, preset: presets.count, sections };
}
