import {
  type Action,
  bladderFor,
  type Circumstances,
  PROPER,
  type Scenario,
  SOUND_INSTRUMENT,
  scenarioOf,
} from '@evenfall/physiology';
import { describe, expect, test } from 'vitest';
import { debriefEach } from '../exercise/debrief.js';
import { demonstrate, demonstrated } from '../exercise/demonstrate.js';
import type { Exercise } from '../exercise/exercise.js';
import { reportedOf } from '../exercise/reportedOf.js';
import { GOOD_OBSERVER } from '../observer/observer.js';
import { lessonOf } from './lesson.js';
import { oneThingOf } from './oneThing.js';

function of(id: string) {
  const scenario = scenarioOf(id) as Scenario;
  return { scenario, instrument: { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm) } };
}
function one(exercise: Exercise) {
  const all = debriefEach(exercise);
  const last = all.at(-1);
  if (last === undefined) throw new Error('no reading');
  const oneThing = oneThingOf(
    last.costs,
    last.conduct,
    lessonOf(exercise.scenario, reportedOf(exercise, all)),
  );
  return { oneThing, last };
}

// Assessment handbook 13 (pulse 7: a full minute, critical when irregular; 11: within 5 %), bedside handbook 3.13 (three readings).
describe('an irregular pulse counted for half a minute beside one reading', () => {
  const { scenario, instrument } = of('leaves-in-wind');
  const shown = demonstrate(GOOD_OBSERVER, scenario, 1724541980, PROPER, instrument);
  const counted = (n: number): Exercise => ({
    ...shown,
    evidence: {
      ...shown.evidence,
      pulse: {
        startSeconds: 1,
        count: { of: 'pulse', n, windowSeconds: 30, clock: 'any', first: 1 },
        noticed: { rhythmFelt: 'irregular', strength: null, site: null },
      },
    },
    entered: { ...shown.entered, pulsePerMinute: 2 * n },
  });
  const there = one(counted(46)).last.counts.pulse?.there ?? 0;

  test('the one thing is what this person is there to teach', () => {
    expect(one(counted(there - 2)).oneThing).toEqual({
      kind: 'lesson',
      codes: ['pulse-full-minute', 'three-readings'],
    });
  });

  test('two beats of so many are within 5 %: no miscount; four are one', () => {
    const codes = (n: number) => one(counted(n)).last.conduct.map(({ code }) => code);
    expect(there).toBeGreaterThan(40);
    expect(codes(there - 2)).not.toContain('pulse-miscounted');
    expect(codes(there - 4)).toContain('pulse-miscounted');
  });
});

// Physiology handbook 14, row 33 (move or palpate): what this person is there for is not left unsaid where chance spared the numbers.
test('somebody in a noisy place, measured there by ear with little harm: a quieter place is the one thing', () => {
  const { scenario, instrument } = of('noisy-bay');
  const shown = demonstrate(GOOD_OBSERVER, scenario, 10, PROPER, instrument);
  expect(one(shown).oneThing).toEqual({ kind: 'lesson', codes: ['noise-of-place'] });
});

// Bedside handbook 3.15: very low or unwell, do not wait.
describe('somebody in shock, of whom it was said that this cannot wait', () => {
  const { scenario, instrument } = of('cold-hands');
  const found: Circumstances = {
    ...PROPER,
    restMinutes: 1,
    isTalking: true,
    hasLegsCrossed: true,
    hasFullBladder: true,
  };
  const { exercise } = demonstrated(GOOD_OBSERVER, scenario, 3618684746, found, instrument, 'by-feel');
  const told: Exercise = {
    ...exercise,
    evidence: { ...exercise.evidence, saysActNow: true },
    entered: { ...exercise.entered, pulsePerMinute: null },
  };

  test('is counted while help comes, and not made to wait', () => {
    expect(one(told).oneThing).toEqual({
      kind: 'lesson',
      codes: ['pulse-rate', 'breaths-rate', 'pulse-weak'],
    });
  });

  test('is never asked to rest, to be quiet, to sit otherwise or to go to the toilet first', () => {
    const { costs } = one(told).last.costs;
    expect(costs.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['too-little-rest', 'talking', 'legs-crossed', 'full-bladder']),
    );
    for (const { doInstead } of costs) expect(doInstead).toBe('no-time-for-that');
    const allTold = oneThingOf(one(told).last.costs, [], []);
    expect(allTold).toBeNull();
  });

  test('the same faults with somebody who is well are advised upon', () => {
    const well = of('quiet-morning');
    const { last } = one(demonstrate(GOOD_OBSERVER, well.scenario, 3, found, well.instrument));
    expect(last.costs.costs.map(({ doInstead }) => doInstead)).toContain('ask-for-silence');
  });
});

// Bedside handbook 3.8: let all air out between two inflations. A cuff with a little air left in it was let out all the same.
describe('pumped up anew before the cuff was quite empty', () => {
  const { scenario, instrument } = of('calm-after-stairs');
  const T = 200;
  const shown = demonstrate(GOOD_OBSERVER, scenario, 2805154267, PROPER, instrument);
  const actions: Action[] = [
    { tick: 0, kind: 'chest-piece', offMm: null, held: 'light' },
    { tick: 5 * T, kind: 'steady-rise', mmHgPerSecond: 30, toMmHg: 190 },
    { tick: 15 * T, kind: 'steady-fall', mmHgPerSecond: 3, toMmHg: 40 },
    { tick: 70 * T, kind: 'steady-fall', mmHgPerSecond: 20, toMmHg: 12 },
    { tick: 72 * T, kind: 'chest-piece', offMm: 0, held: 'light' },
    { tick: 73 * T, kind: 'steady-rise', mmHgPerSecond: 30, toMmHg: 178 },
    { tick: 85 * T, kind: 'steady-fall', mmHgPerSecond: 2.5, toMmHg: 0 },
  ];
  const { run } = shown.evidence;
  if (run === null) throw new Error('no run');
  const moments = (systolic: number, diastolic: number) => [
    { what: 'first sound' as const, mmHg: systolic, atSeconds: null },
    { what: 'last sound' as const, mmHg: diastolic, atSeconds: null },
  ];
  const wrote = (systolic: number, diastolic: number): Exercise => ({
    ...shown,
    actions,
    seconds: 170,
    evidence: {
      ...shown.evidence,
      // As it was kept: of the first inflation, since the cuff had not been empty.
      run: { startSeconds: 12, run: { ...run.run, moments: moments(systolic, diastolic) } },
    },
    entered: { ...shown.entered, systolic, diastolic, muffled: null },
  });
  const { last } = one(wrote(142, 94));

  test('the reading is of the fall in which it could be heard, and judged by that', () => {
    expect(last.fall?.peakSeconds).toBeGreaterThan(73);
    expect(last.fall?.peakMmHg).toBeCloseTo(178, -1);
    expect(last.fall?.pumpedAgainMmHg).toBeLessThan(5);
    expect(last.fromNothing).toBeNull();
  });

  test('it was not pumped up again on the way down, and every cost has its number', () => {
    const { costs } = last.costs;
    expect(costs.map(({ code }) => code)).not.toContain('pumped-again');
    expect(costs.map(({ code }) => code)).not.toContain('chest-piece-away');
    for (const { systolic, diastolic } of costs) expect([systolic, diastolic]).not.toContain(null);
  });

  test('that the arm had no rest between them is said', () => {
    expect(last.conduct.map(({ code }) => code)).toContain('arm-not-rested');
  });
});
