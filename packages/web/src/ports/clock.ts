import type { Stamp } from '@evenfall/record';
import { stampAt } from './stampAt.js';

/**
 * The two clocks: a monotonic one, in milliseconds on the base of the events' own time stamps, for durations;
 * and the wall clock, for saying when. They are never subtracted from each other.
 */
export type Clock = {
  readonly monotonicMs: () => number;
  readonly stamp: () => Stamp;
};

export const deviceClock: Clock = {
  monotonicMs: () => performance.now(),
  stamp: () => {
    const now = new Date();
    const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
    return stampAt(now.getTime(), -now.getTimezoneOffset(), timeZone);
  },
};
