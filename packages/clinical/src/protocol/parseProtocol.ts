import { type FieldReader, readFields } from '../contract/fields.js';
import type { Sureness } from '../contract/figure.js';
import { pointer } from '../contract/numberText.js';
import { type Parsed, type Refusal, refusal } from '../contract/refusal.js';
import { hasPresets } from './document.js';
import { type Field, type FieldValue, LOCAL_SOURCE, type Replaced } from './field.js';
import { PROTOCOL_SCHEMA, type Presets, type Protocol } from './protocol.js';
import { readValue } from './readValue.js';
import { SECTIONS, sectionsOfSchema } from './sections.js';
import type { Disagreement, FieldShape } from './shape.js';

const ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const SURENESS: readonly Sureness[] = [
  'found',
  'second-hand',
  'memory',
  'memory-low',
  'practice',
  'derived',
  'decision',
];

/** A section as the reader needs it, whatever its rules are. */
export type ReadableSection = {
  readonly fields: Readonly<Record<string, FieldShape>>;
  readonly agree: (rules: never, schema: number) => readonly Disagreement[];
};

/**
 * Reads a protocol from outside: a request body, a backup, a file.
 *
 * Errors: each bad field by its JSON Pointer (`/sections/count/slowPerMinute/value`), all together. A newer schema
 * is refused by name (`/schema`), and then nothing else is judged. Fields must agree with each other
 * (`contradicts`): a proposed window is one that is offered.
 */
export function parseProtocol(input: unknown): Parsed<Protocol> {
  if (!isObject(input)) return notAnObject('', input);
  const schemaOf = readFields({ schema: (input as { schema?: unknown }).schema }, ['schema']);
  const schema = schemaOf.number('schema', schemaFault);
  if (schema === null) return { ok: false, refusals: schemaOf.refusals };
  const reader = readFields(input, ['schema', hasPresets(schema) ? 'presets' : 'preset', 'sections']);
  const presets = readPresets(reader, schema);
  const sections = readSections(reader.raw('sections'), SECTIONS, schema);
  const refusals = [...reader.refusals, ...(sections.ok ? [] : sections.refusals)];
  if (refusals.length > 0 || !sections.ok) return { ok: false, refusals };
  return {
    ok: true,
    value: { schema, presets, sections: sections.value as unknown as Protocol['sections'] },
  };
}

/** Reads every section that a protocol of that schema has, and refuses others. */
export function readSections(
  input: unknown,
  shapes: Readonly<Record<string, ReadableSection>>,
  schema: number,
): Parsed<Record<string, Record<string, Field>>> {
  const wanted = Object.entries(shapes)
    .map(([name, { fields, agree }]) => ({ name, agree, fields: fieldsOfSchema(fields, schema) }))
    .filter(({ fields }) => Object.keys(fields).length > 0);
  const at = '/sections';
  const reader = readFields(
    input ?? {},
    wanted.map(({ name }) => name),
    at,
  );
  const refusals = [...reader.refusals];
  const sections: Record<string, Record<string, Field>> = {};
  for (const { name, fields, agree } of wanted) {
    const section = readSection(reader.raw(name), fields, pointer(at, name));
    sections[name] = section.fields;
    refusals.push(...section.refusals);
    if (section.refusals.length === 0)
      refusals.push(...disagreements(section.fields, agree, schema, pointer(at, name)));
  }
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, value: sections };
}

function fieldsOfSchema(
  fields: Readonly<Record<string, FieldShape>>,
  schema: number,
): Record<string, FieldShape> {
  return Object.fromEntries(Object.entries(fields).filter(([, { since }]) => since <= schema));
}

function readSection(
  input: unknown,
  shapes: Readonly<Record<string, FieldShape>>,
  at: string,
): { fields: Record<string, Field>; refusals: Refusal[] } {
  if (!isObject(input)) return { fields: {}, refusals: [refusal(at, 'missing', 'an-object', input)] };
  const reader = readFields(input, Object.keys(shapes), at);
  const refusals = [...reader.refusals];
  const fields: Record<string, Field> = {};
  for (const [key, shape] of Object.entries(shapes)) {
    const read = readField(reader.raw(key), shape, pointer(at, key));
    if (read.ok) fields[key] = read.value;
    else refusals.push(...read.refusals);
  }
  return { fields, refusals };
}

