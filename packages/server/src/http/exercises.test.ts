import { bladderFor, PROPER, SCENARIOS, SOUND_INSTRUMENT } from '@evenfall/physiology';
import { debrief, demonstrate, GOOD_OBSERVER } from '@evenfall/practice';
import { readEntry } from '@evenfall/record';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { listExercises } from '../store/exercises.js';
import { readSite } from '../store/site.js';
import { TestClinic } from '../testing/clinic.js';
import { impossibleIn } from './impossibleIn.js';

// Source: docs/conventions.md section 9: three books that never mix; learners practise, and nothing of it is charted.
const AIDS = { hasHearingAid: false, isAmplified: false, isLoudspeakerVoice: false, hadSound: true };
const [scenario] = SCENARIOS;
if (scenario === undefined) throw new Error('no scenario');
const shown = demonstrate(GOOD_OBSERVER, scenario, 7, PROPER, {
  ...SOUND_INSTRUMENT,
  bladder: bladderFor(scenario.armCm),
});
const CONTENT = { ...JSON.parse(JSON.stringify(shown)), aids: AIDS, judgedBy: { presetVersion: null } };

// docs/practice.md: another cuff or gauge is taken while the cuff is empty.
const up = shown.actions.findIndex(({ kind }) => kind === 'steady-fall');
const gauge = { tick: (shown.actions[up]?.tick ?? 0) + 1, kind: 'gauge' };
const IMPOSSIBLE = {
  ...CONTENT,
  actions: [...shown.actions.slice(0, up + 1), gauge, ...shown.actions.slice(up + 1)],
};

let database: TestDatabase;
let clinic: TestClinic;
beforeEach(async () => {
  database = await openMemory();
  clinic = await TestClinic.open(database);
}, 60_000);
afterEach(async () => {
  await database.close();
});

const practised = (more: object = {}) =>
  clinic.frame('exercise', null, CONTENT, { book: 'simulated', round: null, ...more });
const list = async () => (await clinic.send('GET', '/api/exercises')).body;

test('an exercise is kept once, listed, and read back so that it can be played again', async () => {
  const entry = practised();
  expect((await clinic.sign(entry)).status).toBe(201);
  expect((await clinic.sign(entry)).status).toBe(200);
  const listed = await list();
  expect(listed.notices).toEqual(['SIMULATED']);
  expect(listed.exercises).toEqual([
    {
      id: entry.id,
      agent: clinic.agent,
      measuredAt: entry.measuredAt.at,
      scenario: 'quiet-morning',
      title: null,
      seed: 7,
      seconds: CONTENT.seconds,
      systolic: CONTENT.entered.systolic,
      diastolic: CONTENT.entered.diastolic,
      pulsePerMinute: CONTENT.entered.pulsePerMinute,
      apexPerMinute: null,
      breathsPerMinute: CONTENT.entered.breathsPerMinute,
      temperatureC: null,
      wasShown: false,
    },
  ]);
  const kept = (await clinic.send('GET', `/api/exercises/${entry.id}`)).body;
  expect(kept.notices).toEqual(['SIMULATED']);
  expect(debrief(kept.entry.content).ledger).toEqual(debrief(shown).ledger);
});

test('a long list comes in pages, each where the one before ended', async () => {
  const made = [practised(), practised(), practised(), practised(), practised()];
  for (const entry of made) await clinic.sign(entry);
  const site = (await readSite(clinic.db))?.id ?? '';
  const ids: string[] = [];
  const pages: boolean[] = [];
  let before: string | undefined;
  while (pages.at(-1) !== true) {
    const listed = await listExercises(clinic.db, site, null, before, 2);
    ids.push(...(listed?.exercises ?? []).map(({ id }) => id));
    before = listed?.next ?? undefined;
    pages.push(before === undefined);
  }
  expect(pages).toEqual([false, false, true]);
  expect(ids).toEqual(made.map(({ id }) => id).toReversed());
  const asked = await clinic.send('GET', `/api/exercises?before=${made[1]?.id}`);
  expect(asked.body).toMatchObject({ next: null, exercises: [{ id: made[0]?.id }] });
  const nobodys = await clinic.send('GET', `/api/exercises?before=${clinic.agent}`);
  expect(nobodys.status).toBe(404);
});

