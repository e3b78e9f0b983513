import type { FeltPulse, HeartSound, SoundEvent } from '@evenfall/physiology';
import {
  AIR_SOUNDS,
  type AirSound,
  AUDIO_FIGURES,
  airGain,
  airNoise,
  asLoop,
  type BreathMoved,
  breathSound,
  CHECK_EVERY_SECONDS,
  type ContactKind,
  contactNoise,
  gainOfDb,
  loudnessCheck,
  pulseTap,
  roomNoise,
  type VoiceOptions,
  voiceOf,
} from '@evenfall/physiology/audio';
import { AudioClock } from './audioClock.js';
import {
  bufferOf,
  FADE_SECONDS,
  type Master,
  masterOf,
  type SoundCard,
  type Voice,
  voiceAt,
} from './soundCard.js';

/** How loud it is before anybody turns it up, and from where on a page warns; 1 is full. */
export const LOUDNESS = {
  start: AUDIO_FIGURES.startAt.value,
  warnFrom: AUDIO_FIGURES.warnFrom.value,
} as const;

/** A page steps its rig so far ahead of what is heard, s. */
export const LOOK_AHEAD_SECONDS = AUDIO_FIGURES.lookAheadSeconds.value;

/** The room goes round after so many seconds; its ends are laid over each other for so long. */
const ROOM_SECONDS = 20;
const ROOM_OVERLAP_SECONDS = 0.5;
/** How fast a loudness follows, s: no step is heard. */
const FOLLOW_SECONDS = 0.03;

export type PlayerOptions = Partial<Omit<VoiceOptions, 'rate'>> & { readonly seed: number };

/**
 * Plays a visit: each sound is made before it is due and begun by the card's own clock, never by a timer. It reads the
 * visit and never changes it. While hands are at work a page steps a copy of its rig `LOOK_AHEAD_SECONDS` beyond
 * `clock.visitSeconds`, and plans on every frame what that copy hears; a run that is over is played by `Replay`.
 */
export class SoundPlayer {
  readonly clock: AudioClock;
  /** Sounds that began later than they should since the player was made, because the page hung. */
  lateCount = 0;
  private startedAt = 0;
  private readonly card: SoundCard;
  private readonly options: PlayerOptions;
  private readonly master: Master;
  /** Sounds that are on their way, heard or just over, by what they are of their beat: none is played twice. */
  private readonly planned = new Map<string, Voice>();
  /** Everything else that is heard once. */
  private readonly others = new Set<Voice>();
  private breath: Voice | null = null;
  private readonly streams = new Map<AirSound | 'room', Stream>();
  /** How many sources the card has not ended yet. */
  private going = 0;
  private isRetired = false;
  /** How loud the place is while something is played. */
  private roomDbA: number | null = null;

  constructor(card: SoundCard, options: PlayerOptions, visitSeconds = 0) {
    this.card = card;
    this.options = options;
    this.clock = new AudioClock(card, visitSeconds);
    this.master = masterOf(card, LOUDNESS.start);
  }

  /** 0 is silent, 1 full. */
  setLoudness(share: number): void {
    this.follow(this.master.gain, Math.max(0, Math.min(1, share)));
  }

  /** From an instant of the visit on. Whatever was planned for another time is taken back. */
  start(visitSeconds: number): void {
    this.silence();
    this.startedAt = visitSeconds;
    this.clock.start(visitSeconds, LOOK_AHEAD_SECONDS);
    // A stop took the noise of the place away with all else.
    this.setRoom(this.roomDbA);
  }

  /** What is heard ends, what was planned is taken back; the visit stays where it is. */
  stop(): void {
    this.clock.stop();
    this.silence();
    for (const { gain } of this.streams.values()) this.follow(gain, 0);
  }

  /** For good: what is heard ends, and nothing of it stays on the card, which the page goes on with. */
  dispose(): void {
    this.stop();
    this.retire();
  }

