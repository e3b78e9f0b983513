import type { FeltPulse, HeartSound, RigSnapshot, SoundEvent } from '@evenfall/physiology';
import type { SoundPlayer } from './audio/index.js';
import type { Movement, Visit } from './visit.js';

/** What one picture shows: the instant, and what was to be heard and felt since the last picture. */
export type Frame = {
  readonly now: RigSnapshot;
  readonly sounds: readonly SoundEvent[];
  readonly felt: readonly FeltPulse[];
  readonly heart: readonly HeartSound[];
};

/** The device's part of it: when it is, and being called before the next picture. */
export type Pictures = {
  readonly nowMs: () => number;
  readonly next: (draw: () => void) => () => void;
};

export const devicePictures: Pictures = {
  nowMs: () => performance.now(),
  next: (draw) => {
    const frame = requestAnimationFrame(draw);
    return () => cancelAnimationFrame(frame);
  },
};

/** More than this in one picture, and the page was held up: the visit waits for it instead of running away, seconds. */
const LONGEST_STEP_SECONDS = 0.5;

/**
 * Runs a visit by the clock of the sound card, or by the page's where there is no sound, one step before each picture:
 * what is drawn is never more than one picture behind. It may be stopped, and goes on from there.
 */
export class RoomEngine {
  visit: Visit;
  private readonly pictures: Pictures;
  private readonly endSeconds: number;
  private readonly listeners = new Set<(frame: Frame) => void>();
  private cancel: (() => void) | null = null;
  /** Second of the visit at `sinceMs`. */
  private fromSeconds: number;
  private sinceMs = 0;
  private player: SoundPlayer | null = null;
  private breathDbfs: (depth: number) => number | null = () => null;
  private hasWheeze = false;
  private hearsPulse = false;
  /** The breath that was looked at last. */
  private breath = -1;

  /** @param endSeconds of a visit that is over then: it is drawn to its end and not a tick beyond, and nothing is done later */
  constructor(visit: Visit, pictures: Pictures = devicePictures, endSeconds = Number.POSITIVE_INFINITY) {
    this.endSeconds = endSeconds;
    this.visit = visit;
    this.pictures = pictures;
    this.fromSeconds = visit.seconds;
  }

  /** Whether the visit is at its end: nothing more can be done in it. */
  get isAtEnd(): boolean {
    return this.visit.seconds >= this.endSeconds;
  }

  get isRunning(): boolean {
    return this.cancel !== null;
  }

  /** The second of the visit at an instant of the page's clock, such as that of a touch; none is after its end. */
  secondsAt(ms: number): number {
    return Math.min(this.endSeconds, this.runSecondsAt(ms));
  }

  private runSecondsAt(ms: number): number {
    if (this.cancel === null) return this.visit.seconds;
    const { player } = this;
    if (player?.clock.isRunning) {
      return player.clock.visitSeconds - (this.pictures.nowMs() - ms) / 1000;
    }
    return this.fromSeconds + (ms - this.sinceMs) / 1000;
  }

  /** Sounds go to this player from now on; null for none. */
  setPlayer(player: SoundPlayer | null): void {
    if (this.player !== null && this.player !== player) this.player.stop();
    this.player = player;
    if (!this.isRunning) return;
    this.rebase();
    player?.start(this.visit.seconds);
  }

  start(): void {
    if (this.isRunning) return;
    this.rebase();
    this.player?.start(this.visit.seconds);
    this.cancel = this.pictures.next(this.draw);
  }

  stop(): void {
    this.cancel?.();
    this.cancel = null;
    this.player?.stop();
  }

  /** A movement of the hands, at the time of its own event. */
  act(movement: Movement, atMs: number): void {
    if (this.isBehind(this.secondsAt(atMs))) this.rebase();
    this.visit.act(movement, this.secondsAt(atMs));
    this.plan();
  }

  /**
   * Whether a sound at the elbow that a normal ear hears comes within some seconds: a touch of the tube would lie on it, and the model has
   * no sound that such a noise hides.
   */
  willSound(seconds: number): boolean {
    const { visit } = this;
    const isHeard = (one: SoundEvent | HeartSound) => !('heart' in one) && one.levelDb >= -HIDDEN_DB;
    return visit.snapshot().cuffMmHg > 1 && visit.ahead(seconds).some(isHeard);
  }

