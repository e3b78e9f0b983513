import { describe, expect, it } from 'vitest';
import { beatsOf, TABLE } from '../../testing/sounds.js';
import {
  dB,
  largestStep,
  lastAbove,
  meanSpectrum,
  onset,
  peak,
  peakHz,
  range,
  shareWithin,
} from '../../testing/spectrum.js';
import type { SoundEvent } from '../sound/soundEvent.js';
import { voiceOf } from './voice.js';

const RATE = 44_100;
const SEED = 11;
const PHASES = [1, 2, 3, 4] as const;
const many = (event: SoundEvent, options = {}) =>
  beatsOf(event, 40).map((one) => voiceOf(one, SEED, options));
const FROM_20_TO_1200 = range(20, 1200, 10);
const spectrumOf = (sounds: readonly Float32Array[]) => meanSpectrum(sounds, RATE, FROM_20_TO_1200);

// Physiology handbook 8.3 (table), 13 (recipe) and 18 row 39: tap strongest near 125 Hz, 90 to 170 allowed (Kollar 2001).
describe('spectrum', () => {
  it.each([1, 3] as const)('the tap of phase %i is strongest between 90 and 170 Hz', (phase) => {
    const highest = peakHz(spectrumOf(many(TABLE[phase])), FROM_20_TO_1200);
    expect(highest).toBeGreaterThanOrEqual(90);
    expect(highest).toBeLessThanOrEqual(170);
  });

  it('over the phases with taps together it is strongest near 125 Hz', () => {
    const all = [1, 2, 3].flatMap((phase) => many(TABLE[phase as 1]));
    expect(Math.abs(peakHz(spectrumOf(all), FROM_20_TO_1200) - 125)).toBeLessThanOrEqual(15);
  });

  it('a click adds to the band of its phase', () => {
    const beginning = (sounds: readonly Float32Array[]) =>
      spectrumOf(sounds.map((one) => one.subarray(0, Math.round(0.012 * RATE))));
    for (const [phase, low, high] of [
      [1, 300, 500],
      [3, 400, 700],
    ] as const) {
      const withClick = beginning(many(TABLE[phase]));
      const without = beginning(many({ ...TABLE[phase], clickDb: null }));
      const band = (one: number[]) => shareWithin(one, FROM_20_TO_1200, low, high);
      expect(band(withClick)).toBeGreaterThan(1.3 * band(without));
    }
  });

  it('what follows the tap of phase II lies between 200 and 600 Hz, strongest about 350', () => {
    const tails = many(TABLE[2]).map((one) => one.subarray(Math.round(0.06 * RATE)));
    const spectrum = spectrumOf(tails);
    expect(shareWithin(spectrum, FROM_20_TO_1200, 200, 600)).toBeGreaterThan(0.75);
    const middle = FROM_20_TO_1200.reduce((sum, hz, i) => sum + hz * (spectrum[i] as number), 0);
    const centre = middle / spectrum.reduce((sum, x) => sum + x, 0);
    expect(centre).toBeGreaterThan(250);
    expect(centre).toBeLessThan(450);
    const highest = peakHz(spectrum, FROM_20_TO_1200);
    expect(highest).toBeGreaterThan(230);
    expect(highest).toBeLessThan(470);
  });

  it('the swish glides down', () => {
    const centreOf = (from: number, to: number) => {
      const parts = many(TABLE[2]).map((one) => one.subarray(Math.round(from * RATE), Math.round(to * RATE)));
      const spectrum = spectrumOf(parts);
      const sum = spectrum.reduce((total, x) => total + x, 0);
      return FROM_20_TO_1200.reduce((total, hz, i) => total + (hz * (spectrum[i] as number)) / sum, 0);
    };
    expect(centreOf(0.05, 0.08)).toBeGreaterThan(centreOf(0.13, 0.19) + 20);
  });

  it('a muffled sound is strongest between 50 and 80 Hz and has next to nothing over 200', () => {
    const spectrum = spectrumOf(many(TABLE[4]));
    const highest = peakHz(spectrum, FROM_20_TO_1200);
    expect(highest).toBeGreaterThanOrEqual(50);
    expect(highest).toBeLessThanOrEqual(80);
    expect(shareWithin(spectrum, FROM_20_TO_1200, 200, 1200)).toBeLessThan(0.02);
  });

  it('a pistol shot is higher than any tap: about 180 Hz', () => {
    const shot = { ...TABLE[3], centreHz: 180, isPistolShot: true };
    const highest = peakHz(spectrumOf(many(shot)), FROM_20_TO_1200);
    expect(highest).toBeGreaterThan(130);
    expect(highest).toBeLessThan(210);
  });

  it('a stethoscope passes next to nothing under 30 and over 900 Hz; the bell more of the low end than the diaphragm', () => {
    const at = range(20, 4000, 20);
    const full = meanSpectrum(many(TABLE[3]), RATE, at);
    expect(shareWithin(full, at, 1300, 4000)).toBeLessThan(0.01);
    const low = (end: 'bell' | 'diaphragm') =>
      shareWithin(spectrumOf(many(TABLE[4], { end })), FROM_20_TO_1200, 20, 80);
    expect(low('bell')).toBeGreaterThan(low('diaphragm'));
  });

  it('the loudspeaker voice lies where small speakers play: over 200 Hz', () => {
    for (const phase of [1, 3] as const) {
      const spectrum = meanSpectrum(
        many(TABLE[phase], { isLoudspeakerVoice: true }),
        RATE,
        range(20, 2500, 20),
      );
      expect(shareWithin(spectrum, range(20, 2500, 20), 200, 2500)).toBeGreaterThan(0.8);
    }
    const thud = meanSpectrum(many(TABLE[4], { isLoudspeakerVoice: true }), RATE, range(20, 2500, 20));
    expect(peakHz(thud, range(20, 2500, 20))).toBeGreaterThan(110);
  });
});

