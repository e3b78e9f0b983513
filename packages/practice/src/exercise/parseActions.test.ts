import { describe, expect, test } from 'vitest';
import { parseActions } from './parseActions.js';

const fault = (input: unknown) => {
  const read = parseActions(input);
  return read.ok ? [] : read.refusals.map(({ field, code }) => `${field} ${code}`);
};
const one = (more: object) => ({ actions: [{ tick: 0, ...more }] });

test('every kind of action is taken as it is', () => {
  const actions = [
    { tick: 0, kind: 'squeeze', share: 1 },
    { tick: 200, kind: 'valve', degrees: 20 },
    { tick: 400, kind: 'quick-release' },
    { tick: 600, kind: 'steady-rise', mmHgPerSecond: 20, toMmHg: 180 },
    { tick: 800, kind: 'steady-fall', mmHgPerSecond: 2.5, toMmHg: 0 },
    { tick: 900, kind: 'chest-piece', offMm: null, held: 'light' },
    { tick: 900, kind: 'chest-piece', offMm: 3, held: 'pressed-hard' },
    { tick: 940, kind: 'apex', isOn: true },
    { tick: 950, kind: 'arm', belowHeartCm: -5 },
    { tick: 960, kind: 'finger', isOn: true },
    { tick: 970, kind: 'talk', isTalking: false },
    { tick: 980, kind: 'arrange', hasLegsCrossed: false, isTalking: true, armBelowHeartCm: 0 },
    { tick: 990, kind: 'arrange', posture: 'standing' },
    { tick: 995, kind: 'cuff', bladder: 'large-adult' },
  ];
  expect(parseActions({ actions, seconds: 90 })).toEqual({ ok: true, value: { actions, seconds: 90 } });
});

test('without a length the visit goes on for a minute after the last action', () => {
  const read = parseActions({ actions: [{ tick: 2000, kind: 'quick-release' }] });
  expect(read.ok && read.value.seconds).toBe(70);
});

describe('refused, by field', () => {
  test.each([
    [undefined, ['/actions missing']],
    [{}, ['/actions missing']],
    [{ actions: 3 }, ['/actions out-of-range']],
    [one({ kind: 'shake' }), ['/actions/0/kind unknown-id']],
    [one({ kind: 'squeeze' }), ['/actions/0/share missing']],
    [one({ kind: 'squeeze', share: 1.01 }), ['/actions/0/share out-of-range']],
    [one({ kind: 'squeeze', share: 'hard' }), ['/actions/0/share not-a-number']],
    [one({ kind: 'valve', degrees: 120 }), []],
    [one({ kind: 'valve', degrees: 120.5 }), ['/actions/0/degrees out-of-range']],
    [one({ kind: 'finger' }), ['/actions/0/isOn missing']],
    [one({ kind: 'talk', isTalking: 'no' }), ['/actions/0/isTalking unknown-id']],
    [one({ kind: 'arrange', hasLegsCrossed: 1 }), ['/actions/0/hasLegsCrossed unknown-id']],
    [one({ kind: 'arrange', hadCaffeine: false, isCold: false, isCuffLoose: false, isOverSleeve: true }), []],
    [one({ kind: 'arrange', wasArmRaised: true, isQuieter: true, isSeatedAnew: true }), []],
    [one({ kind: 'arrange', isQuieter: 'yes' }), ['/actions/0/isQuieter unknown-id']],
    [one({ kind: 'arrange', hasTightSleeve: 'no' }), ['/actions/0/hasTightSleeve unknown-id']],
    [one({ kind: 'arrange', armBelowHeartCm: 60 }), []],
    [one({ kind: 'arrange', armBelowHeartCm: 61 }), ['/actions/0/armBelowHeartCm out-of-range']],
    [one({ kind: 'arrange', posture: 'lying' }), ['/actions/0/posture unknown-id']],
    [one({ kind: 'cuff' }), ['/actions/0/bladder missing']],
    [one({ kind: 'cuff', bladder: 'tent' }), ['/actions/0/bladder unknown-id']],
    [one({ kind: 'quick-release', hard: 1 }), ['/actions/0/hard unknown-field']],
    [{ actions: [], seconds: 0 }, ['/seconds out-of-range']],
    [{ actions: [], seconds: 1200 }, []],
    [{ actions: [], seconds: 1201 }, ['/seconds out-of-range']],
    [{ actions: [{ tick: 1.5, kind: 'quick-release' }] }, ['/actions/0/tick not-whole']],
    [{ actions: [{ tick: 240_001, kind: 'quick-release' }] }, ['/actions/0/tick out-of-range']],
    [
      {
        actions: [
          { tick: 5, kind: 'quick-release' },
          { tick: 4, kind: 'quick-release' },
        ],
      },
      ['/actions/1/tick out-of-order'],
    ],
  ])('%j', (input, expected) => {
    expect(fault(input)).toEqual(expected);
  });
});
