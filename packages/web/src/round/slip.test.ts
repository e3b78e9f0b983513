import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { withMeasure, withNotDone, withValue } from './draft.js';
import { measureRemoved, putBack, slipOn, valueRemoved, withoutSlip } from './slip.js';
import { slipText } from './slipText.js';
import { AT, begun, counted, ID } from './testing.js';

const two = () =>
  withValue(withValue(begun(), 'pulse', counted(20, 'pulse', 19, 15)), 'pulse', counted(22, 'pulse', 38, 30));

test('what was taken out last is back in one step, in its place and under its own id', () => {
  const removed = valueRemoved(two(), 'pulse', ID(20));
  expect(removed.pulse.values.map(({ entry }) => entry)).toEqual([ID(22)]);
  const back = putBack(removed);
  expect(back.pulse.values).toEqual(two().pulse.values);
  expect(back.slip).toBeNull();
  expect(putBack(back)).toBe(back);
});

test('only the last one, whatever was taken since', () => {
  const once = valueRemoved(two(), 'pulse', ID(20));
  const twice = putBack(valueRemoved(once, 'pulse', ID(22)));
  expect(twice.pulse.values.map(({ entry }) => entry)).toEqual([ID(22)]);
  const since = withValue(once, 'breaths', counted(23, 'breaths', 16, 60));
  expect(putBack(since).pulse.values.length).toBe(2);
});

test('a reason for having none goes when it is put back', () => {
  const removed = valueRemoved(two(), 'pulse', ID(22));
  const given = withNotDone(removed, 'pulse', { reason: 'away', text: null });
  expect(putBack(given).pulse).toMatchObject({ notDone: null, values: [{ entry: ID(22) }] });
});

test('a sign that was read is put back too', () => {
  const sign = { of: 'temperature', celsius: 37.2, site: 'oral' } as const;
  const pain = { kind: 'sign', entry: ID(30), sequence: 30, measuredAt: AT(1), sign, note: null } as never;
  const removed = measureRemoved(withMeasure(begun(), pain), ID(30));
  expect(removed.measures).toEqual([]);
  expect(putBack(removed).measures).toEqual([pain]);
});

test('what is not there is not taken out', () => {
  const draft = two();
  expect(valueRemoved(draft, 'pulse', ID(99))).toBe(draft);
});

test('it is put back where it was taken out, or on the review, and on no other page', () => {
  const removed = valueRemoved(two(), 'pulse', ID(20));
  expect(slipOn(removed, 'pulse')).not.toBeNull();
  expect(slipOn(removed, 'review')).not.toBeNull();
  for (const page of ['breaths', 'pressure', 'signs', null] as const)
    expect(slipOn(removed, page)).toBeNull();
  const left = withoutSlip(removed);
  expect(slipOn(left, 'pulse')).toBeNull();
  expect(putBack(left).pulse.values.map(({ entry }) => entry)).toEqual([ID(22)]);
});

test('once another of the sign was taken, the one taken out is not put back beside it', () => {
  const removed = valueRemoved(two(), 'pulse', ID(20));
  const taken = withValue(removed, 'pulse', counted(24, 'pulse', 19, 15));
  expect(slipOn(taken, 'pulse')).toBeNull();
  expect(putBack(taken).pulse.values.map(({ entry }) => entry)).toEqual([ID(22), ID(24)]);
});

test('what is put back is named by its rate, else by its time', () => {
  const words = wordsFor('en');
  // 60 n / W: 76 in 15 s is 304 a minute (docs/conventions.md section 5).
  const typed = withValue(begun(), 'pulse', counted(20, 'pulse', 76, 15));
  const { slip } = valueRemoved(typed, 'pulse', ID(20));
  if (slip === null) throw new Error('nothing taken out');
  expect(slipText(slip, words)).toBe('304');
  expect(slipText({ of: 'pain', value: { measuredAt: AT(7) } as never }, words)).toBe('the one of 10:07');
});
