import { expect, test } from 'vitest';
import { H1, homeEvidence, inForceBy, seriesContentOf } from '../testing/series.js';
import { compareSeries } from './compareSeries.js';

const ISH = inForceBy({ home: 'ish-2020' });

// Out-of-office handbook 19, H1: day 1 dropped 136.5833.
test('two series side by side: the second minus the first, and whether they are alike', () => {
  const lower = H1.map((one) => ({
    ...one,
    systolic: (one.systolic ?? 0) - 6,
    diastolic: (one.diastolic ?? 0) - 3,
  }));
  const [first, second] = [H1, lower].map((readings) => ({
    of: 'home' as const,
    value: seriesContentOf(homeEvidence(readings), ISH).value,
  }));
  if (first === undefined || second === undefined) throw new Error('two series');
  const compared = compareSeries(first, second);
  expect(compared.isLike).toBe(true);
  expect(compared.mean.systolic.first).toBeCloseTo(136.5833, 4);
  expect(compared.mean.systolic.difference).toBeCloseTo(-6, 9);
  expect(compared.mean.diastolic.difference).toBeCloseTo(-3, 9);
  expect(compared.morning?.pulse.difference).toBeCloseTo(0, 9);
  expect(compared.night).toBeNull();
  const short = { of: 'home' as const, value: seriesContentOf(homeEvidence(H1.slice(0, 4)), ISH).value };
  expect(compareSeries(first, short)).toMatchObject({
    isLike: false,
    mean: { systolic: { difference: null } },
  });
});