  /** Taken off the card as soon as what was begun has been heard. */
  retire(): void {
    this.isRetired = true;
    for (const { source } of this.streams.values()) source.stop(this.card.currentTime + FADE_SECONDS);
    this.streams.clear();
    this.takeDown();
  }

  /**
   * The sounds that are to come, as far as they are known. One that was planned and is not among them any more is taken
   * back, unless it has begun; one that is planned for another instant now is planned anew. A page that hung gets what it
   * missed by a moment at once, and it is counted; what is over is passed by, and so is what lies before the start.
   */
  plan(events: readonly Planned[]): void {
    if (!this.clock.isRunning) return;
    const now = this.card.currentTime;
    const wanted = new Map(events.map((event) => [nameOf(event), event]));
    for (const [name, voice] of this.planned) {
      if (voice.startsAt < now - REMEMBERED_SECONDS) this.planned.delete(name);
      const event = wanted.get(name);
      const isSame =
        event !== undefined &&
        Math.abs(this.clock.cardTimeOf(event.atSeconds) - voice.startsAt) < SAME_SECONDS;
      if (voice.startsAt > now && !isSame) {
        this.planned.delete(name);
        voice.stop();
      }
    }
    for (const [name, event] of wanted) {
      if (this.planned.has(name)) continue;
      const due = this.clock.cardTimeOf(event.atSeconds);
      if (event.atSeconds < this.startedAt || due < now - LATEST_SECONDS) continue;
      const at = Math.max(due, now);
      const buffer = bufferOf(this.card, this.samplesOf(event));
      if (buffer === null) continue;
      this.planned.set(
        name,
        this.voice(buffer, at, () => {}),
      );
      if (at > due) this.lateCount += 1;
    }
  }

  private samplesOf(event: Planned): Float32Array {
    return 'isFelt' in event
      ? pulseTap(event.strength, this.voiceOptions)
      : voiceOf(event, this.options.seed, this.voiceOptions);
  }

  /** A touch of chest piece or tube, now; `index` tells one from the next. */
  touch(kind: ContactKind, index: number): void {
    this.once(contactNoise(kind, this.options.seed, index, this.voiceOptions), this.card.currentTime);
  }

  /** A breath, from an instant of the visit on, as loud as one of a usual depth under a chest piece or at another level. */
  breathe(
    breath: BreathMoved,
    startSeconds: number,
    hasWheeze: boolean,
    dbfs: number = AUDIO_FIGURES.breathDbfs.value,
  ): void {
    this.endBreath();
    const samples = breathSound(breath, hasWheeze, this.options.seed, this.card.sampleRate);
    const gain = gainOfDb(dbfs - AUDIO_FIGURES.breathDbfs.value);
    for (let i = 0; i < samples.length; i++) samples[i] = gain * (samples[i] as number);
    // One that began a moment ago is begun at once: it begins with silence.
    this.breath = this.once(samples, Math.max(this.card.currentTime, this.clock.cardTimeOf(startSeconds)));
  }

  /** The chest piece was taken from the chest: what is heard of the breath at hand ends. */
  endBreath(): void {
    this.breath?.stop();
    this.breath = null;
  }

  /** How far ahead of what is heard a page has to know, so that the card has each sound in time, s. */
  get aheadSeconds(): number {
    return LOOK_AHEAD_SECONDS + this.clock.latencySeconds;
  }

  /** How much air goes in or out now, mL a second. */
  setAir(sound: AirSound, mlPerSecond: number): void {
    const stream = this.streamOf(sound, () => airNoise(sound, this.options.seed, this.card.sampleRate));
    this.follow(stream, airGain(sound, mlPerSecond));
  }

