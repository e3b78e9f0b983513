import { loadWords } from '@evenfall/words';
import { expect, test } from 'vitest';
import { AT } from '../round/testing.js';
import { isLainWrong, lainOf, lainUntil, postureField } from './lying.js';
import { NO_PRESSURE, type PressureDraft } from './pressureDraft.js';

const LAY = { since: { session: 'one', atMs: 5_000 }, at: AT(10) };
const PLACE = {
  site: 'upper-arm',
  side: 'right',
  posture: 'lie',
  cuff: null,
  armCm: null,
  override: null,
} as const;
const lying: PressureDraft = { ...NO_PRESSURE, place: PLACE, lying: LAY };
const NOW = { session: 'one', atMs: 305_000 };

test('a lying reading begins with the minutes that were measured, on the back or on the side', () => {
  expect(postureField(lying, NOW, AT(15))).toEqual({ lyingMinutes: '5' });
  expect(postureField({ ...lying, place: { ...PLACE, posture: 'lie-left' } }, NOW, AT(15))).toEqual({
    lyingMinutes: '5',
  });
  expect(postureField({ ...lying, lying: null }, NOW, AT(15))).toEqual({});
  expect(postureField({ ...lying, place: { ...PLACE, posture: 'sit' } }, NOW, AT(15))).toEqual({});
  expect(postureField({ ...lying, place: null }, NOW, AT(15))).toEqual({});
});

test('a standing one begins with its own', () => {
  const standing = { ...lying, place: { ...PLACE, posture: 'stand' as const }, upright: LAY };
  expect(postureField(standing, NOW, AT(15))).toEqual({ uprightMinutes: '5' });
});

test('after a reload somebody lies on, by the wall clock, for as long as a reading can hold', () => {
  const now = { session: 'two', atMs: 10 };
  expect(lainUntil(LAY, now, AT(20))).toEqual({ seconds: 600, byWallClock: 'reload' });
  expect(lainUntil(LAY, now, AT(9))).toBeNull();
});

test('the minutes lying may be left blank; what is no such time is told of, where somebody lies', async () => {
  const { say } = await loadWords('en');
  expect([lainOf('5.5', say), lainOf('1440', say), lainOf('', say), lainOf('1441', say)]).toEqual([
    5.5,
    1440,
    null,
    null,
  ]);
  expect(isLainWrong(PLACE, '', say)).toBe(false);
  expect(isLainWrong(PLACE, undefined, say)).toBe(false);
  expect(isLainWrong(PLACE, 'long', say)).toBe(true);
  expect(isLainWrong({ ...PLACE, posture: 'sit' }, 'long', say)).toBe(false);
});
