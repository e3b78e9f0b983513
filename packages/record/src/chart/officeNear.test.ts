import { expect, test } from 'vitest';
import type { StoredEntry } from '../entry/entry.js';
import { frame, idOf, kept, runContent, signingContent } from '../testing/work.js';
import { GENERAL_RULES } from './generalRules.js';
import { officeNear, officeNotTaken, visitsMean } from './officeNear.js';
import { projectChart } from './projectChart.js';

/** A signed round of pressures, so many days after the invented day (2026-11-25), at that hour. */
function roundOn(
  days: number,
  pressures: readonly (readonly [number, number])[],
  { status = 'final', hour = 9 }: { status?: 'final' | 'preliminary'; hour?: number } = {},
): StoredEntry[] {
  const round = idOf(60_000 + days * 100 + hour);
  const measuredAt = {
    at: new Date(Date.UTC(2026, 10, 25 + days, hour)).toISOString(),
    zone: 'UTC',
    asEntered: null,
  };
  const frameOf = (kind: 'run' | 'round', content: object, place: number) =>
    kept(
      frame(kind, content, {
        id: idOf(1_000_000 + days * 1000 + hour * 10 + place),
        sequence: place,
        round,
        measuredAt,
        ...(kind === 'round' ? { schema: 2 } : {}),
      }),
      days * 1440 + hour * 60 + place,
    );
  const runs = pressures.map(([systolic, diastolic], place) => {
    const moments = [
      { what: 'first sound', mmHg: systolic },
      { what: 'last sound', mmHg: diastolic },
    ];
    return frameOf('run', runContent({ method: 'auscultation', moments }), place + 1);
  });
  const content = {
    ...signingContent([{ sign: 'pressure', entries: runs.map(({ id }) => id) }], runs),
    status,
  };
  return [...runs, frameOf('round', content, 9)];
}

const FIRST = [
  [152, 94],
  [146, 90],
  [145, 88],
] as const;
const on = (days: number) => new Date(Date.UTC(2026, 10, 25 + days)).toISOString().slice(0, 10);
const near = (entries: readonly StoredEntry[], from: number, until = from) =>
  officeNear(projectChart(entries), GENERAL_RULES, { from: on(from), until: on(until) });

// ESC 2024: mean of the second and third (bedside handbook 3.10); three months are a decision of this project.
test('an office round within three months of a series stands beside it, before or after', () => {
  expect(near(roundOn(0, FIRST), 0)).toEqual({
    systolic: 145.5,
    diastolic: 89,
    visits: [{ date: on(0), rounds: 1, systolic: 145.5, diastolic: 89 }],
    leftOut: [],
  });
  expect(near(roundOn(0, FIRST), -92)).not.toBeNull();
  expect(near(roundOn(0, FIRST), 92)).not.toBeNull();
  expect(near(roundOn(0, FIRST), 93)).toBeNull();
  expect(near(roundOn(0, FIRST), -93)).toBeNull();
  // A long series: the round was in the midst of it.
  expect(near(roundOn(0, FIRST), -200, 200)).not.toBeNull();
});

// Means worked out by hand: (145.5 + 150) / 2 = 147.75; rounds of one day first among themselves, (150 + 140) / 2 = 145.
test('every round near a series is taken, those of one day as one visit', () => {
  const entries = [
    ...roundOn(0, FIRST),
    ...roundOn(30, [[160, 99], [152, 92], [148, 90]]), // biome-ignore format: one round
    ...roundOn(200, [[180, 99], [182, 99], [178, 99]]), // biome-ignore format: one round
  ];
  expect(near(entries, 10)).toEqual({
    systolic: 147.75,
    diastolic: 90,
    visits: [
      { date: on(0), rounds: 1, systolic: 145.5, diastolic: 89 },
      { date: on(30), rounds: 1, systolic: 150, diastolic: 91 },
    ],
    leftOut: [],
  });
  const again = roundOn(30, [[150, 90], [141, 86], [139, 84]], { hour: 15 }); // biome-ignore format: one round
  expect(near([...entries, ...again], 10)).toEqual({
    systolic: 145.25,
    diastolic: 88.5,
    visits: [
      { date: on(0), rounds: 1, systolic: 145.5, diastolic: 89 },
      { date: on(30), rounds: 2, systolic: 145, diastolic: 88 },
    ],
    leftOut: [],
  });
  expect(visitsMean(near([...entries, ...again], 10))).toMatchObject({ systolic: 145.25, visits: 2 });
});

test('a learner’s round that nobody agreed to does not, nor one that comes to no mean', () => {
  expect(near(roundOn(0, FIRST, { status: 'preliminary' }), 0)).toBeNull();
  expect(near(roundOn(0, FIRST).slice(0, 1), 0)).toBeNull();
});

test('what is as near and is not taken is counted by why', () => {
  const entries = [
    ...roundOn(0, FIRST),
    ...roundOn(1, [[178, 104]]),
    ...roundOn(2, FIRST, { status: 'preliminary' }),
    ...roundOn(3, FIRST, { status: 'preliminary' }),
    // Unsigned, and too far away.
    ...roundOn(4, FIRST).slice(0, 3),
    ...roundOn(300, [[178, 104]]),
  ];
  expect(near(entries, 0)).toMatchObject({
    visits: [{ systolic: 145.5, diastolic: 89 }],
    leftOut: [
      { why: 'not-countersigned', rounds: 2 },
      { why: 'no-mean', rounds: 1 },
    ],
  });
  expect(near(entries.slice(4), 0)).toBeNull();
});

test('where none is taken, why stands by itself; where one is, it stands with that one', () => {
  const why = (entries: readonly StoredEntry[], from: number) =>
    officeNotTaken(projectChart(entries), GENERAL_RULES, { from: on(from), until: on(from) });
  const learner = roundOn(0, FIRST, { status: 'preliminary' });
  const single = roundOn(1, [[150, 90]]);
  expect(why(learner, 0)).toEqual([{ why: 'not-countersigned', rounds: 1 }]);
  expect(why([...learner, ...single], 0)).toEqual([
    { why: 'not-countersigned', rounds: 1 },
    { why: 'no-mean', rounds: 1 },
  ]);
  expect(why(learner, 93)).toEqual([]);
  expect(why([...learner, ...roundOn(2, FIRST)], 0)).toEqual([]);
});
