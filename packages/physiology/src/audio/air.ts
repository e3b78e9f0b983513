import { keyOf } from '../chance/uniform.js';
import { Biquad } from './biquad.js';
import { AUDIO_FIGURES as F } from './figures.js';
import { gainOfDb } from './level.js';
import { asLoop } from './loop.js';
import { WhiteNoise } from './noise.js';
import { asPlayed, rmsOf } from './samples.js';

export const AIR_SOUNDS = ['pump', 'valve'] as const;
/** Air on its way: into the cuff, or out of it. */
export type AirSound = (typeof AIR_SOUNDS)[number];

const AIR_LANE = { pump: 48, valve: 49 } as const;
/** A thinner stream of air is silent, mL/s. */
const THINNEST = 1e-3;
const LOOP_SECONDS = 3;
const OVERLAP_SECONDS = 0.25;

/** What the cuff's pressure was at each `perSecond`-th of a second from an instant of the visit on. */
export type CuffTrace = {
  readonly fromSeconds: number;
  readonly perSecond: number;
  readonly mmHg: Float64Array;
};

/** How loud (RMS, 1 is full scale) air is that flows at so many mL a second: with the root of the flow. */
export function airGain(sound: AirSound, mlPerSecond: number): number {
  const atOne = sound === 'pump' ? F.pumpDbfs.value : F.valveDbfs.value;
  return mlPerSecond < THINNEST ? 0 : gainOfDb(atOne) * Math.sqrt(mlPerSecond);
}

/** Hiss or whisper to be played round and round, at an RMS of 1: multiplied by {@link airGain}. */
export function airNoise(sound: AirSound, seed: number, rate: number): Float32Array {
  const overlap = Math.round(OVERLAP_SECONDS * rate);
  const layer = new Float64Array(Math.round(LOOP_SECONDS * rate) + overlap);
  const white = new WhiteNoise(keyOf(seed, 'noise'), 0, AIR_LANE[sound]);
  for (let i = 0; i < layer.length; i++) layer[i] = white.next();
  const [from, to] =
    sound === 'pump' ? [F.pumpFromHz.value, F.pumpToHz.value] : [F.valveFromHz.value, F.valveToHz.value];
  Biquad.highPass(rate, from).run(layer);
  Biquad.lowPass(rate, Math.min(to, 0.45 * rate)).run(layer);
  return asLoop(asPlayed(layer, 1 / (rmsOf(layer) || 1)), overlap);
}

/** Adds what is heard of the bulb and the valve while the pressure goes up and down. */
export function addAir(
  mix: Float32Array,
  fromSeconds: number,
  rate: number,
  trace: CuffTrace,
  seed: number,
): void {
  for (const sound of AIR_SOUNDS) {
    const gains = gainsOf(sound, trace);
    if (!gains.some((gain) => gain > 0)) continue;
    const noise = airNoise(sound, seed, rate);
    const perSample = trace.perSecond / rate;
    const start = (fromSeconds - trace.fromSeconds) * trace.perSecond;
    for (let point = 0; point + 1 < gains.length; point++) {
      const before = gains[point] as number;
      const after = gains[point + 1] as number;
      if (before === 0 && after === 0) continue;
      const from = Math.max(0, Math.ceil((point - start) / perSample));
      const to = Math.min(mix.length, Math.ceil((point + 1 - start) / perSample));
      let at = from % noise.length;
      for (let i = from; i < to; i++) {
        const gain = before + (start + i * perSample - point) * (after - before);
        mix[i] = (mix[i] as number) + gain * (noise[at] as number);
        at = at + 1 === noise.length ? 0 : at + 1;
      }
    }
  }
}

/** How loud at each point of the trace, from how fast the pressure changes about it. */
function gainsOf(sound: AirSound, { perSecond, mmHg }: CuffTrace): Float64Array {
  const sign = sound === 'pump' ? 1 : -1;
  const gains = new Float64Array(mmHg.length);
  for (let i = 1; i + 1 < mmHg.length; i++) {
    const change = ((mmHg[i + 1] as number) - (mmHg[i - 1] as number)) / 2;
    gains[i] = airGain(sound, sign * change * perSecond * F.cuffMlPerMmHg.value);
  }
  return gains;
}
