/**
 * The two faces of the model beside each other: by the beat with a closed form of the fall, and by the tick. The same
 * sounds on the same beats to 0.1 ms and 0.01 mmHg, in all 36 people, up to 60 mmHg a second (the most that hands in an
 * exercise may do), with and without faults, begun over the sounds and amid them.
 *
 *   node packages/physiology/prove/faces.mjs [SEED]
 *
 * The last line of the output is one JSON object: { name, passed, failed, lines }.
 */
import {
  bladderFor,
  CHEST_PIECES,
  letDown,
  makePerson,
  newLetDownResult,
  PROPER,
  SCENARIOS,
  SOUND_INSTRUMENT,
  SoundLog,
  startRig,
  TICKS_PER_SECOND,
  uniform,
} from '../dist/index.js';

const SEED = Number(process.argv[2] ?? 20260101);
const CASES = 5000;
const RATES = [1, 2.5, 5, 8, 10, 15, 20, 40, 60];
const RISE = 20;
const SECONDS = 1e-4;
const MMHG = 0.01;
/** Where sounds begin and end their loudness hangs steeply on the pressure: 0.01 mmHg is up to 0.03 dB. */
const DB = 0.03;
/** Beats whose foot came before the cuff began to fall count for the ticks alone. */
const FIRST_SECONDS = 0.5;
const log = new SoundLog(4096);
const worst = { seconds: 0, mmHg: 0, db: 0 };
const lines = [];
let [passed, failed, sounds] = [0, 0, 0];

for (const isFaulty of [false, true]) {
  let bad = 0;
  for (let n = 0; n < CASES; n++) {
    const draw = (lane) => uniform(SEED, 'noise', 2 * n + Number(isFaulty), lane);
    const from = (all, lane) => all[Math.floor(draw(lane) * all.length)];
    const scenario = from(SCENARIOS, 0);
    const person = makePerson(scenario, Math.floor(draw(1) * 2 ** 32));
    const rate = from(RATES, 2);
    const start = 20 + Math.floor(draw(3) * 100) / 10;
    // Amid the sounds the beat at hand when the fall begins starts the clock of congestion (a minute) for the ticks alone:
    // the slowest falls begin well over them.
    const over = rate < 2 ? 65 : draw(4) < 0.15 ? -20 : 20 + 30 * draw(5);
    const peakMmHg = Math.min(280, scenario.systolic + over);
    const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm) };
    const given = isFaulty
      ? {
          ...PROPER,
          armBelowHeartCm: Math.round(draw(6) * 30 - 10),
          isTalking: draw(7) < 0.3,
          isCuffLoose: draw(8) < 0.3,
          hasTightSleeve: draw(9) < 0.3,
          wasReinflated: draw(10) < 0.3,
          chestPiece: from(CHEST_PIECES, 11),
        }
      : PROPER;
    const rig = startRig(person, given, instrument);
    const tick = Math.floor((start - peakMmHg / RISE) * TICKS_PER_SECOND) - 3;
    rig.advance(Math.round(start * TICKS_PER_SECOND), [
      { tick, kind: 'steady-rise', mmHgPerSecond: RISE, toMmHg: peakMmHg },
    ]);
    const fine = rig.advance(Math.ceil((start + peakMmHg / rate) * TICKS_PER_SECOND), [
      { tick: rig.tick, kind: 'steady-fall', mmHgPerSecond: rate, toMmHg: 0 },
    ]);
    const plan = { startSeconds: start, peakMmHg, fall: rate, thresholdDb: 0 };
    const inBatch = { ...given, firstInflationSeconds: tick / TICKS_PER_SECOND };
    letDown(person, inBatch, instrument, plan, newLetDownResult(), log);
    const after = start + FIRST_SECONDS;
    const byTick = fine.sounds.filter((one) => one.atSeconds > after && one.beat >= (log.beat[0] ?? 0));
    const byBeat = Array.from({ length: log.count }, (_, i) => i).filter((i) => log.atSeconds[i] > after);
    sounds += byBeat.length;
    let isSame = byTick.length === byBeat.length;
    for (const [k, i] of byBeat.entries()) {
      const one = byTick[k];
      if (!isSame || one.beat !== log.beat[i] || one.phase !== log.phase[i]) {
        isSame = false;
        break;
      }
      const apart = {
        seconds: Math.abs(one.atSeconds - log.atSeconds[i]),
        mmHg: Math.abs(one.cuffMmHg - log.cuffMmHg[i]),
        db: Math.abs(one.levelDb - (one.isPistolShot ? 8 : 0) - log.levelDb[i]),
      };
      for (const key of ['seconds', 'mmHg', 'db']) worst[key] = Math.max(worst[key], apart[key]);
      isSame = apart.seconds < SECONDS && apart.mmHg < MMHG && apart.db < DB;
    }
    if (isSame) passed++;
    else {
      failed++;
      bad++;
      if (bad <= 3)
        lines.push(`FAILED: ${scenario.id}, ${rate} mmHg/s from ${peakMmHg.toFixed(1)} at ${start} s`);
    }
  }
  lines.push(
    `${bad === 0 ? 'ok' : 'FAILED'}: ${CASES} let-downs ${isFaulty ? 'with faults' : 'by the textbook'}, 1 to 60 mmHg/s: ${bad} differ between beat and tick`,
  );
}
lines.push(
  `seen: ${sounds} sounds, furthest apart ${(1000 * worst.seconds).toFixed(4)} ms, ${worst.mmHg.toFixed(5)} mmHg, ${worst.db.toFixed(4)} dB`,
);
console.log(JSON.stringify({ name: 'Two faces of the simulated person', passed, failed, lines }));
process.exit(failed === 0 ? 0 : 1);
