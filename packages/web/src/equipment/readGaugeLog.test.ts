import { NOTHING_CHOSEN } from '@evenfall/record';
import { expect, test } from 'vitest';
import { offeredAt, pointRows, readLog } from './readGaugeLog.js';

const RULES = NOTHING_CHOSEN.equipmentRules;
const ROWS = pointRows(RULES);

const typed = (fields: Readonly<Record<string, string>>) => (field: string) => fields[field] ?? '';

test('a row of which this gauge was not read is left out, and one of which only the other was not is asked for', () => {
  const fields = {
    reference: 'column',
    other0: '0',
    gauge0: '2',
    other1: '50',
    gauge1: '',
    other2: '100',
    gauge2: '104',
  };
  expect(readLog('comparison', typed(fields), ROWS)).toEqual({
    ok: true,
    value: {
      of: 'comparison',
      reference: 'column',
      points: [
        { referenceMmHg: 0, gaugeMmHg: 2 },
        { referenceMmHg: 100, gaugeMmHg: 104 },
      ],
    },
  });
  const half = readLog('comparison', typed({ ...fields, other2: '' }), ROWS);
  expect(half.ok ? [] : half.refusals.map(({ field }) => field)).toEqual(['/points/1/referenceMmHg']);
});

test('nothing typed is missing and never zero', () => {
  for (const of of ['zero', 'leak', 'comparison'] as const) {
    const read = readLog(of, typed({}), ROWS);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.refusals.every(({ code }) => code === 'missing')).toBe(true);
  }
});

// OIML R 16-1:2002 (from memory): steps of at most 50 mmHg.
test('the pressures of a comparison are offered from zero up, and rows are left for more', () => {
  expect(offeredAt(RULES)).toEqual(['0', '50', '100', '150', '200', '', '', '']);
});

test('a place that asks for more pressures, or reaches higher, is offered them, and every row is read', () => {
  const more = { ...RULES, fewestPoints: 11 };
  expect(offeredAt(more).slice(0, 11)).toEqual([
    '0',
    '20',
    '40',
    '60',
    '80',
    '100',
    '120',
    '140',
    '160',
    '180',
    '200',
  ]);
  expect(
    offeredAt({ ...RULES, toMmHg: 260 })
      .filter((at) => at !== '')
      .at(-1),
  ).toBe('260');
  const rows = pointRows(more);
  const last = rows.length - 1;
  const read = readLog(
    'comparison',
    typed({ reference: 'column', [`other${last}`]: '210', [`gauge${last}`]: '212' }),
    rows,
  );
  expect(read).toMatchObject({ ok: true, value: { points: [{ referenceMmHg: 210, gaugeMmHg: 212 }] } });
});
