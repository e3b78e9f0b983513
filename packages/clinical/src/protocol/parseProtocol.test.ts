import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { DEFAULT_CUFF_RULES } from '../cuff/rules.js';
import { DEFAULT_RUN_RULES } from '../deflation/rules.js';
import { canonicalJson } from './canonicalJson.js';
import { protocolDocument } from './document.js';
import type { FieldValue } from './field.js';
import { overrideFields } from './override.js';
import { parseProtocol, type ReadableSection, readSections } from './parseProtocol.js';
import { presetProtocol } from './presetProtocol.js';
import { PROTOCOL_SCHEMA } from './protocol.js';
import { protocolVersion } from './protocolVersion.js';
import { countRules, cuffRules, runRules } from './rules.js';
import { SECTION_NAMES } from './sections.js';
import type { FieldKind, FieldShape } from './shape.js';

// biome-ignore lint/suspicious/noExplicitAny: a document from outside, broken below in every way.
type Document = any;

function document(): Document {
  const preset = presetProtocol({ count: 'thirty-seconds' });
  return JSON.parse(JSON.stringify(preset.ok ? preset.value : null));
}

function refused(breakIt: (protocol: Document) => void): string[] {
  const input = document();
  breakIt(input);
  const parsed = parseProtocol(input);
  return parsed.ok ? [] : parsed.refusals.map(({ field, code }) => `${field} ${code}`);
}

const slow = '/sections/count/slowPerMinute';

test.each<[string, (protocol: Document) => void, string[]]>([
  ['nothing', () => undefined, []],
  ['no schema', (p) => delete p.schema, ['/schema missing']],
  ['no presets', (p) => delete p.presets, ['/presets missing']],
  ['no preset of a section', (p) => delete p.presets.count, ['/presets/count missing']],
  [
    'a preset that is no id',
    (p) => Object.assign(p.presets, { count: 'Full Minute' }),
    ['/presets/count unknown-id'],
  ],
  [
    'a preset of no section',
    (p) => Object.assign(p.presets, { cuffs: 'any' }),
    ['/presets/cuffs unknown-field'],
  ],
  ['one preset for the whole', (p) => Object.assign(p, { preset: 'any' }), ['/preset unknown-field']],
  ['an unknown key', (p) => Object.assign(p, { title: 'x' }), ['/title unknown-field']],
  ['no sections', (p) => delete p.sections, SECTION_NAMES.map((name) => `/sections/${name} missing`)],
  ['an unknown section', (p) => Object.assign(p.sections, { cuffs: {} }), ['/sections/cuffs unknown-field']],
  ['a section that is a list', (p) => Object.assign(p.sections, { count: [] }), ['/sections/count missing']],
  [
    'no such field',
    (p) => Object.assign(p.sections.count, { fast: 1 }),
    ['/sections/count/fast unknown-field'],
  ],
  ['a field left out', (p) => delete p.sections.count.slowPerMinute, [`${slow} missing`]],
  ['a bare number', (p) => Object.assign(p.sections.count, { slowPerMinute: 60 }), [`${slow} missing`]],
  ['no value', (p) => delete p.sections.count.slowPerMinute.value, [`${slow}/value missing`]],
  [
    'a blank value',
    (p) => Object.assign(p.sections.count.slowPerMinute, { value: null }),
    [`${slow}/value missing`],
  ],
  [
    'another unit',
    (p) => Object.assign(p.sections.count.slowPerMinute, { unit: 'Hz' }),
    [`${slow}/unit contradicts`],
  ],
  [
    'no source',
    (p) => Object.assign(p.sections.count.slowPerMinute, { source: ' ' }),
    [`${slow}/source missing`],
  ],
  [
    'nothing said of what it replaces',
    (p) => delete p.sections.count.slowPerMinute.replaces,
    [`${slow}/replaces missing`],
  ],
  ['no sureness', (p) => delete p.sections.count.slowPerMinute.sure, [`${slow}/sure missing`]],
  [
    'a sureness',
    (p) => Object.assign(p.sections.count.slowPerMinute, { sure: 'sure' }),
    [`${slow}/sure unknown-id`],
  ],
  [
    'local, replacing nothing',
    (p) => Object.assign(p.sections.count.slowPerMinute, { source: 'local' }),
    [`${slow}/source contradicts`],
  ],
  [
    'published, replacing something',
    (p) =>
      Object.assign(p.sections.count.slowPerMinute, {
        replaces: { value: 50, source: 'x', sure: 'found' },
      }),
    [`${slow}/source contradicts`],
  ],
  [
    'replacing by half',
    (p) =>
      Object.assign(p.sections.count.slowPerMinute, {
        source: 'local',
        replaces: { value: 'x' },
      }),
    [
      `${slow}/replaces/value not-a-number`,
      `${slow}/replaces/source missing`,
      `${slow}/replaces/sure missing`,
    ],
  ],
])('a protocol with %s', (_what, breakIt, refusals) => {
  expect(refused(breakIt)).toEqual(refusals);
});

