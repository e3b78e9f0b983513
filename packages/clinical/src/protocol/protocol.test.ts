import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DEFAULT_COUNT_RULES } from '../count/rules.js';
import { canonicalJson } from './canonicalJson.js';
import { protocolDiff } from './diff.js';
import { overrideFields, restoreField } from './override.js';
import { parseProtocol } from './parseProtocol.js';
import { listPresets, presetProtocol } from './presetProtocol.js';
import type { Protocol } from './protocol.js';
import { protocolVersion } from './protocolVersion.js';
import { countRules } from './rules.js';
import { SECTION_NAMES } from './sections.js';

function preset(id = 'thirty-seconds'): Protocol {
  const found = presetProtocol({ count: id });
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  return found.value;
}

function decided(protocol: Protocol, key: string, value: unknown): Protocol {
  const changed = overrideFields(protocol, [{ section: 'count', key, value }]);
  if (!changed.ok) throw new Error(JSON.stringify(changed.refusals));
  return changed.value;
}

function refusedOverride(key: string, value: unknown): string[] {
  const changed = overrideFields(preset(), [{ section: 'count', key, value }]);
  return changed.ok ? [] : changed.refusals.map(({ field, code }) => `${field} ${code}`);
}

/** A copy of plain data whose keys stand in another order. */
function reordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reordered);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, member]) => [key, reordered(member)]),
  );
}

test('a place with no protocol counts by the conventions', () => {
  expect(countRules(null)).toEqual(DEFAULT_COUNT_RULES);
});

test('the presets are listed with source and status', () => {
  // Bedside handbook 1.3 to 1.5: what studies and custom disagree on.
  expect(listPresets().filter(({ section }) => section === 'count')).toEqual([
    { id: 'thirty-seconds', section: 'count', source: 'Hollerbach 1990, Heart Lung 19:258', status: 'found' },
    {
      id: 'fifteen-seconds-at-rest',
      section: 'count',
      source: 'Hwu 2000, J Clin Nurs 9:146',
      status: 'found',
    },
    { id: 'full-minute', section: 'count', source: 'bedside handbook 1.5', status: 'practice' },
  ]);
  expect(presetProtocol({ count: 'sixty' })).toMatchObject({
    ok: false,
    refusals: [{ field: '/presets/count', code: 'unknown-id' }],
  });
});

test.each([
  ['thirty-seconds', [15, 30, 60], 30],
  ['fifteen-seconds-at-rest', [15, 30, 60], 15],
  ['full-minute', [60], 60],
])('%s offers %j s for a pulse and proposes %d', (id, offered, proposed) => {
  expect(countRules(preset(id))).toEqual({
    ...DEFAULT_COUNT_RULES,
    pulseWindowsSeconds: offered,
    pulseWindowSeconds: proposed,
  });
});

test.each(listPresets())(
  '$section $id is a protocol that can be read back, with the same version',
  ({ section, id }) => {
    const found = presetProtocol({ [section]: id });
    if (!found.ok) throw new Error(JSON.stringify(found.refusals));
    const protocol = found.value;
    expect(protocol.presets[section]).toBe(id);
    const parsed = parseProtocol(JSON.parse(JSON.stringify(protocol)));
    expect(parsed).toEqual({ ok: true, value: protocol });
    expect(parsed.ok && protocolVersion(parsed.value)).toBe(protocolVersion(protocol));
  },
);

test('each preset has a version of its own', () => {
  // The first of each section is what stands without a choice, so the sections share one protocol of first ones.
  const versions = listPresets().map(({ section, id }) => {
    const found = presetProtocol({ [section]: id });
    return found.ok ? protocolVersion(found.value) : null;
  });
  expect(versions).not.toContain(null);
  expect(new Set(versions).size).toBe(listPresets().length - SECTION_NAMES.length + 1);
});

test('the version is the SHA-256 of the canonical text', () => {
  // Against another implementation of SHA-256: that of Node.
  const text = canonicalJson(preset());
  expect(JSON.parse(text)).toMatchObject({ schema: 9, presets: { count: 'thirty-seconds' } });
  expect(protocolVersion(preset())).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
  expect(protocolVersion(preset())).toMatch(/^[0-9a-f]{64}$/);
});

