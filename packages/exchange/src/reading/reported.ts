import { canonicalJson, type Refusal } from '@evenfall/clinical';
import {
  type EntryFrame,
  KINDS,
  type ReportedContent,
  type Stamp,
  type StoredEntry,
  type UnclearCorrection,
  unclearCorrections,
} from '@evenfall/record';
import { type Kept, KeptSayings, keptOf, saidAtOf, saidOf } from './keptSayings.js';

/** A value of a file from elsewhere, before it is an entry: what was said, when it was measured, and where it stood in the file. */
export type Reported = {
  /** JSON Pointer of its resource, or the row and column of its cell. */
  readonly at: string;
  readonly content: ReportedContent;
  readonly measuredAt: Stamp;
  /** The source takes it back: kept, and marked as entered in error. */
  readonly isInError: boolean;
  /** What a file calls the resource that says it, in each of its versions; absent, or null, where it does not tell. */
  readonly resource?: string | null;
  /** How many entries of the source say it under its name, those that were replaced there counted; absent for one. */
  readonly timesSaid?: number;
};

/** What was read of a file, and what was not: the rest is kept all the same. */
export type Read = { readonly reported: readonly Reported[]; readonly refused: readonly Refusal[] };

/** Who brings values from elsewhere into whose chart, and what is known there. */
export type Bringing = {
  readonly book: EntryFrame['book'];
  readonly person: string;
  readonly agent: string;
  readonly device: string;
  /** Now, RFC 3339. */
  readonly writtenAt: string;
  /** Hex digits of a hash of a text, 30 or more. */
  readonly hash: (text: string) => string;
  /** The file holds what its source said before, too, and not only what it says now. */
  readonly isHistory?: boolean;
  /** The person's entries. */
  readonly entries: readonly StoredEntry[];
  /** What an amendment says of a value that its source changed. */
  readonly changedText: string;
  /** The same of one that its source said again as it was. */
  readonly againText: string;
};

/** An entry to keep, with the place in the file that it came from. */
export type Placed = { readonly at: string; readonly frame: EntryFrame };

/**
 * Entries to keep of a file, and how many of its values are left: as they are here, and as a later saying has them.
 * `unclear` are those of which nobody knows whether one corrects another of their name.
 */
export type Bring = {
  readonly placed: readonly Placed[];
  readonly already: number;
  readonly older: number;
  readonly unclear: readonly Unclear[];
};

/** A value that is kept beside others of its name, by its place in the file: what a correction may be of, or the correction. */
export type Unclear = { readonly at: string; readonly what: UnclearCorrection };

/**
 * Entries for values from elsewhere. An id is made from what was said, so that a file that is brought twice adds
 * nothing; what the source says anew under a name that is known here, of the same instant, amends what it said before. A
 * correction of an instant of which nothing is known stands beside what is kept under its name, and that is said: which
 * measurement it corrects only a history tells. Of each instant what was said last stands, in whatever order files come: a saying that changes nothing is kept too
 * where it alone tells when that was (of a series one is enough), and what was said earlier changes nothing.
 */
