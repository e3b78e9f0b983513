import type { TrendRound } from '@evenfall/record';
import { expect, test } from 'vitest';
import { evenScale, roundTicks } from './evenScale.js';
import { wallClock } from './view.js';

function round(id: string, ...times: readonly string[]): TrendRound {
  const points = times.map((at, index) => ({
    entry: `${id}${index}`,
    at: `${at}:00.000+01:00`,
    value: { of: 'pulse', perMinute: 60 } as const,
    isContested: false,
    isByHand: false,
    isAmended: false,
    failedGauge: null,
    flags: 0,
  }));
  const at = points[0]?.at ?? '';
  return {
    round: id,
    at,
    isPreliminary: false,
    isNotReliedOn: false,
    points,
    average: null,
    elsewhere: null,
  };
}

const everything = () => true;
const ROUNDS = [
  round('a', '2026-11-24T17:34'),
  round('b', '2026-11-26T16:34'),
  round('c', '2026-11-26T19:36', '2026-11-26T19:40', '2026-11-26T19:42'),
];

test('readings minutes apart stand clear of each other beside a gap of days', () => {
  const scale = evenScale(ROUNDS, everything);
  expect(scale?.places).toEqual([0.5, 1.5, 2.5, 2.95, 3.4000000000000004]);
  expect(scale?.width).toBeCloseTo(3.9);
  expect(scale?.times).toEqual(ROUNDS.flatMap(({ points }) => points.map(({ at }) => wallClock(at))));
});

test('what has no mark takes no place', () => {
  expect(evenScale(ROUNDS, ({ entry }) => entry === 'a0' || entry === 'b0')?.places).toEqual([0.5, 1.5]);
});

test('one time is no course of anything, and has no place: however many rounds are beside it', () => {
  expect(evenScale(ROUNDS, ({ entry }) => entry === 'b0')).toBeNull();
  expect(evenScale(ROUNDS, () => false)).toBeNull();
});

test('each round says its time, its day where that is another one; fewer of them where they would not fit', () => {
  const scale = evenScale(ROUNDS, everything);
  if (scale === null) throw new Error('nothing is drawn');
  const said = (most: number) =>
    roundTicks(ROUNDS, scale, most).map(
      ({ at, isNewDay }) => `${new Date(at).toISOString().slice(11, 16)}${isNewDay ? ' day' : ''}`,
    );
  expect(said(9)).toEqual(['17:34 day', '16:34 day', '19:36']);
  expect(said(2)).toEqual(['17:34 day', '19:36 day']);
  expect(said(0)).toEqual(['17:34 day']);
});
