// Auscultated let-downs of simulated people in batch, on one core: how many a second, beside the arithmetic alone that
// the model asks of each beat (random numbers, exponentials, sines), measured in the same run; and whether memory grows.

import {
  letDown,
  makePerson,
  newLetDownResult,
  PROPER,
  SOUND_INSTRUMENT,
  scenarioOf,
} from '../packages/physiology/dist/index.js';
import { arithmeticBound, boundLine } from './arithmetic.mjs';

/** Runs a second on one core at least. Source: aim of this project. */
const AIM = 50_000;
/** Judged at this share of the aim: others on the machine can only make it slower. */
const SHARE = 0.6;
const ROUNDS = 7;
const RUNS = 20_000;
const scenario = scenarioOf('quiet-morning');
const people = Array.from({ length: 500 }, (_, seed) => makePerson(scenario, seed));
const plan = { startSeconds: 1, peakMmHg: scenario.systolic + 30, fall: 2.5, thresholdDb: 5 };
const out = newLetDownResult();
const seen = { beats: 0, sounds: 0, runs: 0 };

function letDowns(runs) {
  for (let i = 0; i < runs; i++) {
    letDown(people[i % people.length], PROPER, SOUND_INSTRUMENT, plan, out);
    seen.beats += out.beats;
    seen.sounds += out.sounds;
  }
  seen.runs += runs;
}

/** Seconds of this process's own processor time, the best of some rounds. */
function best(work, rounds = ROUNDS) {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round++) {
    const before = process.cpuUsage().user;
    work();
    least = Math.min(least, (process.cpuUsage().user - before) / 1e6);
  }
  return least;
}

letDowns(RUNS);
const perSecond = RUNS / best(() => letDowns(RUNS));
const [beats, sounds] = [seen.beats / seen.runs, seen.sounds / seen.runs];

const bound = arithmeticBound(beats, sounds);

const used = () => {
  globalThis.gc?.();
  return process.memoryUsage().rss / 2 ** 20;
};
letDowns(10_000);
const before = used();
letDowns(1_000_000);
const after = used();

console.log(
  `${beats.toFixed(1)} beats and ${sounds.toFixed(1)} sounds a run, best of ${ROUNDS} rounds of ${RUNS}, processor time of one core:`,
);
console.log(
  `  ${perSecond.toFixed(0)} let-downs a second, ${(perSecond / AIM).toFixed(2)} of the aim of ${AIM}`,
);
console.log(boundLine(bound, perSecond));
console.log(
  `  memory after 10,000 runs ${before.toFixed(0)} MB, after 1,000,000 more ${after.toFixed(0)} MB`,
);
if (perSecond < SHARE * AIM || after > before + 30) process.exitCode = 1;
