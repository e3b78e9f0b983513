import type { HeartSound } from '../apex/heartSound.js';
import { normalWithin } from '../chance/normal.js';
import { keyOf, uniformOf } from '../chance/uniform.js';
import type { SoundEvent } from '../sound/soundEvent.js';
import { Biquad } from './biquad.js';
import { AUDIO_FIGURES as F } from './figures.js';
import { addNoise, addTone, harmonicsOf, type Swell, swish } from './layers.js';
import { amplitudeOfLevel, gainOfDb } from './level.js';
import { addAt, asPlayed, fadeEnd, peakOf, scaleToPeak } from './samples.js';
import { throughEnd, throughTube } from './stethoscope.js';
import { USUAL_VOICE, type VoiceOptions } from './voiceOptions.js';

/** Draws of the voice of a beat in the stream `noise`, in the order in which they were added. */
const LANE = { tap: 0, click: 1, swish: 2, attack: 3, decay: 4, clickHz: 5 };
/** The same of the two sounds of the heart. */
const HEART_LANE = { first: { noise: 8, decay: 10 }, second: { noise: 9, decay: 11 } } as const;
/** A layer is cut off when it has fallen by 60 dB: 6.9 times its decay. */
const DECAYS_HEARD = 6.9;
/** What the tube rings on after that, s, most of it faded out. */
const RINGING_SECONDS = 0.05;
/** Duration in the book's table: until the sound has fallen by 20 dB, ln 10 decays. */
const DECAYS_OF_DURATION = Math.LN10;

/**
 * One sound as samples from -1 to 1. The first sample is the instant of the event and 0, the last is 0 too; the highest
 * is that of the event's level, before bell or diaphragm. Empty for one too soft to be anything.
 * Source: physiology handbook 8.3 and 13; a sound of the heart is made as a muffled one is, by its own figures.
 */
export function voiceOf(
  event: SoundEvent | HeartSound,
  seed: number,
  options: Partial<VoiceOptions> = {},
): Float32Array {
  const voice: VoiceOptions = { ...USUAL_VOICE, ...options };
  if (!(event.levelDb > F.softestDb.value)) return new Float32Array(0);
  const samples =
    'heart' in event
      ? thud(event, seed, voice, HEART_THUD[event.heart])
      : event.isMuffled
        ? thud(event, seed, voice, MUFFLED)
        : tapped(event, seed, voice);
  scaleToPeak(samples, amplitudeOfLevel(event.levelDb));
  throughEnd(samples, voice);
  const most = gainOfDb(F.loudestDbfs.value);
  if (peakOf(samples) > most) scaleToPeak(samples, most);
  fadeEnd(samples, Math.round(RINGING_SECONDS * voice.rate));
  return asPlayed(samples);
}

/** Tap, click and swish; click and swish have their level beside the tap as it is heard through the tube. */
function tapped(event: SoundEvent, seed: number, voice: VoiceOptions): Float64Array {
  const { rate, isLoudspeakerVoice } = voice;
  const key = keyOf(seed, 'noise');
  const shift = isLoudspeakerVoice ? F.loudspeakerShift.value : 1;
  const { beat } = event;
  const hz = event.centreHz * shift;
  const swell = tapSwell(event, key);
  const tail = event.swish === null ? null : swishSeconds(event.swish.durationMs);
  const seconds = Math.max(swell.attack + DECAYS_HEARD * swell.decay, tail?.whole ?? 0) + RINGING_SECONDS;
  const samples = new Float64Array(Math.ceil(seconds * rate));
  const tap = samples.subarray(0, Math.ceil((swell.attack + DECAYS_HEARD * swell.decay) * rate));
  addTone(tap, rate, hz, harmonicsOf(isLoudspeakerVoice), swell);
  const band = Biquad.bandPass(rate, hz, event.quality);
  addNoise(tap, rate, band, { key, index: beat, lane: LANE.tap }, F.tapNoise.value, swell);
  throughTube(samples, voice);
  const peak = peakOf(samples);
  if (event.clickDb !== null) {
    const click = clickOf(event, key, voice);
    scaleToPeak(click, peak * gainOfDb(event.clickDb));
    addAt(samples, click, 0);
  }
  if (event.swish !== null && tail !== null) {
    const layer = swish(tail.layer, tail.hold, rate, shift, { key, index: beat, lane: LANE.swish });
    throughTube(layer, voice);
    scaleToPeak(layer, peak * gainOfDb(event.swish.levelDb));
    addAt(samples, layer, Math.round((F.swishDelayMs.value / 1000) * rate));
  }
  return samples;
}

