import { MODEL, PROPER, SCENARIOS, SOUND_INSTRUMENT } from '@evenfall/physiology';
import { EXERCISE_SCHEMA, NO_EVIDENCE, NOTHING_ENTERED } from '@evenfall/practice';
import { describe, expect, test } from 'vitest';
import { chartGaugeLog } from '../content/chartGaugeLog.js';
import { KIND_NAMES, KINDS, type Kind, type KindName } from '../content/kinds.js';
import { H1, homeEvidence, seriesContentOf } from '../testing/series.js';
import {
  countContent,
  frame,
  idOf,
  NO_PROTOCOL,
  placesOf,
  runContent,
  signContent,
  signingContent,
  TEST_PROGRAM,
  tapsContent,
} from '../testing/work.js';
import type { EntryFrame } from './entry.js';
import { readEntry } from './readEntry.js';

const CONTENTS: Record<KindName, object> = {
  person: { identifiers: ['name', 'number'] },
  'identity-corrected': { changed: ['birthDate'] },
  'identity-erased': { reason: 'asked to be erased' },
  count: countContent({ n: 19, windowSeconds: 15 }),
  taps: tapsContent([0, 0.8, 1.6]),
  run: runContent({
    method: 'auscultation',
    moments: [
      { what: 'first sound', mmHg: 148 },
      { what: 'last sound', mmHg: 92 },
    ],
  }),
  sign: signContent({ of: 'temperature', celsius: 38.1, site: 'tympanic' }),
  round: signingContent([{ sign: 'pulse', entries: [idOf(2)] }], []),
  reported: {
    value: { of: 'pressure', systolic: 128, diastolic: null },
    asSent: null,
    by: 'another clinic (invented)',
    method: null,
    site: null,
    posture: null,
    interpretation: null,
    status: 'final',
    until: null,
    note: null,
    source: { format: 'fhir', id: null },
    saidAt: null,
    uprightMinutes: null,
    lyingMinutes: 5,
    unwellUpright: null,
  },
  'diary-handed': {
    days: 7,
    readingsInSitting: 2,
    language: 'ar',
    from: '2026-07-01',
    dueOn: '2026-07-08',
    note: null,
  },
  'diary-ended': { diary: idOf(2), reason: 'moved away' },
  series: seriesContentOf(homeEvidence(H1)),
  'series-decided': { series: idOf(2), decision: 'out', indexes: [3], reason: 'talked' },
  fact: { about: { fact: 'fistula', side: 'left' }, from: '2026-03-01', until: null, text: null },
  'fact-ended': { fact: idOf(2), until: '2026-05-31' },
  'act-now-closed': {
    conditions: ['severe-pressure'],
    toldWhom: 'Dr Larch (invented)',
    toldAt: { at: '2026-11-25T09:05:00Z', zone: 'UTC', asEntered: null },
    saidBack: 'comes at once',
    saw: [idOf(2)],
  },
  countersigned: { signing: idOf(2), agrees: true, ownRound: null, note: null },
  'entered-in-error': { note: null },
  'protocol-chosen': { version: null },
  equipment: {
    what: 'gauge',
    name: 'Gauge 3 (invented)',
    type: 'aneroid',
    room: 'Room 2',
    serial: null,
    note: null,
  },
  'equipment-ended': { equipment: idOf(2), reason: null },
  'gauge-logged': chartGaugeLog(
    { gauge: idOf(2), log: { of: 'zero', restMmHg: 0 }, note: null },
    NO_PROTOCOL,
    TEST_PROGRAM,
  ),
  'class-session': { title: 'Tuesday group (invented)', endsBy: '2026-11-26T00:00:00Z' },
  'class-session-ended': {},
  'kept-by-agreement': { teacherAgrees: true, subjectAgrees: true },
  exercise: {
    ...{
      schema: EXERCISE_SCHEMA,
      model: MODEL,
      scenario: SCENARIOS[0],
      seed: 7,
      circumstances: PROPER,
      instrument: SOUND_INSTRUMENT,
    },
    ...{ actions: [], seconds: 12, earlier: [], evidence: NO_EVIDENCE, entered: NOTHING_ENTERED },
    aids: { hasHearingAid: false, isAmplified: false, isLoudspeakerVoice: false, hadSound: false },
    judgedBy: { presetVersion: null },
  },
  scenario: {
    scenario: { ...SCENARIOS[0], id: 'own-one', title: 'One of ours (invented)' },
    isRetired: false,
  },
};

