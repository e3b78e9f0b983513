import { SCENARIOS } from '@evenfall/physiology';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';

// Source: docs/conventions.md section 9 (books never mix; an entry never changes).
let database: TestDatabase;
let clinic: TestClinic;
beforeEach(async () => {
  database = await openMemory();
  clinic = await TestClinic.open(database);
}, 60_000);
afterEach(async () => {
  await database.close();
});

const OWN = { ...SCENARIOS[0], id: 'own-one', title: 'One of ours (invented)' };
const made = (scenario: object = OWN, more: object = {}, isRetired = false) =>
  clinic.frame('scenario', null, { scenario, isRetired }, { book: 'simulated', round: null, ...more });
const placesOf = ({ body }: { body: { problems: { field: string }[] } }) =>
  body.problems.map(({ field }) => field);
const list = async () => (await clinic.send('GET', '/api/scenarios')).body;

test('a scenario is kept, listed, made anew by another entry and taken off the list by one', async () => {
  expect((await clinic.sign(made())).status).toBe(201);
  const listed = await list();
  expect(listed.notices).toEqual(['SIMULATED']);
  expect(listed.scenarios.map((one: { content: object }) => one.content)).toEqual([
    { scenario: OWN, isRetired: false },
  ]);
  await clinic.sign(made({ ...OWN, systolic: 140 }));
  await clinic.sign(made({ ...OWN, id: 'another', title: 'Another (invented)' }));
  const after = (await list()).scenarios.map(
    (one: { content: { scenario: { id: string; systolic: number } } }) => one.content.scenario,
  );
  expect(after.map(({ id, systolic }: { id: string; systolic: number }) => [id, systolic])).toEqual([
    ['another', OWN.systolic],
    ['own-one', 140],
  ]);
  await clinic.sign(made({ ...OWN, systolic: 140 }, {}, true));
  expect((await list()).scenarios.length).toBe(1);
});

test('one without a name, under a built-in id, or that no simulated person can be is refused by its field', async () => {
  const refused = async (scenario: object, more: object = {}) =>
    placesOf(await clinic.sign(made(scenario, more)));
  expect(await refused({ ...OWN, title: null })).toEqual(['/entries/0/content/scenario/title']);
  expect(await refused({ ...OWN, title: ' ' })).toEqual(['/entries/0/content/scenario/title']);
  expect(await refused({ ...OWN, id: 'quiet-morning' })).toEqual(['/entries/0/content/scenario/id']);
  expect(await refused({ ...OWN, diastolic: 109 })).toEqual(['/entries/0/content/scenario/diastolic']);
  expect((await clinic.sign(made({ ...OWN, diastolic: 108 }))).status).toBe(201);
  expect(await refused(OWN, { book: 'care' })).toEqual(['/entries/0/book']);
});