function clickOf(event: SoundEvent, key: number, voice: VoiceOptions): Float64Array {
  const { rate, isLoudspeakerVoice } = voice;
  const shift = isLoudspeakerVoice ? F.loudspeakerShift.value : 1;
  const swell = { attack: F.clickAttackMs.value / 1000, decay: F.clickDecayMs.value / 1000 };
  const click = new Float64Array(Math.ceil((swell.attack + DECAYS_HEARD * swell.decay) * rate));
  const isCrisp = event.phase === 3;
  const from = isCrisp ? F.clickCrispFromHz.value : F.clickFirstFromHz.value;
  const to = isCrisp ? F.clickCrispToHz.value : F.clickFirstToHz.value;
  const hz = from + (to - from) * uniformOf(key, event.beat, LANE.clickHz);
  const band = Biquad.bandPass(rate, hz * shift, F.clickQuality.value);
  addNoise(click, rate, band, { key, index: event.beat, lane: LANE.click }, 1, swell);
  throughTube(click, voice);
  return click;
}

type Thud = {
  readonly attackMs: number;
  readonly lowPassHz: number;
  readonly noise: number;
  readonly lane: { readonly noise: number; readonly decay: number };
};

const MUFFLED: Thud = {
  attackMs: F.muffledAttackMs.value,
  lowPassHz: F.muffledLowPassHz.value,
  noise: F.muffledNoise.value,
  lane: { noise: LANE.tap, decay: LANE.decay },
};
const HEART_THUD: Readonly<Record<HeartSound['heart'], Thud>> = {
  first: {
    attackMs: F.firstAttackMs.value,
    lowPassHz: F.firstLowPassHz.value,
    noise: F.heartNoise.value,
    lane: HEART_LANE.first,
  },
  second: {
    attackMs: F.secondAttackMs.value,
    lowPassHz: F.secondLowPassHz.value,
    noise: F.heartNoise.value,
    lane: HEART_LANE.second,
  },
};

/** A thud: a low tone and low noise. */
function thud(
  event: Pick<SoundEvent, 'beat' | 'centreHz' | 'durationMs'>,
  seed: number,
  voice: VoiceOptions,
  { attackMs, lowPassHz, noise, lane }: Thud,
): Float64Array {
  const { rate, isLoudspeakerVoice } = voice;
  const key = keyOf(seed, 'noise');
  const shift = isLoudspeakerVoice ? F.loudspeakerShift.value : 1;
  const attack = attackMs / 1000;
  const decay =
    ((event.durationMs / 1000 - attack) / DECAYS_OF_DURATION) * jitter(key, event.beat, lane.decay);
  const swell = { attack, decay };
  const samples = new Float64Array(Math.ceil((attack + DECAYS_HEARD * decay + RINGING_SECONDS) * rate));
  const part = samples.subarray(0, Math.ceil((attack + DECAYS_HEARD * decay) * rate));
  addTone(part, rate, event.centreHz * shift, harmonicsOf(isLoudspeakerVoice), swell);
  const low = Biquad.lowPass(rate, lowPassHz * shift);
  addNoise(part, rate, low, { key, index: event.beat, lane: lane.noise }, noise, swell);
  throughTube(samples, voice);
  return samples;
}

function tapSwell(event: SoundEvent, key: number): Swell {
  const { value: least } = F.tapAttackLeastMs;
  const attack = (least + (F.tapAttackMostMs.value - least) * uniformOf(key, event.beat, LANE.attack)) / 1000;
  const asked = (event.durationMs / 1000 - attack) / DECAYS_OF_DURATION;
  const decay = event.isPistolShot
    ? F.pistolDecayMs.value / 1000
    : Math.min(F.tapDecayMostMs.value / 1000, Math.max(F.tapDecayLeastMs.value / 1000, asked));
  return { attack, decay: decay * jitter(key, event.beat, LANE.decay) };
}

const jitter = (key: number, beat: number, lane: number) =>
  normalWithin(
    key,
    beat,
    lane,
    1,
    F.decayJitter.value,
    1 - 3 * F.decayJitter.value,
    1 + 3 * F.decayJitter.value,
  );

/** The shortest swish of the book (90 ms) stays 40 ms at its height, the longest (140 ms) 60 ms. */
function swishSeconds(durationMs: number): { hold: number; layer: number; whole: number } {
  const part = Math.max(0, Math.min(1, (durationMs - 90) / 50));
  const hold =
    (F.swishHoldLeastMs.value + part * (F.swishHoldMostMs.value - F.swishHoldLeastMs.value)) / 1000;
  const layer = F.swishAttackMs.value / 1000 + hold + (DECAYS_HEARD / 1.5) * (F.swishReleaseMs.value / 1000);
  return { hold, layer, whole: F.swishDelayMs.value / 1000 + layer };
}
