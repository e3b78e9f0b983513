// Sends bent entries and bodies to the API: it must answer each with a refusal or keep it whole, never fail.
// node packages/server/prove/fuzz.mjs [requests] [seed]
import { openMemory } from '../dist/database/testing.js';
import { HESTER, TestClinic } from '../dist/testing/clinic.js';
import { chanceFrom } from './chance.mjs';

const requests = Number(process.argv[2] ?? 20_000);
const seed = Number(process.argv[3] ?? 1);
const chance = chanceFrom(seed);
const pick = (list) => list[Math.floor(chance() * list.length)];

const ODD = [
  null,
  '',
  ' ',
  0,
  -0,
  -1,
  1.5,
  1e308,
  -1e308,
  9007199254740992,
  true,
  false,
  [],
  {},
  [[]],
  'NaN',
  '0x10',
  '1e9',
  '９',
  '\u0000',
  '\ud800',
  'x'.repeat(3000),
  '../../etc/passwd',
  "'; drop table entry; --",
  '<script>alert(1)</script>',
  '__proto__',
  'constructor',
  '2026-02-30T25:61:61Z',
  '9999-12-31T23:59:59.999+14:00',
  '01950000-0000-7000-8000-000000000000',
];
const ALLOWED = new Set([200, 201, 400, 404, 409, 413, 415, 422]);

const database = await openMemory();
const clinic = await TestClinic.open(database);
const people = [await clinic.addPerson(), await clinic.addPerson(HESTER, 'simulated')];
const kept = [];
const statuses = {};
const lines = [];
let failed = 0;

for (let at = 0; at < requests; at += 1) {
  const person = pick(people);
  const whole =
    chance() < 0.5
      ? clinic.pulse(person, 10 + Math.floor(chance() * 30), pick([15, 30, 60]))
      : tapped(person);
  if (kept.length > 0 && chance() < 0.2) Object.assign(whole, clinic.amending(pick(kept)));
  const bends = Math.floor(chance() * 4);
  const body = { entries: [structuredClone(whole)] };
  for (let bend = 0; bend < bends; bend += 1) bendOne(body);
  const text = chance() < 0.05 ? cut(JSON.stringify(body)) : JSON.stringify(body);
  const came = await clinic.send('POST', '/api/entries', text);
  statuses[came.status] = (statuses[came.status] ?? 0) + 1;
  if (came.status === 201 && kept.length < 200) kept.push(whole);
  const isSane =
    ALLOWED.has(came.status) &&
    (came.status < 400 || came.headers.get('content-type') === 'application/problem+json');
  if (!isSane || clinic.faults.length > 0) {
    failed += 1;
    if (failed < 6)
      lines.push(`request ${at}: ${came.status} ${clinic.faults.splice(0)[0] ?? ''} ${text.slice(0, 300)}`);
    clinic.faults.length = 0;
  }
}

// Whatever was kept must be readable, charted and what its evidence gives.
const check = (await clinic.send('GET', '/control/check')).body;
const charts = await Promise.all(
  people.map((id, index) => clinic.chart(id, index === 0 ? 'care' : 'simulated')),
);
const listed = await clinic.send('GET', '/api/books/care/persons');
const foreign = check.findings.filter(({ state }) => state !== 'unknown-rule');
if (foreign.length > 0 || charts.some(({ status }) => status !== 200) || listed.status !== 200) {
  failed += 1;
  lines.push(`after: ${JSON.stringify(foreign[0])} ${charts.map(({ status }) => status)} ${listed.status}`);
}
await database.close();
lines.push(
  `bent requests, ${requests} (seed ${seed}): ${Object.entries(statuses)
    .map(([status, times]) => `${times} answered ${status}`)
    .join(', ')}; ${failed} failed; ${check.entries} entries kept and all of them readable`,
);
console.log(JSON.stringify({ name: 'bent requests', passed: requests - failed, failed, lines }));
process.exit(failed === 0 ? 0 : 1);

function tapped(person) {
  let time = 0;
  return clinic.taps(
    person,
    Array.from({ length: 3 + Math.floor(chance() * 20) }, () => {
      time += 0.5 + chance();
      return Math.round(time * 1000) / 1000;
    }),
  );
}

/** Changes, removes, repeats or adds one value somewhere. */
function bendOne(root) {
  const places = [];
  const walk = (value) => {
    if (typeof value !== 'object' || value === null) return;
    for (const key of Object.keys(value)) {
      places.push([value, key]);
      walk(value[key]);
    }
  };
  walk(root);
  if (places.length === 0) return;
  const [holder, key] = pick(places);
  const way = chance();
  if (way < 0.2) delete holder[key];
  else if (way < 0.3) holder[pick(['extra', '__proto__x', '', 'a/b~c'])] = pick(ODD);
  else if (way < 0.4 && Array.isArray(holder)) holder.push(structuredClone(holder[key]));
  else if (way < 0.5 && typeof holder[key] === 'number') holder[key] *= pick([-1, 0, 1.0000001, 10, 1e6]);
  else holder[key] = structuredClone(pick(ODD));
}

function cut(text) {
  const from = Math.floor(chance() * text.length);
  return text.slice(0, from) + (chance() < 0.5 ? '' : text.slice(from + 1 + Math.floor(chance() * 5)));
}
