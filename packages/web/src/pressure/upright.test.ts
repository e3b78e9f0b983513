import { expect, test } from 'vitest';
import { AT } from '../round/testing.js';
import { NO_PRESSURE, type PressureDraft } from './pressureDraft.js';
import { uprightField, uprightUntil } from './upright.js';

const STOOD = { since: { session: 'one', atMs: 5_000 }, at: AT(10) };
const PLACE = {
  site: 'upper-arm',
  side: 'right',
  posture: 'stand',
  cuff: null,
  armCm: null,
  override: null,
} as const;
const standing: PressureDraft = { ...NO_PRESSURE, place: PLACE, upright: STOOD };

test('within a visit the time on the feet goes by the monotonic clock, whatever the other one says', () => {
  const at = (atMs: number) => uprightUntil(STOOD, { session: 'one', atMs }, AT(40));
  expect(at(5_000)).toEqual({ seconds: 0, byWallClock: false });
  expect(at(76_000)).toEqual({ seconds: 71, byWallClock: false });
  expect(uprightUntil(null, { session: 'one', atMs: 76_000 }, AT(40))).toBeNull();
});

test('after a reload it goes on by the wall clock and says so, and is not known where that clock cannot be right', () => {
  const at = (minute: number) => uprightUntil(STOOD, { session: 'two', atMs: 10 }, AT(minute));
  expect(at(12)).toEqual({ seconds: 120, byWallClock: true });
  expect(at(10)).toEqual({ seconds: 0, byWallClock: true });
  expect(at(9)).toBeNull();
  // The longest time on the feet that a reading holds: 60 minutes.
  const hour = (at: string) => uprightUntil(STOOD, { session: 'two', atMs: 10 }, { ...AT(10), at });
  expect(hour('2026-03-05T11:10:00.000+01:00')).toEqual({ seconds: 3600, byWallClock: true });
  expect(hour('2026-03-05T11:10:01.000+01:00')).toBeNull();
});

test('a reading on the feet begins with the minutes that were measured, any other without', () => {
  const now = { session: 'one', atMs: 76_000 };
  expect(uprightField(standing, now, AT(11))).toEqual({ uprightMinutes: '1.2' });
  expect(uprightField({ ...standing, upright: null }, now, AT(11))).toEqual({});
  expect(uprightField({ ...standing, place: { ...PLACE, posture: 'lie' } }, now, AT(11))).toEqual({});
});
