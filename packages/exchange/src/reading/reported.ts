import { canonicalJson, type Refusal } from '@evenfall/clinical';
import { type EntryFrame, KINDS, type ReportedContent, type Stamp, type StoredEntry } from '@evenfall/record';
import { PlacedNames } from './placedNames.js';
import { SaidLater } from './saidLater.js';

/** A value of a file from elsewhere, before it is an entry: what was said, when it was measured, and where it stood in the file. */
export type Reported = {
  /** JSON Pointer of its resource, or the row and column of its cell. */
  readonly at: string;
  readonly content: ReportedContent;
  readonly measuredAt: Stamp;
  /** The source takes it back: kept, and marked as entered in error. */
  readonly isInError: boolean;
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
  /** The person's entries. */
  readonly entries: readonly StoredEntry[];
  /** What an amendment says of a value that its source changed. */
  readonly changedText: string;
};

/** An entry to keep, with the place in the file that it came from. */
export type Placed = { readonly at: string; readonly frame: EntryFrame };

/**
 * Entries for values from elsewhere. An id is made from what was said, so that a file that is brought twice adds
 * nothing; what the source says anew under a name that is known here, of the same instant or as a correction, amends
 * what it said before.
 *
 * @returns those that are not kept yet, how many are, and how many are left as a later saying has them
 */