  /** The noise of the place, dB(A); null: none. */
  setRoom(noiseDbA: number | null): void {
    this.roomDbA = noiseDbA;
    if (noiseDbA === null && !this.streams.has('room')) return;
    const { sampleRate } = this.card;
    const stream = this.streamOf('room', () => {
      const samples = roomNoise(ROOM_SECONDS, ROOM_AT_DBA, this.options.seed, sampleRate);
      return asLoop(samples, Math.round(ROOM_OVERLAP_SECONDS * sampleRate));
    });
    this.follow(stream, noiseDbA === null ? 0 : 10 ** ((noiseDbA - ROOM_AT_DBA) / 20));
  }

  /** The three taps of the check before a first run, loudest first. Answers when each begins, s from now. */
  check(): readonly number[] {
    const now = this.card.currentTime + LOOK_AHEAD_SECONDS;
    return loudnessCheck().map((event, index) => {
      this.once(voiceOf(event, this.options.seed, this.voiceOptions), now + index * CHECK_EVERY_SECONDS);
      return LOOK_AHEAD_SECONDS + index * CHECK_EVERY_SECONDS;
    });
  }

  private get voiceOptions(): Partial<VoiceOptions> {
    const { seed: _, ...voice } = this.options;
    return { ...voice, rate: this.card.sampleRate };
  }

  private once(samples: Float32Array, at: number): Voice | null {
    const buffer = bufferOf(this.card, samples);
    if (buffer === null) return null;
    const voice = this.voice(buffer, at, () => {
      this.others.delete(voice);
      if (this.breath === voice) this.breath = null;
    });
    this.others.add(voice);
    return voice;
  }

  private voice(buffer: AudioBuffer, at: number, onEnded: () => void): Voice {
    this.going += 1;
    return voiceAt(this.card, this.master.gain, buffer, at, () => {
      this.going -= 1;
      onEnded();
      this.takeDown();
    });
  }

  private takeDown(): void {
    if (this.isRetired && this.going === 0) this.master.takeDown();
  }

  private silence(): void {
    for (const voice of [...this.planned.values(), ...this.others]) voice.stop();
    this.planned.clear();
    this.others.clear();
  }

  /** A noise that goes round and round, silent until it is turned up. */
  private streamOf(name: AirSound | 'room', samples: () => Float32Array): GainNode {
    const found = this.streams.get(name);
    if (found !== undefined) return found.gain;
    const gain = this.card.createGain();
    gain.gain.value = 0;
    const source = this.card.createBufferSource();
    source.buffer = bufferOf(this.card, samples());
    source.loop = true;
    source.connect(gain);
    gain.connect(this.master.gain);
    this.going += 1;
    source.onended = () => {
      gain.disconnect();
      this.going -= 1;
      this.takeDown();
    };
    source.start();
    this.streams.set(name, { gain, source });
    return gain;
  }

  private follow(node: GainNode, value: number): void {
    node.gain.setTargetAtTime(value, this.card.currentTime, FOLLOW_SECONDS / 3);
  }
}

/** A sound at the elbow or of the heart, or a pulse under the finger that is wanted heard. */
type Planned = SoundEvent | HeartSound | FeltPulse;

/** A beat has one sound at the elbow, two at the apex, and one pulse. */
function nameOf(event: Planned): string {
  if ('isFelt' in event) return `pulse ${event.beat}`;
  return 'heart' in event ? `${event.heart} ${event.beat}` : `${event.beat}`;
}

type Stream = { readonly gain: GainNode; readonly source: AudioBufferSourceNode };

/** Two plans of a sound that are nearer than this are one; s. */
const SAME_SECONDS = 0.0005;
/** A sound that is missed by less than this is played at once, s: better late than a beat that is not heard at all. */
const LATEST_SECONDS = 0.1;
/** What began so long ago is not asked for again, even where it is heard long after its instant, s. */
const REMEMBERED_SECONDS = 2;
/** Loudness at which the room is made. */
const ROOM_AT_DBA = 60;

/** Makes what is played before a first sound is due: the loops take a moment. */
export function warmUp(player: SoundPlayer): void {
  for (const sound of AIR_SOUNDS) player.setAir(sound, 0);
}
