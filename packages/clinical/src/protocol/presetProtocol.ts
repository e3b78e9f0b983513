import type { Sureness } from '../contract/figure.js';
import { pointer } from '../contract/numberText.js';
import { type Parsed, type Refusal, refusal } from '../contract/refusal.js';
import type { Field, Replaced } from './field.js';
import { PRESETS, type Preset } from './presets.js';
import { PROTOCOL_SCHEMA, type Presets, type Protocol } from './protocol.js';
import { SECTION_NAMES, SECTIONS, type SectionName } from './sections.js';
import type { FieldShape } from './shape.js';

/** One preset in a list; its title is a sentence and comes from the catalogue by its id. */
export type PresetRow = {
  readonly id: string;
  readonly section: SectionName;
  readonly source: string;
  readonly status: Sureness;
};

/** The presets that can be chosen, in the order of the handbook. */
export function listPresets(): PresetRow[] {
  return PRESETS.map(({ id, section, source, status }) => ({ id, section, source, status }));
}

/**
 * The protocol of the presets chosen, one for each section, with nothing decided locally yet. A section without a
 * choice has its first preset.
 *
 * Errors: `unknown-id` at `/presets/SECTION`, with the ids that exist for that section.
 */
export function presetProtocol(chosen: Partial<Presets>): Parsed<Protocol> {
  const refusals: Refusal[] = [];
  const found: Preset[] = [];
  for (const name of SECTION_NAMES) {
    const offered = PRESETS.filter(({ section }) => section === name);
    const id: string | undefined = chosen[name];
    const preset = id === undefined ? offered[0] : offered.find((one) => one.id === id);
    if (preset !== undefined) found.push(preset);
    else {
      const choices = offered.map((one) => one.id);
      refusals.push(refusal(pointer('/presets', name), 'unknown-id', 'one-of', id, { choices }));
    }
  }
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, value: protocolOf(found) };
}

function protocolOf(presets: readonly Preset[]): Protocol {
  const ids = presets.map(({ section, id }) => [section, id]);
  const sections = presets.map((preset) => [preset.section, fieldsOf(preset)]);
  return {
    schema: PROTOCOL_SCHEMA,
    presets: Object.fromEntries(ids) as Presets,
    sections: Object.fromEntries(sections) as Protocol['sections'],
  };
}

function fieldsOf({ section, changes }: Preset): Record<string, Field> {
  const shapes: Readonly<Record<string, FieldShape>> = SECTIONS[section].fields;
  const changed: Readonly<Record<string, Replaced>> = changes;
  return Object.fromEntries(
    Object.entries(shapes).map(([key, shape]) => [key, fieldOf(shape, changed[key])]),
  );
}

function fieldOf(shape: FieldShape, change: Replaced | undefined): Field {
  const { value, source, sure } = change ?? shape;
  return { value, unit: shape.unit, source, sure, replaces: null };
}
