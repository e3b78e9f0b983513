import { expect, test } from 'vitest';
import { NO_CATEGORIES } from '../category/rules.js';
import { ADULT_SCHEME_IDS } from '../category/schemes.js';
import { overrideFields } from './override.js';
import { parseProtocol } from './parseProtocol.js';
import { listPresets, presetProtocol } from './presetProtocol.js';
import type { Presets, Protocol } from './protocol.js';
import { categoryRules } from './rules.js';

function preset(chosen: Partial<Presets> = {}): Protocol {
  const found = presetProtocol(chosen);
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  return found.value;
}

test('no protocol, and a protocol that chose none, put nothing into a category', () => {
  // Bedside handbook 7.5; DESIGN section 2: a clinic shows no category until it has chosen.
  for (const protocol of [null, preset()]) {
    expect(categoryRules(protocol)).toEqual(NO_CATEGORIES);
  }
});

test('an older protocol has no such section, and no category', () => {
  const { schema: _schema, presets, sections } = preset({ count: 'full-minute' });
  const old = parseProtocol({
    schema: 2,
    presets: { count: presets.count },
    sections: { count: sections.count },
  });
  expect(old.ok && categoryRules(old.value)).toEqual(NO_CATEGORIES);
});

test('each guideline is a preset under its own name, with the scheme of pregnancy', () => {
  const ids = listPresets()
    .filter(({ section }) => section === 'category')
    .map(({ id }) => id);
  expect(ids).toEqual(['no-categories', ...ADULT_SCHEME_IDS]);
  for (const id of ADULT_SCHEME_IDS) {
    const { category } = preset({ category: id }).sections;
    expect(category?.adultScheme).toMatchObject({ value: id, replaces: null });
    // Bedside handbook 6.1: the limits of pregnancy are from memory.
    expect(category?.pregnancyScheme).toMatchObject({ value: 'pregnancy', sure: 'memory' });
  }
  expect(categoryRules(preset({ category: 'acc-aha-2017' })).childScheme).toBe('aap-2017');
  expect(categoryRules(preset({ category: 'esh-2023' })).childScheme).toBe('none');
});

test('a place chooses its own scheme of children, and keeps what that replaces', () => {
  const changed = overrideFields(preset({ category: 'esc-2024' }), [
    { section: 'category', key: 'childScheme', value: 'fourth-report-2004' },
  ]);
  expect(changed.ok && categoryRules(changed.value)).toEqual({
    adultScheme: 'esc-2024',
    childScheme: 'fourth-report-2004',
    pregnancyScheme: 'pregnancy',
  });
  expect(changed.ok && changed.value.sections.category?.childScheme).toMatchObject({
    source: 'local',
    replaces: { value: 'none' },
  });
  const refused = overrideFields(preset(), [{ section: 'category', key: 'adultScheme', value: 'aap-2017' }]);
  expect(refused).toMatchObject({ ok: false, refusals: [{ code: 'unknown-id' }] });
});
