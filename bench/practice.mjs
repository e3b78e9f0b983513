// Simulated readings by ear a second of one processor, against the same model written with a general-purpose array library in
// the same run; and memory, which must not grow with the number of runs: from 10,000 to 1,000,000, and to 10,000,000 with
// `npm run bench -- practice --long`, the library's side too, in pieces of the size that suits it best.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  BLANK,
  contourOf,
  makePerson,
  PHYSIOLOGY_FIGURES,
  PROPER,
  SOUND_INSTRUMENT,
} from '../packages/physiology/dist/index.js';
import { auscultate, GOOD_OBSERVER, newAuscultated } from '../packages/practice/dist/index.js';
import { root } from '../tools/ensure.mjs';
import { arithmeticBound, boundLine } from './arithmetic.mjs';
import { median } from './measure.mjs';

/** Aim of this project: readings a second on one core. */
const AIM = 50_000;
const RUNS = 40_000;
const TIMES = 5;
/** Memory may differ by this much between few runs and many, bytes: what a collector leaves lying about. */
const ROOM = 24e6;
const LONG = process.argv.includes('--long');
/** Ours may not be slower than this share of the peer: what two measurements on a busy machine differ by. */
const SHARE = 0.85;
/** Runs side by side in the peer: the fastest of these is raced against. */
const PIECES = [1000, 4000, 16_000];

const scenario = { ...BLANK, systolic: 124, diastolic: 78, muffledChance: 0 };
const person = makePerson(scenario, 1);
const circumstances = { ...PROPER, firstInflationSeconds: -600 };
const plan = { startSeconds: 3, peakMmHg: 154, fall: 2.5, thresholdDb: 0 };
const out = newAuscultated();

function run(from, runs) {
  let systolic = 0;
  let diastolic = 0;
  for (let i = from; i < from + runs; i++) {
    // Another person's chance each time, slow courses too.
    const one = { ...person, seed: i, beatSeed: i };
    auscultate(one, circumstances, SOUND_INSTRUMENT, plan, GOOD_OBSERVER.reader, i, 0, null, out);
    systolic += out.first.writtenMmHg;
    diastolic += out.last.writtenMmHg;
  }
  return { systolic: systolic / runs, diastolic: diastolic / runs, beats: out.beats, sounds: out.sounds };
}

const folder = mkdtempSync(join(tmpdir(), 'evenfall-bench-'));
const peer = hasNumpy() ? peerOf() : null;
const piece = peer === null ? 0 : fastestPiece(peer);

run(0, RUNS);
const ours = [];
const theirs = [];
let found = null;
for (let time = 0; time < TIMES; time++) {
  const began = processorSeconds();
  found = run(time * RUNS, RUNS);
  ours.push(RUNS / (processorSeconds() - began));
  if (peer !== null) theirs.push(peer(RUNS, piece));
}

const rate = median(ours);
console.log(
  `readings by ear: ${Math.round(rate)} a second of one processor, ${(rate / AIM).toFixed(2)} of the aim of ${AIM} (${found.beats} beats a reading: ${Math.round(1e9 / rate / found.beats)} ns a beat; at best ${Math.round(Math.max(...ours))} a second)`,
);
console.log(boundLine(arithmeticBound(found.beats, found.sounds), rate));
if (theirs.length > 0) {
  const other = median(theirs.map(({ runs, seconds }) => runs / seconds));
  console.log(
    `the same model in numpy, ${piece} runs side by side: ${Math.round(other)} a second; ours is ${(rate / other).toFixed(2)} times as fast`,
  );
  const apart = (of) => found[of] - theirs[0][of];
  console.log(
    `means apart: systolic ${apart('systolic').toFixed(2)}, diastolic ${apart('diastolic').toFixed(2)} mmHg`,
  );
  // Another draw of chance, another spline for a slow course: but the same model, or the race means nothing.
  if (rate < SHARE * other) process.exitCode = 1;
  if (Math.abs(apart('systolic')) > 1 || Math.abs(apart('diastolic')) > 1) process.exitCode = 1;
} else console.log('numpy is not here and could not be installed: no peer');

const held = [];
for (const runs of [10_000, 100_000, 1_000_000, ...(LONG ? [10_000_000] : [])]) {
  run(0, runs);
  globalThis.gc?.();
  held.push({ runs, rss: process.memoryUsage().rss });
}
console.log(
  `memory: ${held.map(({ runs, rss }) => `${(rss / 1e6).toFixed(0)} MB after ${runs}`).join(', ')}`,
);
if (held.at(-1).rss - held[0].rss > ROOM) process.exitCode = 1;
if (peer !== null) {
  const most = [10_000, 100_000, ...(LONG ? [10_000_000] : [])].map(
    (runs) => `${(peer(runs, piece).mostBytes / 1e6).toFixed(0)} MB after ${runs}`,
  );
  console.log(`memory of numpy at its most: ${most.join(', ')}`);
}
rmSync(folder, { recursive: true, force: true });

/** The piece with which the peer is fastest. */
function fastestPiece(peer) {
  const tried = PIECES.map((size) => ({ size, seconds: peer(RUNS, size).seconds }));
  return tried.reduce((best, one) => (one.seconds < best.seconds ? one : best)).size;
}

/** Time on a processor: what else the machine does is not in it. */
function processorSeconds() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

/** Whether numpy is there, installed by the system's own package manager where it is not. */
function hasNumpy() {
  const there = () => spawnSync('python3', ['-c', 'import numpy']).status === 0;
  if (there()) return true;
  spawnSync('apt-get', ['install', '-y', '-qq', 'python3-numpy'], { stdio: 'ignore' });
  return there();
}

function peerOf() {
  const contour = contourOf(scenario.waveShape, 'brachial');
  const riseHeights = Array.from({ length: 101 }, (_, i) => i / 100);
  const file = join(folder, 'person.json');
  writeFileSync(
    file,
    JSON.stringify({
      pulse: scenario.rhythm.ratePerMinute,
      breaths: scenario.breathing.ratePerMinute,
      systolic: scenario.systolic,
      diastolic: scenario.diastolic,
      breathSeconds: person.heart.breathSeconds,
      slowSeconds: person.heart.slowSeconds,
      driftSeconds: person.heart.driftSeconds,
      delaySeconds: person.delaySeconds,
      swing: person.breathingSwingMmHg,
      slowWave: person.slowWaveMmHg,
      slowSd: person.slowSdMmHg,
      beatSd: person.beatSdMmHg,
      beatDiastolicSd: person.beatDiastolicSdMmHg,
      soundDb: person.soundDb,
      hasSwish: person.hasSwish,
      swishDb: PHYSIOLOGY_FIGURES.sound.swishDb.value,
      feelingMmHg: person.feelingMmHg,
      muffledAbove: person.muffledAboveMmHg ?? -1e9,
      wanderTurns: PHYSIOLOGY_FIGURES.heart.mayerWanderTurns.value,
      wanderSeconds: PHYSIOLOGY_FIGURES.heart.mayerWanderSeconds.value,
      startSeconds: plan.startSeconds,
      peakMmHg: plan.peakMmHg,
      fall: plan.fall,
      riseHeights,
      riseSeconds: riseHeights.map((height) => contour.riseTo(height)),
    }),
  );
  const script = join(root, 'bench', 'practice', 'vectorised.py');
  return (runs, size) => {
    const ran = spawnSync('python3', [script, String(runs), String(size), file], { encoding: 'utf8' });
    return JSON.parse(ran.stdout);
  };
}
