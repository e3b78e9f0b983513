import {
  DEFAULT_RUN_RULES,
  gaugeRead,
  parseRun,
  runResult,
  UNKNOWN_RUN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import { BLANK, makePerson, PROPER, SOUND_INSTRUMENT } from '@evenfall/physiology';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PERFECT_OBSERVER } from '../observer/observer.js';
import { auscultate } from './auscultate.js';
import { still } from './still.js';

// docs/conventions.md section 6: certain for a regular pulse and an even deflation. `prove/observer.mjs` runs 100,000.
test('the bedside’s ranges hold the truth of a person with a regular pulse, read by a perfect observer', () => {
  const draw = fc.record({
    diastolic: fc.double({ min: 45, max: 110, noNaN: true }),
    pulsePressure: fc.double({ min: 25, max: 90, noNaN: true }),
    pulse: fc.double({ min: 45, max: 130, noNaN: true }),
    startSeconds: fc.double({ min: 9, max: 14, noNaN: true }),
    fall: fc.double({ min: 1.7, max: 6, noNaN: true }),
    seed: fc.nat(),
  });
  fc.assert(
    fc.property(draw, ({ diastolic, pulsePressure, pulse, startSeconds, fall, seed }) => {
      const systolic = diastolic + pulsePressure;
      const rhythm = { ...BLANK.rhythm, ratePerMinute: pulse, variation: 'none' } as const;
      const person = still(makePerson({ ...BLANK, systolic, diastolic, rhythm, muffledChance: 0 }, seed));
      const peakMmHg = 2 * Math.ceil((systolic + 30) / 2);
      const plan = { startSeconds, peakMmHg, fall, thresholdDb: 0 };
      const proper = { ...PROPER, firstInflationSeconds: 0 };
      const { first, last } = auscultate(
        person,
        proper,
        SOUND_INSTRUMENT,
        plan,
        PERFECT_OBSERVER.reader,
        1,
        0,
      );
      const moment = (what: string, mmHg: number, atSeconds: number) => ({
        what,
        mmHg: gaugeRead(mmHg, 2, 'nearest'),
        atSeconds,
      });
      const parsed = parseRun({
        method: 'auscultation',
        gaugeStepMmHg: 2,
        pulsePerMinute: pulse,
        peak: { mmHg: peakMmHg, atSeconds: startSeconds },
        moments: [
          moment('first sound', first.soundMmHg, first.soundSeconds),
          moment('last sound', last.soundMmHg, last.soundSeconds),
        ],
      });
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
      const result = runResult(parsed.value, UNKNOWN_RUN_CIRCUMSTANCES, DEFAULT_RUN_RULES);
      const [low, high] = result.systolicRange ?? [Number.NaN, Number.NaN];
      expect(systolic).toBeGreaterThanOrEqual(low);
      expect(systolic).toBeLessThanOrEqual(high);
      const [lowest, highest] = result.diastolicRange ?? [Number.NaN, Number.NaN];
      expect(diastolic).toBeGreaterThanOrEqual(lowest);
      expect(diastolic).toBeLessThanOrEqual(highest);
    }),
    { numRuns: 2000 },
  );
});
