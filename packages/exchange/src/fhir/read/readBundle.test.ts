import type { Observation } from 'fhir/r4.js';
import { describe, expect, test } from 'vitest';
import { bundleOf, heard, idOf, run, signing } from '../../../testing/charts.js';
import { PATIENT_URL, PRACTITIONER_URL, sketches } from '../../../testing/sketches.js';
import { chartBundle } from '../chartBundle.js';
import { readBundle } from './readBundle.js';

const PATIENT = {
  resourceType: 'Patient',
  id: 'p',
  name: [{ family: 'Marsh (invented)', given: ['Ottilie'] }],
  birthDate: '1950-12-31',
};
const PRACTITIONER = {
  resourceType: 'Practitioner',
  id: 'd',
  name: [{ family: 'Larch (invented)', given: ['Ines'] }],
};

/** A bundle of another system. */
function bundle(...resources: object[]): unknown {
  return {
    resourceType: 'Bundle',
    type: 'searchset',
    total: resources.length,
    entry: [
      { fullUrl: PATIENT_URL, resource: PATIENT },
      { fullUrl: PRACTITIONER_URL, resource: PRACTITIONER },
      ...resources.map((resource) => ({ resource, search: { mode: 'match' } })),
    ],
  };
}

function read(...resources: object[]) {
  const answered = readBundle(bundle(...resources));
  if (!answered.ok) throw new Error(JSON.stringify(answered.refusals));
  return answered.value;
}

/** The one value of a bundle that holds one. */
function one(resource: object) {
  const { reported, refused } = read(resource);
  expect(refused).toEqual([]);
  expect(reported).toHaveLength(1);
  return reported[0]?.content;
}

/** What is refused of an Observation: place below its resource, and code. */
function refusedOf(resource: object): string[] {
  const { reported, refused } = read(sketches.pulse, resource);
  // The rest is kept all the same.
  expect(reported.map(({ content }) => content.source.id)).toEqual(['pulse']);
  return refused.map(({ field, code }) => `${field.replace('/entry/3/resource', '')} ${code}`);
}

const bent = (of: Observation, by: object) => JSON.parse(JSON.stringify({ ...of, ...by })) as Observation;

describe('the shapes of the handbook, section 11', () => {
  test('a pressure that was heard', () => {
    expect(one(sketches.heard)).toEqual({
      value: { of: 'pressure', systolic: 128, diastolic: 82 },
      asSent: null,
      by: 'Ines Larch (invented)',
      method: null,
      site: 'Right upper arm',
      posture: 'Sitting position',
      interpretation: null,
      status: 'final',
      until: null,
      note: 'Diastolic at disappearance of sounds (phase 5).',
      source: { format: 'fhir', id: 'heard' },
      saidAt: null,
      uprightMinutes: null,
      lyingMinutes: null,
      unwellUpright: null,
    });
  });

  test('a pressure that was felt has no diastolic, and no zero in its place', () => {
    expect(one(sketches.felt)).toMatchObject({
      value: { of: 'pressure', systolic: 124, diastolic: null },
      method: 'palpation of the radial pulse',
    });
  });

  test('a pulse and breaths', () => {
    expect(one(sketches.pulse)?.value).toEqual({ of: 'pulse', perMinute: 72 });
    expect(one(sketches.breaths)?.value).toEqual({ of: 'breaths', perMinute: 16 });
  });

  test('a mean at home and one over a day: with the end of their time', () => {
    expect(one(sketches.homeMean)).toMatchObject({
      value: { of: 'pressure', systolic: 131.5, diastolic: 84.2 },
      until: '2025-02-28T21:00:00+00:00',
    });
    expect(one(sketches.dayMean)).toMatchObject({
      value: { systolic: 126.4 },
      until: '2025-02-28T09:00:00+00:00',
    });
  });
});

