import { expect, test } from 'vitest';
import { AUDIO_FIGURES } from './figures.js';
import { pulseTap } from './pulseTap.js';
import { peakOf } from './samples.js';

const RATE = 48_000;
/** Share of the energy at a frequency, by its Fourier coefficient written out (the definition, no library). */
function powerAt(samples: Float32Array, hz: number): number {
  let [re, im] = [0, 0];
  samples.forEach((value, at) => {
    re += value * Math.cos((2 * Math.PI * hz * at) / RATE);
    im -= value * Math.sin((2 * Math.PI * hz * at) / RATE);
  });
  return re * re + im * im;
}

test('the tap of a pulse is soft and low, begins and ends at nothing, and is as loud as the pulse is strong', () => {
  const usual = pulseTap(1, { rate: RATE });
  expect(20 * Math.log10(peakOf(usual))).toBeCloseTo(AUDIO_FIGURES.pulseTapDbfs.value, 3);
  expect(peakOf(pulseTap(0.5, { rate: RATE })) / peakOf(usual)).toBeCloseTo(0.5, 5);
  expect(peakOf(pulseTap(9, { rate: RATE })) / peakOf(usual)).toBeCloseTo(1.5, 5);
  expect(peakOf(pulseTap(0, { rate: RATE }))).toBe(0);
  expect(Math.abs(usual[0] ?? 1)).toBeLessThan(1e-4);
  expect(Math.abs(usual.at(-1) ?? 1)).toBeLessThan(1e-4);
  const { value: low } = AUDIO_FIGURES.pulseTapHz;
  expect(powerAt(usual, low)).toBeGreaterThan(20 * powerAt(usual, 4 * low));
});

test('small speakers, which play nothing low, have it higher', () => {
  const { pulseTapHz, loudspeakerShift } = AUDIO_FIGURES;
  const high = pulseTapHz.value * loudspeakerShift.value;
  const shifted = pulseTap(1, { rate: RATE, isLoudspeakerVoice: true });
  expect(powerAt(shifted, high)).toBeGreaterThan(5 * powerAt(shifted, pulseTapHz.value));
});
