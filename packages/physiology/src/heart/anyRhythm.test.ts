import { expect, test } from 'vitest';
import { PROPER } from '../circumstances/circumstances.js';
import { makePerson } from '../person/makePerson.js';
import { BLANK } from '../scenario/blank.js';
import { parseScenario } from '../scenario/parseScenario.js';
import { BeatStream } from './beatStream.js';
import { RHYTHM_KINDS, VARIATIONS } from './rhythm.js';

const HURRIED = { ...PROPER, restMinutes: 0, observerMinutes: 2.5, measuredBy: 'doctor' } as const;

/** Every scenario at the corners of what `parseScenario` takes, of one rhythm. */
function* corners(kind: (typeof RHYTHM_KINDS)[number]) {
  for (const ratePerMinute of [25, 150, 200])
    for (const variation of ['athlete', 'failure', 'none'])
      for (const coupling of [0.4, 0.85])
        for (const most of [0, 60]) {
          yield parseScenario({
            ...BLANK,
            muffled: null,
            rhythm: {
              ...BLANK.rhythm,
              kind,
              ratePerMinute,
              variation,
              coupling,
              ectopicsPerMinute: 30,
              alternansMmHg: 10,
            },
            alerting: {
              ...BLANK.alerting,
              sittingPulsePerMinute: most,
              sittingBreathsPerMinute: most,
              whiteCoatMmHg: most,
            },
          });
        }
}

test.each(RHYTHM_KINDS)(
  '%s, however it is asked for: time always goes on, from beat to beat and breath to breath',
  (kind) => {
    const stream = new BeatStream();
    let met = 0;
    for (const scenario of corners(kind)) {
      if (!scenario.ok) continue;
      met += 1;
      for (let seed = 0; seed < 3; seed++) {
        stream.restart(makePerson(scenario.value, seed), HURRIED, null);
        let [interval, step, breath, pulse] = [9, 9, 9, 999];
        for (let beat = 0; beat < 150; beat++) {
          const before = stream.foot;
          stream.next();
          interval = Math.min(interval, stream.rr);
          step = Math.min(step, stream.foot - before);
          breath = Math.min(breath, stream.breath.duration);
          pulse = Math.min(pulse, stream.systolic - stream.diastolic);
        }
        expect([interval >= 0.2, step > 0, breath > 0.1, pulse > 0]).toEqual([true, true, true, true]);
      }
    }
    expect(met).toBeGreaterThan(20);
  },
);

test.each(['sinus', 'wenckebach'] as const)(
  '%s at 200 a minute is 200 a minute, with any variation',
  (kind) => {
    const stream = new BeatStream();
    for (const variation of VARIATIONS) {
      const scenario = { ...BLANK, rhythm: { ...BLANK.rhythm, kind, ratePerMinute: 200, variation } };
      let [sum, beats] = [0, 0];
      for (let seed = 0; seed < 8; seed++) {
        stream.restart(makePerson(scenario, seed), PROPER, null);
        for (let beat = 0; beat < 200; beat++, beats++) {
          stream.next();
          sum += stream.rr;
        }
      }
      // One beat in four is dropped: four intervals of the sinus node hold 4.6 of its turns by the book's cycle.
      const usual = kind === 'sinus' ? 0.3 : (0.3 * (1 + 0.94 + 0.9 + 1.76)) / 4;
      expect(Math.abs(sum / beats / usual - 1)).toBeLessThan(0.06);
    }
  },
);
