import {
  type Action,
  bladderFor,
  PROPER,
  type Scenario,
  SOUND_INSTRUMENT,
  scenarioOf,
  TICKS_PER_SECOND,
} from '@evenfall/physiology';
import { describe, expect, test } from 'vitest';
import { debrief, judge } from '../exercise/debrief.js';
import { demonstrate, withReading } from '../exercise/demonstrate.js';
import { NO_EVIDENCE, NOTHING_ENTERED } from '../exercise/exercise.js';
import { GOOD_OBSERVER } from '../observer/observer.js';

const quiet = scenarioOf('quiet-morning') as Scenario;
const exercise = demonstrate(GOOD_OBSERVER, quiet, 1, PROPER, {
  ...SOUND_INSTRUMENT,
  bladder: bladderFor(quiet.armCm),
});

// Handbook of assessment 1: a mark parts ear from eye and pen; of the number without one that is not known.
describe('one of two sounds marked in time', () => {
  const unmarked = (...which: readonly number[]) => {
    const { run } = exercise.evidence;
    if (run === null) throw new Error('no run');
    const moments = run.run.moments.map((one, k) => (which.includes(k) ? { ...one, atSeconds: null } : one));
    return { ...exercise, evidence: { ...exercise.evidence, run: { ...run, run: { ...run.run, moments } } } };
  };

  test.each([
    [[], []],
    [[0], ['first-not-marked']],
    [[1], ['last-not-marked']],
    [[0, 1], ['not-marked']],
  ])('without the marks %j it says %j', (which, expected) => {
    expect(debrief(unmarked(...which)).conduct.map(({ code }) => code)).toEqual(expected);
  });

  test('the one that was marked is parted by its mark, the other is not', () => {
    const { ledger } = judge(unmarked(1));
    const { misheard, lag, gauge, digit } = judge(exercise).ledger.systolic ?? {};
    expect(ledger.systolic).toMatchObject({ misheard, lag, gauge, digit, unsplit: 0 });
    expect(ledger.diastolic).toMatchObject({ lag: 0, gauge: 0, digit: 0 });
    expect(judge(unmarked(0)).ledger.systolic?.lag).toBe(0);
  });
});

// Bedside handbook 3.6: two to three mmHg a second. Physiology handbook 7: over a minute blood gathers in the arm.
describe('let down too slowly', () => {
  /** Down to 78 (just over where the sounds of this person end) at the first rate, from there at the second. */
  const fallen = (first: number, second: number, from = 140) => {
    const at = (seconds: number) => Math.round(seconds * TICKS_PER_SECOND);
    const slowSeconds = (from - 78) / first;
    const blank = {
      ...exercise,
      actions: [
        { tick: at(2), kind: 'steady-rise', mmHgPerSecond: 20, toMmHg: from },
        { tick: at(12), kind: 'steady-fall', mmHgPerSecond: first, toMmHg: 78 },
        { tick: at(12 + slowSeconds), kind: 'steady-fall', mmHgPerSecond: second, toMmHg: 0 },
        { tick: at(12 + slowSeconds + 40), kind: 'quick-release' },
      ] satisfies Action[],
      seconds: 12 + slowSeconds + 50,
    };
    return debrief(
      withReading({ ...blank, evidence: NO_EVIDENCE, entered: NOTHING_ENTERED }, GOOD_OBSERVER, null),
    );
  };
  const isSlow = ({ costs }: ReturnType<typeof debrief>) =>
    costs.costs.some(({ code }) => code === 'too-slow');

  test('most of the way is named, with how long it took, however the end of it was let down', () => {
    const found = fallen(0.6, 3);
    expect(isSlow(found)).toBe(true);
    expect(found.letDown?.isLong).toBe(true);
    expect(found.letDown?.mmHgPerSecond).toBeLessThan(1);
    const [cost] = found.costs.costs.filter(({ code }) => code === 'too-slow');
    expect(cost?.doInstead).toBe('two-to-three-a-second');
  });

  test('at the taught rate it is not', () => {
    const found = fallen(2.5, 2.5);
    expect(isSlow(found)).toBe(false);
    expect(found.letDown?.mmHgPerSecond).toBeCloseTo(2.5, 1);
    expect(found.letDown?.isLong).toBe(false);
  });

  test('a stop on the way is a stop, and not a slow hand', () => {
    const start = (exercise.evidence.run?.startSeconds ?? 0) + 20;
    const stop: Action[] = [
      { tick: Math.round(start * TICKS_PER_SECOND), kind: 'steady-fall', mmHgPerSecond: 0.01, toMmHg: 0 },
      {
        tick: Math.round((start + 20) * TICKS_PER_SECOND),
        kind: 'steady-fall',
        mmHgPerSecond: 2.5,
        toMmHg: 0,
      },
    ];
    const actions = [...exercise.actions.filter(({ tick }) => tick < (stop[0]?.tick ?? 0)), ...stop];
    const held = debrief({ ...exercise, actions, seconds: exercise.seconds + 40 });
    expect(held.conduct.map(({ code }) => code)).toContain('held-on-the-way');
    expect(isSlow(held)).toBe(false);
  });
});
