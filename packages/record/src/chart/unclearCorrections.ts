import type { ReportedContent } from '../content/reported.js';
import type { StoredEntry } from '../entry/entry.js';

/**
 * A value said as a correction of which nobody knows what it corrects, or one that a correction like that may be of; with
 * the instants of the others under its name.
 */
export type UnclearCorrection = {
  readonly is: 'correction' | 'may-be-corrected';
  /** RFC 3339, in order of time. */
  readonly others: readonly string[];
};

type Said = {
  readonly id: string;
  readonly name: string;
  readonly at: string;
  readonly content: ReportedContent;
  readonly stands: boolean;
};

/**
 * Which values from elsewhere stand beside a correction that may be of them, by entry. Some sources give all measurements
 * of one order one name: a correction of another instant than any that was said before could be of any of them, said
 * before it. One of an instant that was said before it is of that.
 */
export function unclearCorrections(entries: readonly StoredEntry[]): ReadonlyMap<string, UnclearCorrection> {
  const amended = new Set(entries.flatMap(({ amends }) => amends?.entry ?? []));
  const named = new Map<string, Said[]>();
  for (const { id, kind, content, measuredAt } of entries) {
    if (kind !== 'reported' || content.source.id === null) continue;
    const { source, value } = content;
    const name = JSON.stringify([source.format, source.id, value.of]);
    const said = { id, name, at: measuredAt.at, content, stands: !amended.has(id) };
    named.set(name, [...(named.get(name) ?? []), said]);
  }
  const unclear = new Map<string, UnclearCorrection>();
  for (const said of named.values()) {
    const standing = said.filter(({ stands }) => stands);
    const corrections = standing.filter((one) => isUnplaced(one, said));
    for (const one of corrections) {
      const others = standing.filter((other) => mayBeOf(one, other));
      if (others.length > 0) unclear.set(one.id, { is: 'correction', others: instantsOf(others) });
    }
    for (const one of standing) {
      const others = corrections.filter((correction) => mayBeOf(correction, one));
      if (others.length > 0 && !unclear.has(one.id))
        unclear.set(one.id, { is: 'may-be-corrected', others: instantsOf(others) });
    }
  }
  return unclear;
}

/** A correction of an instant of which nothing else is known to have been said. */
function isUnplaced(one: Said, said: readonly Said[]): boolean {
  return isCorrection(one) && said.every((other) => !isSameInstant(other, one) || isCorrection(other));
}

function isCorrection({ content: { status } }: Said): boolean {
  return status === 'amended' || status === 'corrected';
}

function isSameInstant(a: Said, b: Said): boolean {
  return Date.parse(a.at) === Date.parse(b.at);
}

/** Whether a correction can be of a value: it is of another instant, and was not said later than the correction. */
function mayBeOf(correction: Said, other: Said): boolean {
  if (isSameInstant(correction, other)) return false;
  const [saidAt, otherAt] = [correction.content.saidAt, other.content.saidAt];
  return saidAt === null || otherAt === null || Date.parse(otherAt) < Date.parse(saidAt);
}

function instantsOf(said: readonly Said[]): string[] {
  return said.map(({ at }) => at).toSorted((a, b) => Date.parse(a) - Date.parse(b));
}
