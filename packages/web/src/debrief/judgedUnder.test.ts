import { type InForce, NOTHING_CHOSEN } from '@evenfall/record';
import { expect, test } from 'vitest';
import { rulesAmong } from '../chart/useRulesOf.js';
import { judgedUnder } from './judgedUnder.js';

const [NOW, THEN, GONE] = ['aa', 'bb', 'cc'].map((one) => one.repeat(32)) as [string, string, string];
const under = (presetVersion: string): InForce => ({ ...NOTHING_CHOSEN, presetVersion });
const [now, before] = [under(NOW), under(THEN)];
const rulesOf = rulesAmong(now, { [THEN]: before });

// docs/conventions.md section 9: a value is judged by the version of its day; what is in force now changes nothing of it.
test.each([
  [{ presetVersion: NOW }, now, 'version'],
  [{ presetVersion: THEN }, before, 'version'],
  [{ presetVersion: null }, NOTHING_CHOSEN, 'none'],
  [{ presetVersion: GONE }, now, 'not-here'],
  [null, now, 'now'],
] as const)(
  'kept under %j it is judged by that, else it says what it is judged by',
  (judgedBy, rules, by) => {
    const found = judgedUnder(judgedBy, now, rulesOf, true);
    expect(found.by).toBe(by);
    expect(found.rules).toBe(rules);
  },
);

test('where the protocols of this place could not be asked for, none is said to be missing from them', () => {
  const by = (presetVersion: string | null) => judgedUnder({ presetVersion }, now, rulesOf, false).by;
  expect([GONE, THEN, NOW, null].map(by)).toEqual(['not-reached', 'version', 'version', 'none']);
});
