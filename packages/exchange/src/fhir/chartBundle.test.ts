import type { Observation } from 'fhir/r4.js';
import { describe, expect, test } from 'vitest';
import {
  amending,
  bundleOf,
  count,
  FAILED_GAUGE,
  felt,
  heard,
  idOf,
  inError,
  type Made,
  made,
  ORLA,
  reported,
  run,
  sign,
  signing,
  taps,
  UNDER_PROTOCOL,
  VERSION,
} from '../../testing/charts.js';
import { wrongInBundle } from '../../testing/validate.js';
import { type BundleOf, chartBundle } from './chartBundle.js';

const written = (all: readonly Made[], more: Partial<BundleOf> = {}) => chartBundle(bundleOf(all, more));

function observations(all: readonly Made[], more: Partial<BundleOf> = {}): Observation[] {
  const bundle = written(all, more);
  expect(wrongInBundle(bundle)).toEqual([]);
  return (bundle.entry ?? []).flatMap(({ resource }) =>
    resource?.resourceType === 'Observation' ? [resource] : [],
  );
}

/** The observation of one entry. */
const of = (id: number, all: readonly Made[], more: Partial<BundleOf> = {}) =>
  observations(all, more).find((one) => one.id === idOf(id));

const GAUGE = {
  what: 'gauge',
  name: 'Gauge 3',
  type: 'aneroid',
  room: null,
  serial: 'INV-G3',
  note: null,
};
const COUNTED = { n: 19, windowSeconds: 15 };

describe('a pressure that was heard', () => {
  const reading = run(1, heard(148, 92));
  const round = [reading, signing(2, [reading])];

  // Interoperability handbook 3 and 11: the sketch of a pressure by auscultation.
  test('is a blood-pressure panel with both components in mm[Hg], where, how and with what cuff', () => {
    expect(of(1, round)).toMatchObject({
      meta: { profile: ['http://hl7.org/fhir/StructureDefinition/bp'] },
      status: 'final',
      code: { coding: [{ system: 'http://loinc.org', code: '85354-9' }] },
      effectiveDateTime: '2026-11-25T10:01:00+01:00',
      bodySite: {
        coding: [{ system: 'http://snomed.info/sct', code: '368209003' }],
        text: 'Right upper arm',
      },
      extension: [
        {
          url: 'http://hl7.org/fhir/StructureDefinition/observation-bodyPosition',
          valueCodeableConcept: { coding: [{ code: '33586001' }], text: 'sitting' },
        },
      ],
      component: [
        {
          code: { coding: [{ code: '8480-6' }] },
          valueQuantity: { value: 148, unit: 'mmHg', system: 'http://unitsofmeasure.org', code: 'mm[Hg]' },
        },
        { code: { coding: [{ code: '8462-4' }] }, valueQuantity: { value: 92 } },
      ],
      method: { text: expect.stringContaining('phase 5') },
      note: [{ text: 'Cuff: Adult (aha-2005)' }, { text: 'Arm: 30 cm' }],
    });
  });

  test('says nothing of SNOMED CT where a place may not use it, and keeps the words', () => {
    const plain = of(1, round, { isSnomed: false });
    expect(JSON.stringify(plain)).not.toContain('snomed');
    expect(plain).toMatchObject({ bodySite: { text: 'Right upper arm' } });
  });

  test('is interpreted only where a protocol is in force, by its name and version', () => {
    expect(of(1, round)?.interpretation).toBeUndefined();
    const under = run(1, heard(148, 92), { inForce: UNDER_PROTOCOL });
    const judged = observations([under, signing(2, [under], { inForce: UNDER_PROTOCOL })]);
    const found = judged.filter(({ interpretation }) => interpretation !== undefined);
    // ESC 2024: hypertension from 140/90 (handbook, categories).
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ interpretation: [{ coding: [{ code: 'H' }] }] });
    expect(JSON.stringify(found[0]?.note)).toContain('esc-2024');
    expect(JSON.stringify(found[0]?.note)).toContain(VERSION);
  });
});

