import { makePerson, PROPER, type Scenario, scenarioOf } from '@evenfall/physiology';
import { describe, expect, test } from 'vitest';
import type { Counted } from '../exercise/exercise.js';
import { PERFECT_OBSERVER } from '../observer/observer.js';
import { countDebrief } from './countDebrief.js';
import { countedBy } from './countedBy.js';
import { rateRows } from './rateRows.js';
import { rhythmOf } from './rhythmOf.js';

type Asked = {
  readonly of?: 'pulse' | 'breaths';
  readonly windowSeconds: number;
  readonly startSeconds?: number;
  readonly add?: number;
  readonly noticed?: Counted['noticed'];
};

const NOBODY = {
  systolic: null,
  muffled: null,
  diastolic: null,
  pulsePerMinute: null,
  breathsPerMinute: null,
};

/** What comes of a perfect count of a person of the book, so many beats or breaths off. */
function rowOf(id: string, { of = 'pulse', windowSeconds, startSeconds = 40, add = 0, noticed }: Asked) {
  const person = makePerson(scenarioOf(id) as Scenario, 1);
  const how = {
    ...PERFECT_OBSERVER.counting,
    pulseWindowSeconds: windowSeconds,
    breathsWindowSeconds: windowSeconds,
  };
  const made = countedBy(how, of, person, PROPER, startSeconds);
  if (made === null) throw new Error('nothing to count');
  const counted: Counted = {
    startSeconds: made.startSeconds,
    count: { ...made.count, n: made.count.n + add },
    ...(noticed === undefined ? {} : { noticed }),
  };
  const plain = { circumstances: PROPER, actions: [] };
  const count = countDebrief(counted, plain, { person, firstInflationSeconds: null });
  const written = Math.round(count.result.perMinute);
  const isPulse = of === 'pulse';
  const [row] = rateRows(
    {
      entered: { ...NOBODY, [isPulse ? 'pulsePerMinute' : 'breathsPerMinute']: written },
      counts: { pulse: isPulse ? count : null, breaths: isPulse ? null : count, apex: null },
      taps: { pulse: null, breaths: null, apex: null },
      rates: {
        wristPerMinute: count.truePerMinute,
        heartPerMinute: count.heartPerMinute ?? 0,
        deficitPerMinute: 0,
        breathsPerMinute: count.truePerMinute,
      },
    },
    person.scenario,
  );
  if (row === undefined) throw new Error('nothing written');
  return { row, count };
}

describe('what the window allows is nobody’s fault', () => {
  // docs/conventions.md section 5: one beat more or less; in 15 s that is 4 a minute. Assessment handbook 13: 2 a minute.
  test.each([
    [15, 0, true],
    [15, 1, true],
    [15, 2, false],
    [30, 1, true],
    [30, 2, false],
    [60, 2, true],
    [60, 3, false],
  ])('a quiet pulse in %d s, %d more than there were: %s', (windowSeconds, add, isAccepted) => {
    const { row } = rowOf('quiet-morning', { windowSeconds, add });
    expect(row.isAccepted).toBe(isAccepted);
    expect(row.withinPerMinute).toBe(Math.max(2, 60 / windowSeconds));
  });
});

test('breaths written as sixteen where ten were: not accepted, and grave by the book', () => {
  // Assessment handbook 13, respiration 5: within 2 a minute of truth, critical over 4.
  const found = rowOf('quiet-morning', { of: 'breaths', windowSeconds: 60, add: 6 }).row;
  expect(found).toMatchObject({ of: 'breaths', error: 6, isAccepted: false, isTrue: false, isGrave: true });
});