// A pressure of an Evenfall that came by way of another system: without the entries that it was made from.
describe('how it was on the feet', () => {
  const extended = (...extension: object[]) => bent(sketches.heard, { extension });
  const unwell = (said: object) => ({ url: 'https://evenfall.invalid/fhir/unwell-upright', ...said });
  const upright = (said: object) => ({ url: 'https://evenfall.invalid/fhir/minutes-upright', ...said });
  const lying = (said: object) => ({ url: 'https://evenfall.invalid/fhir/minutes-lying', ...said });

  test('is read where it is said, and not known where it is not', () => {
    const said = [unwell({ valueBoolean: true }), upright({ valueDecimal: 1.1 })];
    expect(one(extended(...said))).toMatchObject({
      unwellUpright: true,
      uprightMinutes: 1.1,
      lyingMinutes: null,
    });
    expect(one(extended(unwell({ valueBoolean: false }), lying({ valueDecimal: 5 })))).toMatchObject({
      unwellUpright: false,
      uprightMinutes: null,
      lyingMinutes: 5,
    });
  });

  test('comes back from a bundle as it went out', () => {
    const posture = { uprightMinutes: 3.2, unwellUpright: true };
    const up = run(1, heard(112, 70), { place: { posture: 'stand' }, posture });
    const resources = (chartBundle(bundleOf([up, signing(2, [up])])).entry ?? []).map(
      ({ resource }) => resource,
    );
    const [found] = resources.filter((resource) => resource?.id === idOf(1));
    expect(one(bent(found as Observation, { subject: sketches.heard.subject }))).toMatchObject({
      value: { of: 'pressure', systolic: 112, diastolic: 70 },
      ...posture,
      note: expect.stringContaining('dizzy, faint or unwell on their feet'),
    });
  });

  test('is refused at its place where it cannot be, and passed over beside another sign', () => {
    expect(refusedOf(extended(unwell({ valueString: 'yes' })))).toEqual([
      '/extension/0/valueBoolean missing',
    ]);
    expect(refusedOf(extended(unwell({ valueBoolean: 'true' })))).toEqual([
      '/extension/0/valueBoolean contradicts',
    ]);
    expect(refusedOf(extended({ url: 'x' }, upright({ valueDecimal: 61 })))).toEqual([
      '/extension/1/valueDecimal out-of-range',
    ]);
    expect(one(bent(sketches.pulse, { extension: [unwell({ valueBoolean: true })] }))).toMatchObject({
      unwellUpright: null,
    });
  });
});

describe('units', () => {
  const quantity = (value: number, code: string) => ({
    valueQuantity: { value, code, unit: code, system: 'http://unitsofmeasure.org' },
  });
  const coded = (loinc: string, of: object) =>
    bent(sketches.pulse, { code: { coding: [{ system: 'http://loinc.org', code: loinc }] }, ...of });

  // Interoperability handbook 13: 98.6 [degF] is 37 Cel, 120 mm[Hg] is 15.99864 kPa (printed).
  test.each([
    ['8310-5', 98.6, '[degF]', { of: 'temperature', celsius: 37 }, '98.6 [degF]'],
    ['8310-5', 38.1, 'Cel', { of: 'temperature', celsius: 38.1 }, null],
    ['2708-6', 94, '%', { of: 'oxygen-saturation', percent: 94 }, null],
    // The international pound and inch, exact by definition (1959).
    ['29463-7', 200, '[lb_av]', { of: 'weight', kg: 90.7185 }, '200 [lb_av]'],
    ['8302-2', 70, '[in_i]', { of: 'height', cm: 177.8 }, '70 [in_i]'],
    ['8867-4', 72, '{beats}/min', { of: 'pulse', perMinute: 72 }, null],
  ] as const)('LOINC %s: %d %s', (loinc, value, unit, said, asSent) => {
    expect(one(coded(loinc, quantity(value, unit)))).toMatchObject({ value: said, asSent });
  });

  test('kilopascals of a pressure are converted, and what came stands beside', () => {
    const component = [
      { ...sketches.heard.component?.[0], ...quantity(15.99864, 'kPa') },
      { ...sketches.heard.component?.[1], ...quantity(10.66576, 'kPa') },
    ];
    expect(one(bent(sketches.heard, { component }))).toMatchObject({
      value: { systolic: 120, diastolic: 80 },
      asSent: '15.99864 kPa / 10.66576 kPa',
    });
  });

  test.each(['bpm', 'mm[Hg]', '/MIN'])('a pulse in %s is refused', (unit) => {
    expect(refusedOf(coded('8867-4', quantity(72, unit)))).toEqual(['/valueQuantity/code unknown-id']);
  });
});