// Bedside handbook 3.14: how long somebody stood, or lay, and that they felt faint belong to the reading wherever it goes.
describe('how it was on the feet', () => {
  const FELT = 'dizzy, faint or unwell on their feet';
  const posture = { uprightMinutes: 1.1, unwellUpright: true };
  const up = run(1, heard(112, 70), { place: { posture: 'stand' }, posture });

  test('is told in a note to whoever reads it, and to a program as extensions', () => {
    const found = of(1, [up, signing(2, [up])]);
    expect(found?.note?.[0]).toEqual({ text: `1.1 min on the feet, ${FELT}` });
    expect(found?.extension?.slice(1)).toEqual([
      { url: 'https://evenfall.invalid/fhir/unwell-upright', valueBoolean: true },
      { url: 'https://evenfall.invalid/fhir/minutes-upright', valueDecimal: 1.1 },
    ]);
    const lying = run(3, heard(148, 84), { place: { posture: 'lie' }, posture: { lyingMinutes: 5 } });
    expect(of(3, [lying, signing(4, [lying])])).toMatchObject({
      extension: [{}, { url: 'https://evenfall.invalid/fhir/minutes-lying', valueDecimal: 5 }],
      note: [{ text: '5 min lying before' }, {}, {}],
    });
  });

  test('goes out with a value from elsewhere too, in words once', () => {
    const noted = (note: string | null) =>
      of(1, [
        reported(
          1,
          { of: 'pressure', systolic: 112, diastolic: 70 },
          { said: { unwellUpright: true, note } },
        ),
      ]);
    for (const found of [noted(null), noted(`${FELT}\nseen by the window`)]) {
      expect(found?.extension).toEqual([
        { url: 'https://evenfall.invalid/fhir/unwell-upright', valueBoolean: true },
      ]);
      expect(JSON.stringify(found?.note).split(FELT)).toHaveLength(2);
    }
  });
});

// Interoperability handbook 3 and 11: both components always, the diastolic with a reason.
test('a pressure that was felt has no diastolic and says so, with the code of palpation second', () => {
  const reading = run(1, felt(122));
  expect(of(1, [reading, signing(2, [reading])])?.component).toEqual([
    {
      code: {
        coding: [expect.objectContaining({ code: '8480-6' }), expect.objectContaining({ code: '8479-8' })],
      },
      valueQuantity: { value: 122, unit: 'mmHg', system: 'http://unitsofmeasure.org', code: 'mm[Hg]' },
    },
    {
      code: { coding: [expect.objectContaining({ code: '8462-4' })] },
      dataAbsentReason: {
        coding: [
          { system: 'http://terminology.hl7.org/CodeSystem/data-absent-reason', code: 'not-performed' },
        ],
      },
    },
  ]);
});

// Interoperability handbook 7: a person who refused is `asked-declined`; a pressure has both components, each with the reason.
test('what was not done is a measurement without a value that says why, and the panel names it', () => {
  const reading = run(1, heard(148, 92));
  const declined = { reason: 'declined', text: null } as const;
  const late = { reason: 'away', text: 'ward round' } as const;
  const signs = ['pulse', 'breaths', 'temperature', 'oxygen-saturation', 'weight', 'height'] as const;
  const notDone = signs.map((sign, at) => ({ sign, notDone: at === 0 ? declined : late }));
  const all = observations([reading, signing(2, [reading], { notDone })]);
  const absent = all.filter((one) => one.dataAbsentReason !== undefined);
  expect(absent.map((one) => one.dataAbsentReason?.coding?.[0]?.code)).toEqual([
    'asked-declined',
    ...Array(5).fill('not-performed'),
  ]);
  expect(absent.map((one) => one.code.coding?.[0]?.code)).toEqual([
    '8867-4',
    '9279-1',
    '8310-5',
    '2708-6',
    '29463-7',
    '8302-2',
  ]);
  expect(absent[1]?.note?.[0]?.text).toContain('ward round');
  expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
  const panel = all.find(({ hasMember }) => hasMember !== undefined);
  expect(panel?.hasMember).toHaveLength(7);
  // Nothing but a pressure that was declined: still a round that says so.
  const [pressure, whole] = [1, 2].map((at) =>
    observations([signing(2, [], { notDone: [{ sign: 'pressure', notDone: declined }] })]).at(-at),
  );
  expect(whole?.hasMember).toHaveLength(1);
  expect(pressure?.component?.map((one) => one.dataAbsentReason?.coding?.[0]?.code)).toEqual([
    'asked-declined',
    'asked-declined',
  ]);
});

