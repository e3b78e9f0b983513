import type { SoundEvent } from '@evenfall/physiology';
import type { SoundPlayer } from './player.js';

/** Sounds are handed over so long before they are due, s: long enough that a page that hangs for a moment drops none. */
const HORIZON_SECONDS = 1;
/** How often it is looked what is due next, ms. Nothing begins by this: the card's clock begins it. */
const LOOK_EVERY_MS = 200;

/** Calls again and again until it is stopped. */
export type Every = (ms: number, call: () => void) => () => void;

const everyInterval: Every = (ms, call) => {
  const id = setInterval(call, ms);
  return () => clearInterval(id);
};

type Page = EventTarget & { readonly visibilityState: string };
type Card = EventTarget & { readonly state: string };

/** A run that is over, heard again from any instant of it. */
export class Replay {
  private readonly player: SoundPlayer;
  private readonly events: readonly SoundEvent[];
  private readonly every: Every;
  private fromSeconds = 0;
  private stopLooking: (() => void) | null = null;

  constructor(player: SoundPlayer, events: readonly SoundEvent[], every: Every = everyInterval) {
    this.player = player;
    this.events = events;
    this.every = every;
  }

  get isPlaying(): boolean {
    return this.stopLooking !== null;
  }

  /** Instant of the visit that is heard. */
  get visitSeconds(): number {
    return this.player.clock.visitSeconds;
  }

  /** From where it was stopped, or from an instant of the visit. */
  play(fromSeconds: number = this.visitSeconds): void {
    this.stopLooking?.();
    this.fromSeconds = fromSeconds;
    this.player.start(fromSeconds);
    this.stopLooking = this.every(LOOK_EVERY_MS, () => this.handOver());
    this.handOver();
  }

  stop(): void {
    this.stopLooking?.();
    this.stopLooking = null;
    this.player.stop();
  }

  /** Stops it, as the room stops, where nobody looks at the page any more or the card is taken away. Answers how to leave that off. */
  stopWhenAway(page: Page, card: Card, onStopped: () => void): () => void {
    const look = () => {
      if (!this.isPlaying || (page.visibilityState !== 'hidden' && card.state === 'running')) return;
      this.stop();
      onStopped();
    };
    page.addEventListener('visibilitychange', look);
    card.addEventListener('statechange', look);
    return () => {
      page.removeEventListener('visibilitychange', look);
      card.removeEventListener('statechange', look);
    };
  }

  /** To another instant; it goes on from there if it was playing. */
  seek(toSeconds: number): void {
    if (this.isPlaying) this.play(toSeconds);
    else this.player.clock.moveTo(toSeconds);
  }

  private handOver(): void {
    const from = Math.max(this.fromSeconds, this.visitSeconds);
    const due = this.events.filter(
      ({ atSeconds }) => atSeconds >= from && atSeconds < from + HORIZON_SECONDS,
    );
    this.player.plan(due);
  }
}
