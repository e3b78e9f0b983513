import { expect, test } from 'vitest';
import { type Peak, peakAfter } from './peakAfter.js';

/** What is kept of the run at hand after the cuff stood at each of these, a second apart. */
function after(...cuff: readonly number[]) {
  let peak: Peak = { wentUpSeconds: null, peakSeconds: null, mmHg: 0, lowestMmHg: 0 };
  const begun: number[] = [];
  cuff.forEach((cuffMmHg, seconds) => {
    const next = peakAfter(peak, { cuffMmHg, seconds });
    peak = next.peak;
    if (next.isNew) begun.push(seconds);
  });
  return { peak, begun };
}

// Bedside handbook 3.8: one inflation, one reading.
test('from flat another run begins, and its highest point is kept on the way down', () => {
  expect(after(0, 60, 190, 150, 90)).toMatchObject({ begun: [1], peak: { peakSeconds: 2, mmHg: 190 } });
  expect(after(0, 190, 90, 0, 50, 178, 120)).toMatchObject({ begun: [1, 4], peak: { peakSeconds: 5 } });
});

test('let out but for a little air and pumped up anew it is another run, lower than the first though it be', () => {
  expect(after(0, 194, 90, 12, 15, 60, 178, 120)).toMatchObject({
    begun: [1, 5],
    peak: { wentUpSeconds: 5, peakSeconds: 6, mmHg: 178 },
  });
});

test('pumped up a little on the way down, or with a little air after it, it is the same run', () => {
  expect(after(0, 194, 90, 110, 80)).toMatchObject({ begun: [1], peak: { peakSeconds: 1 } });
  expect(after(0, 194, 90, 12, 30, 10)).toMatchObject({ begun: [1], peak: { peakSeconds: 1 } });
});
