import type { Stamp } from '../entry/stamp.js';

/** How a time that nobody said begins as it was entered: the usual one of its sitting was taken for it. */
export const ABOUT = '~';

/** What was said of the time of a reading: whether it is only about right, and which reading of its sitting it is, from 1. */
export type TimeSaid = { readonly isAbout: boolean; readonly place: number };

type Timed = { readonly at: Pick<Stamp, 'at' | 'asEntered'> };

const DAY_MINUTES = 1440;
const DAY_MS = 86_400_000;

/** Readings that follow the first of a sitting, at most: a place asks for four. */
const MOST_AFTER = 3;

/**
 * What was said of the time of a reading. A sitting is typed with one time: its later readings are kept a minute apart,
 * so that they have an order, and that minute was nobody's.
 */
export function timeSaid({ at: { at, asEntered } }: Timed): TimeSaid {
  const isAbout = asEntered?.startsWith(ABOUT) === true;
  const sitting = minutesOf(asEntered === null ? '' : asEntered.slice(isAbout ? ABOUT.length : 0));
  const after = ((minutesOf(at.slice(11, 16)) ?? 0) - (sitting ?? 0) + DAY_MINUTES) % DAY_MINUTES;
  return { isAbout, place: sitting === null || after < 1 || after > MOST_AFTER ? 1 : after + 1 };
}

/** The time of a reading as it was said: that of its sitting, as a local date and time with its offset; before midnight where it was begun then. */
export function saidAt(reading: Timed): string {
  const { at, asEntered } = reading.at;
  const { isAbout, place } = timeSaid(reading);
  if (place === 1 || asEntered === null) return at;
  const clock = asEntered.slice(isAbout ? ABOUT.length : 0);
  const date = at.slice(0, 10);
  const day = clock > at.slice(11, 16) ? dayBefore(date) : date;
  return `${day}T${clock}${at.slice(16)}`;
}

/** What was said of the times of a series, by the place of each reading from 1; times that were read from a file are as they stand. */
export function timesSaid(readings: readonly Timed[]): ReadonlyMap<number, TimeSaid> {
  return new Map(
    readings.flatMap((one, at) => {
      const said = timeSaid(one);
      return said.isAbout || said.place > 1 ? [[at + 1, said] as const] : [];
    }),
  );
}

function dayBefore(date: string): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) - DAY_MS).toISOString().slice(0, 10);
}

function minutesOf(time: string): number | null {
  const found = /^(\d{2}):(\d{2})$/.exec(time);
  return found === null ? null : Number(found[1]) * 60 + Number(found[2]);
}
