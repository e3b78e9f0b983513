import { expect, test } from 'vitest';
import { presetProtocol } from '../protocol/presetProtocol.js';
import { ambulatoryRules } from '../protocol/rules.js';
import { ambulatoryResult } from './ambulatoryResult.js';
import { DEFAULT_AMBULATORY_RULES } from './ambulatoryRules.js';
import { NOTHING_BY_HAND } from './homeResult.js';
import { A1 } from './testing.js';

const older = presetProtocol({ ambulatory: 'research-levels-older' });
if (!older.ok) throw new Error(JSON.stringify(older.refusals));
const RULES = ambulatoryRules(older.value);

/** A1 of the out-of-office handbook 19 without its readings from 12:30 to a time of the afternoon. */
function emptyTo(lastEmpty: number, rules = RULES) {
  const left = A1.filter(({ minuteOfDay }) => minuteOfDay < 750 || minuteOfDay > lastEmpty);
  const dayNight = { by: 'asleep-range', asleep: { from: 1380, to: 420 }, nap: null } as const;
  const known = { ...NOTHING_BY_HAND, ageYears: 55, isPregnant: false, scheduled: 40, dayNight };
  return ambulatoryResult(left, { ...known, isAllUsed: false }, rules);
}

// Out-of-office handbook 5, the older rule of research: at least 10 by day and 5 by night, no three hours in a row empty.
test.each([
  ['two hours and a half', 14 * 60, 2.5, []],
  ['three hours', 14 * 60 + 30, 3, [{ code: 'too-long-empty', figures: { hours: 3, longest: 3 } }]],
  ['four hours', 15 * 60 + 30, 4, [{ code: 'too-long-empty', figures: { hours: 4, longest: 3 } }]],
])('%s without a reading', (_, lastEmpty, hours, why) => {
  const found = emptyTo(lastEmpty);
  expect(found.longestGapHours).toBe(hours);
  expect(found.why).toEqual(why);
  expect(found.valid).toBe(why.length === 0);
  expect(found.high === null).toBe(why.length > 0);
});

test('a rule set without that limit says nothing of it', () => {
  expect(emptyTo(15 * 60 + 30, DEFAULT_AMBULATORY_RULES).why.map(({ code }) => code)).toEqual(['no-limit']);
});

// The same recording begun at 09:00 with all that follows a few minutes later: at each of them three hours are three.
test('three hours without a reading are three, at whatever minute they begin', () => {
  const dayNight = { by: 'asleep-range', asleep: { from: 1380, to: 420 }, nap: null } as const;
  const known = { ...NOTHING_BY_HAND, ageYears: 55, isPregnant: false, scheduled: 40, dayNight };
  const left = A1.filter(({ minuteOfDay }) => minuteOfDay < 750 || minuteOfDay > 870);
  for (let minutes = 0; minutes < 30; minutes++) {
    const later = left.map((one, k) => (k === 0 ? one : { ...one, atMs: one.atMs + minutes * 60_000 }));
    const found = ambulatoryResult(later, { ...known, isAllUsed: false }, RULES);
    expect([minutes, found.longestGapHours, found.valid]).toEqual([minutes, 3, false]);
  }
});
