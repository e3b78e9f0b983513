import type { CountClock, CountFirst, CountOf, Interruption, TapSource } from '@evenfall/clinical';
import type { Stamp } from '@evenfall/record';

/** How a count is started and for how long. */
export type CountStart = {
  readonly windowSeconds: number;
  readonly clock: CountClock;
  readonly first: CountFirst;
};

export type Way = 'count' | 'taps';

/** A value that is open again. It stands as it was until what is put right is kept in its place. */
export type Reopened = {
  readonly entry: string;
  /** Where it was opened, and where one comes back to: the review of the round, or the value itself. */
  readonly from: 'review' | 'value';
};

/**
 * Where the taking of one sign is. Plain data, so that a reload finds it; times of the monotonic clock hold only
 * within the visit (`session`) in which they were taken.
 */
export type Measuring =
  | { readonly at: 'ready'; readonly way: Way; readonly windowSeconds: number | null }
  | {
      readonly at: 'running';
      readonly session: string;
      readonly startedAtMs: number;
      readonly start: CountStart;
      readonly measuredAt: Stamp;
    }
  | {
      readonly at: 'typing';
      readonly start: CountStart;
      readonly measuredAt: Stamp;
      readonly typed: string;
      /** Which value is put right; absent for a new one. */
      readonly reopened?: Reopened;
    }
  | {
      readonly at: 'tapping';
      readonly session: string;
      readonly measuredAt: Stamp;
      readonly source: TapSource;
      /** Each tap by the event's own time stamp; at least one. */
      readonly tapsMs: readonly number[];
    }
  | {
      readonly at: 'void';
      readonly way: Way;
      /** The void count among the values; null for taps, of which nothing is kept. */
      readonly entry: string | null;
      readonly atSeconds: number | null;
      readonly reason: Interruption['reason'];
      /** Whether the observer said so; until then the choice is open. */
      readonly isSaid?: boolean;
    }
  | { readonly at: 'shown'; readonly entry: string };

export const READY: Measuring = { at: 'ready', way: 'count', windowSeconds: null };

type Running = Extract<Measuring, { at: 'running' }>;
type Tapping = Extract<Measuring, { at: 'tapping' }>;

/** Seconds since the clock was started, from 0 to the window. */
export function secondsRun({ startedAtMs, start }: Running, nowMs: number): number {
  return Math.min(Math.max((nowMs - startedAtMs) / 1000, 0), start.windowSeconds);
}

export function isOver(running: Running, nowMs: number): boolean {
  return secondsRun(running, nowMs) >= running.start.windowSeconds;
}

/** How late the end of a window may be met, in ms: later, and whoever counts has counted on. Source: decision. */
const LATEST_MS = 1_000;

/** Whether the page was held up past the end of the window, so that what was counted is of a longer one. */
export function isLate(running: Running, nowMs: number): boolean {
  return nowMs > running.startedAtMs + 1000 * running.start.windowSeconds + LATEST_MS;
}

/** The window is over: now the number is typed, on a blank keypad. */
export function windowOver({ start, measuredAt }: Running): Measuring {
  return { at: 'typing', start, measuredAt, typed: '' };
}

/** One more tap. A tap that is not later than the last is the same tap again. */
export function tapped(tapping: Tapping, atMs: number, source: TapSource): Tapping {
  const last = tapping.tapsMs.at(-1) ?? Number.NEGATIVE_INFINITY;
  if (atMs <= last) return tapping;
  // One touch among key taps can bounce, so the whole series is read as touched.
  const mixed = tapping.source === 'touch' ? 'touch' : source;
  return { ...tapping, source: mixed, tapsMs: [...tapping.tapsMs, atMs] };
}

/** Takes back the last tap; without the only tap nothing has begun. */
export function lastTapUndone(tapping: Tapping): Measuring {
  const tapsMs = tapping.tapsMs.slice(0, -1);
  return tapsMs.length === 0 ? { at: 'ready', way: 'taps', windowSeconds: null } : { ...tapping, tapsMs };
}

/** Tap times in seconds from the first one. */
export function tapSeconds({ tapsMs }: Pick<Tapping, 'tapsMs'>): number[] {
  const first = tapsMs[0] ?? 0;
  return tapsMs.map((ms) => Math.round((ms - first) * 1000) / 1_000_000);
}

/** Whether something runs on the clock, so that an interruption would make it void. */
export function isTimed(measuring: Measuring): measuring is Running | Tapping {
  return measuring.at === 'running' || measuring.at === 'tapping';
}

/** More signs than any count has, so that a text that was cut is no number that could be one. */
const MOST_TYPED = 6;

/**
 * What was typed or pasted for a count, as it is: what is no whole number is refused when it is done, and never mended in
 * silence (19.5 is not 195). Only leading zeros go.
 */
export function typedText(text: string): string {
  const typed = text.trim().slice(0, MOST_TYPED);
  return /^\d+$/.test(typed) ? typed.replace(/^0+(?=\d)/, '') : typed;
}

/** How long after the start a touch still belongs to it, and not to the button that came under the finger. */
const SAME_TOUCH_MS = 500;

export function isSameTouch({ startedAtMs }: Running, atMs: number): boolean {
  return atMs - startedAtMs < SAME_TOUCH_MS;
}

/** Signs in the order in which a round takes them. */
export const SIGNS_IN_ORDER = ['pulse', 'breaths'] as const satisfies readonly CountOf[];
