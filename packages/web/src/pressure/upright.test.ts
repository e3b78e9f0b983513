import { loadWords } from '@evenfall/words';
import { expect, test } from 'vitest';
import { AT } from '../round/testing.js';
import { NO_PRESSURE, type PressureDraft } from './pressureDraft.js';
import { uprightField, uprightOf, uprightUntil } from './upright.js';

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

test('within a visit the time on the feet goes by the monotonic clock, also where the other one was set back', () => {
  const at = (atMs: number, minute: number) => uprightUntil(STOOD, { session: 'one', atMs }, AT(minute));
  expect(at(5_000, 10)).toEqual({ seconds: 0, byWallClock: null });
  expect(at(76_000, 11)).toEqual({ seconds: 71, byWallClock: null });
  expect(at(76_000, 2)).toEqual({ seconds: 71, byWallClock: null });
  expect(uprightUntil(null, { session: 'one', atMs: 76_000 }, AT(11))).toBeNull();
});

// MDN, performance.now(), "Ticking during sleep": on most devices this clock stands while they sleep.
test('the minutes that the device slept are of the standing: the wall clock is taken where it ran further, and it is said', () => {
  const at = (atMs: number, minute: number) => uprightUntil(STOOD, { session: 'one', atMs }, AT(minute));
  // Two minutes by the monotonic clock, three by the wall clock.
  expect(at(125_000, 13)).toEqual({ seconds: 180, byWallClock: 'sleep' });
  expect(uprightField(standing, { session: 'one', atMs: 125_000 }, AT(13))).toEqual({ uprightMinutes: '3' });
  // A second more or less between the two clocks is no sleep: 5 s apart, and a little more.
  expect(at(180_000, 13)).toEqual({ seconds: 175, byWallClock: null });
  expect(at(179_999, 13)).toEqual({ seconds: 180, byWallClock: 'sleep' });
  expect(at(180_001, 13)).toEqual({ seconds: 175.001, byWallClock: null });
  // Asleep past the longest time that a reading holds (60 minutes): not known, never the shorter one.
  const past = { ...AT(10), at: '2026-03-05T11:10:01.000+01:00' };
  expect(uprightUntil(STOOD, { session: 'one', atMs: 125_000 }, past)).toBeNull();
});

test('after a reload it goes on by the wall clock and says so, and is not known where that clock cannot be right', () => {
  const at = (minute: number) => uprightUntil(STOOD, { session: 'two', atMs: 10 }, AT(minute));
  expect(at(12)).toEqual({ seconds: 120, byWallClock: 'reload' });
  expect(at(10)).toEqual({ seconds: 0, byWallClock: 'reload' });
  expect(at(9)).toBeNull();
  // The longest time on the feet that a reading holds: 60 minutes.
  const hour = (at: string) => uprightUntil(STOOD, { session: 'two', atMs: 10 }, { ...AT(10), at });
  expect(hour('2026-03-05T11:10:00.000+01:00')).toEqual({ seconds: 3600, byWallClock: 'reload' });
  expect(hour('2026-03-05T11:10:01.000+01:00')).toBeNull();
});

test('a reading on the feet begins with the minutes that were measured, any other without', () => {
  const now = { session: 'one', atMs: 76_000 };
  expect(uprightField(standing, now, AT(11))).toEqual({ uprightMinutes: '1.2' });
  expect(uprightField({ ...standing, upright: null }, now, AT(11))).toEqual({});
  expect(uprightField({ ...standing, place: { ...PLACE, posture: 'lie' } }, now, AT(11))).toEqual({});
});

test('the minutes on the feet are read as their language types them; what is no plain number, or out of bounds, is refused', async () => {
  const [english, spanish] = [(await loadWords('en')).say, (await loadWords('es-ES')).say];
  for (const [typed, minutes] of [
    ['1,5', 1.5],
    [' 1,5 ', 1.5],
    ['1.5', 1.5],
    ['0', 0],
    ['60', 60],
    ['60,1', null],
    ['-0,1', null],
    ['', null],
    [' ', null],
    ['0x10', null],
    ['1e1', null],
    ['1,', null],
  ] as const)
    expect([typed, uprightOf(typed, spanish)]).toEqual([typed, minutes]);
  expect(uprightOf('1,5', english)).toBeNull();
  expect(uprightOf('1.5', english)).toBe(1.5);
  expect(uprightOf(undefined, english)).toBeNull();
});
