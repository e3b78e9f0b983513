import type { PersonRow } from '@evenfall/api';
import { expect, test } from 'vitest';
import { dueRows } from './dueRows.js';

const NOW = { at: '2026-11-25T10:00:00.000+01:00', zone: 'Europe/Oslo', asEntered: null };
const time = (clock: string) => `2026-11-25T${clock}:00+01:00`;

function person(
  id: string,
  from: string | null,
  by: string | null = null,
  actNow = 0,
  code = 'recheck-severe',
): PersonRow {
  const recheck = from === null ? null : { code, fromAt: time(from), byAt: by === null ? null : time(by) };
  const latest = {
    pulse: null,
    breaths: null,
    pressure: null,
    actNow,
    actNowFirst: actNow === 0 ? null : 'very-fast-pulse',
    toCountersign: 0,
    diary: null,
    diaries: [],
    awayUntil: null,
    recheck,
  };
  return { id, identity: null, classIdentity: null, latest };
}

test('after whoever has an alert, what is late comes first, then what may be taken now, then what is ahead, each by its time', () => {
  const rows = [
    person('nothing', null),
    person('ahead later', '10:30'),
    person('ahead', '10:05', '10:10'),
    person('now', '09:50', '10:20'),
    person('since', '09:40'),
    person('late', '09:00', '09:30'),
    person('later late', '09:00', '09:45'),
    person('alert, ahead', '10:01', null, 1),
    person('alert alone', null, null, 2),
  ];
  expect(dueRows(rows, NOW).map(({ row }) => row.id)).toEqual([
    'alert, ahead',
    'alert alone',
    'late',
    'later late',
    'since',
    'now',
    'ahead',
    'ahead later',
  ]);
});

// Bedside handbook 3.15 and 3.16: whoever is unwell or very low first, then severe in pregnancy, severe, high by category.
test('of those whose time has come, as of those with an alert, the most urgent comes first, however long another has waited', () => {
  const rows = [
    person('high, long late', '08:00', '08:05', 0, 'recheck-abnormal-soon'),
    person('severe, since', '09:50'),
    person('pregnant, late', '09:40', '09:59', 0, 'recheck-pregnancy'),
    person('very low, late', '09:57', '09:58', 0, 'recheck-at-once'),
    person('alert, high', '09:00', '09:05', 1, 'recheck-abnormal-soon'),
    person('alert, very low', '09:57', '09:58', 1, 'recheck-at-once'),
    person('alert of another kind', null, null, 1),
    person('alert, severe', '10:05', null, 1),
  ];
  expect(dueRows(rows, NOW).map(({ row }) => row.id)).toEqual([
    'alert, very low',
    'alert, high',
    'alert, severe',
    'alert of another kind',
    'very low, late',
    'pregnant, late',
    'severe, since',
    'high, long late',
  ]);
});

// Common practice, no source: a severe pressure is not hidden below what is late and less, though its wait is not over.
test('a severe pressure stands before what is high by its category and late', () => {
  const high = person('high, late', '08:00', '08:05', 0, 'recheck-abnormal-soon');
  const highAhead = person('high, ahead', '10:05', '10:10', 0, 'recheck-abnormal-soon');
  const due = dueRows([high, highAhead, person('severe, ahead', '10:05', '10:10')], NOW);
  expect(due.map(({ row }) => row.id)).toEqual(['severe, ahead', 'high, late', 'high, ahead']);
});

test('of whom a round alarms that nobody signed stands among the alerts, though nothing of it is charted', () => {
  const severe = {
    pressures: ['182/122'],
    condition: null,
    others: 0,
    isUnasked: true,
    recheck: 'recheck-severe',
  };
  const rows = [person('late', '09:00', '09:30'), person('begun', null), person('alert', null, null, 1)];
  const due = dueRows(rows, NOW, new Map([['begun', severe]]));
  expect(due.map(({ row }) => row.id)).toEqual(['alert', 'begun', 'late']);
  expect(due[1]).toMatchObject({ due: null, begun: severe });
});
