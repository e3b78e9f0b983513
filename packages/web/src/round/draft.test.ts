import { expect, test } from 'vitest';
import {
  hasContent,
  interrupted,
  isVoidValue,
  withInterruption,
  withMeasuring,
  withNotDone,
  withNoticed,
  withNumberChanged,
  withNumberReopened,
  withoutValue,
  withValue,
} from './draft.js';
import { AT, begun, complete, counted, ID } from './testing.js';

const start = { windowSeconds: 30, clock: 'any', first: 1 } as const;
const running = { at: 'running', session: 's', startedAtMs: 1000, start, measuredAt: AT(1) } as const;
const next = { entry: ID(30), sequence: 30 };

test('a slip is undone before signing', () => {
  expect(withoutValue(complete(), 'pulse', ID(20)).pulse.values).toEqual([]);
});

test('a mistyped number goes back to the keypad under the same window', () => {
  const reopened = withNumberReopened(complete(), 'pulse', { entry: ID(20), from: 'review' });
  // Until the number is put right the value stands: who goes away from the keypad has lost nothing.
  expect(reopened.pulse.values).toEqual(complete().pulse.values);
  expect(reopened.pulse.measuring).toEqual({
    at: 'typing',
    start: { windowSeconds: 15, clock: 'any', first: 1 },
    measuredAt: AT(1),
    typed: '19',
    reopened: { entry: ID(20), from: 'review' },
  });
});

test('a number is put right in its place: one value, of the same moment, with what was noticed', () => {
  const noticed = withNoticed(complete(), 'pulse', ID(20), { rhythmFelt: 'irregular' });
  const count = { of: 'pulse', n: 18, windowSeconds: 15, clock: 'any', first: 1 } as const;
  const changed = withNumberChanged(noticed, 'pulse', ID(20), count).pulse;
  expect(changed.values).toEqual([{ ...noticed.pulse.values[0], count }]);
  expect(changed.measuring).toEqual({ at: 'shown', entry: ID(20) });
});

test('taps are times as they came: no number of them is typed, so none is opened', () => {
  const taps = { of: 'pulse', source: 'key', seconds: [0, 0.8, 1.6] } as const;
  const value = { ...counted(30, 'pulse', 1, 15), kind: 'taps', taps } as const;
  const tapped = withValue(begun(), 'pulse', value);
  expect(withNumberReopened(tapped, 'pulse', { entry: ID(30), from: 'review' })).toBe(tapped);
});

test('nothing is noticed until it is touched, and then only that', () => {
  const touched = withNoticed(complete(), 'pulse', ID(20), { strength: 'weak' });
  expect(touched.pulse.values[0]?.noticed).toEqual({ rhythmFelt: null, strength: 'weak', site: null });
});

// An interrupted count is void (bedside handbook 1.2: stop, wait, start again; do not guess).
test('a count that is broken off is void, keeps its evidence, and is no value', () => {
  const draft = withMeasuring(begun(), 'pulse', running);
  const broken = interrupted(draft, 'pulse', { reason: 'other', nowMs: 13_400 }, next).pulse;
  expect(broken.measuring).toMatchObject({ at: 'void', way: 'count', atSeconds: 12.4, entry: ID(30) });
  expect(broken.values).toHaveLength(1);
  expect(broken.values[0]).toMatchObject({
    count: { of: 'pulse', ...start, interrupted: { atSeconds: 12.4, reason: 'other' } },
  });
  expect(broken.values[0]).not.toHaveProperty('count.n');
  expect(broken.values.every(isVoidValue)).toBe(true);
});

test('an interruption that arrives with the end of the window still lies before it', () => {
  const draft = withMeasuring(begun(), 'pulse', running);
  const broken = interrupted(draft, 'pulse', { reason: 'screen-left', nowMs: 31_050 }, next).pulse;
  expect(broken.values[0]).toMatchObject({ count: { interrupted: { atSeconds: 29.9 } } });
});

test('taps that are broken off leave nothing behind', () => {
  const tapping = {
    at: 'tapping',
    session: 's',
    measuredAt: AT(1),
    source: 'touch',
    tapsMs: [0, 800],
  } as const;
  const broken = interrupted(
    withMeasuring(begun(), 'pulse', tapping),
    'pulse',
    { reason: 'other', nowMs: 2_000 },
    next,
  );
  expect(broken.pulse).toMatchObject({ values: [], measuring: { at: 'void', way: 'taps', atSeconds: 2 } });
});

test('nothing is broken off where nothing runs', () => {
  const draft = complete();
  expect(interrupted(draft, 'pulse', { reason: 'other', nowMs: 1 }, next)).toBe(draft);
});

test('why it was broken off can be said afterwards', () => {
  const draft = withMeasuring(begun(), 'pulse', running);
  const broken = interrupted(draft, 'pulse', { reason: 'other', nowMs: 2_000 }, next);
  const said = withInterruption(broken, 'pulse', 'spoken-to').pulse;
  expect(said.values[0]).toMatchObject({ count: { interrupted: { atSeconds: 1, reason: 'spoken-to' } } });
  expect(broken.pulse.measuring).not.toHaveProperty('isSaid');
  expect(said.measuring).toMatchObject({ reason: 'spoken-to', isSaid: true });
});

test('a reason for not doing it takes the place of values, never of void ones', () => {
  const draft = withMeasuring(complete(), 'pulse', running);
  const broken = interrupted(draft, 'pulse', { reason: 'other', nowMs: 2_000 }, next);
  const notDone = withNotDone(broken, 'pulse', { reason: 'declined', text: null }).pulse;
  expect(notDone.values.map(({ entry }) => entry)).toEqual([ID(30)]);
});

test('a value takes the place of a reason', () => {
  const declined = withNotDone(begun(), 'pulse', { reason: 'declined', text: null });
  expect(withValue(declined, 'pulse', counted(20, 'pulse', 19, 15)).pulse.notDone).toBeNull();
});

test('a round just begun has nothing to lose', () => {
  expect(hasContent(begun())).toBe(false);
  expect(hasContent(complete())).toBe(true);
});
