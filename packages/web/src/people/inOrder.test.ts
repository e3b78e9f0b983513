import type { PersonRow } from '@evenfall/api';
import { expect, test } from 'vitest';
import { inOrder } from './inOrder.js';

const at = (minute: number) => `2026-03-02T09:${String(minute).padStart(2, '0')}:00Z`;

/** A person of the list, named after where they belong. */
function person(id: string, actNow: number, recheck: PersonRow['latest']['recheck'] = null): PersonRow {
  const latest = {
    pulse: null,
    breaths: null,
    pressure: null,
    actNow,
    actNowFirst: actNow === 0 ? null : 'very-fast-pulse',
    recheck,
    toCountersign: 0,
    diary: null,
    diaries: [],
    awayUntil: null,
  };
  return { id, identity: null, classIdentity: null, latest };
}

const now = { at: at(30), zone: 'UTC', asEntered: null };

// Common practice, no source: whoever may be in danger first, then what is overdue.
test('whoever needs somebody stands first: act now, late, due, and the rest as they came', () => {
  const rows = [
    person('Ada', 0),
    person('due later', 0, { code: 'recheck-severe', fromAt: at(20), byAt: at(45) }),
    person('late', 0, { code: 'recheck-severe', fromAt: at(10), byAt: at(29) }),
    person('at its last minute', 0, { code: 'recheck-severe', fromAt: at(10), byAt: at(30) }),
    person('Berit', 0),
    person('act now', 1, { code: 'recheck-severe', fromAt: at(40), byAt: at(50) }),
    person('later', 0, { code: 'recheck-severe', fromAt: at(0), byAt: at(5) }),
    person('from then on', 0, { code: 'recheck-severe', fromAt: at(40), byAt: null }),
    person('act now too', 2),
  ];
  expect(inOrder(rows, now).map(({ id }) => id)).toEqual([
    'act now',
    'act now too',
    'later',
    'late',
    'at its last minute',
    'from then on',
    'due later',
    'Ada',
    'Berit',
  ]);
});

// Bedside handbook 3.15: very low before severe. That what nobody signed yet counts among them is our decision.
test('a round that was begun and not signed stands among the alerts, by how urgent it is', () => {
  const alarm = (recheck: string) => ({
    pressures: [],
    condition: null,
    others: 0,
    isUnasked: true,
    recheck,
  });
  const rows = [person('Ada', 0), person('severe, begun', 0), person('act now', 1), person('low, begun', 0)];
  const begun = new Map([
    ['severe, begun', alarm('recheck-severe')],
    ['low, begun', alarm('recheck-at-once')],
  ]);
  const order = ['low, begun', 'act now', 'severe, begun', 'Ada'];
  expect(inOrder(rows, now, begun).map(({ id }) => id)).toEqual(order);
});
