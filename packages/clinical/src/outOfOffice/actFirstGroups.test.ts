import { expect, test } from 'vitest';
import { NO_ROUND_FACTS } from '../round/roundFacts.js';
import { DEFAULT_ROUND_RULES } from '../round/roundRules.js';
import { type AlertedRow, actFirstGroups } from './actFirstGroups.js';
import { actFirstIn } from './actFirstOf.js';
import { seriesAlerts } from './seriesAlerts.js';

type Numbers = readonly [number | null, number | null, number | null];

/** What stands first on the page of these readings, by the rules of this program. */
function groupsOf(...numbers: readonly Numbers[]) {
  const rows = numbers.map(([systolic, diastolic, pulse]): AlertedRow => ({ systolic, diastolic, pulse }));
  const alerts = seriesAlerts(rows, null, NO_ROUND_FACTS, DEFAULT_ROUND_RULES);
  const flags = alerts.map(({ condition, figures }) => ({ code: condition, figures }));
  return actFirstGroups(rows, actFirstIn(rows, false, false), flags).map((group) => [
    group.rows.map(({ systolic, diastolic, pulse }) => `${systolic}/${diastolic} ${pulse}`),
    group.flags.map(({ code }) => code),
  ]);
}

// Limits: bedside handbook 3.16 (180 or 120) and 5.2 (systolic 90 or less, pulse 131 or more).
test('a pulse stands under the reading it was taken with, never under a pressure of another day', () => {
  expect(groupsOf([92, 76, 147], [136, 84, 72], [70, null, null])).toEqual([
    [['70/null null'], ['very-low-pressure']],
    [['92/76 147'], ['very-fast-pulse']],
  ]);
});

test('every reading of one danger stands over what is said of it once', () => {
  expect(groupsOf([188, 104, 80], [142, 88, 74], [196, 122, 82])).toEqual([
    [['188/104 80', '196/122 82'], ['severe-away']],
  ]);
});

test('two things said of one reading stand under it together: no reading stands twice', () => {
  expect(groupsOf([188, 104, 147])).toEqual([[['188/104 147'], ['severe-away', 'very-fast-pulse']]]);
  expect(groupsOf([196, 122, 82], [142, 88, 74], [188, 104, 147], [70, 40, 84], [92, 60, 38])).toEqual([
    [
      ['196/122 82', '188/104 147'],
      ['severe-away', 'very-fast-pulse'],
    ],
    [['70/40 84'], ['very-low-pressure']],
    [['92/60 38'], ['very-slow-pulse']],
  ]);
});

test('a pressure that no alert says is said by what it is; an alert without numbers stands by itself', () => {
  const [row] = [{ systolic: 188, diastolic: 104, pulse: null }];
  const found = actFirstIn([row as AlertedRow], false, false);
  const told = { code: 'somebody-asks', figures: {} };
  expect(actFirstGroups([row as AlertedRow], found, [told])).toEqual([
    { rows: [row], flags: [{ code: 'severe-reading', figures: {} }] },
    { rows: [], flags: [told] },
  ]);
});

test('nothing to act on is no group', () => {
  expect(groupsOf([142, 88, 74])).toEqual([]);
});
