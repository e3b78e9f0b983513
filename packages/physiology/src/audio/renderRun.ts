import type { HeartSound } from '../apex/heartSound.js';
import type { SoundEvent } from '../sound/soundEvent.js';
import { addAir, type CuffTrace } from './air.js';
import { type Contact, contactNoise } from './contact.js';
import { limit } from './limiter.js';
import { roomNoise } from './room.js';
import { addAt } from './samples.js';
import { voiceOf } from './voice.js';
import { USUAL_VOICE, type VoiceOptions } from './voiceOptions.js';

export type RunOptions = Partial<VoiceOptions> & {
  readonly seed: number;
  /** The part of the visit that is heard, s. */
  readonly fromSeconds: number;
  readonly toSeconds: number;
  /** Noise of the place, dB(A); null: none. */
  readonly roomDbA?: number | null;
  /** Pressure in the cuff, for what is heard of bulb and valve; null: nothing is. */
  readonly cuff?: CuffTrace | null;
  readonly contacts?: readonly Contact[];
};

export type Rendering = {
  /** From -1 to 1, one channel. */
  readonly samples: Float32Array;
  readonly rate: number;
  /** Instant of the visit of the first sample. */
  readonly fromSeconds: number;
  /** Not what a stethoscope gives: whatever is read from it is marked. */
  readonly isLoudspeakerVoice: boolean;
};

/** A part of a visit as one listens to it: every sound at its instant, the room, the air and the hands about it. */
export function renderRun(events: readonly (SoundEvent | HeartSound)[], options: RunOptions): Rendering {
  const voice: VoiceOptions = {
    rate: options.rate ?? USUAL_VOICE.rate,
    end: options.end ?? USUAL_VOICE.end,
    isLoudspeakerVoice: options.isLoudspeakerVoice ?? USUAL_VOICE.isLoudspeakerVoice,
  };
  const { seed, fromSeconds, toSeconds, roomDbA = null, cuff = null, contacts = [] } = options;
  const { rate } = voice;
  const length = Math.max(0, Math.round((toSeconds - fromSeconds) * rate));
  const mix = roomDbA === null ? new Float32Array(length) : roomNoise(length / rate, roomDbA, seed, rate);
  const sampleAt = (seconds: number) => Math.round((seconds - fromSeconds) * rate);
  for (const event of events) {
    const at = sampleAt(event.atSeconds);
    if (at >= 0 && at < length) addAt(mix, voiceOf(event, seed, voice), at);
  }
  contacts.forEach(({ atSeconds, kind }, index) => {
    const at = sampleAt(atSeconds);
    if (at >= 0 && at < length) addAt(mix, contactNoise(kind, seed, index, voice), at);
  });
  if (cuff !== null) addAir(mix, fromSeconds, rate, cuff, seed);
  limit(mix);
  return { samples: mix, rate, fromSeconds, isLoudspeakerVoice: voice.isLoudspeakerVoice };
}