describe('in time', () => {
  const DURATIONS = { 1: [25, 40], 2: [90, 200], 3: [30, 45], 4: [60, 90] } as const;
  // The tube rings on a little after the sound itself: 8 ms are granted.
  it.each(PHASES)('phase %i lasts as long as the table says, to 20 dB down', (phase) => {
    const lasts = many(TABLE[phase]).map((one) => 1000 * lastAbove(one, RATE, -20));
    const mean = lasts.reduce((sum, x) => sum + x, 0) / lasts.length;
    expect(mean).toBeGreaterThan(DURATIONS[phase][0]);
    expect(mean).toBeLessThan(DURATIONS[phase][1] + 8);
  });

  it.each(PHASES)('phase %i is heard within 1 ms of its instant, at every rate', (phase) => {
    for (const rate of [16_000, 44_100, 48_000, 96_000]) {
      for (const event of beatsOf(TABLE[phase], 20)) {
        expect(1000 * onset(voiceOf(event, SEED, { rate }), rate, 0.02)).toBeLessThanOrEqual(1);
      }
    }
  });

  // The steepest that a tone of 900 Hz can be between two samples: 2 pi 900 / 44,100 of its height.
  it.each(PHASES)('phase %i begins and ends at 0 and jumps nowhere', (phase) => {
    for (const voice of many(TABLE[phase])) {
      expect(voice[0]).toBe(0);
      expect(voice.at(-1)).toBeCloseTo(0, 9);
      expect(largestStep(voice)).toBeLessThan(((2 * Math.PI * 900) / RATE) * peak(voice));
    }
  });
});

describe('loudness', () => {
  it('40 dB is -12 dB of full scale and 0 dB is -52, but for what the side on the skin adds or takes', () => {
    for (const phase of PHASES) {
      for (const [levelDb, dbfs] of [
        [40, -12],
        [0, -52],
      ] as const) {
        const event = { ...TABLE[phase], levelDb };
        const bell = dB(peak(voiceOf(event, SEED, { end: 'bell' })));
        const diaphragm = dB(peak(voiceOf(event, SEED, { end: 'diaphragm' })));
        expect(bell).toBeGreaterThan(dbfs - 0.5);
        expect(bell).toBeLessThan(dbfs + 3.5);
        expect(diaphragm).toBeLessThan(dbfs + 0.5);
        expect(diaphragm).toBeGreaterThan(dbfs - 4.5);
      }
    }
  });

  it('20 dB more is ten times the amplitude of the same sound', () => {
    const soft = voiceOf({ ...TABLE[1], levelDb: 15 }, SEED);
    const loud = voiceOf({ ...TABLE[1], levelDb: 35 }, SEED);
    expect(peak(loud) / peak(soft)).toBeCloseTo(10, 4);
  });

  it('never clips, however loud', () => {
    for (const levelDb of [50, 51, 52, 60, 200]) {
      for (const phase of PHASES)
        expect(peak(voiceOf({ ...TABLE[phase], levelDb }, SEED))).toBeLessThanOrEqual(10 ** (-1 / 20) + 1e-6);
    }
  });

  it('what is under the last bit of a file is no sound at all', () => {
    expect(voiceOf({ ...TABLE[1], levelDb: -39.9 }, SEED).length).toBeGreaterThan(0);
    expect(voiceOf({ ...TABLE[1], levelDb: -40 }, SEED)).toHaveLength(0);
    expect(voiceOf({ ...TABLE[1], levelDb: Number.NEGATIVE_INFINITY }, SEED)).toHaveLength(0);
    expect(voiceOf({ ...TABLE[1], levelDb: Number.NaN }, SEED)).toHaveLength(0);
  });
});

describe('chance', () => {
  it('the same seed and beat sound the same; another beat or seed does not', () => {
    const once = voiceOf({ ...TABLE[2], beat: 5 }, SEED);
    expect(voiceOf({ ...TABLE[2], beat: 5 }, SEED)).toEqual(once);
    expect(voiceOf({ ...TABLE[2], beat: 6 }, SEED)).not.toEqual(once);
    expect(voiceOf({ ...TABLE[2], beat: 5 }, SEED + 1)).not.toEqual(once);
  });

  it('when a sound comes, and how high the cuff is then, changes nothing of it: replayed from anywhere it is the same', () => {
    const once = voiceOf(TABLE[3], SEED);
    expect(voiceOf({ ...TABLE[3], atSeconds: 71.3, cuffMmHg: 88 }, SEED)).toEqual(once);
  });

  it('no two taps of a run are alike in length of fading', () => {
    const lengths = new Set(many(TABLE[1]).map((one) => one.length));
    expect(lengths.size).toBeGreaterThan(20);
  });
});