test('all that is wrong is reported together', () => {
  expect(
    refused((p) => {
      p.presets.count = 7;
      p.sections.count.slowPerMinute.value = 'x';
      p.sections.count.clock.value = 'x';
    }),
  ).toEqual([
    '/presets/count unknown-id',
    '/sections/count/clock/value unknown-id',
    `${slow}/value not-a-number`,
  ]);
});

test('a newer schema is refused by name, and nothing else is judged', () => {
  const parsed = parseProtocol({
    ...document(),
    schema: PROTOCOL_SCHEMA + 1,
    later: 'unknown to this program',
  });
  expect(parsed).toMatchObject({
    ok: false,
    refusals: [
      {
        field: '/schema',
        code: 'out-of-range',
        expected: 'known-schema',
        figures: { maximum: PROTOCOL_SCHEMA },
        got: String(PROTOCOL_SCHEMA + 1),
      },
    ],
  });
  expect(!parsed.ok && parsed.refusals).toHaveLength(1);
});

test.each([[null], [undefined], ['{}'], [[]], [7]])('%j is no protocol', (input) => {
  expect(parseProtocol(input)).toMatchObject({ ok: false, refusals: [{ field: '', code: 'missing' }] });
});

test('a protocol of schema 2 is read without the sections that came later, and keeps its version', () => {
  const { presets, sections, ...old } = document();
  const kept = { ...old, schema: 2, presets: { count: presets.count }, sections: { count: sections.count } };
  const parsed = parseProtocol(kept);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
  expect(parsed.value).toEqual(kept);
  const hash = createHash('sha256').update(canonicalJson(kept), 'utf8').digest('hex');
  expect(protocolVersion(parsed.value)).toBe(hash);
  expect(runRules(parsed.value)).toEqual(DEFAULT_RUN_RULES);
  expect(cuffRules(parsed.value)).toEqual(DEFAULT_CUFF_RULES);
  const later = parseProtocol({ ...kept, presets, sections });
  expect(!later.ok && later.refusals.map(({ field, code }) => `${field} ${code}`)).toEqual([
    ...SECTION_NAMES.slice(1).map((name) => `/presets/${name} unknown-field`),
    ...SECTION_NAMES.slice(1).map((name) => `/sections/${name} unknown-field`),
  ]);
});

