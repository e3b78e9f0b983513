import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { parseScenario } from './parseScenario.js';
import { SCENARIO_SCHEMA } from './scenarioSchema.js';
import { SCENARIOS } from './scenarios.js';

type Validators = {
  readonly Ajv2020: new (
    how: object,
  ) => { readonly compile: (schema: unknown) => (json: unknown) => boolean };
};
// Held against a general-purpose validator of JSON Schema: the one that the validator of OpenAPI documents brings.
const beside = createRequire(import.meta.resolve('@seriousme/openapi-schema-validator'));
const { Ajv2020 } = beside('ajv/dist/2020.js') as Validators;
const takes = new Ajv2020({ strict: false }).compile(SCENARIO_SCHEMA);

test('the published schema is this one', () => {
  const published = readFileSync(new URL('../../../../docs/scenario.schema.json', import.meta.url), 'utf8');
  expect(JSON.parse(published)).toEqual(SCENARIO_SCHEMA);
});

test.each(SCENARIOS.map((one) => [one.id, one] as const))('%s is taken by schema and parser', (_, one) => {
  expect([takes(one), parseScenario(one).ok]).toEqual([true, true]);
});

/** One where every field stands somewhere in the middle, so that each can be moved alone. */
const WHOLE = {
  ...SCENARIOS[0],
  title: 'Ours (invented)',
  systolic: 160,
  diastolic: 80,
  muffled: 100,
  gap: { topMmHg: 140, bottomMmHg: 110 },
  home: { systolic: 150, diastolic: 80 },
  leftArm: { systolic: 150, diastolic: 80 },
  standing: {
    oneMinute: { systolic: 150, diastolic: 80 },
    threeMinutes: { systolic: 150, diastolic: 80 },
    pulsePerMinute: 80,
  },
  instrument: { zeroOffsetMmHg: 0, leakMmHgPerMinute: 0 },
};

type Node = { readonly [key: string]: unknown };
/** Every number of the schema with its limits, by its path. */
function limitsOf(schema: Node, path: readonly string[] = []): [string, number, number][] {
  const inner = ((schema.anyOf as Node[] | undefined)?.[0] ?? schema) as Node;
  if (inner.type === 'number') return [[path.join('/'), inner.minimum as number, inner.maximum as number]];
  const properties = (inner.properties ?? {}) as Readonly<Record<string, Node>>;
  return Object.entries(properties).flatMap(([key, one]) => limitsOf(one, [...path, key]));
}

function withAt(from: Node, [key = '', ...rest]: readonly string[], value: unknown): Node {
  return { ...from, [key]: rest.length === 0 ? value : withAt(from[key] as Node, rest, value) };
}

const refusedAt = (json: unknown, path: string) => {
  const read = parseScenario(json);
  return !read.ok && read.refusals.some(({ field, code }) => field === `/${path}` && code === 'out-of-range');
};

test.each(limitsOf(SCENARIO_SCHEMA))(
  '%s is held to %d and %d by both, at the limit and on both sides',
  (path, low, high) => {
    for (const [value, isIn] of [
      [low, true],
      [high, true],
      [low - 0.01, false],
      [high + 0.01, false],
    ] as const) {
      const json = withAt(WHOLE, path.split('/'), value);
      expect([takes(json), !refusedAt(json, path)], `${path} ${value}`).toEqual([isIn, isIn]);
    }
  },
);

test.each([
  ['another key', { ...WHOLE, hasTail: true }],
  ['no id', { ...WHOLE, id: undefined }],
  ['an id with capitals', { ...WHOLE, id: 'Ours' }],
  ['another schema number', { ...WHOLE, schema: 3 }],
  ['a rhythm that nobody has', { ...WHOLE, rhythm: { kind: 'waltz', ratePerMinute: 70 } }],
  ['a rhythm without a rate', { ...WHOLE, rhythm: { kind: 'sinus' } }],
  ['a word for a number', { ...WHOLE, systolic: 'high' }],
  ['half a standing test', { ...WHOLE, standing: { pulsePerMinute: 80 } }],
  ['a trait that is no yes or no', { ...WHOLE, traits: { isStiff: 'yes' } }],
  ['not an object', 'quiet-morning'],
])('%s is refused by both', (_, json) => {
  const sent = json === 'quiet-morning' ? json : JSON.parse(JSON.stringify(json));
  expect([takes(sent), parseScenario(sent).ok]).toEqual([false, false]);
});