// Interoperability handbook 12: the matrix of faults.
describe('what cannot be read is refused by its place, and the rest is kept', () => {
  const [systolic, diastolic] = sketches.heard.component ?? [];
  test.each([
    ['no effective', { effectiveDateTime: undefined }, '/effectiveDateTime missing'],
    ['a month only', { effectiveDateTime: '2025-03' }, '/effectiveDateTime not-a-time'],
    ['30 February', { effectiveDateTime: '2025-02-30T09:30:00Z' }, '/effectiveDateTime not-a-time'],
    [
      '29 February of a year without',
      { effectiveDateTime: '2025-02-29T09:30:00Z' },
      '/effectiveDateTime not-a-time',
    ],
    ['no zone', { effectiveDateTime: '2025-03-01T09:30:00' }, '/effectiveDateTime not-a-time'],
    ['two times', { effectivePeriod: { start: '2025-03-01T09:30:00Z' } }, '/effectiveDateTime contradicts'],
    [
      'another code',
      { code: { coding: [{ system: 'http://loinc.org', code: '2339-0' }] } },
      '/code unknown-id',
    ],
    ['no code', { code: undefined }, '/code missing'],
    ['status done', { status: 'done' }, '/status unknown-id'],
    ['a status without a value', { status: 'cancelled' }, '/status unknown-id'],
    ['no systolic', { component: [diastolic] }, '/component missing'],
    [
      'a diastolic of another type is not an absent one',
      { component: [systolic, { code: diastolic?.code, valueInteger: 82 }] },
      '/component/1/valueQuantity missing',
    ],
    [
      'two systolics',
      { component: [systolic, diastolic, { ...systolic, ...diastolic, code: systolic?.code }] },
      '/component/2 ambiguous',
    ],
    ['two diastolics', { component: [systolic, diastolic, diastolic] }, '/component/2 ambiguous'],
    // FHIR R4, Extensibility: "applications SHALL NOT process" what has a modifier extension that they do not know.
    [
      'a modifier that is not known',
      { modifierExtension: [{ url: 'urn:not', valueBoolean: true }] },
      '/modifierExtension contradicts',
    ],
    [
      'a systolic without value',
      { component: [{ code: systolic?.code }, diastolic] },
      '/component/0/valueQuantity missing',
    ],
    [
      'a diastolic as text',
      {
        component: [systolic, { ...diastolic, valueQuantity: { ...diastolic?.valueQuantity, value: '82' } }],
      },
      '/component/1/valueQuantity/value not-a-number',
    ],
    [
      'a diastolic as high as the systolic',
      { component: [systolic, { ...diastolic, valueQuantity: systolic?.valueQuantity }] },
      '/component/1/valueQuantity/value not-below-systolic',
    ],
    [
      'over the top of any gauge',
      { component: [{ ...systolic, valueQuantity: { ...systolic?.valueQuantity, value: 301 } }, diastolic] },
      '/component/0/valueQuantity/value out-of-range',
    ],
    [
      'more than, not a number',
      {
        component: [
          { ...systolic, valueQuantity: { ...systolic?.valueQuantity, comparator: '>' } },
          diastolic,
        ],
      },
      '/component/0/valueQuantity/comparator contradicts',
    ],
    [
      'a unit without its system',
      { component: [{ ...systolic, valueQuantity: { value: 128, code: 'mm[Hg]' } }, diastolic] },
      '/component/0/valueQuantity/system unknown-id',
    ],
  ] as const)('%s', (_, by, place) => {
    expect(refusedOf(bent(sketches.heard, by))).toEqual([place]);
  });

  test.each([
    [45, []],
    [45.1, ['/valueQuantity/value out-of-range']],
    [25, []],
    [24.9, ['/valueQuantity/value out-of-range']],
  ] as const)('a temperature of %d', (value, refused) => {
    const code = { coding: [{ system: 'http://loinc.org', code: '8310-5' }] };
    const valueQuantity = { value, unit: 'C', code: 'Cel', system: 'http://unitsofmeasure.org' };
    const { refused: found } = read(bent(sketches.pulse, { code, valueQuantity }));
    expect(found.map(({ field, code: why }) => `${field.replace('/entry/2/resource', '')} ${why}`)).toEqual(
      refused,
    );
  });

  test('values of two people in one file: all of them', () => {
    const { reported, refused } = read(
      sketches.heard,
      bent(sketches.pulse, { subject: { reference: 'Patient/q' } }),
    );
    expect(reported).toEqual([]);
    expect(refused.map(({ field, code }) => `${field} ${code}`)).toEqual([
      '/entry/2/resource/subject contradicts',
      '/entry/3/resource/subject contradicts',
    ]);
  });

  test('one value that says nobody: that one alone', () => {
    expect(refusedOf(bent(sketches.heard, { subject: undefined }))).toEqual(['/subject missing']);
  });

  test('one person who is said by address and by type and id is one person', () => {
    const { reported, refused } = read(
      sketches.heard,
      bent(sketches.pulse, { subject: { reference: 'Patient/p' } }),
    );
    expect([reported.length, refused]).toEqual([2, []]);
  });

  // FHIR R4, References: `Reference.identifier` and `display` name who has no address; `#id` is contained in its resource.
  const mallow = { resourceType: 'Patient', id: 'x', birthDate: '1944-01-01' };
  const sorrel = { resourceType: 'Patient', id: 'x', birthDate: '1988-08-08' };
  test.each([
    ['identifiers', { subject: { identifier: { value: 'A' } } }, { subject: { identifier: { value: 'B' } } }],
    ['words', { subject: { display: 'Mallow' } }, { subject: { display: 'Sorrel' } }],
    [
      'contained ones of one id',
      { subject: { reference: '#x' }, contained: [mallow] },
      { subject: { reference: '#x' }, contained: [sorrel] },
    ],
  ])('two people by %s are two people', (_, one, other) => {
    const both = read(bent(sketches.heard, one), bent(sketches.pulse, other));
    expect(both.reported).toEqual([]);
    expect(both.refused.map(({ code }) => code)).toEqual(['contradicts', 'contradicts']);
    const same = read(bent(sketches.heard, one), bent(sketches.pulse, one));
    expect([same.reported.length, same.refused]).toEqual([2, []]);
  });

  test('the birth date is that of whom the values are of, not of whoever stands first', () => {
    const second = { resourceType: 'Patient', id: 'q', birthDate: '1971-07-17' };
    const subject = { reference: 'Patient/q' };
    expect(read(second, bent(sketches.pulse, { subject })).birthDate).toBe('1971-07-17');
    expect(read(sketches.pulse, second).birthDate).toBe('1950-12-31');
  });

  test.each([null, [], 'text', 1, {}, { resourceType: 'Patient' }])('what is no bundle: %j', (input) => {
    expect(readBundle(input)).toMatchObject({ ok: false, refusals: [{ field: '/resourceType' }] });
  });

  test('an entry without a resource', () => {
    const answered = readBundle({ resourceType: 'Bundle', entry: [{}, 3, null] });
    expect(answered.ok && answered.value.refused.map(({ field }) => field)).toEqual([
      '/entry/0/resource',
      '/entry/1/resource',
      '/entry/2/resource',
    ]);
  });
});

