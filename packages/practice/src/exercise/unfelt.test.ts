import {
  type Action,
  bladderFor,
  PROPER,
  type Scenario,
  SOUND_INSTRUMENT,
  scenarioOf,
} from '@evenfall/physiology';
import { describe, expect, test } from 'vitest';
import { oneThingOf } from '../fault/oneThing.js';
import { GOOD_OBSERVER } from '../observer/observer.js';
import { debrief, judge } from './debrief.js';
import { demonstrate } from './demonstrate.js';
import type { Exercise } from './exercise.js';
import { resultRows } from './resultRows.js';

const quiet = scenarioOf('quiet-morning') as Scenario;
const heard = demonstrate(GOOD_OBSERVER, quiet, 1, PROPER, {
  ...SOUND_INSTRUMENT,
  bladder: bladderFor(quiet.armCm),
});
const { fall } = debrief(heard);
const peakSeconds = fall?.peakSeconds ?? 0;

/** The same letting down by feel, the number typed; the finger comes and goes as given, in seconds from the highest on. */
function felt(mmHg: number, finger: readonly (readonly [number, boolean])[]): Exercise {
  const { run } = heard.evidence;
  if (run === null) throw new Error('no run');
  const hands = finger.map(
    ([after, isOn]): Action => ({ kind: 'finger', isOn, tick: Math.round((peakSeconds + after) * 200) }),
  );
  const others = heard.actions.filter(({ kind }) => kind !== 'finger' && kind !== 'chest-piece');
  return {
    ...heard,
    actions: [...others, ...hands].sort((a, b) => a.tick - b.tick),
    evidence: {
      ...heard.evidence,
      run: {
        startSeconds: peakSeconds,
        run: {
          ...run.run,
          method: 'palpation',
          palpated: { lostMmHg: null, backMmHg: null },
          moments: [{ what: 'pulse back', mmHg, atSeconds: null }],
        },
      },
    },
    entered: { ...heard.entered, systolic: mmHg, diastolic: null, muffled: null },
  };
}

const ON: readonly (readonly [number, boolean])[] = [[-5, true]];
/** What was to be had by feel, on a mark of the gauge. */
const right = Math.round((judge(felt(100, ON)).had.systolic?.mmHg ?? 0) / 2) * 2;

test('with a finger on the wrist the number at which the pulse came back is accepted', () => {
  const found = debrief(felt(right, ON));
  expect(found).toMatchObject({ fromNothing: null, isByFeel: true, accepted: { systolic: true } });
  expect(found.ledger.systolic).not.toBeNull();
});

// A pressure by feel is where the pulse comes back under the finger (docs/conventions.md section 6; bedside handbook 3.4).
describe.each([
  ['no finger on the wrist', []],
  ['a finger that was gone before the pulse came back', [[-5, true], [1, false]]], // biome-ignore format: one thought
] as const)('the very number that was to be had, with %s', (_, finger) => {
  const found = debrief(felt(right, finger));

  test('nothing was felt that it could be of, so it is not accepted and held against nothing', () => {
    expect(found).toMatchObject({ fromNothing: 'unfelt', accepted: { systolic: false, diastolic: null } });
    expect(resultRows(found).map(({ error, parts, isFromNothing }) => [error, parts, isFromNothing])).toEqual(
      [
        [null, null, true],
        [null, null, false],
      ],
    );
  });

  test('neither the table of habits nor the steps of the figure give a number', () => {
    expect(found.ledger).toEqual({ systolic: null, diastolic: null });
    expect(
      found.costs.costs.every(({ systolic, diastolic }) => systolic === null && diastolic === null),
    ).toBe(true);
    expect(found.costs).toMatchObject({ left: null, hidBy: null });
  });

  test('the first thing to do is to keep the fingers on the wrist', () => {
    expect(oneThingOf(found.costs, found.conduct)).toMatchObject({
      kind: 'conduct',
      conduct: { code: 'nothing-felt', doInstead: 'keep-fingers-on' },
    });
  });
});
