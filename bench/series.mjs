// Recordings over 24 hours (70 readings each) analysed a second, and rows of CSV read a second, each as a ratio against
// the same statistics written for DuckDB and for a JavaScript data-frame package, in one run; then the growth from 1,000
// to 100,000 recordings. Both peers are installed into a temporary folder the first time. The peers do less: no curve of two
// harmonics, no standard errors, no editing, no rises, no means by hour; what both work out must be the same.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { pathToFileURL } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { ambulatoryResult, ambulatoryRules, presetProtocol } from '../packages/clinical/dist/index.js';
import { generator } from '../packages/clinical/fixtures/people.mjs';
import { NOTHING_SAID, readSeries } from '../packages/exchange/dist/index.js';

const RECORDINGS = 2_000;
const READINGS = 70;
const TIMES = 5;
/** Times the faster peer that ours is to be. Source: aim of this project. */
const AIM = 3;

const PEERS = { '@duckdb/node-api': '1.5.6-r.1', arquero: '7.2.1' };
const peers = join(tmpdir(), 'evenfall-bench-peers');
if (!Object.keys(PEERS).every((name) => existsSync(join(peers, 'node_modules', name)))) {
  mkdirSync(peers, { recursive: true });
  writeFileSync(join(peers, 'package.json'), JSON.stringify({ private: true, dependencies: PEERS }));
  const { status } = spawnSync('npm', ['install', '--no-audit', '--no-fund'], {
    cwd: peers,
    stdio: 'inherit',
  });
  if (status !== 0) throw new Error('the peers could not be installed');
}
const from = createRequire(join(peers, 'package.json'));
const { DuckDBInstance } = await import(pathToFileURL(from.resolve('@duckdb/node-api')));
const aq = await import(pathToFileURL(join(peers, 'node_modules', 'arquero', 'src', 'index.js')));

const folder = mkdtempSync(join(tmpdir(), 'evenfall-bench-'));
const HEADING = 'time,systolic,diastolic,pulse';
const chance = generator(24);

/** A recording of an invented person: rows of CSV, a reading every 20 minutes from 09:00 on. */
function recording() {
  const [level, fall] = [chance.uniform(110, 165), chance.uniform(0, 25)];
  const rows = [];
  for (let k = 0; k < READINGS; k++) {
    const minutes = 540 + 20 * k;
    const [day, hour, minute] = [4 + Math.floor(minutes / 1440), Math.floor(minutes / 60) % 24, minutes % 60];
    const wave = (fall / 2) * Math.cos((2 * Math.PI * (hour - 15)) / 24);
    const systolic = Math.round(level + wave + chance.uniform(-9, 9));
    const two = (n) => String(n).padStart(2, '0');
    const time = `2025-03-${two(day)}T${two(hour)}:${two(minute)}:00+00:00`;
    rows.push(
      `${time},${systolic},${Math.round(systolic * 0.6 + chance.uniform(-5, 5))},${Math.round(chance.uniform(52, 92))}`,
    );
  }
  return rows;
}

const rules = ambulatoryRules(presetProtocol({ ambulatory: 'ish-2020' }).value);
const known = {
  ageYears: null,
  isPregnant: false,
  scheduled: null,
  isAllUsed: false,
  dayNight: { by: 'asleep-range', asleep: { from: 1380, to: 420 } },
  rejected: new Set(),
  restored: new Set(),
};
const read = (text) => readSeries(text, { ...NOTHING_SAID, kind: 'ambulatory' });
const recordings = Array.from({ length: RECORDINGS }, recording);
const series = recordings.map((rows) => read([HEADING, ...rows].join('\n')).readings);

const MEASURES = ['systolic', 'diastolic', 'pulse'];
const LIMITS = { day: { systolic: 135, diastolic: 85 }, night: { systolic: 120, diastolic: 70 } };

/** What both work out, from ours, in one order. */
function oursOf(result) {
  const out = [result.counts.day, result.counts.night];
  for (const m of MEASURES) {
    const { day, night, whole } = result;
    out.push(day.mean[m], night.mean[m], day.sd[m], night.sd[m], whole.arithmetic[m], result.all.sd[m]);
    out.push(
      result.cvPercent[m],
      whole.trapezoid[m],
      whole.hoursWeighted[m],
      result.arv[m],
      result.arvTimeWeighted[m],
    );
    out.push(result.weightedSd[m], result.cosinor[m].one.mesor, result.cosinor[m].one.harmonics[0].amplitude);
    if (m !== 'pulse')
      out.push(result.load.day.percent[m], result.load.night.percent[m], result.dip[`${m}Percent`]);
  }
  return out;
}

