import { expect, test } from 'vitest';
import { fillWaves, WAVES_OF_HOUR } from './dayWaves.js';

test.each([0, 6, 7.25, 23.983333333333334, 15.123456789, 24.5, 49.99, -1])(
  'cosine and sine of 24 and of 12 hours at %d',
  (hour) => {
    const into = new Float64Array(WAVES_OF_HOUR + 2).fill(9);
    fillWaves(into, 1, hour);
    const angle = (2 * Math.PI * hour) / 24;
    const waves = [Math.cos(angle), Math.sin(angle), Math.cos(2 * angle), Math.sin(2 * angle)];
    waves.forEach((wave, k) => {
      expect(into[k + 1]).toBeCloseTo(wave, 9);
    });
    expect([into[0], into[5]]).toEqual([9, 9]);
  },
);
