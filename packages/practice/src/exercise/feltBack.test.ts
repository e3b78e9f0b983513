import { type Action, PROPER, type Scenario, SOUND_INSTRUMENT, scenarioOf } from '@evenfall/physiology';
import { describe, expect, test } from 'vitest';
import { debrief } from './debrief.js';
import { EXERCISE_SCHEMA, type Exercise, NO_EVIDENCE, NOTHING_ENTERED } from './exercise.js';
import { feltBack } from './feltBack.js';
import { replay } from './replay.js';

const quiet = scenarioOf('quiet-morning') as Scenario;
const PEAK_SECONDS = 12;

/** Pumped to 160 and let down evenly from the 12th second on; the finger comes and goes as given, in seconds. */
function letDown(finger: readonly (readonly [number, boolean])[], mmHg = 110): Exercise {
  const hands: Action[] = [
    { tick: 400, kind: 'steady-rise', mmHgPerSecond: 20, toMmHg: 160 },
    { tick: PEAK_SECONDS * 200, kind: 'steady-fall', mmHgPerSecond: 2.5, toMmHg: 40 },
    ...finger.map(([at, isOn]): Action => ({ tick: at * 200, kind: 'finger', isOn })),
  ];
  return {
    schema: EXERCISE_SCHEMA,
    model: 1,
    scenario: quiet,
    seed: 3,
    circumstances: PROPER,
    instrument: SOUND_INSTRUMENT,
    actions: hands.sort((a, b) => a.tick - b.tick),
    seconds: 70,
    earlier: [],
    evidence: {
      ...NO_EVIDENCE,
      run: {
        startSeconds: PEAK_SECONDS,
        run: {
          method: 'palpation',
          gaugeStepMmHg: 2,
          pulsePerMinute: null,
          palpated: { lostMmHg: null, backMmHg: null },
          peak: { mmHg: 160, atSeconds: 0 },
          reinflated: false,
          moments: [{ what: 'pulse back', mmHg, atSeconds: null }],
        },
      },
    },
    entered: { ...NOTHING_ENTERED, systolic: mmHg },
  };
}
const felt = (finger: readonly (readonly [number, boolean])[]) => {
  const exercise = letDown(finger);
  return feltBack(exercise, replay(exercise), PEAK_SECONDS, 60);
};

describe('a pressure by feel', () => {
  // Danish 2020 by physiology handbook 10: felt 5.2 mmHg (SD 2.5) below where it is heard, here 116 and what alerting adds.
  test('with a finger on the wrist the pulse comes back some way under the systolic', () => {
    const { hadFinger, first } = felt([[1, true]]);
    expect(hadFinger).toBe(true);
    expect(first?.cuffMmHg).toBeGreaterThan(100);
    expect(first?.cuffMmHg).toBeLessThan(124);
  });

  test('without one nothing is felt, however long the pulse has been back', () => {
    expect(felt([])).toEqual({ hadFinger: false, first: null });
    expect(felt([[1, true], [11, false]])).toEqual({ hadFinger: false, first: null }); // biome-ignore format: one thought
  });

  test('one that comes late feels the first pulse after it came', () => {
    const { hadFinger, first } = felt([[45, true]]);
    expect(hadFinger).toBe(true);
    expect(first?.atSeconds).toBeGreaterThanOrEqual(45);
    expect(first?.atSeconds).toBeLessThan(47);
  });

  test('a pulse that has not come back yet is not felt', () => {
    expect(felt([[1, true], [14, false]])).toEqual({ hadFinger: true, first: null }); // biome-ignore format: one thought
  });

  test('the debrief says so, and of a reading by ear says nothing', () => {
    expect(debrief(letDown([])).feltBack).toEqual({ hadFinger: false, first: null });
    expect(debrief(letDown([[1, true]])).feltBack?.first).not.toBeNull();
    const heard = { ...letDown([]), evidence: NO_EVIDENCE };
    expect(debrief(heard).feltBack).toBeNull();
  });
});