/** What the acts of a class need besides. */
const OF_A_CLASS = { book: 'class', role: 'teacher', session: idOf(1) } as const;
const MORE: Partial<Record<KindName, Partial<EntryFrame>>> = {
  equipment: { person: null },
  'equipment-ended': { person: null },
  'gauge-logged': { person: null },
  'class-session': { ...OF_A_CLASS, person: null },
  'class-session-ended': { ...OF_A_CLASS, person: null },
  'kept-by-agreement': OF_A_CLASS,
  exercise: { book: 'simulated', person: null, round: null },
  scenario: { book: 'simulated', person: null, round: null },
};

describe.each(KIND_NAMES)('an entry of kind %s', (kind) => {
  const { newest, schemas }: Kind = KINDS[kind];
  const good = frame(kind, CONTENTS[kind], { schema: newest, ...MORE[kind] });

  test('is read as it was written', () => {
    expect(readEntry(good)).toEqual({ ok: true, value: good });
    expect(readEntry(JSON.parse(JSON.stringify(good)))).toEqual({ ok: true, value: good });
  });

  test('is refused by name when a newer program wrote it, and nothing of it is guessed', () => {
    const newer = readEntry({ ...good, schema: newest + 1, content: { whatever: 1 } });
    expect(newer).toMatchObject({
      ok: false,
      refusals: [{ field: '/schema', code: 'unknown-id', got: `${kind} ${newest + 1}`, figures: { newest } }],
    });
  });

  test('is read in every schema it ever had', () => {
    expect(Object.keys(schemas).map(Number)).toEqual(Array.from({ length: newest }, (_, index) => index + 1));
  });

  test('is refused with another content, below /content', () => {
    const read = readEntry({ ...good, content: { nothing: 'known' } });
    expect(placesOf(read)).toContain('/content/nothing');
    expect(placesOf(read).every((place) => place.startsWith('/content'))).toBe(true);
  });

  test('has a person, unless it is about the place itself or a whole class', () => {
    const isOfNobody = [
      ...['protocol-chosen', 'class-session', 'class-session-ended'],
      ...['equipment', 'equipment-ended', 'gauge-logged', 'exercise', 'scenario'],
    ].includes(kind);
    expect(placesOf(readEntry({ ...good, person: null }))).toEqual(isOfNobody ? [] : ['/person']);
  });

  test('has a round if it is a value, a signing or about one: what no round holds, nobody could sign', () => {
    const isSigned = [
      ...['count', 'taps', 'run', 'sign', 'round', 'series'],
      ...['act-now-closed', 'countersigned'],
    ].includes(kind);
    expect(placesOf(readEntry({ ...good, round: null }))).toEqual(isSigned ? ['/round'] : []);
  });
});

test('equipment is of nobody, and of the book of charts alone, whatever book it is used in', () => {
  const gauge = frame('equipment', CONTENTS.equipment, { person: null });
  expect(placesOf(readEntry(gauge))).toEqual([]);
  expect(placesOf(readEntry({ ...gauge, person: idOf(9001) }))).toEqual(['/person']);
  expect(placesOf(readEntry({ ...gauge, book: 'simulated' }))).toEqual(['/book']);
});

test('equipment that was named in error is marked by an entry of nobody', () => {
  const amends = { entry: idOf(2), reason: 'duplicate', text: null } as const;
  const mark = frame('entered-in-error', { note: null }, { person: null, amends });
  expect(placesOf(readEntry(mark))).toEqual([]);
});

