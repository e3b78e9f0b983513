// Runs of the cuff a second, against what keeping one costs anyhow: its content through JSON text and back, in the same
// run. A server recomputes each run that it is sent, so this is what that adds to taking it.
import { Bench } from 'tinybench';
import {
  DEFAULT_RUN_RULES,
  parseRun,
  parseShorthand,
  printShorthand,
  runResult,
  shorthandOf,
  UNKNOWN_RUN_CIRCUMSTANCES,
} from '../packages/clinical/dist/index.js';
import { observed } from '../packages/clinical/fixtures/observer.mjs';
import { generator } from '../packages/clinical/fixtures/people.mjs';
import { chartRun, KINDS, NOTHING_CHOSEN } from '../packages/record/dist/index.js';

const chance = generator(61);
const PLACE = { site: 'upper-arm', side: 'right', posture: 'sit', cuff: null, armCm: null, override: null };
const AROUND = { ...UNKNOWN_RUN_CIRCUMSTANCES, uprightMinutes: null };
const BESIDE = { pulse: 76, side: 'right', posture: 'sit', cuff: 'L', site: null };

/** Perfect observers of random arms, as they would send what they did. */
const inputs = [];
while (inputs.length < 500) {
  const draw = observed(chance, { read: (mmHg, step) => step * Math.round(mmHg / step) });
  if (draw !== null && parseRun(draw.input).ok) inputs.push(draw.input);
}
const runs = inputs.map((input) => parseRun(input).value);
const charted = (run) =>
  chartRun(
    { run, place: PLACE, circumstances: AROUND, override: null, note: null },
    NOTHING_CHOSEN,
    'evenfall bench',
  );
const contents = runs.map(charted);
const texts = runs.map((run) => {
  const result = runResult(run, AROUND, DEFAULT_RUN_RULES);
  return printShorthand(shorthandOf(result, BESIDE, DEFAULT_RUN_RULES.deflation));
});

// What is raced must be right: a content reads back as it is, a text as what it says.
for (const [at, content] of contents.entries()) {
  const read = KINDS.run.schemas[1].safeParse(JSON.parse(JSON.stringify(content)));
  const written = parseShorthand(texts[at]);
  if (!read.success || !written.ok || written.value.systolic !== content.value.systolic)
    throw new Error(`${texts[at]} does not read back`);
}

let turn = 0;
const next = (list) => list[turn++ % list.length];
const bench = new Bench({ time: 1500, warmupTime: 300 });
bench
  .add('run read (parseRun)', () => parseRun(next(inputs)))
  .add('run computed (runResult)', () => runResult(next(runs), AROUND, DEFAULT_RUN_RULES))
  .add('run charted whole (chartRun)', () => charted(next(runs)))
  .add('shorthand read (parseShorthand)', () => parseShorthand(next(texts)))
  .add('content read by its schema', () => KINDS.run.schemas[1].safeParse(next(contents)))
  .add('content through JSON and back', () => JSON.parse(JSON.stringify(next(contents))));
await bench.run();

const perSecond = bench.tasks.map(({ name, result }) => ({ name, rate: 1000 / result.latency.mean }));
const peer = perSecond.at(-1);
for (const { name, rate } of perSecond) {
  console.log(`${name}: ${Math.round(rate)} a second, ${(rate / peer.rate).toFixed(2)} of ${peer.name}`);
}