/** Columns of the peers in the same order, from the sums that each gathers by recording. */
const COLUMNS = [
  'n_day',
  'n_night',
  ...MEASURES.flatMap((m) => [
    ...['day', 'night', 'sd_day', 'sd_night', 'mean', 'sd', 'cv', 'trapezoid', 'weighted', 'arv', 'arvt', 'wsd', 'mesor', 'amplitude'].map((one) => `${m}_${one}`), // biome-ignore format: one list
    ...(m === 'pulse' ? [] : ['load_day', 'load_night', 'dip'].map((one) => `${m}_${one}`)),
  ]),
];

/** One harmonic by the normal equations (Cramer), as SQL or as JavaScript: the signs are the same in both. */
function curve(m, col) {
  const [n, c, s, cc, cs, ss] = ['n', 'c', 's', 'cc', 'cs', 'ss'].map((one) => col(one));
  const [y, yc, ys] = ['y', 'yc', 'ys'].map((one) => col(`${m}_${one}`));
  const det = (a, b, d, e, f, g, h, i, j) => `(${a}*(${f}*${j}-${g}*${i})-${b}*(${e}*${j}-${g}*${h})+${d}*(${e}*${i}-${f}*${h}))`; // biome-ignore format: one formula
  const whole = det(n, c, s, c, cc, cs, s, cs, ss);
  const at = (k) => {
    const rows = [[n, c, s], [c, cc, cs], [s, cs, ss]].map((row, r) => row.map((one, i) => (i === k ? [y, yc, ys][r] : one))); // biome-ignore format: one formula
    return `(${det(...rows.flat())}/${whole})`;
  };
  return { mesor: at(0), beta: at(1), gamma: at(2) };
}

const NIGHT = '(minute >= 1380 or minute < 420)';
const sql = `
with t as (
  select *, ${NIGHT} as night, cos(2*pi()*minute/1440.0) c, sin(2*pi()*minute/1440.0) s,
    lead(h) over w - h gap, ${MEASURES.map((m) => `lead(${m}) over w next_${m}`).join(', ')}
  from r window w as (partition by recording order by h)
), a as (
  select recording, count(*) n, sum(c) c, sum(s) s, sum(c*c) cc, sum(c*s) cs, sum(s*s) ss,
    count(*) filter (where not night) n_day, count(*) filter (where night) n_night, sum(gap) gaps,
    ${MEASURES.map(
      (m) => `avg(${m}) filter (where not night) ${m}_day, avg(${m}) filter (where night) ${m}_night,
      stddev_samp(${m}) filter (where not night) ${m}_sd_day, stddev_samp(${m}) filter (where night) ${m}_sd_night,
      avg(${m}) ${m}_mean, stddev_samp(${m}) ${m}_sd, sum(gap*(${m}+next_${m})/2.0)/sum(gap) ${m}_trapezoid,
      avg(abs(next_${m}-${m})) ${m}_arv, sum(gap*abs(next_${m}-${m}))/sum(gap) ${m}_arvt,
      sum(${m}) ${m}_y, sum(${m}*c) ${m}_yc, sum(${m}*s) ${m}_ys
      ${m === 'pulse' ? '' : `, avg(100.0*(${m} >= ${LIMITS.day[m]})::int) filter (where not night) ${m}_load_day, avg(100.0*(${m} >= ${LIMITS.night[m]})::int) filter (where night) ${m}_load_night`}`,
    ).join(', ')}
  from t group by recording
)
select ${COLUMNS.map((column) => {
  const [m, what] = [column.slice(0, column.indexOf('_')), column.slice(column.indexOf('_') + 1)];
  const fitted = curve(m, (name) => name);
  const made = {
    cv: `100*${m}_sd/${m}_mean`,
    weighted: `(16*${m}_day+8*${m}_night)/24`,
    wsd: `(16*${m}_sd_day+8*${m}_sd_night)/24`,
    dip: `100*(${m}_day-${m}_night)/${m}_day`,
    mesor: fitted.mesor,
    amplitude: `sqrt(power(${fitted.beta},2)+power(${fitted.gamma},2))`,
  };
  return `${made[what] ?? column} as "${column}"`;
}).join(', ')} from a order by recording`;

