import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PROPER } from '../circumstances/circumstances.js';
import { makePerson } from '../person/makePerson.js';
import { SCENARIOS } from '../scenario/scenarios.js';
import { keptBeat } from './beating.js';
import { BeatStream } from './beatStream.js';

// Nothing outside the project knows these beats: the short way through them is held against the long one.
test('a beat told by its bounds lies within them, and one left undone is finished as the same beat', () => {
  const told = { under: 0, over: 0 };
  fc.assert(
    fc.property(fc.constantFrom(...SCENARIOS), fc.integer({ min: 0, max: 1e9 }), (scenario, seed) => {
      const person = makePerson(scenario, seed);
      const whole = new BeatStream();
      const short = new BeatStream();
      whole.restart(person, PROPER, 3);
      short.restart(person, PROPER, 3);
      for (let beat = 0; beat < 80; beat++) {
        whole.next();
        short.begin();
        for (let apart = -30; apart <= 30; apart += 2) {
          const high = whole.systolic + apart;
          if (short.isSurelyUnder(high)) {
            told.under += 1;
            expect(whole.systolic).toBeLessThan(high);
          }
          const low = whole.diastolic + apart;
          if (short.isSurelyOver(low, 12)) {
            told.over += 1;
            expect(whole.diastolic).toBeGreaterThan(low);
            expect(whole.systolic - whole.diastolic).toBeGreaterThan(12);
          }
        }
        // Every third is left undone, as most are in a batch.
        if (beat % 3 !== 0) continue;
        short.finish();
        expect(keptBeat(short)).toEqual(keptBeat(whole));
      }
    }),
    { numRuns: 60, seed: 6 },
  );
  expect(told.under).toBeGreaterThan(1000);
  expect(told.over).toBeGreaterThan(1000);
});
