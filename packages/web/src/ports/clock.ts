import type { Stamp } from '@evenfall/record';
import { stampAt, stampOfLocal } from './stampAt.js';

/**
 * The two clocks: a monotonic one, in milliseconds on the base of the events' own time stamps, for durations;
 * and the wall clock, for saying when. They are never subtracted from each other.
 */
export type Clock = {
  readonly monotonicMs: () => number;
  readonly stamp: () => Stamp;
  /** The stamp of a local time as typed; null for a time that is none. */
  readonly stampOf: (typed: string) => Stamp | null;
};

export const deviceClock: Clock = {
  monotonicMs: () => performance.now(),
  stamp: () => {
    const now = new Date();
    const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
    return stampAt(now.getTime(), -now.getTimezoneOffset(), timeZone);
  },
  stampOf: (typed) => {
    const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
    return stampOfLocal(typed, timeZone, (epochMs) => -new Date(epochMs).getTimezoneOffset());
  },
};
