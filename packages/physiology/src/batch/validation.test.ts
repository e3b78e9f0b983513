import { describe, expect, test } from 'vitest';
import { normalOf } from '../chance/normal.js';
import { type Circumstances, PROPER } from '../circumstances/circumstances.js';
import { type Instrument, SOUND_INSTRUMENT } from '../cuff/instrument.js';
import { makePerson } from '../person/makePerson.js';
import type { Person } from '../person/person.js';
import { BLANK } from '../scenario/blank.js';
import type { Scenario } from '../scenario/scenario.js';
import { truth } from '../truth/truthAt.js';
import { letDown, newLetDownResult } from './letDown.js';
import type { LetDownPlan } from './plan.js';
import { SoundLog } from './soundLog.js';

// The cheap part of the validation table of the model book (physiology handbook 18), over a few hundred people each; the
// whole of it, over thousands, is `npm run prove person`.
const N = 300;
const people = (some: Partial<Scenario> = {}) =>
  Array.from({ length: N }, (_, seed) => makePerson({ ...BLANK, ...some }, seed));
const mean = (all: readonly number[]) => all.reduce((sum, x) => sum + x, 0) / all.length;
const sd = (all: readonly number[]) => Math.sqrt(mean(all.map((x) => (x - mean(all)) ** 2)));
const run = (
  person: Person,
  plan: Partial<LetDownPlan> = {},
  circumstances: Circumstances = PROPER,
  instrument: Instrument = SOUND_INSTRUMENT,
) =>
  letDown(
    person,
    circumstances,
    instrument,
    { startSeconds: 3, peakMmHg: person.rest.systolic + 45, fall: 2.5, thresholdDb: 5, ...plan },
    newLetDownResult(),
  );

