// Kills a server in the middle of a stream of writes, again and again, and counts what was acknowledged and lost.
// node packages/server/prove/kill.mjs [rounds] [seed]
import { performance } from 'node:perf_hooks';
import { setTimeout as wait } from 'node:timers/promises';
import { parseCount, UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
import { chartCount, KINDS, NOTHING_CHOSEN, PROGRAM } from '@evenfall/record';
import { v7 } from 'uuid';
import { chanceFrom } from './chance.mjs';
import { freshFolder, processTree, startServer } from './serverUnderTest.mjs';

const rounds = Number(process.argv[2] ?? 50);
const seed = Number(process.argv[3] ?? 1);
const WRITERS = 4;

let passed = 0;
let failed = 0;
const lines = [];

for (const way of ['the whole process tree', 'Node alone']) {
  const chance = chanceFrom(seed);
  const { folder, remove } = freshFolder();
  const acknowledged = new Set();
  let [lost, restarts, slowest] = [0, 0, 0];
  const clinic = { agent: v7(), device: v7(), person: v7(), sequence: 0 };
  for (let round = 0; round < rounds; round += 1) {
    try {
      const began = performance.now();
      const server = await startServer(folder);
      slowest = Math.max(slowest, performance.now() - began);
      restarts += 1;
      if (round === 0) await makeClinic(server.address, clinic);
      lost += await missing(server.address, clinic, acknowledged);
      const writing = write(server.address, clinic, acknowledged, chance).then(
        () => null,
        (error) => error,
      );
      await wait(80 + chance() * 700);
      const victims = way === 'Node alone' ? [server.child.pid] : processTree(server.child.pid);
      for (const pid of victims) {
        try {
          process.kill(pid, 'SIGKILL');
        } catch {
          // it ended by itself meanwhile
        }
      }
      await server.ended;
      const wrong = await writing;
      if (wrong !== null) throw wrong;
      passed += 1;
    } catch (error) {
      failed += 1;
      lines.push(`${way}, round ${round + 1}: ${error instanceof Error ? error.message : error}`);
    }
  }
  const last = await startServer(folder);
  lost += await missing(last.address, clinic, acknowledged);
  await last.stop();
  remove();
  if (lost > 0) failed += 1;
  if (acknowledged.size === 0) {
    failed += 1;
    lines.push(`${way}: nothing was acknowledged, so that nothing could be lost`);
  }
  lines.push(
    `kill -9 of ${way}, ${rounds} times: ${acknowledged.size} entries acknowledged, ${lost} lost, ` +
      `${restarts} of ${rounds} starts needed no hand (slowest ${(slowest / 1000).toFixed(1)} s)`,
  );
}

console.log(JSON.stringify({ name: 'kill -9 during writes', passed, failed, lines }));
process.exit(failed === 0 ? 0 : 1);

async function post(address, path, body) {
  const response = await fetch(address + path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });
  await response.arrayBuffer();
  return response.status;
}

function frame(clinic, kind, content, more = {}) {
  clinic.sequence += 1;
  return {
    id: v7(),
    book: 'care',
    kind,
    schema: kind === 'person' ? 1 : KINDS[kind].newest,
    person: clinic.person,
    round: kind === 'person' ? null : v7(),
    session: null,
    agent: clinic.agent,
    role: 'observer',
    device: clinic.device,
    sequence: clinic.sequence,
    measuredAt: { at: new Date().toISOString(), zone: 'UTC', asEntered: null },
    writtenAt: new Date().toISOString(),
    amends: null,
    content,
    ...more,
  };
}

async function makeClinic(address, clinic) {
  const identity = { name: 'Prove Invented', birthDate: null, number: 'INV-PROVE' };
  const agent = await post(address, '/api/agents', { id: clinic.agent, name: 'Prover (invented)' });
  const entry = frame(clinic, 'person', { identifiers: ['name', 'number'] });
  const person = await post(address, '/api/books/care/persons', { identity, entry });
  if (agent !== 201 || person !== 201) throw new Error(`no clinic: ${agent} ${person}`);
}

/** Writes as fast as the server takes it, on several connections, until it is gone. */
async function write(address, clinic, acknowledged, chance) {
  await Promise.all(
    Array.from({ length: WRITERS }, async () => {
      for (;;) {
        const count = parseCount({ n: 10 + Math.floor(chance() * 20), windowSeconds: 15 });
        const done = { count: count.value, circumstances: UNKNOWN_CIRCUMSTANCES, override: null, note: null };
        const entry = frame(clinic, 'count', chartCount(done, NOTHING_CHOSEN, PROGRAM));
        let status;
        try {
          status = await post(address, '/api/entries', { entries: [entry] });
        } catch {
          return; // the server is gone; this entry was not acknowledged
        }
        if (status === 422) throw new Error('an entry that is right was refused');
        if (status === 201) acknowledged.add(entry.id);
      }
    }),
  );
}

/** How many acknowledged entries the record does not hold. */
async function missing(address, clinic, acknowledged) {
  const response = await fetch(`${address}/api/books/care/persons/${clinic.person}`);
  if (response.status !== 200) return acknowledged.size;
  const { entries } = await response.json();
  const kept = new Set(entries.map(({ id }) => id));
  return [...acknowledged].filter((id) => !kept.has(id)).length;
}
