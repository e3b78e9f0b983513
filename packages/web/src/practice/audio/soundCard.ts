import { limiterCurve } from '@evenfall/physiology/audio';

/** What the player needs of a sound card; an `AudioContext` and an `OfflineAudioContext` have it. */
export type SoundCard = Pick<
  BaseAudioContext,
  | 'currentTime'
  | 'sampleRate'
  | 'destination'
  | 'createBuffer'
  | 'createBufferSource'
  | 'createGain'
  | 'createWaveShaper'
>;

/** One sound that is on its way to the card. */
export type Voice = {
  readonly startsAt: number;
  /** Takes it back; one that is heard already fades within 10 ms. */
  readonly stop: () => void;
};

/** How fast what is heard is taken away, s. */
const FADE_SECONDS = 0.01;

/** Samples as the card takes them; null where there are none. */
export function bufferOf(card: SoundCard, samples: Float32Array): AudioBuffer | null {
  if (samples.length === 0) return null;
  const buffer = card.createBuffer(1, samples.length, card.sampleRate);
  buffer.getChannelData(0).set(samples);
  return buffer;
}

/** Loudness of everything, then the limiter of the rendered run. */
export function masterOf(card: SoundCard, loudness: number): GainNode {
  const master = card.createGain();
  master.gain.value = loudness;
  const limiter = card.createWaveShaper();
  limiter.curve = limiterCurve();
  master.connect(limiter);
  limiter.connect(card.destination);
  return master;
}

/** Hands a sound to the card, which begins it at a time of its own clock; `onEnded` is called when it is over or stopped. */
export function voiceAt(
  card: SoundCard,
  into: AudioNode,
  buffer: AudioBuffer,
  at: number,
  onEnded: () => void,
): Voice {
  const source = card.createBufferSource();
  const gain = card.createGain();
  source.buffer = buffer;
  source.connect(gain);
  gain.connect(into);
  source.onended = () => {
    gain.disconnect();
    onEnded();
  };
  source.start(at);
  return {
    startsAt: at,
    stop() {
      const now = card.currentTime;
      if (now >= at) gain.gain.setTargetAtTime(0, now, FADE_SECONDS / 3);
      source.stop(now >= at ? now + FADE_SECONDS : 0);
    },
  };
}
