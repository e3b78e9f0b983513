import { describe, expect, it } from 'vitest';
import { beatsOf, TABLE } from '../../testing/sounds.js';
import {
  dB,
  difference,
  largestStep,
  meanSpectrum,
  onset,
  peak,
  peakHz,
  range,
  rms,
} from '../../testing/spectrum.js';
import { PROPER } from '../circumstances/circumstances.js';
import { SOUND_INSTRUMENT } from '../cuff/instrument.js';
import { makePerson } from '../person/makePerson.js';
import { simulate } from '../rig/simulate.js';
import { SCENARIOS, scenarioOf } from '../scenario/scenarios.js';
import { airGain } from './air.js';
import { renderRun } from './renderRun.js';
import { voiceOf } from './voice.js';

const RATE = 44_100;
const SEED = 3;

/** A let-down at 2.5 mmHg/s from over the systolic to well below the diastolic. */
function run(id: string, seed: number) {
  const scenario = scenarioOf(id) ?? SCENARIOS[0]!;
  const person = makePerson(scenario, seed);
  const from = scenario.systolic + 30;
  const seconds = 8 + (from - scenario.diastolic + 20) / 2.5;
  const actions = [
    { tick: 0, kind: 'steady-rise', mmHgPerSecond: 40, toMmHg: from },
    { tick: 1400, kind: 'steady-fall', mmHgPerSecond: 2.5, toMmHg: 0 },
  ] as const;
  return { seconds, heard: simulate(person, PROPER, SOUND_INSTRUMENT, actions, seconds) };
}

describe('a run', () => {
  it('has each sound within 1 ms of its instant and is silent until then', () => {
    const times = [0.2501, 1.03337, 2.2, 3.48881];
    const events = times.map((atSeconds, beat) => ({ ...TABLE[(beat + 1) as 1], beat, atSeconds }));
    const { samples } = renderRun(events, { seed: SEED, fromSeconds: 0, toSeconds: 4 });
    for (const at of times) {
      const part = samples.subarray(Math.round((at - 0.15) * RATE), Math.round((at + 0.1) * RATE));
      const off = onset(part, RATE, 0.02) - 0.15;
      expect(Math.abs(1000 * off)).toBeLessThanOrEqual(1);
    }
  });

  it('replayed from any instant it is the same run', () => {
    const { heard, seconds } = run('quiet-morning', 2);
    const whole = renderRun(heard.sounds, { seed: 2, fromSeconds: 0, toSeconds: seconds });
    const from = 20;
    const part = renderRun(heard.sounds, { seed: 2, fromSeconds: from, toSeconds: seconds });
    const begun = Math.round(0.5 * RATE);
    const offset = from * RATE;
    const again = whole.samples.subarray(offset + begun, offset + part.samples.length);
    expect(difference(part.samples.subarray(begun), again)).toBe(0);
  });

  it('of a third of the invented people neither clips nor jumps', () => {
    for (const { id } of SCENARIOS.filter((_, place) => place % 3 === 0)) {
      const { heard, seconds } = run(id, 5);
      const { samples } = renderRun(heard.sounds, { seed: 5, fromSeconds: 8, toSeconds: seconds });
      expect(peak(samples), id).toBeLessThan(0.98);
      expect(largestStep(samples), id).toBeLessThan((2 * Math.PI * 900) / RATE);
    }
  });

  // Physiology handbook 18, row 39 (Kollar 2001): the tap is strongest near 125 Hz, 90 to 170 allowed.
  it('its taps are strongest between 90 and 170 Hz in whole runs of several people', () => {
    const at = range(20, 1200, 10);
    for (const id of ['quiet-morning', 'white-corridor', 'missed-step', 'unheralded']) {
      const taps = [1, 2, 3].flatMap((seed) =>
        run(id, seed)
          .heard.sounds.filter(({ phase }) => phase === 1 || phase === 3)
          .map((event) => voiceOf(event, seed)),
      );
      const highest = peakHz(meanSpectrum(taps, RATE, at), at);
      expect(highest, id).toBeGreaterThanOrEqual(90);
      expect(highest, id).toBeLessThanOrEqual(170);
    }
  });

  it('never clips even if many sounds, hands and a loud room come together', () => {
    const events = beatsOf({ ...TABLE[3], levelDb: 52 }, 8);
    const contacts = [{ atSeconds: 0, kind: 'put-on' as const }];
    const { samples } = renderRun(events, {
      seed: SEED,
      fromSeconds: 0,
      toSeconds: 1,
      roomDbA: 110,
      contacts,
    });
    expect(peak(samples)).toBeLessThan(1);
    expect(peak(samples)).toBeGreaterThan(0.7);
  });

  it('is the same for the same seed', () => {
    const { heard, seconds } = run('leaves-in-wind', 4);
    const cuff = { fromSeconds: 0, perSecond: heard.tracePerSecond, mmHg: heard.cuff };
    const options = { seed: 4, fromSeconds: 0, toSeconds: Math.min(seconds, 20), roomDbA: 60, cuff };
    const once = renderRun(heard.sounds, options).samples;
    expect(peak(once)).toBeGreaterThan(0);
    expect(difference(once, renderRun(heard.sounds, options).samples)).toBe(0);
  });

  it('says when it is not what a stethoscope gives', () => {
    const asked = { seed: 1, fromSeconds: 0, toSeconds: 1 };
    expect(renderRun([], asked).isLoudspeakerVoice).toBe(false);
    expect(renderRun([], { ...asked, isLoudspeakerVoice: true }).isLoudspeakerVoice).toBe(true);
  });
});

describe('what lies about the sounds', () => {
  it('air is heard while it flows: its amplitude goes with the root of the flow', () => {
    const perSecond = 50;
    const fall = (mmHgPerSecond: number) =>
      Float64Array.from({ length: 201 }, (_, i) => 200 - (mmHgPerSecond * i) / perSecond);
    const heard = (mmHgPerSecond: number) =>
      rms(
        renderRun([], {
          seed: 1,
          fromSeconds: 0,
          toSeconds: 4,
          cuff: { fromSeconds: 0, perSecond, mmHg: fall(mmHgPerSecond) },
        }).samples,
      );
    expect(heard(8) / heard(2)).toBeCloseTo(2, 3);
    expect(heard(0)).toBe(0);
    // Physiology handbook 15: an adult cuff takes 0.86 mL for each mmHg.
    expect(heard(2)).toBeCloseTo(airGain('valve', 2 * 0.86), 4);
  });

  it('pumping hisses, and louder than the valve', () => {
    expect(airGain('pump', 4)).toBeGreaterThan(airGain('valve', 4));
    expect(airGain('pump', 4) / airGain('pump', 1)).toBeCloseTo(2, 9);
    expect(airGain('pump', 0)).toBe(0);
    expect(airGain('valve', -3)).toBe(0);
  });

  it('a quiet room hides no sound of a threshold; one 10 dB(A) louder is 10 dB louder', () => {
    const room = (roomDbA: number) =>
      rms(renderRun([], { seed: 1, fromSeconds: 0, toSeconds: 8, roomDbA }).samples);
    expect(dB(room(70) / room(60))).toBeCloseTo(10, 2);
    expect(dB(room(60))).toBeCloseTo(-70, 2);
  });
});
