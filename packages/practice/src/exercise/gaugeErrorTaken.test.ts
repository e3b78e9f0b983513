import { PROPER, type Scenario, SOUND_INSTRUMENT, scenarioOf } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { GOOD_OBSERVER } from '../observer/observer.js';
import { debrief } from './debrief.js';
import { demonstrate } from './demonstrate.js';
import type { Exercise } from './exercise.js';
import { parseActions } from './parseActions.js';
import { instrumentAt } from './replay.js';

const quiet = scenarioOf('quiet-morning') as Scenario;
/** A gauge that stands at six with no pressure on it, and a hose that leaks: those of a person who comes in (`scenarios`). */
const OFF = { ...SOUND_INSTRUMENT, zeroOffsetMmHg: 6, leakMmHgPerMinute: 12 };
const shown = (instrument: typeof OFF) => demonstrate(GOOD_OBSERVER, quiet, 5, PROPER, instrument);
const codesOf = (exercise: Exercise) => debrief(exercise).costs.costs.map(({ code }) => code);

/** The same with so much taken off each number. */
function lessBy(mmHg: number, exercise: Exercise): Exercise {
  const { run } = exercise.evidence;
  const less = (value: number | null) => (value === null ? null : value - mmHg);
  const { entered } = exercise;
  return {
    ...exercise,
    entered: { ...entered, systolic: less(entered.systolic), diastolic: less(entered.diastolic) },
    evidence: {
      ...exercise.evidence,
      run:
        run === null
          ? null
          : {
              ...run,
              run: {
                ...run.run,
                moments: run.run.moments.map((one) => ({ ...one, mmHg: one.mmHg - mmHg })),
              },
            },
    },
  };
}

test('what a gauge that stands at six shows is six too much; with six taken off it costs nothing, and no needle was misread', () => {
  const asShown = shown(OFF);
  expect(codesOf(asShown)).toContain('gauge-off');
  expect(codesOf(asShown)).not.toContain('misread-needle');
  const { accepted } = debrief(asShown);
  expect([accepted.systolic, accepted.diastolic]).toEqual([false, false]);
  const taken = lessBy(6, asShown);
  expect(codesOf(taken)).not.toContain('gauge-off');
  expect(codesOf(taken)).not.toContain('misread-needle');
  expect(debrief(taken).accepted).toMatchObject({ systolic: true, diastolic: true });
});

test('a number that is of neither gauge was misread, and the gauge is off as well', () => {
  const wrong = codesOf(lessBy(-14, shown(OFF)));
  expect(wrong).toEqual(expect.arrayContaining(['gauge-off', 'misread-needle']));
  // A right gauge from which six was taken off is no gauge whose error was known.
  expect(codesOf(lessBy(6, shown(SOUND_INSTRUMENT)))).toContain('misread-needle');
});

/** The same with the numbers kept in mind and typed, none of them marked in time. */
function fromMemory(exercise: Exercise): Exercise {
  const { evidence } = exercise;
  const { run } = evidence;
  if (run === null) throw new Error('not read');
  const moments = run.run.moments.map((one) => ({ ...one, atSeconds: null }));
  return { ...exercise, evidence: { ...evidence, run: { ...run, run: { ...run.run, moments } } } };
}

test('the same of numbers that were kept in mind and typed', () => {
  const asShown = fromMemory(shown(OFF));
  expect(codesOf(asShown)).toContain('gauge-off');
  expect(debrief(asShown).accepted).toMatchObject({ systolic: false, diastolic: false });
  const taken = fromMemory(lessBy(6, shown(OFF)));
  expect(codesOf(taken)).not.toContain('gauge-off');
  expect(codesOf(taken)).not.toContain('off-the-sound');
  expect(debrief(taken).accepted).toMatchObject({ systolic: true, diastolic: true });
  // Of a gauge that is hardly off nobody can tell.
  const hardly = { ...OFF, zeroOffsetMmHg: 1 };
  expect(codesOf(fromMemory(lessBy(1, shown(hardly))))).toContain('gauge-off');
  expect(codesOf(fromMemory(lessBy(-14, shown(OFF))))).toEqual(
    expect.arrayContaining(['gauge-off', 'off-the-sound']),
  );
});

test('with another gauge and hose taken first, the visit is that of a sound one to the last bit', () => {
  const sound = shown(SOUND_INSTRUMENT);
  const swapped: Exercise = {
    ...sound,
    instrument: OFF,
    actions: [{ tick: 0, kind: 'gauge' }, ...sound.actions],
  };
  expect(instrumentAt(swapped, 1)).toEqual(SOUND_INSTRUMENT);
  const [one, other] = [debrief(swapped), debrief(sound)];
  expect(one.cuffMmHg).toEqual(other.cuffMmHg);
  expect(one.costs).toEqual(other.costs);
  expect(one.ledger).toEqual(other.ledger);
  expect(instrumentAt({ ...swapped, actions: sound.actions }, 1)).toEqual(OFF);
});

test('it is read from outside like any other movement of the hands', () => {
  expect(parseActions({ actions: [{ tick: 3, kind: 'gauge' }], seconds: 10 })).toEqual({
    ok: true,
    value: { actions: [{ tick: 3, kind: 'gauge' }], seconds: 10 },
  });
});
