/**
 * The ranges of a reading against a known truth: a perfect listener of simulated people, whose moments go through the
 * measuring code of the bedside (`clinical`).
 *
 *   node packages/physiology/prove/ranges.mjs [SEED]
 *
 * The last line of the output is one JSON object: { name, passed, failed, lines }.
 */
import {
  DEFAULT_RUN_RULES,
  gaugeRead,
  parseRun,
  runResult,
  UNKNOWN_RUN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import {
  BLANK,
  beats,
  letDown,
  makePerson,
  newLetDownResult,
  PROPER,
  SOUND_INSTRUMENT,
  uniform,
} from '../dist/index.js';

const SEED = Number(process.argv[2] ?? 20260101);
const DRAWS = 100_000;
/** How many of the people whose pressure varies are looked at: their beats have to be made once more each. */
const VARYING = 10_000;

const lines = [];
let passed = 0;
let failed = 0;
function check(isRight, line) {
  if (isRight) passed++;
  else failed++;
  lines.push(`${isRight ? 'ok' : 'FAILED'}: ${line}`);
}
const holds = ([low, high], truth) => low <= truth && truth <= high;
const out = newLetDownResult();

/** One reading of a perfect listener: its ranges, and the levels on the beats of the first and the last sound. */
function reading(i, isStill) {
  const pick = (lane, low, high) => low + (high - low) * uniform(SEED, 'noise', i, lane);
  const systolic = pick(0, 95, 200);
  const ratePerMinute = pick(2, 45, 130);
  const made = makePerson(
    {
      ...BLANK,
      systolic,
      diastolic: systolic - pick(1, 30, 70),
      soundDb: 40,
      rhythm: { ...BLANK.rhythm, ratePerMinute, variation: isStill ? 'none' : '45-54' },
    },
    i,
  );
  const person = isStill
    ? {
        ...made,
        breathingSwingMmHg: 0,
        slowWaveMmHg: 0,
        slowSdMmHg: 0,
        beatSdMmHg: 0,
        beatDiastolicSdMmHg: 0,
      }
    : made;
  const rate = pick(3, 1.5, 5);
  const peakMmHg = Math.min(290, systolic + 40);
  const plan = { startSeconds: 3, peakMmHg, fall: rate, thresholdDb: -200 };
  letDown(person, PROPER, SOUND_INSTRUMENT, plan, out);
  const { firstSeconds, firstCuffMmHg, lastSeconds, lastCuffMmHg, firstBeat, lastBeat } = out;
  const parsed = parseRun({
    method: 'auscultation',
    gaugeStepMmHg: 2,
    pulsePerMinute: ratePerMinute,
    peak: { mmHg: peakMmHg, atSeconds: 0 },
    moments: [
      { what: 'first sound', mmHg: gaugeRead(firstCuffMmHg, 2, 'nearest'), atSeconds: firstSeconds - 3 },
      { what: 'last sound', mmHg: gaugeRead(lastCuffMmHg, 2, 'nearest'), atSeconds: lastSeconds - 3 },
    ],
  });
  if (!parsed.ok) return null;
  const result = runResult(parsed.value, UNKNOWN_RUN_CIRCUMSTANCES, DEFAULT_RUN_RULES);
  if (result.systolicRange === null || result.diastolicRange === null) return null;
  if (isStill) return { result, truth: person.rest };
  const found = beats(person, PROPER, 0, lastSeconds + 1);
  const at = (index) => found.find((beat) => beat.index === index);
  return { result, truth: { systolic: at(firstBeat).systolic, diastolic: at(lastBeat).diastolic } };
}

function count(draws, isStill) {
  const seen = { runs: 0, refused: 0, systolic: 0, diastolic: 0 };
  for (let i = 0; i < draws; i++) {
    const one = reading(i, isStill);
    if (one === null) {
      seen.refused++;
      continue;
    }
    seen.runs++;
    if (holds(one.result.systolicRange, one.truth.systolic)) seen.systolic++;
    if (holds(one.result.diastolicRange, one.truth.diastolic)) seen.diastolic++;
  }
  return seen;
}

const still = count(DRAWS, true);
check(still.runs > 0.99 * DRAWS, `${still.runs} runs of ${DRAWS} gave ranges`);
for (const what of ['systolic', 'diastolic']) {
  const outside = still.runs - still[what];
  check(
    outside === 0,
    `${what}: the range left out the truth in ${outside} of ${still.runs} runs of people whose pressure does not vary, wanted 0`,
  );
}
// Here nothing is promised (docs/conventions.md, section 6): a beat may lie higher than the one before it.
const varying = count(VARYING, false);
for (const what of ['systolic', 'diastolic']) {
  const share = varying[what] / varying.runs;
  check(
    share > 0.7,
    `${what}: where it varies with breath and minute, the range holds the level of that very beat in ${(100 * share).toFixed(1)} % of ${varying.runs} runs (nothing is promised)`,
  );
}
console.log(JSON.stringify({ name: 'ranges of a reading against simulated people', passed, failed, lines }));
