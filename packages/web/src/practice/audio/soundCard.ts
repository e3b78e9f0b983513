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
> &
  /** What an `AudioContext` says of the way from it to the ear, s; left out by an `OfflineAudioContext` and by some browsers. */
  Partial<Pick<AudioContext, 'baseLatency' | 'outputLatency'>>;

/** Longer than any headphones are behind; a card that says more is not believed, s. */
const LONGEST_LATENCY_SECONDS = 1;

/**
 * How long after its instant on the card's clock a sound leaves the loudspeaker, s; 0 where the card does not say.
 * Headphones without a cable are a fifth of a second behind. Source: Web Audio API 1.1, `baseLatency` and `outputLatency`.
 */
export function latencyOf({
  baseLatency = 0,
  outputLatency = 0,
}: Pick<SoundCard, 'baseLatency' | 'outputLatency'>): number {
  const latency = baseLatency + outputLatency;
  return latency > 0 ? Math.min(latency, LONGEST_LATENCY_SECONDS) : 0;
}

/** One sound that is on its way to the card. */
export type Voice = {
  readonly startsAt: number;
  /** Takes it back; one that is heard already fades within 10 ms. */
  readonly stop: () => void;
};

/** How fast what is heard is taken away, s. */
export const FADE_SECONDS = 0.01;

/** Samples as the card takes them; null where there are none. */
export function bufferOf(card: SoundCard, samples: Float32Array): AudioBuffer | null {
  if (samples.length === 0) return null;
  const buffer = card.createBuffer(1, samples.length, card.sampleRate);
  buffer.getChannelData(0).set(samples);
  return buffer;
}

/** Where everything of a player comes together, and the way to take it off the card again. */
export type Master = { readonly gain: GainNode; readonly takeDown: () => void };

/** Loudness of everything, then the limiter of the rendered run. */
export function masterOf(card: SoundCard, loudness: number): Master {
  const master = card.createGain();
  master.gain.value = loudness;
  const limiter = card.createWaveShaper();
  limiter.curve = limiterCurve();
  master.connect(limiter);
  limiter.connect(card.destination);
  return {
    gain: master,
    takeDown() {
      master.disconnect();
      limiter.disconnect();
    },
  };
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
