/**
 * The heavy loop of reading series: valid files broken at random must be read without a crash, without a hang and without
 * losing a row.
 *
 *   node packages/exchange/prove/series.mjs [MUTATIONS] [SEED]
 *
 * The last line of the output is one JSON object: { name, passed, failed, lines }.
 */
import { performance } from 'node:perf_hooks';
import { readSeries } from '../dist/index.js';
import { chanceFrom, faultOf, mutated, validFile } from '../fixtures/seriesMutations.mjs';

const MUTATIONS = Number(process.argv[2] ?? 100_000);
const SEED = Number(process.argv[3] ?? 20260101);
/** Most time that one file of a week may take, ms, on a machine that does other things too. Source: decision. */
const MOST_MS = 2_000;

const chance = chanceFrom(SEED);
const choices = { zone: 'Europe/Lisbon', dates: null, unit: null, mapping: null, areColumnsSure: false };
const lines = [];
let [passed, failed, rows, used, asked, slowest] = [0, 0, 0, 0, 0, 0];
for (let k = 0; k < MUTATIONS; k++) {
  const text = mutated(validFile(chance), chance);
  const began = performance.now();
  let fault;
  try {
    const kind = k % 2 === 0 ? 'home' : 'ambulatory';
    const read = readSeries(text, { ...choices, kind, dates: k % 3 === 0 ? 'dmy' : null });
    fault = faultOf(text, read);
    rows += read.lines.length;
    used += read.readings.length;
    if (read.questions.length > 0) asked++;
  } catch (thrown) {
    fault = String(thrown);
  }
  const took = performance.now() - began;
  slowest = Math.max(slowest, took);
  if (fault === null && took < MOST_MS) passed++;
  else {
    failed++;
    if (failed <= 10)
      lines.push(`FAILED: mutation ${k} of seed ${SEED}: ${fault ?? `${took.toFixed(0)} ms`}`);
  }
}
lines.push(
  `${MUTATIONS} files broken at random, seed ${SEED}: ${passed} read, each row used or refused once, none slower than ${MOST_MS} ms`,
  `${rows} rows, ${used} used, ${asked} files that had to be asked about; slowest ${slowest.toFixed(0)} ms`,
);
console.log(JSON.stringify({ name: 'Readings of a series, fuzzed', passed, failed, lines }));
if (failed > 0) process.exitCode = 1;
