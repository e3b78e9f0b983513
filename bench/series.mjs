// Recordings over 24 hours (70 readings each) analysed a second, and rows of CSV read a second, each as a ratio against
// the same statistics written for DuckDB and for a JavaScript data-frame package, in one run; then the growth from 1,000
// to 100,000 recordings. What all work out must be the same numbers, or nothing is raced.
//
// DuckDB works out every number of an answer but the highest and the lowest minute of each curve, and the peak in degrees beside the
// one in hours. It looks for no reading that is there twice, takes the hours of the night as given, and says nothing of why and which;
// its query is prepared once. The data frame works out the plainer quarter (series/recordingFrame.mjs). Ours is one thread; DuckDB
// takes every core, and is asked again with one thread. What is read is read as the command reads it: from a file, by its bytes.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, linkSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { ambulatoryResult, ambulatoryRules, presetProtocol } from '../packages/clinical/dist/index.js';
import { NOTHING_SAID, readSeries } from '../packages/exchange/dist/index.js';
import { root } from '../tools/ensure.mjs';
import { HEADING, inventedRecordings } from './series/inventedRecordings.mjs';
import { peers } from './series/peers.mjs';
import { columnsOf } from './series/recordingColumns.mjs';
import { FRAME_COLUMNS, framed, readingsFrame } from './series/recordingFrame.mjs';
import { recordingSql } from './series/recordingSql.mjs';

const RECORDINGS = 2_000;
const READINGS = 70;
/** Runs of each, in turns, so that what else the machine does meets all alike; the fastest of each counts. */
const TURNS = 9;
/** From so many recordings on the command takes several threads by itself. */
const FROM_THREADS = 4_000;
/** Times the faster peer that ours is to be. Source: aim of this project. */
const AIM = 3;

const { DuckDBInstance, aq } = await peers();
const rules = {
  ...ambulatoryRules(presetProtocol({ ambulatory: 'ish-2020' }).value),
  reportsStiffness: true,
};
const known = {
  ageYears: null,
  isPregnant: false,
  scheduled: null,
  isAllUsed: false,
  dayNight: { by: 'asleep-range', asleep: { from: 1380, to: 420 } },
  rejected: new Set(),
  restored: new Set(),
};
const read = (given) => readSeries(given, { ...NOTHING_SAID, kind: 'ambulatory' });
const recordings = inventedRecordings(RECORDINGS, READINGS, 24);
const series = recordings.map((rows) => read([HEADING, ...rows].join('\n')).readings);

const folder = mkdtempSync(join(tmpdir(), 'evenfall-bench-'));
const bulk = join(folder, 'bulk.csv');
writeFileSync(bulk, [HEADING, ...recordings.flat()].join('\n'));
const all = join(folder, 'all.csv');
writeFileSync(all, [`recording,${HEADING}`, ...recordings.flatMap((rows, k) => rows.map((row) => `${k},${row}`))].join('\n')); // biome-ignore format: one thought

const db = await (await DuckDBInstance.create(':memory:')).connect();
await db.run(
  `create table r as select recording, epoch(time)/3600.0 h, (epoch(time)::bigint % 86400)//60 as "minute", systolic::double systolic, diastolic::double diastolic, pulse::double pulse from read_csv('${all}')`,
);
const query = await db.prepare(recordingSql());
const inDuckDb = () => query.runAndReadAll();
const inOneThread = withOneThread(inDuckDb);
const frame = readingsFrame(aq, series);
const inFrame = () => framed(frame);
const answered = (readings) => ambulatoryResult(readings, known, rules);
/** As the command does it: an answer is done with before the next is worked out. */
const inOurs = () => {
  for (const readings of series) answered(readings);
};

const expected = series.map((readings) => columnsOf(answered(readings)));
const names = Object.keys(expected[0]);
same('DuckDB', names, columnar(await inDuckDb()));
const table = inFrame();
same('arquero', FRAME_COLUMNS, (name) => Array.from({ length: RECORDINGS }, (_, k) => table.get(name, k)));
console.log(
  `the same in both: ${names.length} numbers a recording with DuckDB, ${FRAME_COLUMNS.length} with arquero`,
);

await race('analysed', 'recordings', RECORDINGS, {
  'ours, one thread': inOurs,
  [`DuckDB, ${availableParallelism()} threads`]: inDuckDb,
  'DuckDB, one thread': inOneThread,
  'arquero, one thread': inFrame,
});
const intoDuckDb = (file) => db.run(`create or replace table bulk as select * from read_csv('${file}')`);
await race('one large file', 'rows', RECORDINGS * READINGS, {
  'ours, one thread': () => read(readFileSync(bulk)),
  [`DuckDB, ${availableParallelism()} threads`]: () => intoDuckDb(bulk),
  'DuckDB, one thread': withOneThread(() => intoDuckDb(bulk)),
  'arquero, one thread': () => aq.fromCSV(readFileSync(bulk, 'utf8')),
});

const small = join(folder, 'small');
const files = recordingFiles(small, 200);
await race('a file for each recording', 'rows', files.length * READINGS, {
  'ours, one thread': () => files.map((name) => read(readFileSync(name))),
  [`DuckDB, ${availableParallelism()} threads, all in one query`]: () => intoDuckDb(join(small, '*.csv')),
  'arquero, one thread': () => files.map((name) => aq.fromCSV(readFileSync(name, 'utf8'))),
});
const opening = await fastest({ opened: () => files.map((name) => readFileSync(name)) });
console.log(
  `  to open and read the files alone takes ${(opening.opened / files.length).toFixed(3)} ms each: nobody can be faster than that`,
);

