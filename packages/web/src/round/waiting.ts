import type { EntryFrame } from '@evenfall/record';
import { IN_CARE, type InBook } from '../app/book.js';
import type { Kept, WaitingRound } from '../store/kept.js';

/** What became of a sending: taken, not answered (send again), or refused (sending again would not help). */
export type Sent =
  | { readonly is: 'taken' }
  | { readonly is: 'unanswered' }
  | { readonly is: 'refused'; readonly why: string };

/** A status that says "not now" rather than "not this"; 401 is the time until somebody signs in again. */
export function isWorthRepeating(status: number): boolean {
  return status === 0 || status === 401 || status === 408 || status === 429 || status >= 500;
}

/**
 * An act-now was closed without an answer of the server: it waits like a round that was signed, and is sent once more under
 * the same id until it is taken.
 */
export function closed(kept: Kept, entry: EntryFrame & { readonly person: string }): Kept {
  if (kept.waiting.some(({ round }) => round === entry.id)) return kept;
  const waiting = {
    round: entry.id,
    person: entry.person,
    entries: [entry],
    draft: null,
    tries: 1,
    refused: null,
  };
  return { ...kept, waiting: [...kept.waiting, waiting] };
}

/** In which book, and in which session of a class, something that waits was entered. */
export function bookOfWaiting({ draft, entries: [first] }: WaitingRound): InBook {
  const { book, session } = draft ?? first ?? IN_CARE;
  return { book, session: session ?? null };
}

/** Which of the things that can wait this is. */
export function whatWaits({
  person,
  draft,
  form,
}: WaitingRound): 'round' | 'series' | 'closing' | 'exercise' {
  if (person === null) return 'exercise';
  if (draft !== null) return 'round';
  return form === undefined ? 'closing' : 'series';
}

/** How many of each wait on a device. */
export type UnsentCounts = {
  readonly rounds: number;
  readonly series: number;
  readonly closings: number;
  readonly exercises: number;
};

/**
 * All that waits to be sent, once a sending went unanswered; null before (a first sending is a moment's thing) and with
 * nothing to send. Without network one stands for all: those behind it were not tried, and wait none the less.
 */
export function unsentOf(waiting: readonly WaitingRound[]): UnsentCounts | null {
  const pending = waiting.filter(({ refused }) => refused === null);
  if (pending.every(({ tries }) => tries === 0)) return null;
  const of = (what: ReturnType<typeof whatWaits>) => pending.filter((one) => whatWaits(one) === what).length;
  return { rounds: of('round'), series: of('series'), closings: of('closing'), exercises: of('exercise') };
}

/** What closes an act-now of a round and still waits for an answer; undefined for nothing. */
export function closingOf(kept: Kept, round: string): WaitingRound | undefined {
  return toSend(kept).find((one) => whatWaits(one) === 'closing' && one.entries[0]?.round === round);
}

/** What the server refused of an act-now that was closed is given up: the act-now stands open and is closed anew. */
export function closingGivenUp(kept: Kept, round: string): Kept {
  const isIt = (one: WaitingRound) =>
    one.round === round && whatWaits(one) === 'closing' && one.refused !== null;
  return { ...kept, waiting: kept.waiting.filter((one) => !isIt(one)) };
}

/** The round is signed: its draft waits, as signed, until the server has it. */
export function signed(kept: Kept, waiting: WaitingRound): Kept {
  if (waiting.form !== undefined) {
    const { [waiting.form.name]: _form, ...forms } = kept.forms;
    return { ...kept, forms, waiting: [...kept.waiting, waiting] };
  }
  if (waiting.person === null) return { ...kept, waiting: [...kept.waiting, waiting] };
  const { [waiting.person]: _signed, ...drafts } = kept.drafts;
  return { ...kept, drafts, waiting: [...kept.waiting, waiting] };
}

/** What is kept after the server answered, or did not. A taken round leaves the device, once. */
export function afterSending(kept: Kept, round: string, sent: Sent): Kept {
  if (sent.is === 'taken') {
    return { ...kept, waiting: kept.waiting.filter((one) => one.round !== round) };
  }
  const refused = sent.is === 'refused' ? sent.why : null;
  return {
    ...kept,
    waiting: kept.waiting.map((one) =>
      one.round === round ? { ...one, tries: one.tries + 1, refused } : one,
    ),
  };
}

/** A refused round goes back to its draft, unless the person has another one begun meanwhile. */
export function takenBack(kept: Kept, round: string): Kept {
  const waiting = kept.waiting.find((one) => one.round === round);
  if (waiting === undefined || waiting.refused === null) return kept;
  const { draft } = waiting;
  const { person } = waiting;
  if (person === null) return kept;
  if (draft === null) return seriesTakenBack(kept, waiting);
  if (kept.drafts[person] !== undefined) return kept;
  return {
    ...kept,
    drafts: { ...kept.drafts, [person]: draft },
    waiting: kept.waiting.filter((one) => one.round !== round),
  };
}

/** What the server refused of an exercise is no longer sent: it goes back to the practice room, or is given up. */
export function exerciseGivenUp(kept: Kept, exercise: string): Kept {
  const isIt = (one: WaitingRound) => one.round === exercise && one.person === null && one.refused !== null;
  return { ...kept, waiting: kept.waiting.filter((one) => !isIt(one)) };
}

/** A refused series goes back into its form, to be signed anew under another id; unless another one was begun in it. */
function seriesTakenBack(kept: Kept, { round, form }: WaitingRound): Kept {
  if (form === undefined || kept.forms[form.name] !== undefined) return kept;
  return {
    ...kept,
    forms: { ...kept.forms, [form.name]: { ...form.was, adds: null, entry: null } },
    waiting: kept.waiting.filter((one) => one.round !== round),
  };
}

/** Rounds to send now, oldest first: refused ones wait for a hand. */
export function toSend(kept: Kept): readonly WaitingRound[] {
  return kept.waiting.filter(({ refused }) => refused === null);
}

/** Whether something that waits amends an entry of others, or stands in the same round or series. */
export function goesOnWith(
  { entries }: Pick<WaitingRound, 'entries'>,
  others: readonly Pick<WaitingRound, 'entries'>[],
): boolean {
  const before = others.flatMap((one) => one.entries);
  const ids = new Set(before.map(({ id }) => id));
  const rounds = new Set(before.map(({ round }) => round).filter((round) => round !== null));
  return entries.some(({ amends, round }) => ids.has(amends?.entry ?? '') || rounds.has(round ?? ''));
}

const FIRST_PAUSE_MS = 2_000;
const LONGEST_PAUSE_MS = 60_000;

/**
 * How long to pause before sending again: twice as long each time, up to a minute; those that were not tried yet, behind others,
 * make it no shorter. Null with nothing to send.
 */
export function pauseMs(kept: Kept): number | null {
  const tries = toSend(kept).map((one) => one.tries);
  if (tries.length === 0) return null;
  const tried = tries.filter((one) => one > 0);
  const fewest = tried.length === 0 ? 1 : Math.min(...tried);
  return Math.min(FIRST_PAUSE_MS * 2 ** (fewest - 1), LONGEST_PAUSE_MS);
}
