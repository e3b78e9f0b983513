import {
  bladderFor,
  MODEL,
  PROPER,
  SCENARIOS,
  type Scenario,
  SOUND_INSTRUMENT,
  scenarioOf,
} from '@evenfall/physiology';
import { describe, expect, test } from 'vitest';
import { GOOD_OBSERVER } from '../observer/observer.js';
import { demonstrate } from './demonstrate.js';
import { parseExercise } from './parseExercise.js';

const shown = (scenario: Scenario) =>
  demonstrate(
    GOOD_OBSERVER,
    scenario,
    1,
    { ...PROPER, isTalking: true },
    { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm) },
  );
const quiet = shown(scenarioOf('quiet-morning') as Scenario);

test.each(SCENARIOS.filter((_, i) => i % 6 === 0).map((one) => [one.id, one] as const))(
  '%s: kept as JSON and read again, the exercise is the same',
  (_, scenario) => {
    const exercise = shown(scenario);
    expect(parseExercise(JSON.parse(JSON.stringify(exercise)))).toEqual({ ok: true, value: exercise });
  },
);

test('a count at the apex is kept; without one there is none, as before there was an apex', () => {
  const count = { of: 'pulse', n: 134, windowSeconds: 60, clock: 'any', first: 1 } as const;
  const evidence = { ...quiet.evidence, apex: { startSeconds: 12.5, count } };
  const entered = { ...quiet.entered, apexPerMinute: 134 };
  const read = parseExercise(JSON.parse(JSON.stringify({ ...quiet, evidence, entered })));
  expect(read).toMatchObject({ ok: true, value: { evidence, entered } });
  const none = parseExercise(JSON.parse(JSON.stringify(quiet)));
  expect(none.ok && 'apex' in none.value.evidence).toBe(false);
  const wrong = parseExercise({ ...quiet, evidence: { ...evidence, apex: { startSeconds: -1, count } } });
  expect(wrong).toMatchObject({ ok: false, refusals: [{ code: 'out-of-range' }] });
});

test('what was left out is the textbook, a sound instrument and nothing', () => {
  const { scenario, seed, actions } = quiet;
  const read = parseExercise({ schema: 1, scenario, seed, actions });
  expect(read).toMatchObject({
    ok: true,
    value: {
      circumstances: PROPER,
      instrument: SOUND_INSTRUMENT,
      evidence: { run: null },
      entered: { systolic: null },
    },
  });
});

// docs/conventions.md section 9: a reader accepts every older schema number.
test('one that kept its last reading alone is the same with none before it; several stay in their order', () => {
  const { earlier: _, ...first } = quiet;
  expect(parseExercise({ ...first, schema: 1 })).toEqual({ ok: true, value: quiet });
  const { run } = quiet.evidence;
  const { systolic, muffled, diastolic } = quiet.entered;
  const earlier = [12, 90].map((startSeconds) => ({
    ...run,
    startSeconds,
    entered: { systolic, muffled, diastolic },
  }));
  const several = { ...quiet, earlier };
  expect(parseExercise(JSON.parse(JSON.stringify(several)))).toEqual({ ok: true, value: several });
});

// docs/conventions.md section 9: a new shape has the next number, so that a program that does not know it refuses it by that.
test.each([2, 3])(
  'one of number %i is read as one of the newest, which has taps and somebody who sits down anew',
  (schema) => {
    expect(quiet.schema).toBe(4);
    expect(parseExercise({ ...quiet, schema })).toEqual({ ok: true, value: quiet });
  },
);

// docs/conventions.md section 9: what is kept names the model that it was made with; before it was written down there was one.
test('the model that it was practised with is kept; without one it is the first', () => {
  const shown = demonstrate(GOOD_OBSERVER, SCENARIOS[0] as Scenario, 2, PROPER, SOUND_INSTRUMENT);
  const { model, ...older } = shown;
  expect(model).toBe(MODEL);
  const read = (given: object) => {
    const parsed = parseExercise(given);
    return parsed.ok ? parsed.value.model : parsed.refusals.map(({ field, code }) => `${field} ${code}`);
  };
  expect(read(older)).toBe(1);
  expect(read({ ...shown, model: 7 })).toBe(7);
  expect(read({ ...shown, model: 0 })).toEqual(['/model out-of-range']);
  expect(read({ ...shown, model: 1.5 })).toEqual(['/model not-whole']);
});

