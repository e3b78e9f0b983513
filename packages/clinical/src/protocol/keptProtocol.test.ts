import { describe, expect, test } from 'vitest';
import { protocolDocument } from './document.js';
import { keptProtocol } from './keptProtocol.js';
import { parseProtocol } from './parseProtocol.js';
import { listPresets, presetProtocol } from './presetProtocol.js';
import { PROTOCOL_SCHEMA, type Protocol } from './protocol.js';
import { SECTIONS } from './sections.js';

/** A protocol as the record gives it back. */
const document = (protocol: Protocol): unknown => JSON.parse(JSON.stringify(protocolDocument(protocol)));

/** The protocol of a preset as a program of an older schema would have kept it. */
function ofSchema(schema: number): Protocol {
  const made = presetProtocol({ count: listPresets()[0]?.id ?? '' });
  if (!made.ok) throw new Error('no preset');
  const { presets, sections } = made.value;
  const then = Object.entries(sections).map(([name, fields]) => {
    const shapes: Readonly<Record<string, { readonly since: number }>> =
      SECTIONS[name as keyof typeof SECTIONS].fields;
    return [name, Object.entries(fields).filter(([key]) => (shapes[key]?.since ?? 0) <= schema)] as const;
  });
  const had = then.filter(([, fields]) => fields.length > 0);
  return {
    schema,
    presets: Object.fromEntries(
      Object.entries(presets).filter(([name]) => had.some(([section]) => section === name)),
    ) as Protocol['presets'],
    sections: Object.fromEntries(
      had.map(([name, fields]) => [name, Object.fromEntries(fields)]),
    ) as unknown as Protocol['sections'],
  };
}

// What may be kept is said by `parseProtocol`, which reads every field: a page must have the same of it.
describe('a protocol that was kept', () => {
  test.each(Array.from({ length: PROTOCOL_SCHEMA }, (_, at) => at + 1))(
    'of schema %i is what it is to whoever reads every field of it',
    (schema) => {
      const kept = document(ofSchema(schema));
      const read = parseProtocol(kept);
      expect(read.ok).toBe(true);
      expect(keptProtocol(kept)).toEqual(read);
    },
  );

  test.each(listPresets().map(({ section, id }) => [section, id] as const))(
    '%s by %s likewise',
    (section, id) => {
      const made = presetProtocol({ [section]: id });
      if (!made.ok) throw new Error(`${section} ${id}`);
      expect(keptProtocol(document(made.value))).toEqual({ ok: true, value: made.value });
    },
  );

  test.each([0, PROTOCOL_SCHEMA + 1, 1.5, '6', null, undefined])(
    'of schema %s is refused by it',
    (schema) => {
      const refused = keptProtocol({ ...(document(ofSchema(1)) as object), schema });
      expect(refused.ok).toBe(false);
      expect(refused.ok ? [] : refused.refusals.map(({ field }) => field)).toEqual(['/schema']);
    },
  );

  test.each([
    null,
    7,
    {},
    { schema: 6 },
    { schema: 6, sections: { count: {} } },
    { schema: 1, sections: {} },
  ])('that is none (%j) is refused', (content) => expect(keptProtocol(content).ok).toBe(false));
});
