import type { Stamp } from '../entry/stamp.js';

/** How a time that nobody said begins as it was entered: the usual one of its sitting was taken for it. */
export const ABOUT = '~';

type Timed = { readonly at: Pick<Stamp, 'asEntered'> };

/** Whether the time of a reading is only about right. */
export function isTimeAbout({ at }: Timed): boolean {
  return at.asEntered?.startsWith(ABOUT) === true;
}

/** The readings of a series whose time is only about right, by their place from 1. */
export function timesAbout(readings: readonly Timed[]): ReadonlySet<number> {
  return new Set(readings.flatMap((one, place) => (isTimeAbout(one) ? [place + 1] : [])));
}
