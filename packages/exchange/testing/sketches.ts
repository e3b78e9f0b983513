import type { Observation } from 'fhir/r4.js';

/** The sketches of the interoperability handbook, section 11: shapes that other systems send. Everybody is invented. */

const CATEGORY = [
  {
    coding: [{ system: 'http://terminology.hl7.org/CodeSystem/observation-category', code: 'vital-signs' }],
  },
];
export const PATIENT_URL = 'urn:uuid:00000000-0000-4000-8000-000000000001';
export const PRACTITIONER_URL = 'urn:uuid:00000000-0000-4000-8000-000000000002';
const AROUND = {
  resourceType: 'Observation',
  status: 'final',
  category: CATEGORY,
  subject: { reference: PATIENT_URL },
  performer: [{ reference: PRACTITIONER_URL }],
  effectiveDateTime: '2025-03-01T09:30:00+00:00',
} as const;

const profile = (name: string) => ({ profile: [`http://hl7.org/fhir/StructureDefinition/${name}`] });
const loinc = (...codes: string[]) => ({
  coding: codes.map((code) => ({ system: 'http://loinc.org', code })),
});
const mmHg = (value: number) => ({
  value,
  unit: 'mmHg',
  system: 'http://unitsofmeasure.org',
  code: 'mm[Hg]',
});

const heard: Observation = {
  ...AROUND,
  category: [...CATEGORY],
  performer: [...AROUND.performer],
  id: 'heard',
  meta: profile('bp'),
  code: loinc('85354-9'),
  bodySite: {
    coding: [{ system: 'http://snomed.info/sct', code: '368209003', display: 'Right upper arm' }],
  },
  extension: [
    {
      url: 'http://hl7.org/fhir/StructureDefinition/observation-bodyPosition',
      valueCodeableConcept: {
        coding: [{ system: 'http://snomed.info/sct', code: '33586001', display: 'Sitting position' }],
      },
    },
  ],
  component: [
    { code: loinc('8480-6'), valueQuantity: mmHg(128) },
    { code: loinc('8462-4'), valueQuantity: mmHg(82) },
  ],
  note: [{ text: 'Diastolic at disappearance of sounds (phase 5).' }],
};

const { component: _heard, note: _note, extension: _position, bodySite: _site, ...plain } = heard;

const felt: Observation = {
  ...plain,
  id: 'felt',
  component: [
    { code: loinc('8480-6', '8479-8'), valueQuantity: mmHg(124) },
    {
      code: loinc('8462-4'),
      dataAbsentReason: {
        coding: [
          { system: 'http://terminology.hl7.org/CodeSystem/data-absent-reason', code: 'not-performed' },
        ],
      },
    },
  ],
  method: { text: 'palpation of the radial pulse' },
};

const pulse: Observation = {
  ...plain,
  id: 'pulse',
  meta: profile('heartrate'),
  code: loinc('8867-4'),
  valueQuantity: { value: 72, unit: 'beats/min', system: 'http://unitsofmeasure.org', code: '/min' },
  method: { text: 'radial pulse counted for 60 s' },
};

const breaths: Observation = {
  ...plain,
  id: 'breaths',
  meta: profile('resprate'),
  code: loinc('9279-1'),
  valueQuantity: { value: 16, unit: 'breaths/min', system: 'http://unitsofmeasure.org', code: '/min' },
};

const { effectiveDateTime: _at, ...untimed } = plain;

const homeMean: Observation = {
  ...untimed,
  id: 'home-mean',
  meta: profile('vitalsigns'),
  code: loinc('96607-7', '85354-9'),
  effectivePeriod: { start: '2025-02-22T07:00:00+00:00', end: '2025-02-28T21:00:00+00:00' },
  derivedFrom: [{ reference: PATIENT_URL }, { reference: PATIENT_URL }],
  component: [
    { code: loinc('96608-5', '8480-6'), valueQuantity: mmHg(131.5) },
    { code: loinc('96609-3', '8462-4'), valueQuantity: mmHg(84.2) },
  ],
  note: [{ text: 'Mean of 24 readings of 6 days; the first day left out.' }],
};

const dayMean: Observation = {
  ...untimed,
  id: 'day-mean',
  meta: profile('vitalsigns'),
  code: loinc('97844-5'),
  effectivePeriod: { start: '2025-02-27T09:00:00+00:00', end: '2025-02-28T09:00:00+00:00' },
  component: [
    { code: loinc('8490-5'), valueQuantity: mmHg(126.4) },
    { code: loinc('8472-3'), valueQuantity: mmHg(78.1) },
  ],
};

export const sketches = { heard, felt, pulse, breaths, homeMean, dayMean } as const;