// The command on a folder, from files to answers as JSON: time and memory by number of recordings. Past the first 2,000 the files
// are the same ones under other names.
const grown = join(folder, 'grown');
let there = 0;
for (const count of [1_000, 10_000, 100_000]) {
  recordingFiles(grown, count, there);
  there = count;
  const { ms, mostMB } = await commandOn(grown, 1);
  console.log(
    `${count} recordings by the command, one thread: ${(ms / count).toFixed(3)} ms each, at most ${Math.round(mostMB)} MB of memory`,
  );
  if (count < FROM_THREADS) continue;
  const threads = availableParallelism();
  const many = await commandOn(grown, threads);
  console.log(
    `  ${threads} threads: ${(many.ms / count).toFixed(3)} ms each, ${(ms / many.ms).toFixed(2)} times as fast as one, at most ${Math.round(many.mostMB)} MB of memory`,
  );
}
rmSync(folder, { recursive: true });
process.exit(0);

/** Files of recordings in a folder that has some already; their names. */
function recordingFiles(into, count, from = 0) {
  mkdirSync(into, { recursive: true });
  return Array.from({ length: count - from }, (_, k) => {
    const name = join(into, `${String(from + k).padStart(6, '0')}.csv`);
    if (from + k < RECORDINGS) writeFileSync(name, [HEADING, ...recordings[from + k]].join('\n'));
    else linkSync(join(into, `${String((from + k) % RECORDINGS).padStart(6, '0')}.csv`), name);
    return name;
  });
}

/** How long the command takes for a folder, its start with it, and the most memory that it had. Memory where the machine has /proc. */
async function commandOn(of, workers) {
  const began = performance.now();
  const bin = join(root, 'packages', 'cli', 'bin', 'evenfall.js');
  const child = spawn(process.execPath, [bin, 'ambulatory', of, '--rules', 'ish-2020', '--json', '--workers', String(workers)], { stdio: ['ignore', 'pipe', 'inherit'] }); // biome-ignore format: one thought
  let mostKB = Number.NaN;
  let bytes = 0;
  const look = () => {
    const status = `/proc/${child.pid}/status`;
    const found = existsSync(status) ? /VmHWM:\s+(\d+)/.exec(readFileSync(status, 'utf8')) : null;
    if (found !== null) mostKB = Number(found[1]);
  };
  child.stdout.on('data', (part) => {
    // Every few megabytes is often enough.
    if (Math.floor(bytes / 4e6) !== Math.floor((bytes + part.length) / 4e6)) look();
    bytes += part.length;
  });
  const [status] = await once(child, 'close');
  if (status !== 0) throw new Error(`the command ended with ${status}`);
  return { ms: performance.now() - began, mostMB: mostKB / 1000 };
}

/** The same query with the whole of DuckDB on one thread. */
function withOneThread(work) {
  const wrapped = async () => {
    await db.run('set threads = 1');
    const began = performance.now();
    await work();
    const ms = performance.now() - began;
    await db.run('reset threads');
    return ms;
  };
  return wrapped;
}

/** The columns of an answer of DuckDB by name. */
function columnar(answer) {
  const found = answer.columnNames();
  const values = answer.getColumns();
  return (name) => values[found.indexOf(name)].map((one) => (one === null ? null : Number(one)));
}

/** The same numbers, or the race means nothing: each within a millionth of its size, or of 1. */
function same(peer, columns, of) {
  for (const name of columns) {
    for (const [k, value] of of(name).entries()) {
      const ours = expected[k][name];
      if (value === null && ours === null) continue;
      if (!(Math.abs(value - ours) <= 1e-6 * Math.max(1, Math.abs(ours))))
        throw new Error(`${peer}, recording ${k}, ${name}: ${value}, ours ${ours}`);
    }
  }
}

/** The fastest of several runs of each, in turns, ms; a run that says how long it took is believed. */
async function fastest(contestants) {
  const best = Object.fromEntries(Object.keys(contestants).map((name) => [name, Number.POSITIVE_INFINITY]));
  for (let turn = 0; turn <= TURNS; turn++) {
    for (const [name, work] of Object.entries(contestants)) {
      const began = performance.now();
      const said = await work();
      const ms = typeof said === 'number' ? said : performance.now() - began;
      // The first turn warms up.
      if (turn > 0) best[name] = Math.min(best[name], ms);
    }
  }
  return best;
}

async function race(what, unit, count, contestants) {
  const best = await fastest(contestants);
  const [[, ours], ...others] = Object.entries(best);
  for (const [name, ms] of Object.entries(best)) {
    const ratio = ms === ours ? '' : `; ours is ${(ms / ours).toFixed(2)} times that`;
    console.log(`${what}, ${name}: ${Math.round((1000 * count) / ms)} ${unit} a second${ratio}`);
  }
  console.log(
    `  ${(Math.min(...others.map(([, ms]) => ms)) / ours).toFixed(2)} times the fastest peer (aim ${AIM})`,
  );
}