export function reportedEntries(
  read: readonly Reported[],
  by: Bringing,
): { readonly placed: readonly Placed[]; readonly already: number; readonly older: number } {
  const known = new Set(by.entries.map(({ id }) => id));
  const standing = renamed(standingIn(by.entries), read);
  const placed: Placed[] = [];
  const saidLater = new SaidLater(by.entries);
  let already = 0;
  let older = 0;
  for (const one of read) {
    const { content, measuredAt, at } = one;
    const before = content.source.id === null ? undefined : standing.get(nameOf(content));
    const isSaid = before !== undefined && saysTheSame(before, one);
    const plain = idOf(one, by, '');
    const isOlder = !isSaid && saidLater.than(one);
    if (isOlder && !known.has(plain)) {
      older += 1;
      continue;
    }
    const mark = known.has(plain) && !isSaid && !isOlder ? markUndone(one, by, known) : null;
    const id = isSaid ? before.id : mark === null ? plain : idOf(one, by, `again ${timesSaid(one)}`);
    if (known.has(id)) already += 1;
    else {
      const entry = mark ?? (before !== undefined && isChange(before, one) ? before.id : null);
      const amends = entry === null ? null : ({ entry, reason: 'other', text: by.changedText } as const);
      placed.push({ at, frame: frameOf(by, id, 'reported', content, measuredAt, amends, placed.length) });
      known.add(id);
      standing.set(nameOf(content), namedOf(id, one));
    }
    const isMarked = !isSaid && marksOf(one, by).some((past) => known.has(past));
    const error = idOf(one, by, markText(timesSaid(one)));
    if (one.isInError && !isMarked && !known.has(error)) {
      const amends = { entry: id, reason: 'other', text: by.changedText } as const;
      const said = { note: null };
      placed.push({
        at,
        frame: frameOf(by, error, 'entered-in-error', said, measuredAt, amends, placed.length),
      });
      known.add(error);
    }
  }
  return { placed, already, older };
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
 * was never brought, and what has been changed since, is left as it is.
 */
export function takenBackEntries(read: readonly Reported[], by: Bringing): readonly Placed[] {
  const standing = standingIn(by.entries);
  const known = new Set(by.entries.map(({ id }) => id));
  const placed: Placed[] = [];
  for (const one of read) {
    const { content, measuredAt, at } = one;
    const before = content.source.id === null ? undefined : standing.get(nameOf(content));
    if (before === undefined || !saysTheSame(before, one) || isOlder(before, one, by)) continue;
    const mark = idOf(one, by, markText(timesSaid(one)));
    if (known.has(mark)) continue;
    const amends = { entry: before.id, reason: 'other', text: by.changedText } as const;
    standing.delete(nameOf(content));
    placed.push({
      at,
      frame: frameOf(by, mark, 'entered-in-error', { note: null }, measuredAt, amends, placed.length),
    });
  }
  return placed;
}

/**
 * Whether a file takes back what a newer one says: what stands again after more sayings than it has, or what its source
 * had amended where the file knows of the first saying alone. Where both say when they were said, that tells.
 */
function isOlder({ id, isAmended, saidAtMs }: Named, one: Reported, by: Bringing): boolean {
  const saidAt = one.content.saidAt;
  if (saidAt !== null && saidAtMs !== null) return saidAtMs > Date.parse(saidAt);
  const again = Array.from({ length: timesSaid(one) }, (_, at) => idOf(one, by, `again ${at + 1}`));
  if (again.includes(id)) return false;
  const marks = new Set(marksOf(one, by));
  const undoes = by.entries.find((entry) => entry.id === id)?.amends?.entry;
  return (
    (undoes !== undefined && marks.has(undoes)) ||
    (isAmended && timesSaid(one) === 1 && one.content.status !== 'amended')
  );
}

/** What stands under each name of a source. */
function standingIn(entries: readonly StoredEntry[]): Map<string, Named> {
  const replaced = new Set(entries.flatMap(({ amends }) => (amends === null ? [] : [amends.entry])));
  const standing = new Map<string, Named>();
  const names = new PlacedNames();
  for (const { kind, content, id, measuredAt } of entries) {
    if (kind !== 'reported' || content.source.id === null) continue;
    const name = names.of(content, Date.parse(measuredAt.at));
    const isByPlace = name !== nameOf(content);
    if (!replaced.has(id)) standing.set(name, { ...namedOf(id, { content, measuredAt }), isByPlace });
  }
  return standing;
}

/**
 * The same, but that a reading which was brought by its place has the name under which the file says just that: of a week
 * that is contested two entries gave one place, and the name of its instant alone may be the other one's. Where both say
 * the same at other places, what an earlier program brought twice stays twice: nothing kept tells it from two readings.
 */
function renamed(standing: ReadonlyMap<string, Named>, read: readonly Reported[]): Map<string, Named> {
  const names = new Map(standing);
  const said = new Map(read.map((one) => [nameOf(one.content), saidOf(one)]));
  const astray = [...standing].filter(
    ([name, { isByPlace, said: was }]) => isByPlace && said.get(name) !== was,
  );
  for (const one of astray.length === 0 ? [] : read) {
    const name = nameOf(one.content);
    if (names.get(name)?.said === saidOf(one)) continue;
    const found = astray.find(
      ([was, named]) =>
        named.said === saidOf(one) && (name.startsWith(`${was}/`) || was.startsWith(`${name}/`)),
    );
    if (found === undefined) continue;
    names.delete(found[0]);
    names.set(name, found[1]);
  }
  return names;
}

/** A value that stands under a name of its source. */
type Named = {
  readonly id: string;
  readonly of: string;
  readonly atMs: number;
  readonly said: string;
  readonly isAmended: boolean;
  /** When the source said it; null where nobody knows. */
  readonly saidAtMs: number | null;
  /** It was brought by its place in a series, and not by its instant. */
  readonly isByPlace?: boolean;
};

function namedOf(id: string, one: Pick<Reported, 'content' | 'measuredAt'>): Named {
  const { value, status, saidAt } = one.content;
  const atMs = Date.parse(one.measuredAt.at);
  const saidAtMs = saidAt === null ? null : Date.parse(saidAt);
  return { id, of: value.of, atMs, said: saidOf(one), isAmended: status === 'amended', saidAtMs };
}

function saidOf({ content: { value, until }, measuredAt }: Pick<Reported, 'content' | 'measuredAt'>): string {
  return canonicalJson({ value, until, at: Date.parse(measuredAt.at) });
}

function saysTheSame(before: Named, one: Reported): boolean {
  return before.said === saidOf(one);
}

/**
 * Whether a source says anew what it said before: of the same sign, and of the same instant or as a correction. Some
 * sources give one name (that of an order) to several measurements: those stand beside each other.
 */
function isChange(before: Named, { content, measuredAt }: Reported): boolean {
  if (before.of !== content.value.of) return false;
  const isCorrection = content.status === 'amended' || content.status === 'corrected';
  return isCorrection || before.atMs === Date.parse(measuredAt.at);
}

function nameOf({ source }: ReportedContent): string {
  return `${source.format} ${source.id}`;
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