// Interoperability handbook 7: sounds to zero, 0 is a value.
test('sounds down to zero keep the zero as a value and say the muffling', () => {
  const moments = [
    { what: 'first sound', mmHg: 118 },
    { what: 'muffled', mmHg: 62 },
    { what: 'last sound', mmHg: 0 },
  ];
  const reading = run(1, { method: 'auscultation', moments });
  const found = of(1, [reading, signing(2, [reading])]);
  expect(found?.component?.[1]?.valueQuantity?.value).toBe(0);
  expect(found?.method?.text).toContain('phase 4 (muffling) = 62');
});

test('a gauge is a Device that its readings name', () => {
  const gauge = made(40, 'equipment', GAUGE, { person: null, round: null });
  const reading = run(1, heard(148, 92), { gauge: gauge.entry.id });
  const all = [reading, signing(2, [reading])];
  const gauges = [{ frame: gauge.frame, recordedAt: gauge.recordedAt }];
  expect(of(1, all, { gauges })?.device).toEqual({ reference: `urn:uuid:${gauge.entry.id}` });
  const devices = (written(all, { gauges }).entry ?? []).filter(
    ({ resource }) => resource?.resourceType === 'Device',
  );
  expect(devices).toMatchObject([
    { resource: { serialNumber: 'INV-G3', deviceName: [{ name: 'Gauge 3' }], type: { text: 'aneroid' } } },
  ]);
});

test('a reading from a gauge that failed since says so in a note, and so does a mean of it', () => {
  const { frame, recordedAt } = made(40, 'equipment', GAUGE, { person: null, round: null });
  const gauges = [{ frame: { ...frame, id: FAILED_GAUGE.id }, recordedAt }];
  const readings = [heard(150, 92), heard(146, 90), heard(142, 88)].map((numbers, at) =>
    run(at + 1, numbers, { gauge: FAILED_GAUGE.id, inForce: UNDER_PROTOCOL }),
  );
  const all = [...readings, signing(9, readings, { inForce: UNDER_PROTOCOL })];
  const doubt = 'in doubt: read from Gauge 3, a gauge that failed a check';
  const doubted = (more: Partial<BundleOf>) =>
    observations(all, { gauges, ...more }).filter(({ note = [] }) => note.some(({ text }) => text === doubt));
  expect(doubted({})).toEqual([]);
  const found = doubted({ gaugesNow: [FAILED_GAUGE] });
  expect(found).toHaveLength(4);
  expect(found.filter(({ derivedFrom }) => derivedFrom !== undefined)).toHaveLength(1);
});

describe('the other signs', () => {
  const all = [
    count(1, COUNTED),
    count(2, { n: 8, windowSeconds: 30, of: 'breaths' }),
    taps(3, [0, 0.83, 1.66, 2.5, 3.3, 4.2]),
    sign(4, { of: 'temperature', celsius: 38.1, site: 'tympanic' }),
    sign(5, { of: 'oxygen-saturation', percent: 94, onOxygen: false }),
    sign(6, { of: 'pain', score: 3, tool: 'numeric' }),
    sign(7, { of: 'consciousness', level: 'alert' }),
    sign(8, { of: 'weight', kg: 70.5, how: 'measured' }),
    sign(9, { of: 'height', cm: 170, how: 'stated', lying: false }),
  ];
  const round = [...all, signing(20, all)];

  // Interoperability handbook 2 and 4.
  test.each([
    [1, 'heartrate', '8867-4', 76, '/min'],
    [2, 'resprate', '9279-1', 16, '/min'],
    [4, 'bodytemp', '8310-5', 38.1, 'Cel'],
    [5, 'oxygensat', '2708-6', 94, '%'],
    [8, 'bodyweight', '29463-7', 70.5, 'kg'],
    [9, 'bodyheight', '8302-2', 170, 'cm'],
  ] as const)('entry %i is in the profile %s with %s', (id, profile, loinc, value, unit) => {
    const found = of(id, round);
    expect(found?.meta?.profile).toEqual([`http://hl7.org/fhir/StructureDefinition/${profile}`]);
    expect(found?.code.coding?.[0]).toMatchObject({ system: 'http://loinc.org', code: loinc });
    expect(found?.valueQuantity).toMatchObject({ value, code: unit });
  });

  test('pain and consciousness have no open code and claim no profile', () => {
    expect(of(6, round)).toMatchObject({ valueQuantity: { value: 3 } });
    expect(of(6, round)?.meta?.profile).toBeUndefined();
    expect(of(7, round)?.valueCodeableConcept).toEqual({ text: 'alert' });
  });

  test('a signed round is a panel of its values', () => {
    const panel = of(20, round);
    expect(panel?.code.coding?.[0]?.code).toBe('85353-1');
    expect(panel?.hasMember).toHaveLength(9);
  });
});

