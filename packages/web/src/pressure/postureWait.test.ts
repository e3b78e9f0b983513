import { expect, test } from 'vitest';
import type { RoundDraft } from '../round/draft.js';
import { AT, begun } from '../round/testing.js';
import { isPostureFirst, postureWait, waitSaid } from './postureWait.js';
import { NO_PRESSURE } from './pressureDraft.js';

const LAY = { since: { session: 'one', atMs: 5_000 }, at: AT(10) };
const PLACE = {
  site: 'upper-arm',
  side: 'right',
  posture: 'lie',
  cuff: null,
  armCm: null,
  override: null,
} as const;
const after = (seconds: number) => ({ session: 'one', atMs: 5_000 + 1000 * seconds });

// Bedside handbook 3.14: five minutes lying, then standing within the first minute and again by the third.
test('the cuff waits for five minutes lying, and for the minute that is due on the feet', () => {
  const lying = { ...NO_PRESSURE, place: PLACE, lying: LAY };
  expect(postureWait(lying, PLACE, after(61), AT(11))).toBe(239);
  expect(postureWait(lying, PLACE, after(300), AT(15))).toBe(0);
  const stand = { ...PLACE, posture: 'stand' as const };
  expect(postureWait({ ...lying, place: stand, upright: LAY }, stand, after(20), AT(10))).toBe(40);
});

test('where no clock of the posture runs, nothing is waited for', () => {
  const sit = { ...PLACE, posture: 'sit' as const };
  expect(postureWait({ ...NO_PRESSURE, place: PLACE }, PLACE, after(1), AT(10))).toBe(0);
  expect(postureWait({ ...NO_PRESSURE, place: sit, lying: LAY }, sit, after(1), AT(10))).toBe(0);
});

// Bedside handbook 3.15: very low or unwell is repeated at once, by hand, without a wait (common practice).
test('lying, what is asked for at once comes before the minutes of lying, begun or not', () => {
  const draft = { ...begun(), wanted: ['lying-and-standing'] as const };
  const first = (isAtOnce: boolean, of = draft) =>
    isPostureFirst(of, PLACE, { isAtOnce, now: after(20), at: AT(10) });
  const lies = { ...draft, pressure: { ...draft.pressure, place: PLACE, lying: LAY } };
  expect([first(false), first(false, lies)]).toEqual([true, true]);
  expect([first(true), first(true, lies)]).toEqual([false, false]);
  const stand = { ...PLACE, posture: 'stand' as const };
  expect(isPostureFirst(draft, stand, { isAtOnce: true, now: after(20), at: AT(10) })).toBe(true);
});

// Bedside handbook 3.10 (a minute between readings), 3.14 (five minutes lying); that one clock is said is our decision.
test('of the arm’s rest and the minutes of a posture the one that ends last is said, and no other', () => {
  const draft = { ...begun(), wanted: ['lying-and-standing'] as const };
  const lies = { ...draft, pressure: { ...draft.pressure, place: PLACE, lying: LAY } };
  const said = (armSeconds: number | null, seconds: number, of: RoundDraft = lies, isAtOnce = false) =>
    waitSaid(of, PLACE, armSeconds, { isAtOnce, now: after(seconds), at: AT(10) });
  expect(said(36, 0)).toBe('posture');
  expect(said(36, 290)).toBe('arm');
  expect(said(0, 290)).toBe('posture');
  expect(said(36, 301)).toBe('arm');
  expect(said(null, 20)).toBe('posture');
  // Five minutes that are not begun yet outlast a rest that goes on meanwhile.
  expect(said(36, 0, draft)).toBe('posture');
  expect(said(36, 0, lies, true)).toBe('arm');
});
