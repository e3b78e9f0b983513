import { describe, expect, it } from 'vitest';
import { dB, powerAt } from '../../testing/spectrum.js';
import { Biquad } from './biquad.js';

const RATE = 44_100;
/** Gain of a filter at a frequency, dB, by its answer to one sample of 1. */
function gainDb(filter: Biquad, hz: number): number {
  const answer = new Float64Array(RATE / 2);
  answer[0] = 1;
  filter.run(answer);
  return dB(Math.sqrt(powerAt(answer, RATE, hz)));
}
const tan = (hz: number) => Math.tan((Math.PI * hz) / RATE);

// A filter of second order that is as flat as can be (Butterworth 1930), with the frequency axis of the bilinear transform.
describe('low and high pass', () => {
  it.each([50, 300, 890, 900, 910, 2000, 5000])('at %i Hz of 900 follow Butterworth', (hz) => {
    const ratio = tan(hz) / tan(900);
    expect(gainDb(Biquad.lowPass(RATE, 900), hz)).toBeCloseTo(-10 * Math.log10(1 + ratio ** 4), 3);
    expect(gainDb(Biquad.highPass(RATE, 900), hz)).toBeCloseTo(-10 * Math.log10(1 + ratio ** -4), 3);
  });
});

// A band-pass of quality Q is 3 dB down where f/f0 - f0/f = 1/Q on either side.
it('a band-pass passes its centre whole and is 3 dB down at the edges of its band', () => {
  const half = 1 / 1.5 / 2;
  const edge = Math.sqrt(1 + half * half);
  expect(gainDb(Biquad.bandPass(RATE, 130, 1.5), 130)).toBeCloseTo(0, 3);
  expect(gainDb(Biquad.bandPass(RATE, 130, 1.5), 130 * (edge + half))).toBeCloseTo(-3.01, 1);
  expect(gainDb(Biquad.bandPass(RATE, 130, 1.5), 130 * (edge - half))).toBeCloseTo(-3.01, 1);
});

it('a peak of 6 dB is one at its centre and nothing far away', () => {
  expect(gainDb(Biquad.peak(RATE, 100, 1, 6), 100)).toBeCloseTo(6, 3);
  expect(gainDb(Biquad.peak(RATE, 100, 1, 6), 5000)).toBeCloseTo(0, 1);
});

it.each([3, -4])('a low shelf of %i dB is one at the low end, half at its corner, nothing above', (db) => {
  expect(gainDb(Biquad.lowShelf(RATE, 120, db), 5)).toBeCloseTo(db, 1);
  expect(gainDb(Biquad.lowShelf(RATE, 120, db), 120)).toBeCloseTo(db / 2, 2);
  expect(gainDb(Biquad.lowShelf(RATE, 120, db), 3000)).toBeCloseTo(0, 1);
});
