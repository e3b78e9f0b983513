import { pointer } from '../contract/numberText.js';
import { type Parsed, type Refusal, refusal } from '../contract/refusal.js';
import { canonicalJson } from './canonicalJson.js';
import { protocolDocument } from './document.js';
import { type Field, LOCAL_SOURCE } from './field.js';
import { parseProtocol } from './parseProtocol.js';
import type { Protocol } from './protocol.js';

/** One field to be decided by the place itself; the value as it comes from outside. */
export type Override = { readonly section: string; readonly key: string; readonly value: unknown };

type Sections = Readonly<Record<string, Readonly<Record<string, Field>>>>;

/**
 * The protocol with some fields decided by the place itself: their source becomes `local` and the preset's value
 * stays beside each in `replaces`, however often it is set again. Setting the preset's own value restores the field.
 * All changes are made together, so that fields which must agree can be changed at once.
 *
 * Errors: `unknown-id` at `/sections/NAME` or `/sections/NAME/KEY` for what does not exist; else those of
 * `parseProtocol`. The protocol given is not touched.
 */
export function overrideFields(protocol: Protocol, overrides: readonly Override[]): Parsed<Protocol> {
  const sections: Record<string, Record<string, unknown>> = { ...(protocol.sections as unknown as Sections) };
  const refusals: Refusal[] = [];
  for (const { section, key, value } of overrides) {
    const field = fieldAt(protocol, section, key);
    if ('code' in field) refusals.push(field);
    else sections[section] = { ...sections[section], [key]: decided(field, value) };
  }
  if (refusals.length > 0) return { ok: false, refusals };
  const parsed = parseProtocol({ ...protocolDocument(protocol), sections });
  return parsed.ok ? { ok: true, value: withoutEmptyOverrides(parsed.value) } : parsed;
}

/** The protocol with one field as its preset has it. Errors: as {@link overrideFields}. */
export function restoreField(protocol: Protocol, section: string, key: string): Parsed<Protocol> {
  const field = fieldAt(protocol, section, key);
  if ('code' in field) return { ok: false, refusals: [field] };
  return overrideFields(protocol, [{ section, key, value: field.replaces?.value ?? field.value }]);
}

function decided(field: Field, value: unknown): Record<keyof Field, unknown> {
  const published = field.replaces ?? { value: field.value, source: field.source, sure: field.sure };
  return { value, unit: field.unit, source: LOCAL_SOURCE, sure: 'decision', replaces: published };
}

/** An override that says what the preset says is none. */
function withoutEmptyOverrides(protocol: Protocol): Protocol {
  const restored = (field: Field): Field =>
    field.replaces !== null && canonicalJson(field.value) === canonicalJson(field.replaces.value)
      ? { ...field, ...field.replaces, replaces: null }
      : field;
  const sections = Object.entries(protocol.sections as unknown as Sections).map(([name, fields]) => [
    name,
    Object.fromEntries(Object.entries(fields).map(([key, field]) => [key, restored(field)])),
  ]);
  return { ...protocol, sections: Object.fromEntries(sections) };
}

function fieldAt(protocol: Protocol, section: string, key: string): Field | Refusal {
  const sections = protocol.sections as unknown as Sections;
  const fields = Object.hasOwn(sections, section) ? sections[section] : undefined;
  const at = pointer('/sections', section);
  if (fields === undefined) {
    return refusal(at, 'unknown-id', 'one-of', section, { choices: Object.keys(sections) });
  }
  const field = Object.hasOwn(fields, key) ? fields[key] : undefined;
  return field ?? refusal(pointer(at, key), 'unknown-id', 'one-of', key, { choices: Object.keys(fields) });
}
