import { keyOf, uniformOf } from '../chance/uniform.js';
import { sineOfTurns } from '../exact/circle.js';
import { Biquad } from './biquad.js';
import { AUDIO_FIGURES as F } from './figures.js';
import { gainOfDb } from './level.js';
import { WhiteNoise } from './noise.js';
import { asPlayed, rmsOf } from './samples.js';

/** Voices in the room. */
const TALKERS = 5;
/** A syllable, s, and how high its two formants may lie, Hz. Invented: no speech, and nobody's. */
const SYLLABLE = { least: 0.11, most: 0.28 };
const FIRST = { least: 320, most: 760 };
const SECOND = { least: 900, most: 2100 };
const FORMANT_QUALITY = 5;
/** After a syllable a talker stops, this often and for so long, s. */
const PAUSE = { chance: 0.16, least: 0.4, most: 1.8 };
/** RMS of the still room (air, machines far away) beside one talker. */
const STILL = 0.35;
const STILL_HZ = 240;
/** Chance of the room lies in lanes of its own, clear of those of the sounds of a beat. */
const ROOM_LANE = 64;

/**
 * A ward that talks, out of filtered noise alone, as loud as a room of so many dB(A). It does not pass through the
 * stethoscope. Source: physiology handbook 13.
 */
export function roomNoise(seconds: number, noiseDbA: number, seed: number, rate: number): Float32Array {
  const key = keyOf(seed, 'noise');
  const mix = new Float64Array(Math.round(seconds * rate));
  addStill(mix, key, rate);
  for (let talker = 0; talker < TALKERS; talker++) addTalker(mix, key, talker, rate);
  const gain = gainOfDb(roomDbfs(noiseDbA)) / (rmsOf(mix) || 1);
  return asPlayed(mix, gain);
}

/** RMS of a room, dB of full scale. */
export function roomDbfs(noiseDbA: number): number {
  return F.roomAtSixtyDbfs.value + noiseDbA - 60;
}

/** Into an empty mix. */
function addStill(mix: Float64Array, key: number, rate: number): void {
  const white = new WhiteNoise(key, 0, ROOM_LANE);
  for (let i = 0; i < mix.length; i++) mix[i] = white.next();
  Biquad.lowPass(rate, STILL_HZ, 0.4).run(mix);
  const gain = STILL / (rmsOf(mix) || 1);
  for (let i = 0; i < mix.length; i++) mix[i] = (mix[i] as number) * gain;
}

function addTalker(mix: Float64Array, key: number, talker: number, rate: number): void {
  const lane = ROOM_LANE + 8 * (talker + 1);
  const white = new WhiteNoise(key, 0, lane);
  const first = new Biquad();
  const second = new Biquad();
  let at = 0;
  for (let syllable = 0; at < mix.length; syllable++) {
    const draw = (k: number, { least, most }: { least: number; most: number }) =>
      least + (most - least) * uniformOf(key, syllable, lane + k);
    const length = Math.round(draw(1, SYLLABLE) * rate);
    first.tuneBand(rate, draw(2, FIRST), FORMANT_QUALITY);
    second.tuneBand(rate, draw(3, SECOND), FORMANT_QUALITY);
    const loud = TALKER_GAIN * (0.3 + 0.7 * uniformOf(key, syllable, lane + 4));
    const end = Math.min(length, mix.length - at);
    const perSample = SWELL.length / length;
    for (let i = 0; i < end; i++) {
      const x = white.next();
      const y = first.next(x) + 0.5 * second.next(x);
      const swell = SWELL[Math.floor(i * perSample)] as number;
      mix[at + i] = (mix[at + i] as number) + loud * swell * y;
    }
    at += length;
    if (uniformOf(key, syllable, lane + 5) < PAUSE.chance) at += Math.round(draw(6, PAUSE) * rate);
  }
}

/** Brings filtered noise to an RMS of about 1. */
const TALKER_GAIN = 14;
/** How a syllable swells and fades, in steps too small to be heard. */
const SWELL = Float64Array.from({ length: 4096 }, (_, i) => sineOfTurns((0.5 * (i + 0.5)) / 4096) ** 2);
