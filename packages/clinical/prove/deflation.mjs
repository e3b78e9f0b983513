/**
 * The heavy loops of the cuff run: a perfect observer of random arms, whose ranges must hold the truth.
 *
 *   node packages/clinical/prove/deflation.mjs [SEED]
 *
 * The last line of the output is one JSON object: { name, passed, failed, lines }.
 */
import {
  DEFAULT_RUN_RULES,
  gaugeRead,
  parseRun,
  runResult,
  UNKNOWN_RUN_CIRCUMSTANCES,
} from '../dist/index.js';
import { observed } from '../fixtures/observer.mjs';
import { generator } from '../fixtures/people.mjs';

const SEED = Number(process.argv[2] ?? 20260101);
const DRAWS = 100_000;

const lines = [];
let passed = 0;
let failed = 0;

function check(isRight, line) {
  if (isRight) passed++;
  else failed++;
  lines.push(`${isRight ? 'ok' : 'FAILED'}: ${line}`);
}

const holds = ([low, high], truth) => low <= truth && truth <= high;

function proveRanges(gaugeReading, name, how) {
  const chance = generator(SEED);
  const rules = { ...DEFAULT_RUN_RULES, deflation: { ...DEFAULT_RUN_RULES.deflation, gaugeReading } };
  const seen = { refused: 0, systolic: 0, systolicOut: 0, diastolic: 0, diastolicOut: 0, plainOut: 0 };
  const widths = [];
  for (let draws = 0; draws < DRAWS; ) {
    const draw = observed(chance, { ...how, read: (mmHg, step) => gaugeRead(mmHg, step, gaugeReading) });
    if (draw === null) continue;
    draws++;
    const parsed = parseRun(draw.input);
    if (!parsed.ok) {
      seen.refused++;
      continue;
    }
    const result = runResult(parsed.value, UNKNOWN_RUN_CIRCUMSTANCES, rules);
    const { systolicRange, diastolicRange, dropPerBeatMmHg, diastolic } = result;
    if (systolicRange !== null) {
      seen.systolic++;
      widths.push(systolicRange[1] - systolicRange[0]);
      if (!holds(systolicRange, draw.truth.systolic)) seen.systolicOut++;
    }
    if (diastolicRange === null) continue;
    seen.diastolic++;
    if (!holds(diastolicRange, draw.truth.diastolic)) seen.diastolicOut++;
    const { gaugeStepMmHg: step } = parsed.value;
    const low = diastolic - dropPerBeatMmHg - (gaugeReading === 'nearest' ? step / 2 : step);
    if (draw.truth.diastolic < Math.max(0, low)) seen.plainOut++;
  }
  check(seen.refused === 0, `${name}: ${seen.refused} of ${DRAWS} runs refused`);
  for (const of of ['systolic', 'diastolic']) {
    check(
      seen[of] > 0.75 * DRAWS && seen[`${of}Out`] === 0,
      `${name}: the ${of} range holds the truth in ${seen[of] - seen[`${of}Out`]} of ${seen[of]} (${DRAWS - seen[of]} of ${DRAWS} had no range)`,
    );
  }
  widths.sort((a, b) => a - b);
  lines.push(
    `seen: ${name}: median width of the systolic range ${widths[widths.length >> 1].toFixed(1)} mmHg; without room for the gauge in the rate, ` +
      `the diastolic range would have missed ${seen.plainOut} of ${seen.diastolic}`,
  );
}

const TAUGHT = { rate: [2, 3], pulse: [50, 110] };
proveRanges('nearest', 'nearest mark, 0.5 to 12 mmHg/s', {});
proveRanges('mark-above', 'mark above, 0.5 to 12 mmHg/s', {});
proveRanges('nearest', 'nearest mark, 2 to 3 mmHg/s, pulse 50 to 110', TAUGHT);
for (const line of lines) console.log(line);
console.log(JSON.stringify({ name: 'deflation', passed, failed, lines }));
process.exitCode = failed === 0 ? 0 : 1;