test('a value from elsewhere of schema 1 says nothing of how long somebody had stood or lain', () => {
  const {
    uprightMinutes: _,
    lyingMinutes: __,
    unwellUpright: ___,
    saidAt: ____,
    ...older
  } = CONTENTS.reported as Record<string, unknown>;
  const read = readEntry(frame('reported', older, { round: null, role: 'importer', schema: 1 }));
  expect(read.ok && read.value.content).toEqual({
    ...older,
    saidAt: null,
    uprightMinutes: null,
    lyingMinutes: null,
    unwellUpright: null,
  });
});

test('a run of schema 5 says nothing of whether it was asked for at once; from schema 6 on that is said', () => {
  const previous = { was: 'reading', secondsSinceRelease: 3, isNextAtOnce: true } as const;
  const run = { method: 'palpation', moments: [{ what: 'pulse back', mmHg: 122 }] };
  const content = runContent(run, {
    circumstances: { rhythmFelt: null, previous, uprightMinutes: null },
  });
  expect(content.value.flags.map(({ code }) => code)).not.toContain('too-soon');
  expect(readEntry(frame('run', content))).toMatchObject({ ok: true, value: { content } });
  const { isNextAtOnce: _, ...before } = previous;
  const circumstances = { ...content.evidence.circumstances, previous: before };
  const older = { ...content, evidence: { ...content.evidence, circumstances } };
  const read = readEntry(frame('run', older, { schema: 5 }));
  expect(read.ok && read.value.kind === 'run' && read.value.content.evidence.circumstances.previous).toEqual({
    ...before,
    isNextAtOnce: null,
  });
  expect(placesOf(readEntry(frame('run', older)))).toEqual([
    '/content/evidence/circumstances/previous/isNextAtOnce',
  ]);
});

/** What was known of a run before anybody said how long the person had lain. */
function beforeLying({ evidence }: ReturnType<typeof runContent>) {
  const { lyingMinutes: _, ...circumstances } = evidence.circumstances;
  return circumstances;
}

/** What was known of a run before anybody was asked how they felt on their feet. */
function beforeUpright(content: ReturnType<typeof runContent>) {
  const { unwellUpright: _, ...circumstances } = beforeLying(content);
  return circumstances;
}

test('a run of schema 4 says nothing of how long the person had lain; from schema 5 on that is said', () => {
  const content = runContent({ method: 'palpation', moments: [{ what: 'pulse back', mmHg: 122 }] });
  const older = { ...beforeLying(content), unwellUpright: true };
  const evidence = { ...content.evidence, circumstances: older };
  const read = readEntry(frame('run', { ...content, evidence }, { schema: 4 }));
  const circumstances = { ...older, lyingMinutes: null };
  expect(read.ok && read.value.content).toEqual({
    ...content,
    evidence: { ...content.evidence, circumstances },
  });
  expect(placesOf(readEntry(frame('run', { ...content, evidence }, { schema: 5 })))).toEqual([
    '/content/evidence/circumstances/lyingMinutes',
  ]);
  const lain = { ...content.evidence.circumstances, lyingMinutes: 5.5 };
  const said = { ...content, evidence: { ...content.evidence, circumstances: lain } };
  expect(readEntry(frame('run', said, { schema: 5 }))).toMatchObject({ ok: true, value: { content: said } });
});

test('a run of schema 3 says nothing of how the person felt on their feet; from schema 4 on that is said', () => {
  const content = runContent({ method: 'palpation', moments: [{ what: 'pulse back', mmHg: 122 }] });
  const evidence = { ...content.evidence, circumstances: beforeUpright(content) };
  const read = readEntry(frame('run', { ...content, evidence }, { schema: 3 }));
  expect(read.ok && read.value.content).toEqual(content);
  expect(placesOf(readEntry(frame('run', { ...content, evidence }, { schema: 4 })))).toEqual([
    '/content/evidence/circumstances/unwellUpright',
  ]);
  const unwell = { ...beforeLying(content), unwellUpright: true };
  const said = { ...content, evidence: { ...content.evidence, circumstances: unwell } };
  expect(readEntry(frame('run', said, { schema: 4 }))).toMatchObject({
    ok: true,
    value: { content: { evidence: { circumstances: unwell } } },
  });
});

