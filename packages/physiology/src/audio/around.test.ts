import { describe, expect, it } from 'vitest';
import { dB, largestStep, meanSpectrum, peak, range, rms, shareWithin } from '../../testing/spectrum.js';
import { AIR_SOUNDS, airNoise } from './air.js';
import { breathSound } from './breathSound.js';
import { CONTACTS, contactNoise } from './contact.js';
import { asLoop } from './loop.js';
import { CHECK_LEVELS_DB, loudnessCheck } from './loudnessCheck.js';
import { roomNoise } from './room.js';
import { voiceOf } from './voice.js';

const RATE = 44_100;
const STEPS = range(25, 6000, 25);
/** Spectrum of something long, from slices of it. */
function spectrumOf(samples: Float32Array): number[] {
  const slices = Array.from({ length: 20 }, (_, i) => {
    const at = Math.floor((i * (samples.length - 2048)) / 20);
    return samples.subarray(at, at + 2048);
  });
  return meanSpectrum(slices, RATE, STEPS);
}

describe('touches', () => {
  it.each(CONTACTS)(
    '%s begins and ends at 0, jumps nowhere, never clips, and differs from time to time',
    (kind) => {
      const once = contactNoise(kind, 4, 0);
      expect(once[0]).toBe(0);
      expect(once.at(-1)).toBeCloseTo(0, 9);
      expect(peak(once)).toBeLessThan(0.2);
      expect(largestStep(once)).toBeLessThan(((2 * Math.PI * 900) / RATE) * peak(once));
      expect(contactNoise(kind, 4, 0)).toEqual(once);
      expect(contactNoise(kind, 4, 1)).not.toEqual(once);
    },
  );
});

// Physiology handbook 13: pump hiss 1 to 4 kHz.
describe('air', () => {
  it('a pump hisses between 1 and 4 kHz', () => {
    expect(shareWithin(spectrumOf(airNoise('pump', 3, RATE)), STEPS, 900, 4500)).toBeGreaterThan(0.8);
  });

  it.each(AIR_SOUNDS)('%s goes round without a seam', (sound) => {
    const loop = airNoise(sound, 3, RATE);
    expect(rms(loop)).toBeCloseTo(1, 1);
    const seam = Math.abs((loop[0] as number) - (loop.at(-1) as number));
    expect(seam).toBeLessThan(largestStep(loop.subarray(1, -1)));
  });
});

it('a loop is as loud at its seam as elsewhere', () => {
  const loop = asLoop(
    Float32Array.from({ length: 3000 }, (_, i) => Math.sin(i * i)),
    1000,
  );
  expect(loop).toHaveLength(2000);
  expect(Math.abs(dB(rms(loop.subarray(0, 1000)) / rms(loop.subarray(1000))))).toBeLessThan(1);
});

describe('a room', () => {
  const room = roomNoise(12, 60, 9, RATE);
  it('talks: most of it lies where voices do, and it is never twice the same second', () => {
    expect(shareWithin(spectrumOf(room), STEPS, 150, 3000)).toBeGreaterThan(0.7);
    const seconds = Array.from({ length: 12 }, (_, i) => rms(room.subarray(i * RATE, (i + 1) * RATE)));
    expect(Math.max(...seconds) / Math.min(...seconds)).toBeGreaterThan(1.1);
    expect(Math.max(...seconds) / Math.min(...seconds)).toBeLessThan(4);
  });

  it('leaves room for what is listened to: no sample of it is near full scale', () => {
    expect(dB(peak(roomNoise(12, 70, 9, RATE)))).toBeLessThan(-40);
  });
});

// Physiology handbook 13: band noise 150 to 600 Hz, inspiration louder; wheeze at 400 Hz.
describe('a breath at the chest', () => {
  const breath = { index: 3, inspirationSeconds: 1.4, movingSeconds: 3.4, depth: 1 };
  const quiet = breathSound(breath, false, 6, RATE);
  const turn = Math.round(1.4 * RATE);

  it('lies between 150 and 600 Hz, and is louder on the way in', () => {
    expect(shareWithin(spectrumOf(quiet), STEPS, 125, 650)).toBeGreaterThan(0.85);
    expect(rms(quiet.subarray(0, turn))).toBeGreaterThan(1.5 * rms(quiet.subarray(turn)));
  });

  it('begins and ends at 0 and grows with its depth', () => {
    expect(quiet[0]).toBeCloseTo(0, 9);
    expect(quiet.at(-1)).toBeCloseTo(0, 9);
    const deep = breathSound({ ...breath, depth: 2 }, false, 6, RATE);
    expect(rms(deep) / rms(quiet)).toBeCloseTo(2, 4);
  });

  it('wheezes about 400 Hz, on the way out above all', () => {
    const wheezing = breathSound(breath, true, 6, RATE);
    const wheeze = wheezing.map((x, i) => x - (quiet[i] as number));
    expect(shareWithin(spectrumOf(wheeze), STEPS, 350, 600)).toBeGreaterThan(0.9);
    expect(rms(wheeze.subarray(turn))).toBeGreaterThan(rms(wheeze.subarray(0, turn)));
    expect(largestStep(wheezing)).toBeLessThan(0.02);
  });
});

// Physiology handbook 13: three test taps at 5, 10 and 20 dB; level map 40 dB to -12 dBFS.
it('the check has a tap at 20, 10 and 5 dB, as loud as a tap of that level in a run', () => {
  const taps = loudnessCheck();
  expect([...CHECK_LEVELS_DB].sort((a, b) => a - b)).toEqual([5, 10, 20]);
  expect(taps.map((tap) => tap.levelDb)).toEqual([20, 10, 5]);
  for (const tap of taps) {
    expect(Math.abs(dB(peak(voiceOf(tap, 1))) - (tap.levelDb - 52))).toBeLessThan(3.5);
  }
});
