import type { SecondMark } from '@evenfall/api';
import { MOST_TOUCHES, SAME_TOUCH_MS } from '../pressure/marks.js';
import type { TabShelf } from '../store/tabShelf.js';
import type { ClockOffset } from './clockOffset.js';

/** What this device marks for somebody else: under which code, as whom, and all its touches so far. Nothing of anybody. */
export type OwnMarks = {
  readonly code: string;
  /** What this device is to the server; made here. */
  readonly marker: string;
  /** Grows with each change, so that what is sent late changes nothing. */
  readonly version: number;
  readonly marks: readonly SecondMark[];
  /** When the cuff of the run under way went up, by the clock of the place; null for none, as far as is known here. */
  readonly runAtMs: number | null;
};

export const MARKS_KEY = 'evenfall.marks';

/** One more touch, by the event's own time stamp; one that bounced changes nothing. */
export function marked(own: OwnMarks, id: string, atMs: number, clock: ClockOffset): OwnMarks {
  const { marks } = own;
  const last = marks.at(-1);
  // By the clock of the place: the time stamps of a page that was loaded again begin anew.
  const since =
    last === undefined ? Number.POSITIVE_INFINITY : atMs + clock.offsetMs - last.atMs - last.offsetMs;
  if (since < SAME_TOUCH_MS || marks.length >= MOST_TOUCHES) return own;
  return { ...own, version: own.version + 1, marks: [...marks, { id, atMs, ...clock }] };
}

export function lastMarkUndone(own: OwnMarks): OwnMarks {
  return own.marks.length === 0 ? own : { ...own, version: own.version + 1, marks: own.marks.slice(0, -1) };
}

/**
 * The other device says when its cuff went up, or that it is down again: what was touched before a run is not of it, and
 * with the run its touches are over.
 */
export function withRun(own: OwnMarks, runAtMs: number | null): OwnMarks {
  if (runAtMs === own.runAtMs) return own;
  const marks =
    runAtMs === null
      ? []
      : own.marks.filter(({ atMs, offsetMs, withinMs }) => atMs + offsetMs + withinMs >= runAtMs);
  return { ...own, runAtMs, marks, version: own.version + 1 };
}

/** Keeps the marks in the tab, so that loading the page again loses none; null forgets them. */
export function shelveMarks(shelf: TabShelf | null, own: OwnMarks | null): void {
  try {
    if (own === null) shelf?.removeItem(MARKS_KEY);
    else shelf?.setItem(MARKS_KEY, JSON.stringify(own));
  } catch {
    // A shelf that refuses leaves them to the page.
  }
}

/** The marks of before the page was loaded again; null for none, or what cannot be read. */
export function shelvedMarks(shelf: TabShelf | null): OwnMarks | null {
  try {
    const own = JSON.parse(shelf?.getItem(MARKS_KEY) ?? 'null') as OwnMarks | null;
    return typeof own?.marker === 'string' && Array.isArray(own.marks) ? own : null;
  } catch {
    return null;
  }
}
