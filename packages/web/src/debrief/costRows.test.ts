import type { Cost, Had } from '@evenfall/practice';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { costRows, movedBack } from './costRows.js';

const had = (mmHg: number): Had => ({
  systolic: { mmHg, lowMmHg: mmHg, highMmHg: mmHg },
  diastolic: null,
  muffled: null,
});
const cost = (systolic: number | null): Cost => ({
  code: 'talking',
  doInstead: 'ask-for-silence',
  systolic,
  diastolic: null,
});
const entered = (systolic: number | null) => ({
  systolic,
  muffled: null,
  diastolic: null,
  pulsePerMinute: null,
  breathsPerMinute: null,
});

// Three times 0.04 are 0.12: rounded each they would be 0, and the page would be off by a tenth.
test('what is shown adds up to the digit, whatever the shares are', () => {
  const shares = fc.array(fc.double({ min: -30, max: 30, noNaN: true }), { minLength: 1, maxLength: 14 });
  fc.assert(
    fc.property(shares, fc.integer({ min: -20, max: 20 }), (all, marks) => {
      const written = 120 + 2 * marks;
      const { rows, rest, total } = costRows({
        costs: { best: null, hidBy: null, costs: all.map(cost), left: { systolic: 0, diastolic: null } },
        had: had(120),
        entered: entered(written),
        isByMuffled: false,
      });
      const sum = rows.reduce((so, one) => so + (one.systolic ?? 0), rest?.systolic ?? Number.NaN);
      expect(sum).toBeCloseTo(total?.systolic ?? Number.NaN, 9);
      expect(total?.systolic).toBe(written - 120);
      for (const one of [...rows.map(({ systolic }) => systolic), rest?.systolic ?? 0])
        expect(Math.abs(10 * (one ?? 0) - Math.round(10 * (one ?? 0)))).toBeLessThan(1e-6);
      expect(rest?.diastolic).toBeNull();
    }),
  );
});

test('where nothing was to be had, or nothing was written, there is no sum', () => {
  const costs = { best: null, hidBy: null, costs: [cost(null)], left: { systolic: null, diastolic: null } };
  expect(costRows({ costs, had: had(120), entered: entered(120), isByMuffled: false })).toMatchObject({
    rest: null,
    total: null,
  });
  const none = { ...costs, left: { systolic: 1, diastolic: null } };
  expect(
    costRows({ costs: none, had: had(120), entered: entered(null), isByMuffled: false }).total,
  ).toBeNull();
});

// docs/conventions.md section 6: where sounds go on, the diastolic is where they became muffled. By hand: 64 written, 64 to be had.
test.each([
  [64, null],
  [4, 64],
])('by the muffling the sum is of the muffling: diastolic %d, muffled %s', (diastolic, muffled) => {
  const one = (mmHg: number) => ({ mmHg, lowMmHg: mmHg, highMmHg: mmHg });
  const { total, rest } = costRows({
    costs: {
      best: null,
      hidBy: null,
      costs: [{ ...cost(0), diastolic: 2 }],
      left: { systolic: 0, diastolic: -2 },
    },
    had: { systolic: one(172), muffled: one(64), diastolic: one(4) },
    entered: { ...entered(172), muffled, diastolic },
    isByMuffled: true,
  });
  expect(total).toEqual({ systolic: 0, diastolic: 0 });
  expect(rest?.diastolic).toBe(-2);
});

// By hand: 110 written, 120 to be had; one fault -35.2, another +26, the rest -0.8.
test('what everything else moved back of the dearest fault is told, and makes the whole with it', () => {
  const low = cost(-35.2);
  const both = [low, cost(26)];
  const result = {
    costs: { best: null, hidBy: null, costs: both, left: { systolic: -0.8, diastolic: null } },
    had: had(120),
    entered: entered(110),
    isByMuffled: false,
  };
  expect(movedBack(low, result)).toEqual({ systolic: 25.2, diastolic: null });
  expect(movedBack(cost(-9.5), result).systolic).toBeNull();
  expect(movedBack(cost(-10.5), result).systolic).toBeNull();
});
