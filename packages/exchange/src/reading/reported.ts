import { canonicalJson, type Refusal } from '@evenfall/clinical';
import type { EntryFrame, ReportedContent, Stamp, StoredEntry } from '@evenfall/record';

/** A value of a file from elsewhere, before it is an entry: what was said, when it was measured, and where it stood in the file. */
export type Reported = {
  /** JSON Pointer of its resource, or the row and column of its cell. */
  readonly at: string;
  readonly content: ReportedContent;
  readonly measuredAt: Stamp;
  /** The source takes it back: kept, and marked as entered in error. */
  readonly isInError: boolean;
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
 * @returns those that are not kept yet, and how many are
 */
export function reportedEntries(
  read: readonly Reported[],
  by: Bringing,
): { readonly placed: readonly Placed[]; readonly already: number } {
  const known = new Set(by.entries.map(({ id }) => id));
  const standing = standingIn(by.entries);
  const placed: Placed[] = [];
  let already = 0;
  for (const one of read) {
    const { content, measuredAt, at } = one;
    const id = idOf(one, by, '');
    const before = content.source.id === null ? undefined : standing.get(nameOf(content));
    if (known.has(id)) already += 1;
    else {
      const amends =
        before !== undefined && isChange(before, one)
          ? ({ entry: before.id, reason: 'other', text: by.changedText } as const)
          : null;
      placed.push({ at, frame: frameOf(by, id, 'reported', content, measuredAt, amends, placed.length) });
      known.add(id);
      standing.set(nameOf(content), { id, of: content.value.of, atMs: Date.parse(measuredAt.at) });
    }
    const mark = idOf(one, by, 'in error');
    if (one.isInError && !known.has(mark)) {
      const amends = { entry: id, reason: 'other', text: by.changedText } as const;
      const said = { note: null };
      placed.push({
        at,
        frame: frameOf(by, mark, 'entered-in-error', said, measuredAt, amends, placed.length),
      });
      known.add(mark);
    }
  }
  return { placed, already };
}

/**
 * Marks of error for what a source said before and says no more: of what is kept as it was said, and still stands. What
 * was never brought, and what has been changed since, is left as it is.
 */
export function takenBackEntries(read: readonly Reported[], by: Bringing): readonly Placed[] {
  const standing = standingIn(by.entries);
  const placed: Placed[] = [];
  for (const one of read) {
    const { content, measuredAt, at } = one;
    const id = idOf(one, by, '');
    if (content.source.id === null || standing.get(nameOf(content))?.id !== id) continue;
    const mark = idOf(one, by, 'in error');
    const amends = { entry: id, reason: 'other', text: by.changedText } as const;
    standing.delete(nameOf(content));
    placed.push({
      at,
      frame: frameOf(by, mark, 'entered-in-error', { note: null }, measuredAt, amends, placed.length),
    });
  }
  return placed;
}

/** What stands under each name of a source. */
function standingIn(entries: readonly StoredEntry[]): Map<string, Named> {
  const replaced = new Set(entries.flatMap(({ amends }) => (amends === null ? [] : [amends.entry])));
  const standing = new Map<string, Named>();
  for (const { kind, content, id, measuredAt } of entries) {
    if (kind !== 'reported' || replaced.has(id) || content.source.id === null) continue;
    standing.set(nameOf(content), { id, of: content.value.of, atMs: Date.parse(measuredAt.at) });
  }
  return standing;
}

/** A value that stands under a name of its source. */
type Named = { readonly id: string; readonly of: string; readonly atMs: number };

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
    schema: 1,
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