// Assessment handbook 13 (pulse 11): an irregular pulse within 5 %, a regular one within 2 a minute, whoever counted or did not.
describe('a pulse that was written without a count', () => {
  test.each([
    ['storm-of-leaves', 126, 131, true],
    ['storm-of-leaves', 126, 134, false],
    ['quiet-morning', 126, 128, true],
    ['quiet-morning', 126, 130, false],
  ])('%s, %d true and %d written: %s', (id, wristPerMinute, written, isAccepted) => {
    const [row] = rateRows(
      {
        entered: { ...NOBODY, pulsePerMinute: written },
        counts: { pulse: null, breaths: null, apex: null },
        taps: { pulse: null, breaths: null, apex: null },
        rates: {
          wristPerMinute,
          heartPerMinute: wristPerMinute,
          deficitPerMinute: 0,
          breathsPerMinute: 14,
        },
      },
      scenarioOf(id) as Scenario,
    );
    expect(row).toMatchObject({ isAccepted, isTrue: isAccepted });
  });
});

describe('which window this person asks for', () => {
  test.each([
    // Bedside handbook 1.5: irregular, a full minute. Assessment handbook 13, respiration 2.
    ['leaves-in-wind', 'pulse', 30, 60],
    ['quiet-morning', 'pulse', 30, null],
    ['tide', 'breaths', 30, 60],
    ['sleepy-six', 'breaths', 30, 60],
    ['broken-clock', 'breaths', 30, 60],
    ['leaves-in-wind', 'pulse', 60, null],
  ] as const)('%s, %s counted for %d s: %s', (id, of, windowSeconds, needed) => {
    expect(rowOf(id, { of, windowSeconds }).count.better.nextWindowSeconds).toBe(needed);
  });

  test('a tide that is counted rightly for half a minute may be far from its rate', () => {
    // Physiology handbook 14, row 24: half a minute gives 4 to 22.
    const all = [0, 7, 14, 21, 28, 35, 42, 49].map(
      (more) => rowOf('tide', { of: 'breaths', windowSeconds: 30, startSeconds: 40 + more }).row,
    );
    expect(all.every(({ isAccepted }) => isAccepted)).toBe(true);
    expect(all.some(({ isTrue, isGrave }) => !isTrue && isGrave)).toBe(true);
  });
});

describe('whether it was regular', () => {
  test.each([
    ['quiet-morning', 'pulse', 'regular'],
    // Physiology handbook 2.1: quickening with each breath is sinus rhythm.
    ['long-runner', 'pulse', 'regular'],
    ['leaves-in-wind', 'pulse', 'irregular'],
    // Physiology handbook 2.2: only each second beat reaches the wrist, evenly.
    ['two-by-two', 'pulse', 'regular'],
    ['strong-weak', 'pulse', 'regular'],
    ['quiet-morning', 'breaths', 'regular'],
    ['tide', 'breaths', 'irregular'],
    ['broken-clock', 'breaths', 'irregular'],
  ] as const)('%s, %s: %s', (id, of, expected) => {
    expect(rowOf(id, { of, windowSeconds: 60 }).count.rhythm.ofPerson).toBe(expected);
  });
});

test('a pause that the window cuts at its edge was there to be seen', () => {
  // Six breaths of a tide close together, after half a window without any.
  const seconds = [15, 18, 21, 24, 27, 29.9];
  const tide = scenarioOf('tide') as Scenario;
  expect(rhythmOf('breaths', tide, seconds, [0, 30]).inWindow).toBe('irregular');
  expect(rhythmOf('breaths', tide, seconds, [13, 30]).inWindow).toBe('regular');
});

test('the events are those that are drawn: from just before the window to just after it', () => {
  const { count } = rowOf('quiet-morning', { windowSeconds: 30 });
  const within = count.events.filter((at) => at >= count.startSeconds && at < count.startSeconds + 30);
  expect(Math.abs(within.length - count.there)).toBeLessThanOrEqual(1);
  expect(Math.min(...count.events)).toBeGreaterThanOrEqual(count.startSeconds - 4);
  expect(Math.max(...count.events)).toBeLessThan(count.startSeconds + 34);
});