test('a count that was broken off has a reason in place of a value', () => {
  const broken = count(1, { windowSeconds: 30, interrupted: { reason: 'called-away', atSeconds: 12 } });
  const found = of(1, [broken, count(2, COUNTED), signing(3, [count(2, COUNTED)])]);
  expect(found?.valueQuantity).toBeUndefined();
  expect(found?.dataAbsentReason?.coding?.[0]?.code).toBe('not-performed');
});

test('several readings give a mean that names each of them', () => {
  const readings = [heard(150, 92), heard(146, 90), heard(143, 88)].map((one, at) =>
    run(at + 1, one, { inForce: UNDER_PROTOCOL }),
  );
  const all = observations([...readings, signing(9, readings, { inForce: UNDER_PROTOCOL })]);
  const mean = all.find(({ code }) => code.coding?.some(({ code: one }) => one === '96607-7'));
  expect(mean?.derivedFrom?.length).toBeGreaterThan(1);
  expect(mean?.effectivePeriod?.start).toBeDefined();
  expect(mean?.interpretation?.[0]?.coding?.[0]?.code).toBe('H');
  expect(all.filter(({ interpretation }) => interpretation !== undefined)).toHaveLength(1);
});

describe('how a value stands', () => {
  const slip = count(1, { n: 66, windowSeconds: 30 });
  const put = count(2, { n: 61, windowSeconds: 30 }, amending(1));
  const signed = signing(3, [slip]);

  // Interoperability handbook 7.
  test('amended: one Observation of what stands, its Provenance names what it replaced', () => {
    const all = [slip, signed, put];
    expect(of(1, all)).toBeUndefined();
    expect(of(2, all)).toMatchObject({ status: 'amended', valueQuantity: { value: 122 } });
    const provenance = (written(all).entry ?? []).flatMap(({ resource }) =>
      resource?.resourceType === 'Provenance' ? [resource] : [],
    );
    expect(provenance).toHaveLength(3);
    expect(provenance[2]).toMatchObject({
      target: [{ reference: `urn:uuid:${idOf(2)}` }],
      entity: [{ role: 'revision', what: { identifier: { value: `urn:uuid:${idOf(1)}` } } }],
      activity: { text: 'amended: typing slip' },
    });
    expect(provenance[0]?.target).toEqual([{ reference: `urn:uuid:${idOf(2)}` }]);
  });

  test('entered in error: the value is kept', () => {
    expect(of(1, [slip, signed, inError(4, 1)])).toMatchObject({
      status: 'entered-in-error',
      valueQuantity: { value: 132 },
    });
  });

  test('contested: each claim, and both say so', () => {
    const other = count(5, { n: 60, windowSeconds: 30 }, amending(1));
    const all = [slip, signed, put, other];
    expect([of(2, all)?.status, of(5, all)?.status]).toEqual(['amended', 'amended']);
    expect(JSON.stringify(of(5, all)?.note)).toContain('disagree');
  });

  test('a learner’s, and what nobody signed, is preliminary', () => {
    expect(of(1, [slip, signing(3, [slip], { status: 'preliminary' })])?.status).toBe('preliminary');
    expect(of(1, [slip])?.status).toBe('preliminary');
  });
});