test('a local value wins and the preset stays visible beside it', () => {
  const once = decided(preset(), 'fastPerMinute', '110');
  const twice = decided(once, 'fastPerMinute', 120);
  expect(twice.sections.count.fastPerMinute).toEqual({
    value: 120,
    unit: '/min',
    source: 'local',
    sure: 'decision',
    replaces: { value: 100, source: 'bedside handbook 1.5', sure: 'practice' },
  });
  expect(countRules(twice).fastPerMinute).toBe(120);
  expect(preset().sections.count.fastPerMinute.value).toBe(100);
  expect(decided(twice, 'fastPerMinute', 100)).toEqual(preset());
  expect(restoreField(twice, 'count', 'fastPerMinute')).toEqual({ ok: true, value: preset() });
  expect(restoreField(preset(), 'count', 'fastPerMinute')).toEqual({ ok: true, value: preset() });
});

test('fields that must agree can be changed together', () => {
  expect(refusedOverride('pulseWindowsSeconds', [15, 60])).toEqual([
    '/sections/count/pulseWindowSeconds/value contradicts',
  ]);
  const both = overrideFields(preset(), [
    { section: 'count', key: 'pulseWindowsSeconds', value: [15, 60] },
    { section: 'count', key: 'pulseWindowSeconds', value: 60 },
  ]);
  expect(both.ok && countRules(both.value).pulseWindowsSeconds).toEqual([15, 60]);
});

test.each<[string, unknown, string[]]>([
  ['slowPerMinute', 100, ['/sections/count/slowPerMinute/value contradicts']],
  ['slowPerMinute', 'sixty', ['/sections/count/slowPerMinute/value not-a-number']],
  ['slowPerMinute', 19, ['/sections/count/slowPerMinute/value out-of-range']],
  ['slowPerMinute', 20, []],
  ['slowPerMinute', '', ['/sections/count/slowPerMinute/value missing']],
  ['ceilingPerMinute', 401, ['/sections/count/ceilingPerMinute/value out-of-range']],
  ['clock', 'watch', ['/sections/count/clock/value unknown-id']],
  ['clock', 'beat', []],
  ['first', '0', []],
  ['first', 2, ['/sections/count/first/value unknown-id']],
  ['breathsShortAllowed', 'true', ['/sections/count/breathsShortAllowed/value unknown-id']],
  ['breathsShortAllowed', true, ['/sections/count/breathsShortWindowSeconds/value contradicts']],
  [
    'pulseWindowsSeconds',
    [15],
    [
      '/sections/count/barredWhenFastSeconds/value contradicts',
      '/sections/count/pulseWindowSeconds/value contradicts',
    ],
  ],
  ['pulseWindowsSeconds', [], ['/sections/count/pulseWindowsSeconds/value missing']],
  ['pulseWindowsSeconds', [60, 30], ['/sections/count/pulseWindowsSeconds/value/1 out-of-order']],
  ['pulseWindowsSeconds', [30, 30], ['/sections/count/pulseWindowsSeconds/value/1 out-of-order']],
  [
    'pulseWindowsSeconds',
    [1, 30, 'x'],
    [
      '/sections/count/pulseWindowsSeconds/value/0 out-of-range',
      '/sections/count/pulseWindowsSeconds/value/2 not-a-number',
    ],
  ],
  ['longestWindowSeconds', 100, []],
  ['fullWindowSeconds', 120, []],
  ['pulse', 1, ['/sections/count/pulse unknown-id']],
  ['toString', 1, ['/sections/count/toString unknown-id']],
])('overriding %s with %j is refused as %j', (key, value, refusals) => {
  expect(refusedOverride(key, value)).toEqual(refusals);
});

test('windows offered and the full minute fit the longest window', () => {
  const changed = overrideFields(preset(), [
    { section: 'count', key: 'longestWindowSeconds', value: 90 },
    { section: 'count', key: 'fullWindowSeconds', value: 120 },
    { section: 'count', key: 'pulseWindowsSeconds', value: [30, 120] },
  ]);
  expect(!changed.ok && changed.refusals.map(({ field }) => field)).toEqual([
    '/sections/count/pulseWindowsSeconds/value',
    '/sections/count/fullWindowSeconds/value',
  ]);
});

