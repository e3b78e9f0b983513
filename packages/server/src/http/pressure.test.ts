import { overrideFields, presetProtocol, protocolVersion } from '@evenfall/clinical';
import { chartedPressure, inForceUnder, projectChart, type StoredEntry } from '@evenfall/record';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';

/** Bedside handbook 8, C040: 160 to 130 in 12 s is 2.5 mmHg a second. */
const RUN = {
  method: 'auscultation',
  pulsePerMinute: 60,
  peak: { mmHg: 160, atSeconds: 0 },
  moments: [
    { what: 'first sound', mmHg: 130, atSeconds: 12 },
    { what: 'last sound', mmHg: 80, atSeconds: 32 },
  ],
};
const FEVER = { of: 'temperature', celsius: 39.2, site: 'tympanic' };

type Content = { evidence: Record<string, object>; value: Record<string, unknown>; computedBy: object };

describe('pressures and other signs over HTTP', () => {
  let database: TestDatabase;
  let clinic: TestClinic;
  let person: string;
  beforeAll(async () => {
    database = await openMemory();
    clinic = await TestClinic.open(database);
    person = await clinic.addPerson();
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  const charted = async (of = person) => projectChart((await clinic.chart(of)).body.entries as StoredEntry[]);
  const bent = (entry: { content: Record<string, unknown> }, value: object) => {
    const content = entry.content as Content;
    return { ...content, value: { ...content.value, ...value } };
  };

  test('are kept as sent, stand in the chart, and are found right by a check', async () => {
    const one = await clinic.addPerson();
    const sent = [clinic.pressure(one, RUN), clinic.otherSign(one, FEVER)];
    expect((await clinic.sign(...sent)).status).toBe(201);
    const { entries } = (await clinic.chart(one)).body;
    for (const { id, content } of sent) {
      expect(entries.find((entry: StoredEntry) => entry.id === id).content).toEqual(content);
    }
    const values = (await charted(one)).rounds.flatMap((round) =>
      round.values.map(({ original }) => original),
    );
    expect(values.map(({ kind }) => kind).sort()).toEqual(['run', 'sign']);
    expect((await clinic.send('GET', '/control/check')).body).toMatchObject({ findings: [] });
  });

  // Each of them might be acted on: a number that its evidence does not give is never kept.
  test.each<[string, object]>([
    ['value/systolic', { systolic: 120 }],
    ['value/diastolic', { diastolic: 82 }],
    ['value/diastolicUsed', { diastolicUsed: 70 }],
    ['value/systolicRange', { systolicRange: null }],
    ['value/flags', { flags: [{ code: 'to-zero', figures: {} }] }],
    ['value/isAveraged', { isAveraged: false }],
  ])('a run whose %s is not what its evidence gives is refused', async (at, value) => {
    const entry = clinic.pressure(person, RUN);
    const came = await clinic.sign({ ...entry, content: bent(entry, value) });
    expect(came.status).toBe(422);
    expect(came.body.problems).toMatchObject([{ field: `/entries/0/content/${at}`, code: 'contradicts' }]);
    expect((await charted()).entries).toBe(1);
  });

  test('a wrist that claims to be averaged is refused (conventions 6: charted, never averaged)', async () => {
    const entry = clinic.pressure(person, RUN);
    const { evidence } = entry.content as Content;
    const content = {
      ...entry.content,
      evidence: { ...evidence, place: { ...evidence.place, site: 'wrist' } },
    };
    const came = await clinic.sign({ ...entry, content });
    expect(came.status).toBe(422);
    expect(came.body.problems[0].field).toMatch(/^\/entries\/0\/content\/value\/(flags|isAveraged)/);
  });

  test('a palpated systolic that claims a diastolic is refused', async () => {
    const entry = clinic.pressure(person, { method: 'palpation', palpated: { backMmHg: 124 } });
    const came = await clinic.sign({ ...entry, content: bent(entry, { diastolic: 80, diastolicUsed: 80 }) });
    expect(came.body.problems).toMatchObject([{ field: '/entries/0/content/value/diastolic' }]);
  });

  test('a sign whose flags are not what its evidence gives is refused', async () => {
    const entry = clinic.otherSign(person, FEVER);
    const came = await clinic.sign({ ...entry, content: bent(entry, { flags: [] }) });
    expect(came.status).toBe(422);
    expect(came.body.problems).toMatchObject([
      { field: '/entries/0/content/value/flags', code: 'contradicts' },
    ]);
  });

  test('what cannot have been done is refused at each of its fields', async () => {
    const entry = clinic.pressure(person, RUN);
    const { evidence } = entry.content as Content;
    const moments = [
      { what: 'first sound', mmHg: 80, atSeconds: 12 },
      { what: 'last sound', mmHg: 120, atSeconds: 11 },
    ];
    const content = { ...entry.content, evidence: { ...evidence, run: { ...evidence.run, moments } } };
    const came = await clinic.sign({ ...entry, content });
    expect(came.status).toBe(422);
    expect(
      came.body.problems.map(({ field, code }: { field: string; code: string }) => [field, code]),
    ).toEqual([
      ['/entries/0/content/evidence/run/moments/1/mmHg', 'not-below-systolic'],
      ['/entries/0/content/evidence/run/moments/1/atSeconds', 'out-of-order'],
    ]);
    const sign = clinic.otherSign(person, FEVER);
    const hot = { ...(sign.content as Content).evidence.sign, celsius: 392 };
    const { circumstances } = (sign.content as Content).evidence;
    const wrong = { ...sign.content, evidence: { sign: hot, typed: null, circumstances } };
    expect((await clinic.sign({ ...sign, content: wrong })).body.problems).toMatchObject([
      { field: '/entries/0/content/evidence/sign/celsius', code: 'out-of-range' },
    ]);
  });

  test('a content of the wrong shape is refused with every field named', async () => {
    const entry = clinic.pressure(person, RUN);
    const { evidence } = entry.content as Content;
    const place = { ...evidence.place, side: 'middle', armCm: 'thick' };
    const content = { ...entry.content, evidence: { ...evidence, place }, colour: 'blue' };
    const came = await clinic.sign({ ...entry, content });
    expect(came.status).toBe(422);
    const fields = came.body.problems.map(({ field }: { field: string }) => field).sort();
    expect(fields).toEqual([
      '/entries/0/content/colour',
      '/entries/0/content/evidence/place/armCm',
      '/entries/0/content/evidence/place/side',
    ]);
    expect((await clinic.sign(clinic.pressure(person, RUN, { round: null }))).body.problems).toMatchObject([
      { field: '/entries/0/round', code: 'missing' },
    ]);
  });

  test('a rule that this program does not have is refused by name', async () => {
    for (const [entry, rule] of [
      [clinic.pressure(person, RUN), 'run-1'],
      [clinic.otherSign(person, FEVER), 'sign-1'],
    ] as const) {
      const computedBy = { ...(entry.content as Content).computedBy, rule: 'count-1' };
      const came = await clinic.sign({ ...entry, content: { ...entry.content, computedBy } });
      expect(came.body.problems).toMatchObject([
        { field: '/entries/0/content/computedBy/rule', code: 'unknown-id', expected: rule },
      ]);
    }
  });

  test('an amendment: by measured evidence or by hand, a pressure for a pressure and nothing else', async () => {
    const one = await clinic.addPerson();
    const [slip, fever] = [clinic.pressure(one, RUN), clinic.otherSign(one, FEVER)];
    await clinic.sign(slip, fever);
    const amending = clinic.amending(slip);
    for (const other of [
      clinic.pulse(one, 38, 30, amending),
      clinic.otherSign(one, FEVER, amending),
      clinic.pressure(one, RUN, clinic.amending(fever)),
      clinic.otherSign(one, { of: 'weight', kg: 70, how: 'stated' }, clinic.amending(fever)),
    ]) {
      expect((await clinic.sign(other)).body.problems).toMatchObject([
        { field: '/entries/0/amends/entry', code: 'contradicts' },
      ]);
    }
    const moments = [RUN.moments[0], { what: 'last sound', mmHg: 84, atSeconds: 30 }];
    const right = clinic.pressure(one, { ...RUN, moments }, amending);
    expect((await clinic.sign(right)).status).toBe(201);
    const hand = clinic.pressure(one, { ...RUN, moments }, clinic.amending(right, 'wrong-limb-or-cuff'));
    const override = { systolic: 132, diastolic: 84, reason: 'read by the second observer' };
    expect((await clinic.sign({ ...hand, content: { ...hand.content, override } })).status).toBe(201);
    const story = (await charted(one)).rounds
      .flatMap(({ values }) => values)
      .find(({ original }) => original.id === slip.id);
    expect(story?.standing).toBe('amended');
    expect(story?.story.map((entry) => chartedPressure(entry)?.diastolic)).toEqual([80, 84, 84]);
    expect(story?.current.map(chartedPressure)).toMatchObject([{ systolic: 132, byHand: true }]);
  });

  test('a run is held against the rules it was made under, and names the preset of letting down', async () => {
    const preset = presetProtocol({ deflation: 'mark-above' });
    if (!preset.ok) throw new Error('the preset is gone');
    const local = overrideFields(preset.value, [
      { section: 'deflation', key: 'fastestMmHgPerSecond', value: 2.4 },
    ]);
    if (!local.ok) throw new Error(JSON.stringify(local.refusals));
    const version = protocolVersion(local.value);
    expect((await clinic.send('POST', '/api/protocols', { content: local.value })).status).toBe(201);
    const entry = clinic.pressure(person, RUN, {}, inForceUnder(local.value, version));
    const { flags } = (entry.content as Content).value as { flags: { code: string }[] };
    expect(flags.map(({ code }) => code)).toContain('early-too-fast');
    expect((await clinic.sign(entry)).status).toBe(201);
    const claimed = { ...(entry.content as Content).computedBy, preset: 'two-a-beat' };
    const again = clinic.pressure(person, RUN, {}, inForceUnder(local.value, version));
    const came = await clinic.sign({ ...again, content: { ...again.content, computedBy: claimed } });
    expect(came.body.problems).toMatchObject([
      { field: '/entries/0/content/computedBy/preset', code: 'contradicts' },
    ]);
    const under = { ...(entry.content as Content).computedBy, preset: null, presetVersion: null };
    const none = await clinic.sign({ ...again, content: { ...again.content, computedBy: under } });
    expect(none.status).toBe(422);
  });

  test('nothing of all this was a fault of the program', () => {
    expect(clinic.faults).toEqual([]);
  });
});