test('a value from elsewhere is by whoever said it, in the profile of its sign', () => {
  const said = {
    asSent: '16 kPa',
    until: '2026-11-26T10:00:00+01:00',
    interpretation: 'High',
    posture: 'sitting',
  };
  const found = of(1, [reported(1, { of: 'pressure', systolic: 120, diastolic: null }, { said })]);
  expect(found).toMatchObject({
    status: 'final',
    performer: [{ display: 'Ines Larch (invented)' }],
    effectivePeriod: { end: '2026-11-26T10:00:00+01:00' },
    interpretation: [{ text: 'High' }],
    note: [{ text: '16 kPa' }],
  });
  expect(found?.component?.[1]?.dataAbsentReason?.coding?.[0]?.code).toBe('not-performed');
  const others = [
    { of: 'pulse', perMinute: 72 },
    { of: 'breaths', perMinute: 16 },
    { of: 'temperature', celsius: 37.2 },
    { of: 'oxygen-saturation', percent: 97 },
    { of: 'weight', kg: 70.5 },
    { of: 'height', cm: 171 },
  ] as const;
  expect(observations(others.map((value, at) => reported(at + 1, value)))).toHaveLength(6);
});

describe('who it is', () => {
  const born = made(8, 'person', { identifiers: ['name', 'birthDate', 'number'] });
  const all = [born, count(1, COUNTED)];

  test('stands nowhere unless it is asked for', () => {
    const text = JSON.stringify(written(all));
    expect(text).not.toContain('Wickstead');
    expect(text).not.toContain('1957-03-14');
    expect(written(all).entry?.[0]?.resource).toEqual({
      resourceType: 'Patient',
      id: bundleOf([]).person,
      identifier: [{ system: 'urn:ietf:rfc:3986', value: `urn:uuid:${bundleOf([]).person}` }],
    });
  });

  test('is a name, a birth date and a number where it is', () => {
    const bundle = written(all, { identity: ORLA });
    expect(wrongInBundle(bundle)).toEqual([]);
    expect(bundle.entry?.[0]?.resource).toMatchObject({
      name: [{ text: 'Orla Wickstead (invented)' }],
      birthDate: '1957-03-14',
      identifier: [{}, { value: '-0001' }],
    });
  });
});

// Conventions 9, interoperability handbook 10: what is not of a real person's care is marked, every resource of it.
test.each([
  ['care', true, ['INVENTED']],
  ['class', false, ['CLASS']],
  ['simulated', false, ['SIMULATED']],
] as const)('of the %s book, invented %j: marked as test data', (book, invented, notices) => {
  const bundle = written([count(1, COUNTED)], { book, invented });
  expect(wrongInBundle(bundle)).toEqual([]);
  expect(bundle.meta?.tag?.map(({ code }) => code)).toEqual(notices);
  expect(bundle.entry?.every(({ resource }) => resource?.meta?.security?.[0]?.code === 'HTEST')).toBe(true);
});

test('a note with any sign in it still passes the schema', () => {
  const bundle = written([count(1, COUNTED, { note: 'cold\u00a0hands,\n“shivers” \u{1f976}\u2028' })]);
  expect(wrongInBundle(bundle)).toEqual([]);
});

test('the panel of a round says how it began and how long the person rested, before the note', () => {
  const reading = run(1, heard(148, 92));
  const begun = {
    identifiers: ['name' as const, 'number' as const],
    consent: 'agreed' as const,
    chaperone: 'not-needed' as const,
    interpreter: 'present' as const,
    who: null,
  };
  const skipped = { reason: 'declined' as const, text: null };
  const rest = { seconds: 120, neededSeconds: 300, skipped };
  const panel = of(2, [reading, signing(2, [reading], { begun, rest, note: 'cold room' })]);
  expect(panel?.note?.map(({ text }) => text)).toEqual([
    'How the round began: Identified by name, number · agreed · interpreter present',
    'Rest not waited for after 2 minutes of 5 minutes: the person does not want to wait.',
    'cold room',
  ]);
  expect(of(2, [reading, signing(2, [reading])])?.note).toBeUndefined();
});
