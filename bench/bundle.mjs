// A chart of 1,000 rounds (pulse, breaths, a pressure, the signing) as a FHIR bundle, made and written, and read again:
// each against JSON.stringify or JSON.parse of the same entries, in one run. The bundle says every value twice, once in
// the open standard and once as the record keeps it, so its size is shown as a ratio too.
import {
  NO_ROUND_FACTS,
  parseCount,
  parseRun,
  UNKNOWN_CIRCUMSTANCES,
  UNKNOWN_RUN_CIRCUMSTANCES,
} from '../packages/clinical/dist/index.js';
import { chartBundle, readBundle } from '../packages/exchange/dist/index.js';
import {
  chartCount,
  chartRound,
  chartRun,
  KINDS,
  NOTHING_CHOSEN,
  projectChart,
} from '../packages/record/dist/index.js';
import { wordsFor } from '../packages/words/dist/index.js';
import { median } from './measure.mjs';

const ROUNDS = 1_000;
const TIMES = 7;
const PROGRAM = 'evenfall bench';
let number = 0;
const nextId = () => `01950000-0000-7000-8000-${(number++).toString(16).padStart(12, '0')}`;
const [person, agent, device] = [nextId(), nextId(), nextId()];
const must = (read) => {
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return read.value;
};

const asKept = [];
for (let at = 0; at < ROUNDS; at += 1) {
  const round = nextId();
  const time = new Date(Date.UTC(2026, 0, 1) + at * 6 * 3_600_000).toISOString();
  const frame = (kind, content) => ({
    frame: 1,
    id: nextId(),
    book: 'care',
    kind,
    schema: KINDS[kind].newest,
    person,
    round,
    session: null,
    agent,
    role: 'observer',
    device,
    sequence: number,
    measuredAt: { at: time, zone: 'UTC', asEntered: null },
    writtenAt: time,
    amends: null,
    content,
  });
  const around = { circumstances: UNKNOWN_CIRCUMSTANCES, override: null, note: null };
  const counted = (n, windowSeconds, of) =>
    frame(
      'count',
      chartCount({ count: must(parseCount({ n, windowSeconds, of })), ...around }, NOTHING_CHOSEN, PROGRAM),
    );
  const moments = [
    { what: 'first sound', mmHg: 120 + (at % 30) * 2 },
    { what: 'last sound', mmHg: 70 + (at % 10) * 2 },
  ];
  const place = { site: 'upper-arm', side: 'right', posture: 'sit', cuff: null, armCm: 30, override: null };
  const heard = {
    run: must(parseRun({ method: 'auscultation', moments })),
    place,
    gauge: null,
    circumstances: { ...UNKNOWN_RUN_CIRCUMSTANCES, uprightMinutes: null },
    override: null,
    note: null,
  };
  const values = [
    counted(30 + (at % 20), 30, 'pulse'),
    counted(14 + (at % 5), 60, 'breaths'),
    frame('run', chartRun(heard, NOTHING_CHOSEN, PROGRAM)),
  ];
  const signs = ['pulse', 'breaths', 'pressure'].map((sign, place) => ({
    sign,
    entries: [values[place].id],
  }));
  const evidence = { exceptions: null, features: null, unwell: null, facts: { ...NO_ROUND_FACTS, arms: [] } };
  const signed = { status: 'final', signs, note: null, evidence };
  const signing = frame('round', chartRound(signed, values, NOTHING_CHOSEN, PROGRAM));
  for (const one of [...values, signing]) asKept.push({ frame: one, recordedAt: time });
}
const entries = asKept.map(({ frame, recordedAt }) => ({ ...frame, recordedAt }));
const chart = projectChart(entries);
const of = {
  book: 'care',
  invented: true,
  person,
  identity: null,
  classIdentity: null,
  chart,
  agents: [{ id: agent, name: 'Wren (invented)' }],
  entries,
  asKept,
  gauges: [],
  protocols: [],
  madeAt: '2026-11-25T12:00:00Z',
  words: wordsFor('en'),
  isSnomed: true,
};

const written = JSON.stringify(chartBundle(of));
const plain = JSON.stringify(entries);
const read = readBundle(JSON.parse(written));
if (!read.ok || read.value.own.length !== entries.length)
  throw new Error('the bundle does not hold every entry');

function milliseconds(work) {
  work();
  return median(
    Array.from({ length: TIMES }, () => {
      const begun = performance.now();
      work();
      return performance.now() - begun;
    }),
  );
}

const stringify = milliseconds(() => JSON.stringify(entries));
const parse = milliseconds(() => JSON.parse(plain));
const make = milliseconds(() => JSON.stringify(chartBundle(of)));
const take = milliseconds(() => readBundle(JSON.parse(written)));
const line = (what, ms, peer, name) =>
  console.log(
    `${what}: ${ms.toFixed(0)} ms, ${(ms / peer).toFixed(1)} times ${name} (${peer.toFixed(1)} ms)`,
  );
console.log(`${ROUNDS} rounds, ${entries.length} entries`);
line('made and written', make, stringify, 'JSON.stringify of the entries');
line('read', take, parse, 'JSON.parse of the entries');
console.log(
  `${(written.length / 1e6).toFixed(1)} MB, ${(written.length / plain.length).toFixed(1)} times the entries alone`,
);
