// Signed values per second through the whole API, against bare inserts of the same rows into the same database.
import { performance } from 'node:perf_hooks';
import { v7 } from 'uuid';
import { parseCount, UNKNOWN_CIRCUMSTANCES } from '../packages/clinical/dist/index.js';
import { chartCount, KINDS, NOTHING_CHOSEN, PROGRAM } from '../packages/record/dist/index.js';
import { freshFolder, startServer } from '../packages/server/prove/serverUnderTest.mjs';
import { openEmbeddedIn } from './embedded.mjs';
import { median } from './measure.mjs';

const WRITERS = 8;
const WRITES = 1500;
const ROUNDS = 3;
const [agent, device, person] = [v7(), v7(), v7()];
let sequence = 0;

const { folder, remove } = freshFolder();
const api = [];
const bare = [];
for (let round = 0; round < ROUNDS; round += 1) {
  const server = await startServer(folder);
  if (round === 0) await makeClinic(server.address);
  api.push(
    await perSecond(async () => {
      const status = await post(server.address, '/api/entries', { entries: [counted()] });
      if (status !== 201) throw new Error(`answered ${status}`);
    }),
  );
  await server.stop();

  const { pool, close } = await openEmbeddedIn(folder);
  const { rows } = await pool.query('select id from site');
  const insert = `insert into entry (site, book, id, kind, schema, person, agent, role, device, sequence,
    measured_at, measured_text, zone, written_at, written_text, content, sha256) values ($1,'care',$2,'count',1,$3,$4,'observer',$5,$6,$7,$8,'UTC',$7,$8,$9,'-')`;
  bare.push(
    await perSecond(async () => {
      const { id, measuredAt, content } = counted();
      await pool.query(insert, [
        rows[0].id,
        id,
        person,
        agent,
        device,
        sequence,
        measuredAt.at,
        measuredAt.at,
        JSON.stringify(content),
      ]);
    }),
  );
  await close();
}
remove();

const ratio = median(api.map((rate, round) => rate / bare[round]));
console.log(
  `values signed through the API: ${median(api).toFixed(0)} a second (${WRITERS} writers, each value its own request, fsync on)`,
);
console.log(`bare inserts of the same rows: ${median(bare).toFixed(0)} a second; ratio ${ratio.toFixed(2)}`);

async function perSecond(write) {
  let left = WRITES;
  const began = performance.now();
  await Promise.all(
    Array.from({ length: WRITERS }, async () => {
      while (left > 0) {
        left -= 1;
        await write();
      }
    }),
  );
  return WRITES / ((performance.now() - began) / 1000);
}

function frame(kind, content) {
  sequence += 1;
  const measuredAt = { at: new Date().toISOString(), zone: 'UTC', asEntered: null };
  const empty = { session: null, amends: null, writtenAt: measuredAt.at };
  return {
    id: v7(),
    book: 'care',
    kind,
    schema: kind === 'person' ? 1 : KINDS[kind].newest,
    person,
    round: kind === 'person' ? null : v7(),
    agent,
    role: 'observer',
    device,
    sequence,
    measuredAt,
    ...empty,
    content,
  };
}

function counted() {
  const count = parseCount({ n: 10 + (sequence % 20), windowSeconds: 15 }).value;
  return frame(
    'count',
    chartCount(
      { count, circumstances: UNKNOWN_CIRCUMSTANCES, override: null, note: null },
      NOTHING_CHOSEN,
      PROGRAM,
    ),
  );
}

async function post(address, path, body) {
  const headers = { 'content-type': 'application/json' };
  const response = await fetch(address + path, { method: 'POST', headers, body: JSON.stringify(body) });
  await response.arrayBuffer();
  return response.status;
}

async function makeClinic(address) {
  await post(address, '/api/agents', { id: agent, name: 'Bench (invented)' });
  const identity = { name: 'Bench Invented', birthDate: null, number: 'INV-BENCH' };
  await post(address, '/api/books/care/persons', {
    identity,
    entry: frame('person', { identifiers: ['name', 'number'] }),
  });
}
