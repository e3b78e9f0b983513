import type { FhirResource, Observation } from 'fhir/r4.js';
import { describe, expect, test } from 'vitest';
import { sketches } from '../../testing/sketches.js';
import { brokenRules, oddities, rulesFor, wrongBySchema, wrongInResource } from '../../testing/validate.js';

// Interoperability handbook 12: the matrix of faults. A rule that nothing breaks would check nothing.

const { heard, felt, pulse } = sketches;

test.each(Object.entries(sketches))('the sketch %s of the handbook breaks nothing', (_, resource) => {
  expect(wrongInResource(resource)).toEqual([]);
});

const broken = (resource: FhirResource) => brokenRules(resource, rulesFor(resource));
const bent = (of: Observation, by: Partial<Record<keyof Observation, unknown>>) =>
  JSON.parse(JSON.stringify({ ...of, ...by })) as Observation;
const [systolic, diastolic] = heard.component ?? [];

describe('each fault is caught by the rule that is for it', () => {
  test.each([
    ['obs-6', bent(pulse, { dataAbsentReason: felt.component?.[1]?.dataAbsentReason })],
    ['vitalsigns category', bent(heard, { category: undefined })],
    ['vitalsigns subject', bent(heard, { subject: undefined })],
    ['vs-1', bent(heard, { effectiveDateTime: '2025-03' })],
    ['vs-2', bent(pulse, { valueQuantity: undefined })],
    ['vs-3', bent(heard, { component: [systolic, { code: diastolic?.code }] })],
    ['vitalsigns quantity', bent(pulse, { valueQuantity: { value: 72, unit: 'beats/min', code: '/min' } })],
    ['bp code', bent(heard, { code: { coding: [{ system: 'http://loinc.org', code: '35094-2' }] } })],
    ['bp value', bent(heard, { valueString: '128/82' })],
    ['bp SystolicBP', bent(heard, { component: [diastolic] })],
    ['bp DiastolicBP', bent(heard, { component: [systolic] })],
    [
      'bp quantity',
      bent(heard, {
        component: [
          systolic,
          {
            ...diastolic,
            valueQuantity: { value: 10.9, unit: 'kPa', system: 'http://unitsofmeasure.org', code: 'kPa' },
          },
        ],
      }),
    ],
  ] as const)('%s', (id, resource) => {
    expect(broken(resource)).toEqual([id]);
  });

  test('vitalsigns effective: nothing, and vs-1 says nothing of what is not there', () => {
    expect(broken(bent(heard, { effectiveDateTime: undefined }))).toContain('vitalsigns effective');
  });

  test('vitalsigns code, vitalspanel and means', () => {
    const vitalspanel = { profile: ['http://hl7.org/fhir/StructureDefinition/vitalspanel'] };
    const panel = bent(pulse, {
      meta: vitalspanel,
      code: { coding: [{ system: 'http://loinc.org', code: '85353-1' }] },
      valueQuantity: undefined,
      hasMember: [{ reference: 'urn:uuid:x' }],
    });
    expect(broken(panel)).toEqual([]);
    expect(broken(bent(panel, { hasMember: undefined }))).toEqual(['vs-2', 'vitalspanel members']);
    expect(broken(bent(panel, { code: pulse.code }))).toEqual(['vitalspanel code']);
    expect(broken(bent(pulse, { code: { text: 'pulse' } }))).toEqual(['vitalsigns code']);
    expect(broken(bent(sketches.homeMean, { derivedFrom: undefined }))).toEqual(['average derivedFrom']);
  });

  test('a Provenance without who, a bundle with one address twice or a total', () => {
    const target = [{ reference: 'urn:uuid:x' }];
    const provenance = { resourceType: 'Provenance', target, recorded: '2025-03-01T09:30:00Z' } as const;
    expect(broken({ ...provenance, agent: [] } as FhirResource)).toEqual(['Provenance agent']);
    expect(broken({ ...provenance, target: [], agent: [{ who: { display: 'x' } }] })).toEqual([
      'Provenance target',
    ]);
    const bundle = { resourceType: 'Bundle', type: 'collection' } as const;
    expect(broken({ ...bundle, entry: [{ fullUrl: 'urn:uuid:x' }, { fullUrl: 'urn:uuid:x' }] })).toEqual([
      'bdl-7',
    ]);
    expect(broken({ ...bundle, total: 1, entry: [] })).toEqual(['bdl-1']);
    expect(broken({ ...bundle, entry: [{ fullUrl: 'http://a/Patient/1/_history/1' }] })).toEqual(['bdl-8']);
  });
});

test.each([
  ['a status that is none', bent(heard, { status: 'done' })],
  ['an unknown property', { ...heard, colour: 'blue' } as unknown as Observation],
  ['a time without zone', bent(heard, { effectiveDateTime: '2025-03-01T09:30:00' })],
  ['a value as text', bent(pulse, { valueQuantity: { value: '72', system: 'x', code: '/min', unit: 'x' } })],
  ['an interpretation that is no list', bent(heard, { interpretation: { text: 'H' } })],
] as const)('%s is caught by the JSON schema', (_, resource) => {
  expect(wrongBySchema(resource)).not.toEqual([]);
});

test.each([
  ['two times', bent(heard, { effectivePeriod: { start: '2025-03-01T09:30:00Z' } }), 'effective'],
  ['beats a minute as a unit of its own', bent(pulse, { valueQuantity: { value: 72, code: 'bpm' } }), 'UCUM'],
  ['three decimals', bent(pulse, { valueQuantity: { value: 72.125, code: '/min' } }), 'decimal'],
  ['the code of another sign', bent(pulse, { code: heard.code }), '8867-4'],
  [
    'a diastolic as high as the systolic',
    bent(heard, { component: [systolic, { ...diastolic, valueQuantity: systolic?.valueQuantity }] }),
    'systolic above',
  ],
] as const)('%s is caught by our own checks', (_, resource, said) => {
  expect(oddities(resource).join()).toContain(said);
});
