import { expect, test } from 'vitest';
import { readingsToAverage } from './readingsToAverage.js';
import { reading } from './testing.js';

const ids = (found: ReturnType<typeof readingsToAverage<ReturnType<typeof reading>>>) =>
  found.readings.map(({ id }) => id);

test('one arm only: the higher one where it is known, else the one with more readings, else the first', () => {
  // Bedside handbook 3.12: later the higher arm.
  const round = [
    reading({ id: 'a', side: 'right' }),
    reading({ id: 'b', side: 'left' }),
    reading({ id: 'c', side: 'left' }),
  ];
  expect(ids(readingsToAverage(round, null))).toEqual(['b', 'c']);
  expect(ids(readingsToAverage(round, 'right'))).toEqual(['a']);
  expect(readingsToAverage(round, 'right').leftOut).toEqual([
    { id: 'b', reason: 'other-arm' },
    { id: 'c', reason: 'other-arm' },
  ]);
  expect(ids(readingsToAverage(round.slice(0, 2), null))).toEqual(['a']);
});

test('a palpated reading does not decide the arm', () => {
  const round = [
    reading({ id: 'a', side: 'right', method: 'palpation', diastolic: null }),
    reading({ id: 'b', side: 'right', method: 'palpation', diastolic: null }),
    reading({ id: 'c', side: 'left' }),
  ];
  expect(ids(readingsToAverage(round, null))).toEqual(['c']);
});

// Bedside handbook 3.14 (stop: lie down); that it is no pressure at rest: common practice, no source.
test('what is read after somebody was laid down from their feet is charted and not averaged', () => {
  const round = [
    reading({ id: 'a', posture: 'lie' }),
    reading({ id: 'b', posture: 'stand', uprightMinutes: 1 }),
    reading({ id: 'c', posture: 'lie' }),
    reading({ id: 'd', posture: 'lie', side: 'left' }),
  ];
  expect(ids(readingsToAverage(round, null))).toEqual(['a', 'c']);
  // Where that is all there is, it is what the round comes to.
  expect(ids(readingsToAverage(round.slice(1), null, 'b'))).toEqual(['c']);
  const laid = readingsToAverage(round, null, 'b');
  expect(ids(laid)).toEqual(['a']);
  expect(laid.leftOut).toEqual([
    { id: 'b', reason: 'standing' },
    { id: 'c', reason: 'laid-down' },
    { id: 'd', reason: 'laid-down' },
  ]);
});

// One by feel has no diastolic, and one at a thigh is only charted: neither is a pressure at rest (docs/conventions.md section 6).
test.each([
  ['by feel', reading({ id: 'a', posture: 'sit', method: 'palpation', diastolic: null })],
  ['at the thigh', reading({ id: 'a', posture: 'sit', site: 'thigh' })],
])('where nothing but one %s was read before, what is read lying is what there is', (_what, before) => {
  const round = [
    before,
    reading({ id: 'b', posture: 'stand', uprightMinutes: 1 }),
    reading({ id: 'c', posture: 'lie' }),
    reading({ id: 'd', posture: 'lie' }),
  ];
  expect(ids(readingsToAverage(round, null, 'b'))).toEqual(['c', 'd']);
});

test('other sites, standing and another posture are charted and not averaged', () => {
  // docs/conventions.md section 6: sites other than the upper arm are never averaged with it.
  const round = [
    reading({ id: 'wrist', site: 'wrist' }),
    reading({ id: 'thigh', site: 'thigh' }),
    reading({ id: 'sit', posture: 'sit' }),
    reading({ id: 'lie', posture: 'lie' }),
    reading({ id: 'stand', posture: 'stand', uprightMinutes: 1 }),
  ];
  const found = readingsToAverage(round, null);
  expect(ids(found)).toEqual(['sit']);
  expect(found.leftOut).toEqual([
    { id: 'wrist', reason: 'other-site' },
    { id: 'thigh', reason: 'other-site' },
    { id: 'lie', reason: 'other-posture' },
    { id: 'stand', reason: 'standing' },
  ]);
  expect(readingsToAverage([], null)).toEqual({ readings: [], leftOut: [] });
});