describe('row', () => {
  test('5, 6, 7: a trained reader is within 2 mmHg of the long run, and 5.7 under and 5.5 over the artery', () => {
    const found = people().map((person, i) => {
      const out = run(person);
      const { longRun, arterial } = truth(person, PROPER, out.firstSeconds);
      const late = 2.5 * (0.2 + 0.05 * normalOf(1, i));
      return [
        out.firstCuffMmHg - late - longRun.systolic,
        out.lastCuffMmHg - late - longRun.diastolic,
        out.firstCuffMmHg - arterial.systolic,
        out.lastCuffMmHg - arterial.diastolic,
      ] as const;
    });
    const of = (k: 0 | 1 | 2 | 3) => found.map((one) => one[k]);
    expect(Math.abs(mean(of(0)))).toBeLessThan(2);
    expect(Math.abs(mean(of(1)))).toBeLessThan(2);
    for (const k of [0, 1] as const) {
      expect(sd(of(k))).toBeGreaterThan(1.2);
      expect(sd(of(k))).toBeLessThan(3.7);
    }
    expect(Math.abs(mean(of(2)) + 5.7)).toBeLessThan(2);
    expect(Math.abs(mean(of(3)) - 5.5)).toBeLessThan(2);
  });

  test('8: the pulse comes back under the finger 5.2 mmHg after the first sound', () => {
    const found = people().map((person) => {
      const out = run(person, { thresholdDb: 0 });
      return out.pulseCuffMmHg - out.firstCuffMmHg;
    });
    expect(Math.abs(mean(found) + 5.2)).toBeLessThan(1);
  });

  test('9: a loss of hearing of 25 dB reads 1.55 lower and 4.32 higher', () => {
    const found = people({ systolic: 136, diastolic: 84 }).map((person) => {
      const [well, hard] = [0, 25].map((thresholdDb) => run(person, { thresholdDb }));
      return [
        (hard?.firstCuffMmHg ?? 0) - (well?.firstCuffMmHg ?? 0),
        (hard?.lastCuffMmHg ?? 0) - (well?.lastCuffMmHg ?? 0),
      ] as const;
    });
    expect(Math.abs(mean(found.map(([s]) => s)) + 1.55)).toBeLessThan(1);
    expect(Math.abs(mean(found.map(([, d]) => d)) - 4.32)).toBeLessThan(1.5);
  });

  test.each([
    ['33: a hand in the lap', { armBelowHeartCm: 5 }, 'adult', 29, 3.9, 1.5, 4, 1.5],
    // Liu 2024 has +6.5/+4.4. A column of blood adds the same to both numbers, so their mean says how high it was: 5.45 / 0.776 = 7.0 cm
    // (of the lap 3.95 / 0.776 = 5.1). The handbook's 8 cm go by the systolic alone, and then miss the diastolic by 1.8.
    ['33: an arm at the side', { armBelowHeartCm: 7 }, 'adult', 29, 6.5, 1.5, 4.4, 1.5],
    ['34: a cuff one size too large', {}, 'adult', 24.4, -3.6, 1, -1.3, 1],
    ['34: one size too small', {}, 'adult', 38.1, 4.8, 1, 1.8, 1],
    ['34: two sizes too small', {}, 'adult', 47.6, 19.5, 3, 7.4, 2],
    ['37: listening under the cuff', { chestPiece: 'under-cuff' }, 'adult', 29, 1, 1.5, -10.6, 3],
  ] as [string, Partial<Circumstances>, Instrument['bladder'], number, number, number, number, number][])(
    '%s',
    (_, fault, bladder, armCm, systolic, allowed, diastolic, allowedDiastolic) => {
      const fits = { ...BLANK, armCm: 29 };
      const found = Array.from({ length: N }, (_, seed) => {
        const right = run(makePerson(fits, seed));
        const wrong = run(
          makePerson({ ...fits, armCm }, seed),
          {},
          { ...PROPER, ...fault },
          {
            ...SOUND_INSTRUMENT,
            bladder,
          },
        );
        return [wrong.firstCuffMmHg - right.firstCuffMmHg, wrong.lastCuffMmHg - right.lastCuffMmHg] as const;
      });
      expect(Math.abs(mean(found.map(([s]) => s)) - systolic)).toBeLessThan(allowed);
      expect(Math.abs(mean(found.map(([, d]) => d)) - diastolic)).toBeLessThan(allowedDiastolic);
    },
  );

  test('12: pumped to the palpated systolic and 30 more, no gap swallows the first sounds', () => {
    const gapped = people({ systolic: 178, diastolic: 96, gapChance: 1 });
    const missed = gapped.filter((person) => {
      const felt = run(person).pulseCuffMmHg;
      return run(person, { peakMmHg: felt + 30 }).firstCuffMmHg < (person.gap?.bottomMmHg ?? 0) + 4;
    });
    expect(missed.length).toBeLessThan(0.02 * N);
    const short = gapped.filter(
      (person) => run(person, { peakMmHg: 160 }).firstCuffMmHg < (person.gap?.bottomMmHg ?? 0) + 6,
    );
    expect(short.length).toBeGreaterThan(0.2 * N);
  });

  // Section 8.5 gives 93 %, computed. What a finger misses is 5.2 (SD 2.5), the fall to the next beat half of 2.5 mmHg/s x 0.857 s = 1.07
  // (SD 0.62): 10 - 6.27 = 3.73 over an SD of 2.58 is 1.45, and 92.6 % lie under: that of a pressure that stands still. As the book's own
  // section 3.1 has it wander (row 22: 21 mmHg over ten minutes) the SD is 4.5 and the share 86: the handbook's 93 does not follow.
  test('pumped to 10 over the palpated systolic: over the true one as the book has it in a pressure that stands still, less often in one that wanders', () => {
    const rhythm = { ...BLANK.rhythm, ratePerMinute: 70 };
    const all = Array.from({ length: 4 * N }, (_, seed) =>
      makePerson({ ...BLANK, systolic: 178, diastolic: 96, rhythm }, seed),
    );
    const over = (change: Partial<Person>) => {
      const found = all.map((made) => {
        const person = { ...made, ...change };
        return run(person).pulseCuffMmHg + 10 >= person.rest.systolic;
      });
      return found.filter(Boolean).length / found.length;
    };
    const still = { slowSdMmHg: 0, slowWaveMmHg: 0, beatSdMmHg: 0, breathingSwingMmHg: 0 };
    expect(Math.abs(over(still) - 0.93)).toBeLessThan(0.03);
    expect(Math.abs(over({}) - 0.857)).toBeLessThan(0.04);
  });

  test('40: a paradox of 18 is read as about 12 at 2 mmHg a second', () => {
    const rhythm = { ...BLANK.rhythm, ratePerMinute: 110, variation: 'none' as const };
    const log = new SoundLog();
    const found = people({
      breathingSwingMmHg: 18,
      rhythm,
      breathing: { kind: 'fast', ratePerMinute: 24, cycleSeconds: null },
    }).map((made) => {
      const person = { ...made, slowWaveMmHg: 0, slowSdMmHg: 0 };
      letDown(
        person,
        PROPER,
        SOUND_INSTRUMENT,
        { startSeconds: 3, peakMmHg: 140, fall: 2, thresholdDb: 0 },
        newLetDownResult(),
        log,
      );
      // From below: where the last beat is missing, going up from the loud ones.
      let all = log.count - 1;
      while (all > 0 && (log.cuffMmHg[all] ?? 0) < person.rest.diastolic + 12) all--;
      while (all > 0 && (log.beat[all] ?? 0) - (log.beat[all - 1] ?? 0) === 1) all--;
      return (log.cuffMmHg[0] ?? 0) - (log.cuffMmHg[all] ?? 0);
    });
    expect(Math.abs(mean(found) - 12)).toBeLessThan(2.3);
  });
});