describe('foreign extras', () => {
  test('other resources, profiles, codings, extensions, languages and narrative are passed over', () => {
    const extra = bent(sketches.heard, {
      meta: {
        versionId: '7',
        lastUpdated: '2025-03-01T10:00:00Z',
        profile: ['http://example.org/bp'],
        tag: [{ code: 'x' }],
      },
      implicitRules: 'http://example.org/rules',
      language: 'nl',
      text: { status: 'generated', div: '<div xmlns="http://www.w3.org/1999/xhtml">128/82</div>' },
      contained: [{ resourceType: 'Device', id: 'gauge' }],
      code: {
        coding: [
          { system: 'http://snomed.info/sct', code: '75367002' },
          { system: 'http://loinc.org', code: '85354-9', userSelected: true },
          { system: 'http://example.org/codes', code: 'NIBP' },
        ],
        text: 'Bloeddruk',
      },
      encounter: { reference: 'Encounter/9' },
      device: { reference: '#gauge' },
      interpretation: [{ coding: [{ code: 'N', display: 'Normal' }] }],
      component: [
        ...(sketches.heard.component ?? []),
        { code: { coding: [{ system: 'http://loinc.org', code: '8478-0' }] }, valueQuantity: { value: 97 } },
      ],
      modifierColour: 'blue',
    });
    const others = [
      { resourceType: 'Encounter', id: '9' },
      { resourceType: 'Condition' },
      { resourceType: 'Condition' },
    ];
    const { reported, refused, passedOver } = read(extra, ...others);
    expect(refused).toEqual([]);
    expect(reported[0]?.content).toMatchObject({
      value: { of: 'pressure', systolic: 128, diastolic: 82 },
      interpretation: 'Normal',
    });
    expect(passedOver).toEqual({ Encounter: 1, Condition: 2 });
  });

  test('a panel names its values and is none', () => {
    const panel = bent(sketches.pulse, {
      code: { coding: [{ system: 'http://loinc.org', code: '85353-1' }] },
      valueQuantity: undefined,
      hasMember: [{ reference: 'Observation/pulse' }],
    });
    expect(read(panel)).toMatchObject({ reported: [], refused: [], passedOver: { Observation: 1 } });
  });

  // Interoperability handbook 7: asked-declined is no value, and nothing that could not be read.
  test('a measurement that says why it has no value is passed over', () => {
    const declined = {
      coding: [
        { system: 'http://terminology.hl7.org/CodeSystem/data-absent-reason', code: 'asked-declined' },
      ],
    };
    const pulse = bent(sketches.pulse, { valueQuantity: undefined, dataAbsentReason: declined });
    const none = sketches.heard.component?.map(({ code }) => ({ code, dataAbsentReason: declined }));
    const found = read(sketches.breaths, pulse, bent(sketches.heard, { component: none }));
    expect(found).toMatchObject({ refused: [], passedOver: { Observation: 2 } });
    expect(found.reported).toHaveLength(1);
  });

  test('an Observation by a patient, by display alone, or by nobody who is named', () => {
    const by = (performer: unknown) => one(bent(sketches.pulse, { performer }))?.by;
    expect(by([{ reference: PATIENT_URL }])).toBe('Ottilie Marsh (invented)');
    expect(by([{ reference: 'Patient/p' }])).toBe('Ottilie Marsh (invented)');
    expect(by([{ display: 'the ward' }])).toBe('the ward');
    expect(by([{ reference: 'Practitioner/elsewhere' }])).toBe('Practitioner/elsewhere');
    expect(by(undefined)).toBeNull();
  });

  test('what the source took back is read, and marked', () => {
    const { reported } = read(bent(sketches.pulse, { status: 'entered-in-error' }));
    expect(reported).toMatchObject([{ isInError: true, content: { value: { perMinute: 72 } } }]);
  });

  test('test data is known by its label, whoever set it', () => {
    expect(read(sketches.pulse).isTestData).toBe(false);
    expect(read(bent(sketches.pulse, { meta: { security: [{ code: 'HTEST' }] } })).isTestData).toBe(true);
  });
});
