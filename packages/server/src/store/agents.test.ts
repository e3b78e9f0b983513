import { NO_ROUND_FACTS } from '@evenfall/clinical';
import {
  chartRound,
  type EntryFrame,
  NOTHING_CHOSEN,
  PROGRAM,
  type RoundEvidence,
  readEntry,
} from '@evenfall/record';
import { v7 } from 'uuid';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';
import { listAgentsHere } from './agents.js';

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

const EVIDENCE: RoundEvidence = {
  exceptions: [],
  features: null,
  unwell: null,
  facts: { ...NO_ROUND_FACTS, arms: [] },
};

/** A pulse and the signing of its round, by somebody. */
async function signs(agent: string, status: 'preliminary' | 'final'): Promise<EntryFrame> {
  const id = v7();
  const pulse = clinic.pulse(person, 19, 15, { round: id, agent });
  const read = readEntry(pulse);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const signed = {
    ...{ status, note: null, evidence: EVIDENCE },
    signs: [{ sign: 'pulse' as const, entries: [pulse.id] }],
  };
  const content = chartRound(signed, [read.value], NOTHING_CHOSEN, PROGRAM);
  const signing = clinic.frame('round', person, content, { round: id, schema: 4, agent });
  expect((await clinic.sign(pulse, signing)).status).toBe(201);
  return signing;
}

async function isLearning(agent: string): Promise<unknown> {
  const { agents } = (await clinic.send('GET', '/api/agents')).body;
  return agents.find(({ id }: { id: string }) => id === agent).isLearning;
}

// Docs/conventions.md: a learner's round is preliminary until it is countersigned; who is one is common practice, no source.
test('whoever signed as a learner last is known as one on every device, until they sign otherwise', async () => {
  expect(await isLearning(clinic.agent)).toBe(false);
  const signing = await signs(clinic.agent, 'preliminary');
  expect(await isLearning(clinic.agent)).toBe(true);
  // What is amended is nothing that was signed anew.
  const note = { ...signing.content, note: 'x' };
  const amended = clinic.frame('round', person, note, { ...clinic.amending(signing), schema: 4 });
  expect((await clinic.sign(amended)).status).toBe(201);
  await signs(clinic.agent, 'final');
  expect(await isLearning(clinic.agent)).toBe(false);
});

test('of somebody with an account it is what the account says', async () => {
  const { sent: learner } = await clinic.addAccount('kit', ['learner', 'owner']);
  const { sent: clinician } = await clinic.addAccount('wren', ['clinician', 'learner']);
  const { id: site } = await clinic.db.selectFrom('site').select('id').executeTakeFirstOrThrow();
  const agents = await listAgentsHere(clinic.db, site);
  expect(agents).toContainEqual({ ...learner.agent, isLearning: true });
  expect(agents).toContainEqual({ ...clinician.agent, isLearning: false });
});
