/**
 * The heavy loop of reading series: valid files broken at random must be read and answered without a crash, without a hang and
 * without losing a row: each is used or left out once with a reason, by the reader or by the rules for a mean.
 *
 *   node packages/exchange/prove/series.mjs [MUTATIONS] [SEED]
 *
 * The last line of the output is one JSON object: { name, passed, failed, lines }.
 */
import { performance } from 'node:perf_hooks';
import {
  ambulatoryResult,
  DEFAULT_AMBULATORY_RULES,
  DEFAULT_HOME_RULES,
  homeResult,
  NOTHING_BY_HAND,
} from '@evenfall/clinical';
import { readSeries } from '../dist/index.js';
import { chanceFrom, faultOf, mutated, validFile } from '../fixtures/seriesMutations.mjs';

const MUTATIONS = Number(process.argv[2] ?? 100_000);
const SEED = Number(process.argv[3] ?? 20260101);
/** Most time that one file of a week may take, ms, on a machine that does other things too. Source: decision. */
const MOST_MS = 2_000;

const chance = chanceFrom(SEED);
const choices = { zone: 'Europe/Lisbon', dates: null, unit: null, mapping: null, areColumnsSure: false };
const recording = {
  ...NOTHING_BY_HAND,
  scheduled: null,
  isAllUsed: false,
  dayNight: { by: 'clock', day: { from: 540, to: 1260 }, night: { from: 60, to: 360 } },
};

/** What is wrong with the answer to readings that were read; null where each is used or left out once and no number is infinite. */
function answerFaultOf(readings, kind) {
  const result =
    kind === 'home'
      ? homeResult(readings, NOTHING_BY_HAND, DEFAULT_HOME_RULES)
      : ambulatoryResult(readings, recording, DEFAULT_AMBULATORY_RULES);
  const left = (kind === 'home' ? result.dropped : result.edited).map(({ index }) => index);
  const used = kind === 'home' ? result.used : result.counts.kept;
  if (new Set(left).size !== left.length) return 'a reading is left out twice';
  if (used + left.length !== readings.length)
    return `${used} used and ${left.length} left out of ${readings.length}`;
  // JSON writes what is not finite as null: the same text with it named finds it.
  const odd = JSON.stringify(result, (_, value) =>
    typeof value === 'number' && !Number.isFinite(value) ? 'odd' : value,
  );
  return odd.includes('"odd"') ? 'a number of the answer is not finite' : null;
}

const lines = [];
let [passed, failed, rows, used, asked, slowest] = [0, 0, 0, 0, 0, 0];
for (let k = 0; k < MUTATIONS; k++) {
  const text = mutated(validFile(chance), chance);
  const began = performance.now();
  let fault;
  try {
    const kind = k % 2 === 0 ? 'home' : 'ambulatory';
    const read = readSeries(text, { ...choices, kind, dates: k % 3 === 0 ? 'dmy' : null });
    fault = faultOf(text, read) ?? answerFaultOf(read.readings, kind);
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
  `${MUTATIONS} files broken at random, seed ${SEED}: ${passed} read and answered, each row used, refused or left out once, none slower than ${MOST_MS} ms`,
  `${rows} rows, ${used} used, ${asked} files that had to be asked about; slowest ${slowest.toFixed(0)} ms`,
);
console.log(JSON.stringify({ name: 'Readings of a series, fuzzed', passed, failed, lines }));
if (failed > 0) process.exitCode = 1;