export function reportedEntries(file: readonly Reported[], by: Bringing): Bring {
  const read = by.isHistory === true ? inTime([...file, ...movedIn(file)]) : file;
  const known = new Set(by.entries.map(({ id }) => id));
  const sayings = new KeptSayings(by.entries, read);
  const placed: Placed[] = [];
  const keep = (one: Reported, id: string, amends: Kept | undefined, text = by.changedText) => {
    const entry = amends === undefined ? null : ({ entry: amends.id, reason: 'other', text } as const);
    const frame = frameOf(by, id, 'reported', one.content, one.measuredAt, entry, placed.length);
    placed.push({ at: one.at, frame });
    known.add(id);
    const kept = keptOf(id, one);
    if (one.content.source.id !== null) sayings.put(kept);
    return kept;
  };
  const mark = (one: Reported, kept: Pick<Kept, 'id'>, id: string) => {
    placed.push(markOf(one, by, kept.id, id, placed.length));
    known.add(id);
    if (one.content.source.id !== null) sayings.put({ ...keptOf(id, one), takenBack: 'there' });
  };
  const saidAgain: { readonly one: Reported; readonly kept: Kept }[] = [];
  let already = 0;
  let older = 0;
  for (const one of read) {
    const kept = one.content.source.id === null ? undefined : sayings.of(one);
    const isSaid = kept?.said === saidOf(one);
    const isAsKept = isSaid && (kept.takenBack === 'here' || (kept.takenBack !== null) === one.isInError);
    if (sayings.isLaterThan(one)) {
      if (isAsKept) already += 1;
      else older += 1;
      continue;
    }
    if (isAsKept) {
      already += 1;
      if (kept.takenBack === null || kept.takenBack === 'there') saidAgain.push({ one, kept });
      continue;
    }
    // What somebody here marked as wrong stays so: another value of its source stands beside it. So does what stands elsewhere.
    const isApart = kept?.takenBack === 'here' || kept?.takenBack === 'moved';
    const before = isApart ? undefined : kept;
    const plain = idOf(one, by, '');
    if (kept !== undefined && isSaidAfter(one, kept)) {
      const value = keep(
        one,
        known.has(plain) ? idOf(one, by, againText(one)) : plain,
        before,
        isSaid ? by.againText : by.changedText,
      );
      if (one.isInError) mark(one, value, idOf(one, by, errorText(one)));
      continue;
    }
    const stands = before?.takenBack === null ? before : undefined;
    const saysStanding = isSaid && stands !== undefined;
    const undone = known.has(plain) && !saysStanding ? markUndone(one, by, known) : null;
    const fresh = undone === null ? plain : idOf(one, by, `again ${timesSaid(one)}`);
    const id = saysStanding ? stands.id : fresh;
    if (!known.has(id)) keep(one, id, undone === null ? stands : keptOf(undone, one));
    else if (saysStanding || one.isInError || kept === undefined) already += 1;
    else older += 1;
    const isMarked = !saysStanding && marksOf(one, by).some((past) => known.has(past));
    const error = idOf(one, by, markText(timesSaid(one)));
    if (one.isInError && !isMarked && !known.has(error)) mark(one, { id }, error);
  }
  const places = new Set(placed.map(({ at }) => at));
  for (const one of read) if (places.has(one.at)) sayings.sayOfSeries(one);
  for (const { one, kept: before } of saidAgain) {
    // A history may have said it once more meanwhile.
    const kept = sayings.of(one) ?? before;
    const id = idOf(one, by, againText(one));
    if (kept.said !== before.said || !sayings.lacksTimeOf(one, kept) || known.has(id)) continue;
    already -= 1;
    const value = keep(one, id, kept, by.againText);
    sayings.sayOfSeries(one);
    if (one.isInError) mark(one, value, idOf(one, by, errorText(one)));
  }
  return { placed, already, older, unclear: unclearOf(placed, by) };
}

/** What of these entries is kept beside others of its name of which nobody knows whether one corrects the other. */
function unclearOf(placed: readonly Placed[], by: Bringing): Unclear[] {
  const entries = [...by.entries, ...placed.map(({ frame }) => frame as unknown as StoredEntry)];
  const unclear = unclearCorrections(entries);
  return placed.flatMap(({ at, frame }) => {
    const what = unclear.get(frame.id);
    return what === undefined ? [] : [{ at, what }];
  });
}

/**
 * What a history takes back by a later version of the same resource that is of another instant: the earlier one, as of
 * when the later was said.
 */
function movedIn(read: readonly Reported[]): Reported[] {
  const versions = new Map<string, Reported[]>();
  for (const one of inTime(read)) {
    if (!one.resource || one.content.saidAt === null) continue;
    const { source, value } = one.content;
    const name = canonicalJson([one.resource, source, value.of]);
    versions.set(name, [...(versions.get(name) ?? []), one]);
  }
  return [...versions.values()].flatMap((said) =>
    said.flatMap((one, at): Reported[] => {
      const next = said[at + 1];
      if (next === undefined || one.isInError || !isMoved(one, next)) return [];
      return [{ ...one, isInError: true, content: { ...one.content, saidAt: next.content.saidAt } }];
    }),
  );
}

function isMoved(before: Reported, after: Reported): boolean {
  return Date.parse(before.measuredAt.at) !== Date.parse(after.measuredAt.at);
}

/** In the order in which they were said; first those of which nobody knows. */
function inTime(read: readonly Reported[]): Reported[] {
  return read.toSorted((a, b) => (saidAtOf(a.content) ?? 0) - (saidAtOf(b.content) ?? 0));
}

/** Whether a source said a value after what is kept of it; false where either does not tell. */
function isSaidAfter(one: Reported, kept: Kept): boolean {
  const saidAtMs = saidAtOf(one.content);
  return saidAtMs !== null && kept.saidAtMs !== null && saidAtMs > kept.saidAtMs;
}

/** What tells a saying, or a mark of error, from the one of another time. */
function againText({ content }: Reported): string {
  return `again at ${saidAtOf(content)}`;
}

function errorText({ content }: Reported): string {
  return `in error at ${saidAtOf(content)}`;
}

/**
 * The mark of error that a value which its source says once more undoes: one that an import made of fewer sayings; null
 * for none. A file from before the mark says the value no more often than the one that took it back.
 */