  /** How loud a breath of a depth is heard from now on, dB of full scale of a usual one; null: not at all. */
  hearBreaths(dbfsOf: (depth: number) => number | null, hasWheeze: boolean): void {
    this.breathDbfs = dbfsOf;
    this.hasWheeze = hasWheeze;
    // What was heard until now was heard where the chest piece was then.
    this.player?.endBreath();
  }

  /** Whether each pulse under the finger is heard, too, from now on: softly, for whoever wants it. */
  hearPulse(isOn: boolean): void {
    this.hearsPulse = isOn;
  }

  /** Lets so much time of the visit go by at once, up to its end. */
  skip(seconds: number): void {
    const was = this.isRunning;
    this.stop();
    this.visit.moveTo(Math.min(this.endSeconds, this.visit.seconds + seconds));
    this.shown();
    if (was) this.start();
  }

  /** Another visit, or the same one prepared otherwise; drawn at once. */
  shown(): void {
    this.tell({ now: this.visit.snapshot(), sounds: [], felt: [], heart: [] });
  }

  subscribe(listener: (frame: Frame) => void): () => void {
    this.listeners.add(listener);
    listener({ now: this.visit.snapshot(), sounds: [], felt: [], heart: [] });
    return () => this.listeners.delete(listener);
  }

  /** Whether the page slept: without a sound card that went on meanwhile the visit slept too. */
  private isBehind(wanted: number): boolean {
    return this.player === null && wanted - this.visit.seconds > LONGEST_STEP_SECONDS;
  }

  private rebase(): void {
    this.fromSeconds = this.visit.seconds;
    this.sinceMs = this.pictures.nowMs();
  }

  private readonly draw = (): void => {
    this.cancel = this.pictures.next(this.draw);
    const wanted = this.secondsAt(this.pictures.nowMs());
    if (this.isBehind(wanted)) {
      this.rebase();
      this.tell({ now: this.visit.snapshot(), sounds: [], felt: [], heart: [] });
      return;
    }
    const { sounds, felt, heart } = this.visit.moveTo(wanted);
    this.plan();
    this.tell({ now: this.visit.snapshot(), sounds, felt, heart });
  };

  private plan(): void {
    const { player } = this;
    if (player === null || !this.isRunning) return;
    const now = this.visit.snapshot();
    const isHeard = now.cuffMmHg > 1 || now.isAtApex;
    const { sounds, heart, felt } =
      isHeard || this.hearsPulse
        ? this.visit.eventsAhead(player.aheadSeconds + MARGIN_SECONDS)
        : NOTHING_AHEAD;
    const pulses = this.hearsPulse ? felt.filter(({ isFelt }) => isFelt) : [];
    player.plan([...(isHeard ? [...sounds, ...heart] : []), ...pulses]);
    player.setAir('valve', now.outflowMlPerSecond);
    player.setAir('pump', now.isSqueezing ? PUMPED_ML_PER_SECOND : 0);
    this.breathe(player);
  }

  /** Each breath is begun as it begins; one of which the beginning is past is left out. */
  private breathe(player: SoundPlayer): void {
    const { breathing, seconds } = this.visit;
    if (breathing.index === this.breath) return;
    this.breath = breathing.index;
    const dbfs = this.breathDbfs(breathing.depth);
    if (dbfs === null || seconds - breathing.startSeconds > LATE_BREATH_SECONDS) return;
    player.breathe(breathing, breathing.startSeconds, this.hasWheeze, dbfs);
  }

  private tell(frame: Frame): void {
    for (const listener of this.listeners) listener(frame);
  }
}

/** Known ahead for a picture longer than is asked, so that a picture that comes late leaves no sound out, seconds. */
const MARGIN_SECONDS = 0.1;
const NOTHING_AHEAD = { sounds: [], heart: [], felt: [] };
/** A breath that began longer ago than this is not begun in its middle, seconds. */
const LATE_BREATH_SECONDS = 0.3;
/** A sound so far under a normal ear's threshold in the quiet is nothing that could be hidden, dB. */
const HIDDEN_DB = 3;
/** Air that a hand presses into the cuff, as the sound of it is made, mL a second. */
const PUMPED_ML_PER_SECOND = 150;
