import { DEFAULT_DEFLATION_RULES } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { AT, begun, ID } from '../round/testing.js';
import { withCuffOf, withWrongCuff } from './cuffOfReading.js';
import { withReading } from './pressureSteps.js';
import { readRun } from './readRun.js';

const PLACE = {
  site: 'upper-arm',
  side: 'right',
  posture: 'sit',
  cuff: { scheme: 'aha-2005', id: 'child' },
  armCm: null,
  override: null,
} as const;
const typedAs = { method: 'auscultation', typed: '110/70', fields: {}, reinflated: false } as const;

function taken() {
  const { run } = readRun(typedAs, { pulsePerMinute: null, lostMmHg: null }, DEFAULT_DEFLATION_RULES);
  if (run === null) throw new Error('110/70');
  return withReading(begun(), {
    kind: 'run',
    entry: ID(30),
    sequence: 30,
    measuredAt: AT(2),
    run,
    place: PLACE,
    uprightMinutes: null,
    inflatedAt: null,
    keptAt: { session: 's', atMs: 0 },
    typedAs,
    note: null,
  });
}

// Bedside handbook 3.2: the 2005 table has no child's cuff.
test('a reading with a child’s cuff of the adult table cannot be signed until its cuff is put right', () => {
  const wrong = taken();
  expect(withWrongCuff(wrong).map(({ entry }) => entry)).toEqual([ID(30)]);
  const right = withCuffOf(wrong, ID(30), { scheme: 'fourth-report-2004', id: 'child' });
  expect(withWrongCuff(right)).toEqual([]);
  expect(right.pressure.values[0]?.place.cuff?.scheme).toBe('fourth-report-2004');
  expect(withWrongCuff(withCuffOf(wrong, ID(30), null))).toEqual([]);
});
