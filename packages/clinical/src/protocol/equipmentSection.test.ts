import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { EQUIPMENT_FIGURES } from '../equipment/figures.js';
import { DEFAULT_EQUIPMENT_RULES } from '../equipment/rules.js';
import { canonicalJson } from './canonicalJson.js';
import { equipmentFields } from './equipmentFields.js';
import { type Override, overrideFields } from './override.js';
import { parseProtocol } from './parseProtocol.js';
import { presetProtocol } from './presetProtocol.js';
import type { Protocol } from './protocol.js';
import { protocolVersion } from './protocolVersion.js';
import { equipmentRules } from './rules.js';

function preset(): Protocol {
  const found = presetProtocol({});
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  return found.value;
}

const override = (key: string, value: unknown): Override => ({ section: 'equipment', key, value });

test('gauges are kept by the published figures until the place says otherwise', () => {
  expect(equipmentRules(null)).toEqual(DEFAULT_EQUIPMENT_RULES);
  expect(equipmentRules(preset())).toEqual(DEFAULT_EQUIPMENT_RULES);
  const changed = overrideFields(preset(), [override('zeroDays', '1'), override('mostErrorMmHg', 2)]);
  if (!changed.ok) throw new Error(JSON.stringify(changed.refusals));
  expect(equipmentRules(changed.value)).toEqual({
    ...DEFAULT_EQUIPMENT_RULES,
    zeroDays: 1,
    mostErrorMmHg: 2,
  });
  const { source, sure } = EQUIPMENT_FIGURES.zeroDays;
  expect(equipmentFields(changed.value.sections.equipment).zeroDays).toEqual({
    value: 1,
    unit: 'days',
    source: 'local',
    sure: 'decision',
    replaces: { value: 7, source, sure },
  });
  expect(equipmentFields(undefined).zeroDays).toMatchObject({ value: 7, source, sure, replaces: null });
});

// The bounds are this project's; months, days and pressures are counted.
test.each<[string, unknown, string[]]>([
  ['comparisonMonths', 0, ['comparisonMonths/value out-of-range']],
  ['comparisonMonths', 1, []],
  ['comparisonMonths', 60, []],
  ['comparisonMonths', 61, ['comparisonMonths/value out-of-range']],
  ['comparisonMonths', 1.5, ['comparisonMonths/value not-whole']],
  ['zeroDays', '2.5', ['zeroDays/value not-whole']],
  ['fewestPoints', 4.5, ['fewestPoints/value not-whole']],
  ['mostErrorMmHg', 2.5, []],
  ['mostErrorMmHg', '', ['mostErrorMmHg/value missing']],
])('%s %j', (key, value, refused) => {
  const changed = overrideFields(preset(), [override(key, value)]);
  expect(changed.ok ? [] : changed.refusals.map(({ field, code }) => `${field} ${code}`)).toEqual(
    refused.map((one) => `/sections/equipment/${one}`),
  );
});

test('a protocol of schema 4 is read without it, keeps its version and takes the figures', () => {
  const { presets, sections, ...now } = preset();
  const { equipment: _preset, home: _home, ambulatory: _day, ...oldPresets } = presets;
  const { equipment, home: _homeFields, ambulatory: _dayFields, ...oldSections } = sections;
  const kept = { ...now, schema: 4, presets: oldPresets, sections: oldSections };
  const parsed = parseProtocol(JSON.parse(JSON.stringify(kept)));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
  expect(parsed.value).toEqual(kept);
  const hash = createHash('sha256').update(canonicalJson(kept), 'utf8').digest('hex');
  expect(protocolVersion(parsed.value)).toBe(hash);
  expect(equipmentRules(parsed.value)).toEqual(DEFAULT_EQUIPMENT_RULES);
  expect(parseProtocol({ ...kept, sections: { ...oldSections, equipment } })).toMatchObject({
    ok: false,
    refusals: [{ field: '/sections/equipment', code: 'unknown-field' }],
  });
});
