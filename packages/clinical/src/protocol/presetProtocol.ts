import type { Sureness } from '../contract/figure.js';
import { type Parsed, refusal } from '../contract/refusal.js';
import type { Field, Replaced } from './field.js';
import { PRESETS, type Preset } from './presets.js';
import { PROTOCOL_SCHEMA, type Protocol } from './protocol.js';
import { SECTION_NAMES, SECTIONS } from './sections.js';
import type { FieldShape } from './shape.js';

/** One preset in a list; its title is a sentence and comes from the catalogue by its id. */
export type PresetRow = { readonly id: string; readonly source: string; readonly status: Sureness };

/** The presets that can be chosen, in the order of the handbook. */
export function listPresets(): PresetRow[] {
  return PRESETS.map(({ id, source, status }) => ({ id, source, status }));
}

/**
 * The protocol of a preset, with nothing decided locally yet.
 *
 * Errors: `unknown-id` at `/preset`, with the ids that exist.
 */
export function presetProtocol(id: string): Parsed<Protocol> {
  const preset = PRESETS.find((one) => one.id === id);
  if (preset !== undefined) return { ok: true, value: protocolOf(preset) };
  const choices = PRESETS.map((one) => one.id);
  return { ok: false, refusals: [refusal('/preset', 'unknown-id', 'one-of', id, { choices })] };
}

function protocolOf({ id, changes }: Preset): Protocol {
  const sections: Record<string, Record<string, Field>> = {};
  for (const name of SECTION_NAMES) {
    const fields: Readonly<Record<string, FieldShape>> = SECTIONS[name].fields;
    const changed: Readonly<Record<string, Replaced>> = changes[name] ?? {};
    sections[name] = Object.fromEntries(
      Object.entries(fields).map(([key, shape]) => [key, fieldOf(shape, changed[key])]),
    );
  }
  return { schema: PROTOCOL_SCHEMA, preset: id, sections: sections as unknown as Protocol['sections'] };
}

function fieldOf(shape: FieldShape, change: Replaced | undefined): Field {
  const { value, source, sure } = change ?? shape;
  return { value, unit: shape.unit, source, sure, replaces: null };
}
