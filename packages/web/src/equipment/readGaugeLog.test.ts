import { expect, test } from 'vitest';
import { offeredAt, POINT_ROWS, readLog } from './readGaugeLog.js';

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
  expect(readLog('comparison', typed(fields))).toEqual({
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
  const half = readLog('comparison', typed({ ...fields, other2: '' }));
  expect(half.ok ? [] : half.refusals.map(({ field }) => field)).toEqual(['/points/1/referenceMmHg']);
});

test('nothing typed is missing and never zero', () => {
  for (const of of ['zero', 'leak', 'comparison'] as const) {
    const read = readLog(of, typed({}));
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.refusals.every(({ code }) => code === 'missing')).toBe(true);
  }
});

// OIML R 16-1:2002 (from memory): steps of at most 50 mmHg.
test('the pressures of a comparison are offered from zero up, and rows are left for more', () => {
  expect(POINT_ROWS.map(offeredAt)).toEqual(['0', '50', '100', '150', '200', '', '', '']);
});