// Bedside handbook 3, row 18: of lying only the size of the effect is known, so it is no posture any more. What was kept with it
// by the first model, or begun with it on a device, is no less a record.
test.each([undefined, 1, MODEL])(
  'an exercise kept lying (model %s) is of the first model, and not refused',
  (model) => {
    const { circumstances } = quiet;
    const read = parseExercise({ ...quiet, model, circumstances: { ...circumstances, posture: 'lying' } });
    expect(read).toEqual({ ok: true, value: { ...quiet, model: 1, circumstances } });
    expect(MODEL).not.toBe(1);
  },
);

describe('refused, by field', () => {
  const faults = (more: object) => {
    const read = parseExercise({ ...quiet, ...more });
    return read.ok ? [] : read.refusals.map(({ field, code }) => `${field} ${code}`);
  };
  test.each([
    [{ schema: 5 }, ['/schema out-of-range']],
    [{ schema: 0 }, ['/schema out-of-range']],
    [{ schema: 1 }, ['/earlier unknown-field']],
    [{ earlier: 3 }, ['/earlier out-of-range']],
    [{ earlier: [{ startSeconds: 1 }] }, ['/earlier/0/run/moments missing']],
    [
      { earlier: [{ ...quiet.evidence.run, entered: { systolic: 301, pulsePerMinute: 60 } }] },
      ['/earlier/0/entered/systolic out-of-range', '/earlier/0/entered/pulsePerMinute unknown-field'],
    ],
    [{ seed: -1 }, ['/seed out-of-range']],
    [{ seed: 1.5 }, ['/seed not-whole']],
    [{ name: 'A' }, ['/name unknown-field']],
    [{ circumstances: { isTalking: 'yes' } }, ['/circumstances/isTalking unknown-id']],
    [{ circumstances: { posture: 'upside-down' } }, ['/circumstances/posture unknown-id']],
    [{ circumstances: { armBelowHeartCm: 61 } }, ['/circumstances/armBelowHeartCm out-of-range']],
    [{ instrument: { bladder: 'tiny' } }, ['/instrument/bladder unknown-id']],
    [{ actions: [{ tick: 0, kind: 'shake' }] }, ['/actions/0/kind unknown-id']],
    [{ entered: { systolic: 301 } }, ['/entered/systolic out-of-range']],
    [{ entered: { systolic: 300 } }, []],
    [{ evidence: { wasShown: 1 } }, ['/evidence/wasShown unknown-id']],
    [
      { evidence: { run: { startSeconds: 1, run: { method: 'auscultation' } } } },
      ['/evidence/run/run/moments missing'],
    ],
    [{ scenario: 3 }, ['/scenario missing']],
  ])('%j', (more, expected) => {
    const found = faults(more);
    if (expected.length === 0) expect(found).toEqual([]);
    else expect(found).toEqual(expect.arrayContaining(expected));
  });
});

test('what was noticed with a count is kept beside it; of a count that was kept before, nothing is said', () => {
  const count = { of: 'pulse', n: 20, windowSeconds: 15, clock: 'any', first: 1 };
  const pulseOf = (more: object) => {
    const read = parseExercise({
      ...quiet,
      evidence: { ...quiet.evidence, pulse: { startSeconds: 4, count, ...more } },
    });
    return read.ok ? read.value.evidence.pulse : read.refusals.map(({ field, code }) => `${field} ${code}`);
  };
  expect(pulseOf({})).toEqual({ startSeconds: 4, count: expect.objectContaining({ n: 20 }) });
  const noticed = { rhythmFelt: 'irregular', strength: 'weak', site: null };
  expect(pulseOf({ noticed })).toMatchObject({ startSeconds: 4, noticed });
  expect(pulseOf({ noticed: { rhythmFelt: 'regular' } })).toMatchObject({
    noticed: { rhythmFelt: 'regular', strength: null, site: null },
  });
  expect(pulseOf({ noticed: { ...noticed, rhythmFelt: 'odd' } })).toEqual([
    '/evidence/pulse/noticed/rhythmFelt unknown-id',
  ]);
  expect(pulseOf({ noticed: { ...noticed, depth: 'deep' } })).toEqual([
    '/evidence/pulse/noticed/depth unknown-field',
  ]);
});