test('a protocol of schema 1 is read, keeps its version and can be changed', () => {
  // One preset for the whole, and none of the fields that came with schema 2.
  const { presets, sections, ...old } = document();
  const { barredAbovePerMinute, lookFirstWhenFarOut, ...count } = sections.count;
  expect([barredAbovePerMinute.value, lookFirstWhenFarOut.value]).toEqual([100, true]);
  count.fastPerMinute.value = 110;
  count.breathsShortAllowed.value = true; // no window offered for them: not judged before schema 2
  const kept = { ...old, schema: 1, preset: presets.count, sections: { count } };
  const parsed = parseProtocol(kept);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
  expect(parsed.value).toMatchObject({ schema: 1, presets: { count: 'thirty-seconds' } });
  expect(protocolDocument(parsed.value)).toEqual(kept);
  const hash = createHash('sha256').update(canonicalJson(kept), 'utf8').digest('hex');
  expect(protocolVersion(parsed.value)).toBe(hash);
  // One limit stood for both then.
  expect(countRules(parsed.value)).toMatchObject({ fastPerMinute: 110, barredAbovePerMinute: 110 });
  const changed = overrideFields(parsed.value, [{ section: 'count', key: 'clock', value: 'beat' }]);
  expect(changed.ok && protocolDocument(changed.value)).toMatchObject({
    schema: 1,
    preset: 'thirty-seconds',
  });
  expect(parseProtocol({ ...kept, presets })).toMatchObject({ ok: false, refusals: [{ field: '/presets' }] });
});

/** A made-up section such as later ones will be: some fields from schema 1, some from 2. */
function madeUpField(shape: FieldKind, value: FieldValue, since: number): FieldShape {
  return {
    ...shape,
    value,
    unit: null,
    meaning: 'made up',
    source: 'made up',
    sure: 'decision',
    since,
  } as FieldShape;
}

const MADE_UP: Record<string, ReadableSection> = {
  old: {
    fields: {
      a: madeUpField({ kind: 'yes-no' }, true, 1),
      b: madeUpField({ kind: 'choices', choices: ['x', 'y'] }, ['x'], 2),
    },
    agree: () => [],
  },
  young: { fields: { c: madeUpField({ kind: 'yes-no' }, true, 2) }, agree: () => [] },
};

const written = (value: unknown) => ({
  value,
  unit: null,
  source: 'made up',
  sure: 'decision',
  replaces: null,
});

test('an older schema is read without the sections and fields that came later', () => {
  const old = { old: { a: written(true) } };
  expect(readSections(old, MADE_UP, 1)).toEqual({ ok: true, value: old });
  const read = readSections(old, MADE_UP, 2);
  expect(!read.ok && read.refusals.map(({ field }) => field)).toEqual(['/sections/old/b', '/sections/young']);
});

test('a field of several choices', () => {
  const withChoices = (value: unknown) => ({
    old: { a: written(true), b: written(value) },
    young: { c: written(false) },
  });
  expect(readSections(withChoices(['y', 'x']), MADE_UP, 2)).toEqual({
    ok: true,
    value: withChoices(['x', 'y']),
  });
  expect(readSections(withChoices([]), MADE_UP, 2).ok).toBe(true);
  const read = readSections(withChoices(['x', 'z', 'x']), MADE_UP, 2);
  expect(!read.ok && read.refusals.map(({ field, code }) => `${field} ${code}`)).toEqual([
    '/sections/old/b/value/1 unknown-id',
    '/sections/old/b/value/2 repeated',
  ]);
});

test('a limit says its number and its side, or that there is none', () => {
  // Such as "another reading if they differ by more than 10" and "by 10 or more" (bedside handbook 3.10).
  const limit = madeUpField(
    { kind: 'limit', low: 1, high: 40, comparisons: ['>', '>='], orNone: true },
    null,
    1,
  );
  const shapes = { round: { fields: { limit }, agree: () => [] } };
  const read = (value: unknown) => {
    const sections = readSections({ round: { limit: written(value) } }, shapes, 1);
    return sections.ok
      ? sections.value.round?.limit?.value
      : sections.refusals.map(({ field, code }) => `${field} ${code}`);
  };
  const at = '/sections/round/limit/value';
  expect(read({ comparison: '>=', limit: '10' })).toEqual({ comparison: '>=', limit: 10 });
  expect(read(null)).toBeNull();
  expect(read('')).toEqual([`${at} missing`]);
  expect(read({ comparison: '<', limit: 0 })).toEqual([
    `${at}/comparison unknown-id`,
    `${at}/limit out-of-range`,
  ]);
  expect(read(10)).toEqual([`${at} missing`, `${at}/comparison missing`, `${at}/limit missing`]);
});