test('a section that does not exist cannot be overridden', () => {
  const changed = overrideFields(preset(), [{ section: 'counts', key: 'clock', value: 'any' }]);
  expect(changed).toMatchObject({
    ok: false,
    refusals: [{ field: '/sections/counts', choices: SECTION_NAMES }],
  });
});

test('a difference names each field on both sides', () => {
  const local = decided(preset(), 'fullMinuteWhenWeak', false);
  expect(protocolDiff(preset(), local)).toEqual({
    presets: [],
    fields: [
      {
        section: 'count',
        key: 'fullMinuteWhenWeak',
        before: preset().sections.count.fullMinuteWhenWeak,
        after: local.sections.count.fullMinuteWhenWeak,
      },
    ],
  });
  expect(protocolDiff(local, local)).toEqual({ presets: [], fields: [] });
  const { fields: all, presets } = protocolDiff(null, local);
  expect(presets[0]).toEqual({ section: 'count', before: null, after: 'thirty-seconds' });
  expect(presets.map(({ section }) => section)).toEqual(SECTION_NAMES);
  const whole = Object.entries(local.sections).flatMap(([section, fields]) =>
    Object.keys(fields).map((key) => `${section}/${key}`),
  );
  expect(all.map(({ section, key }) => `${section}/${key}`)).toEqual(whole);
  expect(all.every(({ before, after }) => before === null && after !== null)).toBe(true);
  const other = protocolDiff(preset('thirty-seconds'), preset('full-minute'));
  expect(other.fields.map(({ key }) => key)).toEqual(['pulseWindowsSeconds', 'pulseWindowSeconds']);
  expect(other.presets).toEqual([{ section: 'count', before: 'thirty-seconds', after: 'full-minute' }]);
});

test('the order of keys does not change the version', () => {
  const turned = reordered(preset()) as Protocol;
  expect(JSON.stringify(turned)).not.toBe(JSON.stringify(preset()));
  expect(protocolVersion(turned)).toBe(protocolVersion(preset()));
  const parsed = parseProtocol(turned);
  expect(parsed.ok && protocolVersion(parsed.value)).toBe(protocolVersion(preset()));
});

test('any change of a value changes the version, and going back restores it', () => {
  const numbers = [
    ['slowPerMinute', 20, 99],
    ['fastPerMinute', 61, 250],
    ['barredWhenFastSeconds', 0, 59],
    ['youngUnderMonths', 1, 216],
    ['disagreementPerMinute', 1, 60],
    ['breathsShortWindowSeconds', 15, 60],
  ] as const;
  const change = fc
    .constantFrom(...numbers)
    .chain(([key, min, max]) => fc.tuple(fc.constant(key), fc.integer({ min, max })));
  fc.assert(
    fc.property(change, ([key, value]) => {
      const before = preset();
      const after = decided(before, key, value);
      const isSame = before.sections.count[key].value === value;
      expect(protocolVersion(after) === protocolVersion(before)).toBe(isSame);
      const back = restoreField(after, 'count', key);
      expect(back.ok && protocolVersion(back.value)).toBe(protocolVersion(before));
    }),
  );
});

test('the preset of a section is part of the content', () => {
  const other = { ...preset(), presets: { ...preset().presets, count: 'full-minute' } };
  expect(protocolVersion(other)).not.toBe(protocolVersion(preset()));
});

test('short breaths are allowed together with a window offered for them', () => {
  const changed = overrideFields(preset(), [
    { section: 'count', key: 'breathsShortAllowed', value: true },
    { section: 'count', key: 'breathsWindowsSeconds', value: [30, 60] },
  ]);
  expect(changed.ok && countRules(changed.value).breathsShortAllowed).toBe(true);
});

test('a source or a sureness is part of the content', () => {
  const { count } = preset().sections;
  const field = { ...count.slowPerMinute, source: 'another' };
  const other = {
    ...preset(),
    sections: { ...preset().sections, count: { ...count, slowPerMinute: field } },
  };
  expect(protocolVersion(other)).not.toBe(protocolVersion(preset()));
});