const db = await (await DuckDBInstance.create(':memory:')).connect();
const bulk = join(folder, 'bulk.csv');
const bulkRows = recordings.flat();
writeFileSync(bulk, [HEADING, ...bulkRows].join('\n'));
writeFileSync(join(folder, 'all.csv'), [`recording,${HEADING}`, ...recordings.flatMap((rows, k) => rows.map((row) => `${k},${row}`))].join('\n')); // biome-ignore format: one thought
await db.run(
  `create table r as select recording, epoch(time)/3600.0 h, (epoch(time)::bigint % 86400)//60 as "minute", systolic, diastolic, pulse from read_csv('${join(folder, 'all.csv')}')`,
);

async function inDuckDb() {
  const rows = await db.runAndReadAll(sql);
  return rows.getRows().map((row) => row.map(Number));
}

const frame = aq.table({
  recording: series.flatMap((one, k) => one.map(() => k)),
  h: series.flatMap((one) => one.map(({ atMs }) => atMs / 3_600_000)),
  minute: series.flatMap((one) => one.map(({ minuteOfDay }) => minuteOfDay)),
  ...Object.fromEntries(MEASURES.map((m) => [m, series.flatMap((one) => one.map((reading) => reading[m]))])),
});

function inFrame() {
  const derived = {
    night: '(d) => d.minute >= 1380 || d.minute < 420',
    c: '(d) => op.cos(2 * 3.141592653589793 * d.minute / 1440)',
    s: '(d) => op.sin(2 * 3.141592653589793 * d.minute / 1440)',
    gap: '(d) => op.lead(d.h, 1, null) - d.h',
    has: '(d) => op.lead(d.h, 1, null) !== null',
  };
  for (const m of MEASURES) derived[`next_${m}`] = `(d) => op.lead(d.${m}, 1, null)`;
  const more = {
    cc: '(d) => d.c * d.c',
    cs: '(d) => d.c * d.s',
    ss: '(d) => d.s * d.s',
    gap: '(d) => d.has ? d.gap : null',
  };
  for (const m of MEASURES) {
    more[`${m}_d`] = `(d) => d.night ? null : d.${m}`;
    more[`${m}_n`] = `(d) => d.night ? d.${m} : null`;
    more[`${m}_step`] = `(d) => d.has ? abs(d.next_${m} - d.${m}) : null`;
    more[`${m}_gstep`] = `(d) => d.has ? d.gap * abs(d.next_${m} - d.${m}) : null`;
    more[`${m}_area`] = `(d) => d.has ? d.gap * (d.next_${m} + d.${m}) / 2 : null`;
    more[`${m}_yc`] = `(d) => d.${m} * d.c`;
    more[`${m}_ys`] = `(d) => d.${m} * d.s`;
    if (m === 'pulse') continue;
    more[`${m}_ld`] = `(d) => d.night ? null : (d.${m} >= ${LIMITS.day[m]} ? 100 : 0)`;
    more[`${m}_ln`] = `(d) => d.night ? (d.${m} >= ${LIMITS.night[m]} ? 100 : 0) : null`;
  }
  for (const key of Object.keys(more)) more[key] = more[key].replaceAll('abs(', 'op.abs(');
  const rolled = { n: '() => op.count()', gaps: '(d) => op.sum(d.gap)' };
  for (const one of ['c', 's', 'cc', 'cs', 'ss']) rolled[one] = `(d) => op.sum(d.${one})`;
  rolled.n_day = '(d) => op.valid(d.systolic_d)';
  rolled.n_night = '(d) => op.valid(d.systolic_n)';
  for (const m of MEASURES) {
    const of = { day: 'mean(d.M_d)', night: 'mean(d.M_n)', sd_day: 'stdev(d.M_d)', sd_night: 'stdev(d.M_n)', mean: 'mean(d.M)', sd: 'stdev(d.M)', area: 'sum(d.M_area)', arv: 'mean(d.M_step)', gstep: 'sum(d.M_gstep)', y: 'sum(d.M)', yc: 'sum(d.M_yc)', ys: 'sum(d.M_ys)', ...(m === 'pulse' ? {} : { load_day: 'mean(d.M_ld)', load_night: 'mean(d.M_ln)' }) }; // biome-ignore format: one list
    for (const [key, call] of Object.entries(of))
      rolled[`${m}_${key}`] = `(d) => op.${call.replaceAll('M', m)}`;
  }
  const made = {};
  for (const m of MEASURES) {
    const fitted = curve(m, (name) => `d.${name}`);
    made[`${m}_cv`] = `(d) => 100 * d.${m}_sd / d.${m}_mean`;
    made[`${m}_trapezoid`] = `(d) => d.${m}_area / d.gaps`;
    made[`${m}_arvt`] = `(d) => d.${m}_gstep / d.gaps`;
    made[`${m}_weighted`] = `(d) => (16 * d.${m}_day + 8 * d.${m}_night) / 24`;
    made[`${m}_wsd`] = `(d) => (16 * d.${m}_sd_day + 8 * d.${m}_sd_night) / 24`;
    made[`${m}_mesor`] = `(d) => ${fitted.mesor}`;
    made[`${m}_amplitude`] = `(d) => op.sqrt(op.pow(${fitted.beta}, 2) + op.pow(${fitted.gamma}, 2))`;
    if (m !== 'pulse') made[`${m}_dip`] = `(d) => 100 * (d.${m}_day - d.${m}_night) / d.${m}_day`;
  }
  const table = frame.groupby('recording').derive(derived).derive(more).rollup(rolled).derive(made);
  const columns = COLUMNS.map((name) => table.getter(name));
  return Array.from({ length: table.numRows() }, (_, k) => columns.map((get) => get(k)));
}

