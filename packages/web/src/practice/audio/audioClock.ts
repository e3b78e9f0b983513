import { latencyOf, type SoundCard } from './soundCard.js';

/** What is asked of a sound card's clock. */
export type Clock = Pick<SoundCard, 'currentTime' | 'baseLatency' | 'outputLatency'>;

/** A card's word of its latency wavers; less than this is not followed, s: the visit would jump with it. */
const WAVERS_SECONDS = 0.02;

/**
 * Joins the time of the visit to the clock of the sound card, the only one by which sounds begin. What is heard left the
 * card a while ago: by so much the visit is behind it, and so is everything that is drawn. Stopped, it stays where it was.
 */
export class AudioClock {
  private readonly card: Clock;
  /** Visit minus card while it runs; null while it is stopped. */
  private ahead: number | null = null;
  private stoppedAt: number;
  private followed = 0;

  constructor(card: Clock, visitSeconds = 0) {
    this.card = card;
    this.stoppedAt = visitSeconds;
  }

  get isRunning(): boolean {
    return this.ahead !== null;
  }

  /** Instant of the visit that is heard now. */
  get visitSeconds(): number {
    return this.ahead === null ? this.stoppedAt : this.card.currentTime + this.ahead - this.latencySeconds;
  }

  /** How long after its instant on the card's clock a sound is heard, s. */
  get latencySeconds(): number {
    const said = latencyOf(this.card);
    if (Math.abs(said - this.followed) > WAVERS_SECONDS) this.followed = said;
    return this.followed;
  }

  /** The instant on the card's clock of a sound that is to be heard at an instant of the visit. */
  cardTimeOf(visitSeconds: number): number {
    return visitSeconds - (this.ahead ?? this.stoppedAt - this.card.currentTime);
  }

  /** From an instant of the visit on, `delay` seconds from now: what is due at once can then still be handed over. */
  start(visitSeconds: number, delay: number): void {
    this.ahead = visitSeconds - this.card.currentTime - delay;
  }

  /** While it is stopped: to another instant of the visit. */
  moveTo(visitSeconds: number): void {
    this.ahead = null;
    this.stoppedAt = visitSeconds;
  }

  stop(): void {
    this.stoppedAt = this.visitSeconds;
    this.ahead = null;
  }
}