test('no chart, no list of people and no export of a person has anything of it', async () => {
  const person = await clinic.addPerson();
  const entry = practised();
  await clinic.sign(entry);
  const chart = await clinic.send('GET', `/api/books/care/persons/${person}`);
  const people = await clinic.send('GET', '/api/books/simulated/persons');
  const file = await clinic.send('GET', `/api/books/care/persons/${person}/export?as=csv`);
  expect(JSON.stringify(chart.body)).not.toContain(entry.id);
  expect(people.body.persons).toEqual([]);
  expect(file.text).not.toContain(entry.id);
  const charted = await clinic.sign(practised({ book: 'care', person }));
  expect(charted.status).toBe(422);
  expect((await list()).exercises).toHaveLength(1);
});

test('a learner keeps and sees their own; whoever supervises sees everybody’s', async () => {
  const phrase = 'a lamp beside the green door';
  const agents: Record<string, string> = {};
  const entries: Record<string, string> = {};
  const signIn = async (name: string, passPhrase: string) => {
    clinic.cookie = null;
    await clinic.send('POST', '/api/sign-in', { signIn: name, passPhrase });
  };
  for (const [name, roles] of [
    ['mara', ['owner', 'supervisor']],
    ['sol', ['learner']],
    ['tove', ['learner']],
  ] as const) {
    const { body, sent } = await clinic.addAccount(name, roles);
    agents[name] = body.agent.id;
    await signIn(name, sent.passPhrase);
    await clinic.send('PUT', '/api/sign-in/pass-phrase', { old: sent.passPhrase, passPhrase: phrase });
  }
  for (const name of ['sol', 'tove']) {
    await signIn(name, phrase);
    const entry = practised({ agent: agents[name] });
    entries[name] = entry.id;
    expect((await clinic.sign(entry)).status).toBe(201);
    expect((await list()).exercises.map(({ id }: { id: string }) => id)).toEqual([entry.id]);
  }
  expect((await clinic.sign(practised({ agent: agents.sol }))).status).toBe(403);
  // Whoever may not keep it is told so before anything of it is played.
  expect((await clinic.sign({ ...practised({ agent: agents.sol }), content: IMPOSSIBLE })).status).toBe(403);
  clinic.cookie = null;
  expect((await clinic.sign({ ...practised(), content: IMPOSSIBLE })).status).toBe(401);
  await signIn('tove', phrase);
  expect((await clinic.send('GET', `/api/exercises/${entries.sol}`)).status).toBe(404);
  await signIn('mara', phrase);
  expect((await list()).exercises).toHaveLength(2);
  expect((await clinic.send('GET', `/api/exercises/${entries.sol}`)).status).toBe(200);
});

test('a visit that no hand can have made is refused at its movement, and nothing of it is kept', async () => {
  const sent = await clinic.sign({ ...practised(), content: IMPOSSIBLE });
  expect(sent.status).toBe(422);
  expect(sent.body.problems).toMatchObject([
    { field: `/entries/0/content/actions/${up + 1}/kind`, code: 'impossible' },
  ]);
  expect((await list()).exercises).toEqual([]);
});

test('others are answered while many exercises are played', async () => {
  const read = readEntry({ ...practised(), content: IMPOSSIBLE });
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  let turns = 0;
  const others = setInterval(() => {
    turns += 1;
  }, 0);
  const many = 5;
  const found = await impossibleIn(Array.from({ length: many }, () => ({ entry: read.value })));
  clearInterval(others);
  expect(found.map(({ field }) => field)).toEqual(
    Array.from({ length: many }, (_, at) => `/entries/${at}/content/actions/${up + 1}/kind`),
  );
  expect(turns).toBeGreaterThan(1);
});