const inOurs = () => series.map((readings) => oursOf(ambulatoryResult(readings, known, rules)));

/** The fastest of several runs, ms: what another program of the machine takes is nobody's. */
async function fastest(work) {
  await work();
  let best = Number.POSITIVE_INFINITY;
  for (let time = 0; time < TIMES; time++) {
    const began = performance.now();
    await work();
    best = Math.min(best, performance.now() - began);
  }
  return best;
}

// The same numbers, or the race means nothing.
const expected = inOurs();
for (const [name, found] of [
  ['DuckDB', await inDuckDb()],
  ['arquero', inFrame()],
]) {
  for (const [k, row] of found.entries()) {
    for (const [at, value] of row.entries()) {
      if (!(Math.abs(value - expected[k][at]) < 1e-6))
        throw new Error(`${name}, recording ${k}, ${COLUMNS[at]}: ${value}, ours ${expected[k][at]}`);
    }
  }
}

function raceLine(what, unit, count, times) {
  const [[, ours], ...others] = Object.entries(times);
  const best = Math.min(...others.map(([, ms]) => ms));
  for (const [name, ms] of Object.entries(times))
    console.log(`${what}, ${name}: ${Math.round((1000 * count) / ms)} ${unit} a second`);
  console.log(`  ${(best / ours).toFixed(2)} times the faster peer (aim ${AIM})`);
}

raceLine('analysed', 'recordings', RECORDINGS, {
  ours: await fastest(inOurs),
  DuckDB: await fastest(inDuckDb),
  arquero: await fastest(inFrame),
});
raceLine('one large file', 'rows', RECORDINGS * READINGS, {
  ours: await fastest(() => read(readFileSync(bulk, 'utf8'))),
  DuckDB: await fastest(() => db.run(`create or replace table bulk as select * from read_csv('${bulk}')`)),
  arquero: await fastest(() => aq.fromCSV(readFileSync(bulk, 'utf8'))),
});

const FILES = 200;
const names = recordings.slice(0, FILES).map((rows, k) => {
  const name = join(folder, `${k}.csv`);
  writeFileSync(name, [HEADING, ...rows].join('\n'));
  return name;
});
raceLine('a file for each recording', 'rows', FILES * READINGS, {
  ours: await fastest(() => names.map((name) => read(readFileSync(name, 'utf8')))),
  DuckDB: await fastest(async () => {
    for (const name of names)
      await db.run(`create or replace table small as select * from read_csv('${name}')`);
  }),
  arquero: await fastest(() => names.map((name) => aq.fromCSV(readFileSync(name, 'utf8')))),
});

// From text to answer, one recording after another as the command does it: time and memory by number of recordings.
const texts = recordings.slice(0, 500).map((rows) => [HEADING, ...rows].join('\n'));
setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc');
for (const count of [1_000, 10_000, 100_000]) {
  const began = performance.now();
  for (let k = 0; k < count; k++) {
    ambulatoryResult(read(texts[k % texts.length]).readings, known, rules);
  }
  const ms = performance.now() - began;
  collect();
  const most = process.memoryUsage().heapUsed;
  console.log(
    `${count} recordings from text to answer: ${(ms / count).toFixed(3)} ms each, ${Math.round(most / 1e6)} MB of heap in use after it`,
  );
}
rmSync(folder, { recursive: true });
process.exit(0);