test('a result is used again without a trace of the run before it', () => {
  const out = newLetDownResult();
  const plan = { startSeconds: 3, peakMmHg: 170, fall: 2.5, thresholdDb: 5 };
  const [one, other] = [makePerson(BLANK, 1), makePerson({ ...BLANK, systolic: 140, soundDb: 4 }, 2)];
  const alone = { ...letDown(one, PROPER, SOUND_INSTRUMENT, plan, newLetDownResult()) };
  letDown(other, { ...PROPER, wasReinflated: true }, SOUND_INSTRUMENT, plan, out);
  expect(out.sounds).toBe(0);
  expect(out.firstCuffMmHg).toBeNaN();
  expect(letDown(one, PROPER, SOUND_INSTRUMENT, plan, out)).toEqual(alone);
});

test('a fall in stretches, as one whole where the rates agree', () => {
  const person = makePerson(BLANK, 4);
  const plan = { startSeconds: 3, peakMmHg: 160, thresholdDb: 5 };
  const whole = letDown(person, PROPER, SOUND_INSTRUMENT, { ...plan, fall: 2.5 }, newLetDownResult());
  const parts = [
    { mmHgPerSecond: 2.5, toMmHg: 130 },
    { mmHgPerSecond: 2.5, toMmHg: 90 },
    { mmHgPerSecond: 2.5, toMmHg: 0 },
  ];
  const same = letDown(person, PROPER, SOUND_INSTRUMENT, { ...plan, fall: parts }, newLetDownResult());
  expect(same.lastCuffMmHg).toBeCloseTo(whole.lastCuffMmHg, 6);
  const fast = [{ mmHgPerSecond: 10, toMmHg: 130 }, ...parts.slice(1)];
  const sooner = letDown(person, PROPER, SOUND_INSTRUMENT, { ...plan, fall: fast }, newLetDownResult());
  expect(whole.firstSeconds - sooner.firstSeconds).toBeGreaterThan(7);
  expect(Math.abs(whole.firstCuffMmHg - sooner.firstCuffMmHg)).toBeLessThan(12);
});
