import type { Parsed } from '@evenfall/clinical';
import type { EntryFrame, StoredEntry } from '@evenfall/record';
import { readEntry } from '@evenfall/record';
import type { Selectable } from 'kysely';
import type { Tables } from '../database/schema.js';

/** The row that keeps an entry. The instant's text is kept beside the instant: it holds the offset of then. */
export function rowOf(site: string, entry: EntryFrame, sha256: string) {
  const { at, zone, asEntered } = entry.measuredAt;
  return {
    site,
    frame: entry.frame,
    book: entry.book,
    id: entry.id,
    kind: entry.kind,
    schema: entry.schema,
    person: entry.person,
    round: entry.round,
    session: entry.session,
    agent: entry.agent,
    role: entry.role,
    device: entry.device,
    sequence: entry.sequence,
    measured_at: at,
    measured_text: at,
    zone,
    as_entered: asEntered,
    written_at: entry.writtenAt,
    written_text: entry.writtenAt,
    amends: entry.amends?.entry ?? null,
    amends_reason: entry.amends?.reason ?? null,
    amends_text: entry.amends?.text ?? null,
    content: JSON.stringify(entry.content),
    sha256,
  };
}

/** The frame kept in a row, as the client sent it: in the frame and the schema of its time, which its hash is of. */
export function frameOf(row: Selectable<Tables['entry']>): EntryFrame {
  return {
    frame: row.frame as EntryFrame['frame'],
    id: row.id,
    book: row.book as EntryFrame['book'],
    kind: row.kind as EntryFrame['kind'],
    schema: row.schema,
    person: row.person,
    round: row.round,
    session: row.session,
    agent: row.agent,
    role: row.role as EntryFrame['role'],
    device: row.device,
    sequence: Number(row.sequence),
    measuredAt: { at: row.measured_text, zone: row.zone, asEntered: row.as_entered },
    writtenAt: row.written_text,
    amends:
      row.amends === null
        ? null
        : {
            entry: row.amends,
            reason: row.amends_reason as NonNullable<EntryFrame['amends']>['reason'],
            text: row.amends_text,
          },
    content: row.content as Record<string, unknown>,
  };
}

/** The entry kept in a row, its content read by the schema of its time; refused where this program cannot read it. */
export function readRow(row: Selectable<Tables['entry']>): Parsed<StoredEntry> {
  const read = readEntry(frameOf(row));
  if (!read.ok) return read;
  return { ok: true, value: { ...read.value, recordedAt: row.recorded_at.toISOString() } };
}

/** The entry of a row that may not be there; what cannot be read can be named by no other, as if it were not there. */
export function readableIn(row: Selectable<Tables['entry']> | undefined): StoredEntry | undefined {
  if (row === undefined) return undefined;
  const read = readRow(row);
  return read.ok ? read.value : undefined;
}

/**
 * What can be read of rows, and how many cannot: an entry of a newer program, or of a shape that was never released,
 * hides no other.
 */
export type ReadRows = { readonly entries: readonly StoredEntry[]; readonly unreadable: number };

export function readRows(rows: readonly Selectable<Tables['entry']>[]): ReadRows {
  const entries = rows.map(readRow).flatMap((read) => (read.ok ? [read.value] : []));
  return { entries, unreadable: rows.length - entries.length };
}

/**
 * The entry kept in a row that must be readable.
 *
 * Errors: throws when it cannot be read, which a newer program's row would cause; nothing is guessed.
 */
export function entryOf(row: Selectable<Tables['entry']>): StoredEntry {
  const read = readRow(row);
  if (read.ok) return read.value;
  const places = read.refusals.map(({ field, code }) => `${field}: ${code}`).join(', ');
  throw new Error(`entry ${row.id} (${row.kind} ${row.schema}) cannot be read: ${places}`);
}

/** When what is not kept yet is taken to be recorded: after everything that is. */
export const LAST = '9999-12-31T23:59:59.000Z';
