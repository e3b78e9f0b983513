import type { GaugeLog } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { chartGaugeLog } from '../content/chartGaugeLog.js';
import type { EntryFrame, StoredEntry } from '../entry/entry.js';
import { frame, idOf, kept, NO_PROTOCOL, TEST_PROGRAM } from '../testing/work.js';
import { placeEquipment } from './placeEquipment.js';

const at = (day: string) => ({ at: `${day}T09:00:00+01:00`, zone: 'Europe/Madrid', asEntered: null });
const NAMED = { what: 'gauge', name: 'Gauge 3', type: 'aneroid', room: 'Room 2', serial: null, note: null };
const CUFF = {
  what: 'cuff',
  room: 'Room 2',
  scheme: 'aha-2005',
  cuff: 'large-adult',
  bladderCm: null,
  pieces: 2,
  note: null,
};

function said(id: number, kind: EntryFrame['kind'], content: object, more: Partial<EntryFrame> = {}) {
  return kept(frame(kind, content, { person: null, id: idOf(id), sequence: id, ...more }), id);
}
const gauge = said(1, 'equipment', NAMED);
function logged(id: number, log: GaugeLog, day: string, more: Partial<EntryFrame> = {}): StoredEntry {
  const content = chartGaugeLog({ gauge: idOf(1), log, note: null }, NO_PROTOCOL, TEST_PROGRAM);
  return said(id, 'gauge-logged', content, { measuredAt: at(day), ...more });
}
const inError = (id: number, of: number) =>
  said(
    id,
    'entered-in-error',
    { note: null },
    { amends: { entry: idOf(of), reason: 'duplicate', text: null } },
  );
const RULES = NO_PROTOCOL.equipmentRules;
const only = (entries: readonly StoredEntry[], today = '2026-11-25', rules = RULES) => {
  const [one] = placeEquipment(entries, today, rules).gauges;
  if (one === undefined) throw new Error('no gauge');
  return one;
};

test('a gauge has its log in order of doing, whatever the order of writing down', () => {
  const later = logged(2, { of: 'zero', restMmHg: 0 }, '2026-11-25');
  const earlier = logged(3, { of: 'zero', restMmHg: 5 }, '2026-11-24');
  const { log, standing } = only([later, gauge, earlier]);
  expect(log.map(({ entry }) => entry.id)).toEqual([idOf(3), idOf(2)]);
  expect(standing.checks[0]).toMatchObject({ of: 'zero', state: 'good', lastGoodDay: '2026-11-25' });
});

test('a log line entered in error is shown and counts for nothing', () => {
  const out = logged(2, { of: 'zero', restMmHg: 5 }, '2026-11-25');
  expect(only([gauge, out]).standing.state).toBe('failed');
  const { log, standing } = only([gauge, out, inError(3, 2)]);
  expect(log.map(({ isInError }) => isInError)).toEqual([true]);
  expect(standing).toMatchObject({ state: 'due', doubts: [] });
});

test('a gauge put right keeps its id, its log and its newest name', () => {
  const amends = { entry: idOf(1), reason: 'typing-slip' as const, text: null };
  const put = said(3, 'equipment', { ...NAMED, name: 'Gauge 4' }, { amends });
  const { id, newest, named, log, namings } = only([
    gauge,
    logged(2, { of: 'zero', restMmHg: 0 }, '2026-11-25'),
    put,
  ]);
  expect([id, newest, named.name, log.length]).toEqual([idOf(1), idOf(3), 'Gauge 4', 1]);
  expect(namings.map(({ content }) => content)).toEqual([NAMED, { ...NAMED, name: 'Gauge 4' }]);
  const moved = { entry: idOf(3), reason: 'other' as const, text: 'moved' };
  const again = said(4, 'equipment', { ...NAMED, name: 'Gauge 4', room: 'Room 9' }, { amends: moved });
  const third = only([gauge, again, put]);
  expect([third.id, third.newest, third.named.room]).toEqual([idOf(1), idOf(4), 'Room 9']);
  expect(third.namings.map((one) => one.id)).toEqual([idOf(1), idOf(3), idOf(4)]);
});

test('what ended stays with its day, unless the end was said in error; what was named in error is gone', () => {
  const end = said(
    4,
    'equipment-ended',
    { equipment: idOf(1), reason: null },
    { measuredAt: at('2026-11-20') },
  );
  expect(only([gauge, end]).endedOn).toBe('2026-11-20');
  expect(only([gauge, end, inError(5, 4)]).endedOn).toBeNull();
  expect(placeEquipment([gauge, inError(5, 1)], '2026-11-25', RULES).gauges).toEqual([]);
});

test('the day of a check is the local day of who made it', () => {
  const late = logged(2, { of: 'zero', restMmHg: 0 }, '2026-11-25', {
    measuredAt: { at: '2026-11-25T00:30:00+01:00', zone: 'Europe/Madrid', asEntered: null },
  });
  expect(only([gauge, late]).standing.checks[0]?.lastGoodDay).toBe('2026-11-25');
});

test('gauges come by name and cuffs by room', () => {
  const { gauges, cuffs } = placeEquipment(
    [
      gauge,
      said(2, 'equipment', { ...NAMED, name: 'Gauge 1' }),
      said(3, 'equipment', CUFF),
      said(4, 'equipment', { ...CUFF, room: 'Room 1', cuff: 'adult' }),
    ],
    '2026-11-25',
    RULES,
  );
  expect(gauges.map(({ named }) => named.name)).toEqual(['Gauge 1', 'Gauge 3']);
  expect(cuffs.map(({ named }) => `${named.room} ${named.cuff}`)).toEqual([
    'Room 1 adult',
    'Room 2 large-adult',
  ]);
});

test('when a check is due again goes by the rules in force now, its verdict by those of its day', () => {
  const zero = logged(2, { of: 'zero', restMmHg: 3 }, '2026-11-20');
  const strict = { ...RULES, mostRestMmHg: 1, zeroDays: 2 };
  const [first] = only([gauge, zero]).standing.checks;
  expect(first).toMatchObject({ state: 'good', dueDay: '2026-11-27' });
  const [now] = only([gauge, zero], '2026-11-25', strict).standing.checks;
  expect(now).toMatchObject({ state: 'overdue', dueDay: '2026-11-22', lastGoodDay: '2026-11-20' });
});
