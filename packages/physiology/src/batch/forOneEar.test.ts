import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PROPER } from '../circumstances/circumstances.js';
import { SOUND_INSTRUMENT } from '../cuff/instrument.js';
import { makePerson } from '../person/makePerson.js';
import { SCENARIOS } from '../scenario/scenarios.js';
import { letDown, newLetDownResult } from './letDown.js';
import { SoundLog } from './soundLog.js';

const runs = fc.record({
  scenario: fc.constantFrom(...SCENARIOS),
  seed: fc.integer({ min: 0, max: 1e6 }),
  rate: fc.double({ min: 0.4, max: 20, noNaN: true }),
  over: fc.integer({ min: -30, max: 60 }),
  thresholdDb: fc.integer({ min: -5, max: 45 }),
  given: fc.record({
    armBelowHeartCm: fc.integer({ min: -10, max: 20 }),
    isTalking: fc.boolean(),
    isCuffLoose: fc.boolean(),
    wasReinflated: fc.boolean(),
    chestPiece: fc.constantFrom('light', 'pressed-hard', 'under-cuff'),
  }),
});

/** One let-down, its sounds over a threshold, and its result; kept for one ear, or worked out whole. */
function heardIn(run: typeof runs extends fc.Arbitrary<infer R> ? R : never, isForEar: boolean) {
  const { scenario, seed, rate, over, thresholdDb, given } = run;
  const log = new SoundLog();
  log.earDb = isForEar ? thresholdDb : null;
  const plan = { startSeconds: 12, peakMmHg: scenario.systolic + over, fall: rate, thresholdDb };
  const circumstances = { ...PROPER, ...given } as typeof PROPER;
  const out = letDown(
    makePerson(scenario, seed),
    circumstances,
    SOUND_INSTRUMENT,
    plan,
    newLetDownResult(),
    log,
  );
  const sounds = Array.from({ length: log.count }, (_, i) => ({
    beat: log.beat[i] as number,
    atSeconds: log.atSeconds[i] as number,
    cuffMmHg: log.cuffMmHg[i] as number,
    levelDb: log.levelDb[i] as number,
    isMuffled: log.phase[i] === 4,
  })).filter(({ levelDb }) => !(levelDb < thresholdDb));
  return { out, sounds };
}

// What is left out must change nothing: held against the same fall with every sound worked out, to the last bit.
test('for one ear sounds in the middle are not worked out, and all that it asks for is the same', () => {
  let sure = 0;
  fc.assert(
    fc.property(runs, (run) => {
      const whole = heardIn(run, false);
      const { out, sounds } = heardIn(run, true);
      expect(out).toEqual(whole.out);
      expect(sounds.map(({ beat, isMuffled }) => [beat, isMuffled])).toEqual(
        whole.sounds.map(({ beat, isMuffled }) => [beat, isMuffled]),
      );
      for (const [i, sound] of sounds.entries()) {
        if (Number.isNaN(sound.levelDb)) sure += 1;
        else expect(sound).toEqual(whole.sounds[i]);
      }
      for (const at of [0, 1, -1]) expect(sounds.at(at)).toEqual(whole.sounds.at(at));
    }),
    { numRuns: 1500, seed: 7 },
  );
  expect(sure).toBeGreaterThan(3000);
});