test('a run of schema 1 was read from a gauge that nobody named', () => {
  const content = runContent({
    method: 'palpation',
    moments: [{ what: 'pulse back', mmHg: 122 }],
  });
  const { gauge: _, markedBy: __, ...older } = content.evidence;
  const evidence = { ...older, circumstances: beforeUpright(content) };
  const read = readEntry(frame('run', { ...content, evidence }, { schema: 1 }));
  expect(read.ok && read.value.kind === 'run' && read.value.content.evidence.gauge).toBeNull();
  expect(read.ok && read.value.content).toEqual(content);
  expect(placesOf(readEntry(frame('run', { ...content, evidence }, { schema: 2 })))).toEqual([
    '/content/evidence/gauge',
  ]);
});

test('a run of schema 2 was marked by nobody else; from schema 3 on that is said', () => {
  const content = runContent(
    { method: 'palpation', moments: [{ what: 'pulse back', mmHg: 122 }] },
    { gauge: idOf(77) },
  );
  const { markedBy: _, ...older } = content.evidence;
  const evidence = { ...older, circumstances: beforeUpright(content) };
  const read = readEntry(frame('run', { ...content, evidence }, { schema: 2 }));
  expect(read.ok && read.value.content).toEqual(content);
  expect(placesOf(readEntry(frame('run', { ...content, evidence }, { schema: 3 })))).toEqual([
    '/content/evidence/markedBy',
  ]);
});

test('of a run that a second person marked, each time has whoever marked it, and nothing else has', () => {
  const content = runContent({
    method: 'auscultation',
    peak: { mmHg: 176, atSeconds: 0 },
    moments: [
      { what: 'first sound', mmHg: 148, atSeconds: 11.2 },
      { what: 'last sound', mmHg: 92 },
    ],
  });
  const wrong = (markedBy: object) =>
    placesOf(readEntry(frame('run', { ...content, evidence: { ...content.evidence, markedBy } })));
  const right = { peak: 'second-person', moments: ['observer', null], clocksWithinMs: 12.5 };
  expect(wrong(right)).toEqual([]);
  expect(wrong({ ...right, clocksWithinMs: 0 })).toEqual([]);
  for (const bent of [
    { ...right, peak: null },
    { ...right, moments: ['observer'] },
    { ...right, moments: ['observer', 'observer'] },
    { ...right, moments: [null, null] },
  ])
    expect(wrong(bent)).toEqual(['/content/evidence/markedBy']);
  expect(wrong({ ...right, clocksWithinMs: -1 })).toEqual(['/content/evidence/markedBy/clocksWithinMs']);
  expect(wrong({ ...right, peak: 'somebody' })).toEqual(['/content/evidence/markedBy/peak']);
});

test('every problem of frame and content is said together, in order of place', () => {
  const content = countContent({ n: 19, windowSeconds: 15 });
  const bent = {
    ...frame('count', content),
    id: 'mine',
    role: 'boss',
    extra: 1,
    content: { ...content, note: 7, value: { ...content.value, flags: 'none' } },
  };
  expect(placesOf(readEntry(bent))).toEqual([
    '/id',
    '/role',
    '/extra',
    '/content/value/flags',
    '/content/note',
  ]);
});

test('a content is judged by its own kind alone, and not at all where that is not known', () => {
  expect(placesOf(readEntry({ ...frame('round', {}), kind: 'pressure' }))).toEqual(['/kind']);
  expect(placesOf(readEntry({ ...frame('round', {}), content: 'x' }))).toEqual(['/content']);
});

test.each([null, undefined, 'an entry', 7, []])('%j is no entry', (input) => {
  expect(placesOf(readEntry(input))).toEqual(['']);
});