function markUndone(one: Reported, by: Bringing, known: ReadonlySet<string>): string | null {
  const last = marksOf(one, by).findLast((mark) => known.has(mark));
  if (last === undefined || known.has(idOf(one, by, markText(timesSaid(one))))) return null;
  return by.entries.some(({ amends }) => amends?.entry === last) ? null : last;
}

/** How often the file says a value under its name, what was replaced there counted: more often only as time goes. */
function timesSaid({ timesSaid = 1 }: Reported): number {
  return timesSaid;
}

/** The ids of the marks that imports of the same or older files may have made of a value. */
function marksOf(one: Reported, by: Bringing): string[] {
  return Array.from({ length: timesSaid(one) }, (_, at) => idOf(one, by, markText(at + 1)));
}

function markText(times: number): string {
  return times === 1 ? 'in error' : `in error ${times}`;
}

/**
 * Marks of error for what a source said before and says no more: of what is kept as it was said, and still stands. What
 * was never brought, and what has been changed since, is left as it is; so is what was said later, which is counted.
 */
export function takenBackEntries(read: readonly Reported[], by: Bringing): Pick<Bring, 'placed' | 'older'> {
  const sayings = new KeptSayings(by.entries, read);
  const known = new Set(by.entries.map(({ id }) => id));
  const placed: Placed[] = [];
  let older = 0;
  for (const one of read) {
    const kept = one.content.source.id === null ? undefined : sayings.of(one);
    if (kept === undefined || kept.takenBack !== null || kept.said !== saidOf(one)) continue;
    const isTold = one.content.saidAt !== null && kept.saidAtMs !== null;
    if (sayings.isLaterThan(one) || (!isTold && isOlder(kept, one, by))) {
      older += 1;
      continue;
    }
    const id = idOf(one, by, isTold ? errorText(one) : markText(timesSaid(one)));
    if (known.has(id)) continue;
    known.add(id);
    placed.push(markOf(one, by, kept.id, id, placed.length));
    sayings.put({ ...kept, id, takenBack: 'there' });
  }
  return { placed, older };
}

/**
 * Whether a file that does not tell when it was said takes back what a newer one says: what stands again after more
 * sayings than it has, or what its source had amended where the file knows of the first saying alone.
 */
function isOlder({ id, isAmended }: Kept, one: Reported, by: Bringing): boolean {
  const again = Array.from({ length: timesSaid(one) }, (_, at) => idOf(one, by, `again ${at + 1}`));
  if (again.includes(id)) return false;
  const marks = new Set(marksOf(one, by));
  const undoes = by.entries.find((entry) => entry.id === id)?.amends?.entry;
  return (
    (undoes !== undefined && marks.has(undoes)) ||
    (isAmended && timesSaid(one) === 1 && one.content.status !== 'amended')
  );
}

function markOf(one: Reported, by: Bringing, entry: string, id: string, sequence: number): Placed {
  const amends = { entry, reason: 'other', text: by.changedText } as const;
  const frame = frameOf(by, id, 'entered-in-error', { note: null }, one.measuredAt, amends, sequence);
  return { at: one.at, frame };
}

function frameOf(
  by: Bringing,
  id: string,
  kind: 'reported' | 'entered-in-error',
  content: object,
  measuredAt: Stamp,
  amends: EntryFrame['amends'],
  sequence: number,
): EntryFrame {
  const { book, person, agent, device, writtenAt } = by;
  return {
    frame: 1,
    id,
    book,
    kind,
    schema: KINDS[kind].newest,
    person,
    round: null,
    session: null,
    agent,
    role: 'importer',
    device,
    sequence,
    measuredAt,
    writtenAt,
    amends,
    content: content as Record<string, unknown>,
  };
}

/** The id of what was said: the same person, name, time and value give the same, whatever its status and words. */
function idOf({ content, measuredAt }: Reported, { person, hash }: Bringing, what: string): string {
  const { value, source, until } = content;
  const at = Date.parse(measuredAt.at);
  return uuidOf(at, hash(canonicalJson({ person, value, source, until, at, what })));
}

/** A UUIDv7 by its form, from an instant (ms) and the hex digits of a hash. */
export function uuidOf(ms: number, hex: string): string {
  const time = Math.max(0, Math.min(ms, LATEST_MS)).toString(16).padStart(12, '0');
  return `${time.slice(0, 8)}-${time.slice(8)}-7${hex.slice(0, 3)}-8${hex.slice(3, 6)}-${hex.slice(6, 18)}`;
}

/** The 48 bits that a UUIDv7 has for its time. */
const LATEST_MS = 2 ** 48 - 1;
