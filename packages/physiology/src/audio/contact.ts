import { keyOf, uniformOf } from '../chance/uniform.js';
import { sineOfTurns } from '../exact/circle.js';
import { Biquad } from './biquad.js';
import { AUDIO_FIGURES as F } from './figures.js';
import { addNoise, addTone, harmonicsOf } from './layers.js';
import { gainOfDb } from './level.js';
import { PinkNoise } from './noise.js';
import { asPlayed, fadeEnd, scaleToPeak } from './samples.js';
import { throughEnd, throughTube } from './stethoscope.js';
import { USUAL_VOICE, type VoiceOptions } from './voiceOptions.js';

export const CONTACTS = ['put-on', 'taken-off', 'friction', 'tube-knock'] as const;
/** What hands do to a chest piece and its tube that is heard. */
export type ContactKind = (typeof CONTACTS)[number];

/** A touch at an instant of the visit. */
export type Contact = { readonly atSeconds: number; readonly kind: ContactKind };

const CONTACT_LANE = 32;
const FRICTION_SECONDS = 0.45;

/**
 * The noise of a touch as samples, begun and ended at 0; `index` tells one touch of a kind from the next.
 * Source: physiology handbook 13.
 */
export function contactNoise(
  kind: ContactKind,
  seed: number,
  index: number,
  options: Partial<VoiceOptions> = {},
): Float32Array {
  const voice: VoiceOptions = { ...USUAL_VOICE, ...options };
  const key = keyOf(seed, 'noise');
  const layer = MAKERS[kind](voice, key, index);
  throughTube(layer, voice);
  throughEnd(layer, voice);
  scaleToPeak(layer, gainOfDb(DBFS[kind]));
  fadeEnd(layer, Math.round(0.04 * voice.rate));
  return asPlayed(layer);
}

const DBFS: Readonly<Record<ContactKind, number>> = {
  'put-on': F.putOnDbfs.value,
  'taken-off': F.takenOffDbfs.value,
  friction: F.frictionDbfs.value,
  'tube-knock': F.knockDbfs.value,
};

type Maker = (voice: VoiceOptions, key: number, index: number) => Float64Array;

const thump =
  (hz: number, decay: number, noiseHz: number): Maker =>
  ({ rate, isLoudspeakerVoice }, key, index) => {
    const shift = isLoudspeakerVoice ? F.loudspeakerShift.value : 1;
    const layer = new Float64Array(Math.ceil((0.05 + 7 * decay) * rate));
    const swell = { attack: 0.004, decay: decay * (0.85 + 0.3 * uniformOf(key, index, CONTACT_LANE)) };
    addTone(layer, rate, hz * shift, harmonicsOf(isLoudspeakerVoice), swell);
    const rustle = Biquad.lowPass(rate, noiseHz * shift);
    const source = { key, index, lane: CONTACT_LANE + 1 };
    addNoise(layer, rate, rustle, source, 0.5, { attack: 0.006, decay: 1.4 * decay });
    return layer;
  };

/** Skin that slips and sticks: pink noise in shoves. */
const friction: Maker = ({ rate }, key, index) => {
  const layer = new Float64Array(Math.ceil((FRICTION_SECONDS + 0.05) * rate));
  const pink = new PinkNoise(key, index, CONTACT_LANE + 2, rate);
  const band = Biquad.bandPass(rate, F.frictionHz.value, 0.6);
  const shoves = 7 + 6 * uniformOf(key, index, CONTACT_LANE + 3);
  for (let i = 0; i < layer.length; i++) {
    const t = i / rate / FRICTION_SECONDS;
    const whole = t >= 1 ? 0 : sineOfTurns(0.5 * t);
    const shove = sineOfTurns(shoves * t * (1 + 0.3 * t));
    layer[i] = band.next(pink.next()) * whole * (0.35 + 0.65 * shove * shove);
  }
  return layer;
};

/** Two short knocks, the second the softer. */
const knock: Maker = ({ rate, isLoudspeakerVoice }, key, index) => {
  const shift = isLoudspeakerVoice ? F.loudspeakerShift.value : 1;
  const layer = new Float64Array(Math.ceil(0.22 * rate));
  const apart = 0.03 + 0.03 * uniformOf(key, index, CONTACT_LANE + 4);
  [1, 0.5].forEach((size, n) => {
    const part = layer.subarray(Math.round(n * apart * rate));
    const band = Biquad.bandPass(rate, F.knockHz.value * shift, 4);
    const source = { key, index, lane: CONTACT_LANE + 5 + n };
    addNoise(part, rate, band, source, size, { attack: 0.0015, decay: 0.016 });
  });
  return layer;
};

const MAKERS: Readonly<Record<ContactKind, Maker>> = {
  'put-on': thump(F.putOnHz.value, 0.03, 300),
  'taken-off': thump(F.takenOffHz.value, 0.018, 500),
  friction,
  'tube-knock': knock,
};