function readField(input: unknown, shape: FieldShape, at: string): Parsed<Field> {
  if (!isObject(input)) return notAnObject(at, input);
  const reader = readFields(input, ['value', 'unit', 'source', 'sure', 'replaces'], at);
  const own = readOrigin(reader, shape, at);
  const refusals = [...reader.refusals];
  const unit = reader.raw('unit');
  if (unit !== shape.unit) {
    const choices = [shape.unit ?? 'null'];
    refusals.push(refusal(pointer(at, 'unit'), 'contradicts', 'one-of', unit, { choices }));
  }
  const replaces = readReplaced(reader.raw('replaces'), shape, pointer(at, 'replaces'));
  if (!replaces.ok) refusals.push(...replaces.refusals);
  else if ((own.source === LOCAL_SOURCE) !== (replaces.value !== null)) {
    refusals.push(refusal(pointer(at, 'source'), 'contradicts', 'local-if-replacing', own.source));
  }
  if (refusals.length > 0 || !replaces.ok) return { ok: false, refusals };
  const { value, source, sure } = own;
  return { ok: true, value: { value, unit: shape.unit, source, sure, replaces: replaces.value } };
}

function readReplaced(input: unknown, shape: FieldShape, at: string): Parsed<Replaced | null> {
  if (input === null) return { ok: true, value: null };
  if (!isObject(input)) return notAnObject(at, input);
  const reader = readFields(input, ['value', 'source', 'sure'], at);
  const { value, source, sure } = readOrigin(reader, shape, at);
  if (reader.refusals.length > 0) return { ok: false, refusals: reader.refusals };
  return { ok: true, value: { value, source, sure } };
}

/** A value with where it comes from; what is wrong goes to the reader's refusals. */
function readOrigin(
  reader: FieldReader,
  shape: FieldShape,
  at: string,
): { value: FieldValue; source: string; sure: Sureness } {
  const read = readValue(shape, reader.raw('value'), pointer(at, 'value'));
  if ('refusals' in read) reader.refusals.push(...read.refusals);
  const source = reader.raw('source');
  if (typeof source !== 'string' || source.trim() === '') {
    reader.refusals.push(refusal(pointer(at, 'source'), 'missing', 'a-source', source));
  }
  const sure = reader.choice('sure', SURENESS, null) ?? 'decision';
  return { value: 'value' in read ? read.value : null, source: String(source), sure };
}

function disagreements(
  fields: Readonly<Record<string, Field>>,
  agree: ReadableSection['agree'],
  schema: number,
  at: string,
): Refusal[] {
  const rules = Object.fromEntries(Object.entries(fields).map(([key, { value }]) => [key, value]));
  return agree(rules as never, schema).map(({ key, expected, figures }) =>
    refusal(`${pointer(at, key)}/value`, 'contradicts', expected, fields[key]?.value, { figures }),
  );
}

function readPresets(reader: FieldReader, schema: number): Presets {
  if (!hasPresets(schema)) return { count: readId(reader, 'preset', '') };
  const at = '/presets';
  const got = reader.raw('presets');
  if (!isObject(got)) {
    reader.refusals.push(refusal(at, 'missing', 'an-object', got));
    return { count: '' };
  }
  const names = sectionsOfSchema(schema);
  const each = readFields(got, names, at);
  const ids = names.map((name) => [name, readId(each, name, at)]);
  reader.refusals.push(...each.refusals);
  return Object.fromEntries(ids) as Presets;
}

function readId(reader: FieldReader, key: string, at: string): string {
  const got = reader.raw(key);
  if (typeof got === 'string' && ID.test(got)) return got;
  const code = got === undefined ? 'missing' : 'unknown-id';
  reader.refusals.push(refusal(pointer(at, key), code, 'an-id', got));
  return '';
}

function schemaFault(schema: number) {
  if (Number.isInteger(schema) && schema >= 1 && schema <= PROTOCOL_SCHEMA) return null;
  const figures = { minimum: 1, maximum: PROTOCOL_SCHEMA };
  return { code: 'out-of-range', expected: 'known-schema', figures } as const;
}

function isObject(input: unknown): boolean {
  return typeof input === 'object' && input !== null && !Array.isArray(input);
}

function notAnObject(at: string, got: unknown): Parsed<never> {
  return { ok: false, refusals: [refusal(at, 'missing', 'an-object', got)] };
}
