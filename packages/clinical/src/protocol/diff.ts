import { canonicalJson } from './canonicalJson.js';
import type { Field } from './field.js';
import type { Protocol } from './protocol.js';
import { SECTION_NAMES } from './sections.js';

/** One field that is not the same in two protocols; null on the side that does not have it. */
export type FieldChange = {
  readonly section: string;
  readonly key: string;
  readonly before: Field | null;
  readonly after: Field | null;
};

/** A section that started from another preset; null on the side that does not have it. */
export type PresetChange = {
  readonly section: string;
  readonly before: string | null;
  readonly after: string | null;
};

/** Everything that differs between two protocols, in the order of the sections. */
export type ProtocolDiff = {
  readonly presets: readonly PresetChange[];
  readonly fields: readonly FieldChange[];
};

/** What differs between two protocols; null is a place without one. */
export function protocolDiff(before: Protocol | null, after: Protocol | null): ProtocolDiff {
  return { presets: presetChanges(before, after), fields: fieldChanges(before, after) };
}

function presetChanges(before: Protocol | null, after: Protocol | null): PresetChange[] {
  return SECTION_NAMES.map((section) => ({
    section,
    before: before?.presets[section] ?? null,
    after: after?.presets[section] ?? null,
  })).filter((change) => change.before !== change.after);
}

function fieldChanges(before: Protocol | null, after: Protocol | null): FieldChange[] {
  const old = fieldsByPlace(before);
  const young = fieldsByPlace(after);
  return [...new Map([...old, ...young]).values()].flatMap(({ section, key }) => {
    const place = `${section}/${key}`;
    const a = old.get(place)?.field ?? null;
    const b = young.get(place)?.field ?? null;
    return canonicalJson(a) === canonicalJson(b) ? [] : [{ section, key, before: a, after: b }];
  });
}

type Placed = { readonly section: string; readonly key: string; readonly field: Field };

function fieldsByPlace(protocol: Protocol | null): Map<string, Placed> {
  const places = new Map<string, Placed>();
  for (const [section, fields] of Object.entries(protocol?.sections ?? {})) {
    for (const [key, field] of Object.entries(fields)) {
      places.set(`${section}/${key}`, { section, key, field: field as Field });
    }
  }
  return places;
}
