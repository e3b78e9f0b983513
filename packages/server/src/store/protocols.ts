import {
  type Parsed,
  type Protocol,
  parseProtocol,
  protocolDocument,
  protocolVersion,
  type Refusal,
} from '@evenfall/clinical';
import { type InForce, inForceUnder, NOTHING_CHOSEN, type ProtocolChoiceMade } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';

/** A protocol version as kept: named by the hash of its content, never changed. */
export type ProtocolRow = {
  readonly version: string;
  readonly content: Record<string, unknown>;
  readonly recordedAt: string;
};

/** Every protocol version kept here, oldest first. */
export async function listProtocols(db: Kysely<Tables>, site: string): Promise<ProtocolRow[]> {
  const rows = await db
    .selectFrom('protocol')
    .selectAll()
    .where('site', '=', site)
    .orderBy('recorded_at')
    .orderBy('version')
    .execute();
  return rows.map(rowFrom);
}

/** Keeps a protocol under the hash of its content; keeping it again changes nothing. */
export async function addProtocol(
  db: Kysely<Tables>,
  site: string,
  content: unknown,
): Promise<{ ok: true; already: boolean; row: ProtocolRow } | { ok: false; refusals: readonly Refusal[] }> {
  const read: Parsed<Protocol> = parseProtocol(content);
  if (!read.ok) {
    return {
      ok: false,
      refusals: read.refusals.map((refused) => ({ ...refused, field: `/content${refused.field}` })),
    };
  }
  const version = protocolVersion(read.value);
  const inserted = await db
    .insertInto('protocol')
    .values({ site, version, content: JSON.stringify(protocolDocument(read.value)) })
    .onConflict((conflict) => conflict.columns(['site', 'version']).doNothing())
    .returning('version')
    .executeTakeFirst();
  const row = await db
    .selectFrom('protocol')
    .selectAll()
    .where('site', '=', site)
    .where('version', '=', version)
    .executeTakeFirstOrThrow();
  return { ok: true, already: inserted === undefined, row: rowFrom(row) };
}

/** Every choice that was ever made here, oldest first; the last is in force. */
export async function listProtocolChoices(db: Kysely<Tables>, site: string): Promise<ProtocolChoiceMade[]> {
  const rows = await choicesOf(db, site).orderBy('recorded_at').orderBy('id').execute();
  return rows.map((row) => ({
    entry: row.id,
    version: versionIn(row),
    agent: row.agent,
    at: row.measured_text,
    recordedAt: row.recorded_at.toISOString(),
  }));
}

/** The version chosen last; null when none was chosen or none is wanted any more. */
export async function protocolInForce(db: Kysely<Tables>, site: string): Promise<string | null> {
  const row = await choicesOf(db, site)
    .orderBy('recorded_at', 'desc')
    .orderBy('id', 'desc')
    .executeTakeFirst();
  return row === undefined ? null : versionIn(row);
}

function choicesOf(db: Kysely<Tables>, site: string) {
  return db
    .selectFrom('entry')
    .select(['id', 'agent', 'measured_text', 'recorded_at', 'content'])
    .where('site', '=', site)
    .where('book', '=', 'care')
    .where('kind', '=', 'protocol-chosen')
    .where('person', 'is', null);
}

function versionIn({ content }: { content: unknown }): string | null {
  return (content as { version: string | null }).version;
}

/**
 * The rules of the protocol versions kept here; null for one that is not, or that this program cannot read. With `named`, only those are looked up, and
 * none at all where no value names one.
 */
export async function keptProtocols(
  db: Kysely<Tables>,
  site: string,
  named: readonly (string | null)[] | 'all' = 'all',
): Promise<(version: string | null) => InForce | null> {
  const wanted = named === 'all' ? null : new Set(named.filter((version) => version !== null));
  const rows = wanted?.size === 0 ? [] : await listProtocols(db, site);
  const kept = new Map(rows.map(({ version, content }) => [version, content]));
  const read = new Map<string, InForce>();
  return (version) => {
    if (version === null) return NOTHING_CHOSEN;
    const before = read.get(version);
    if (before !== undefined) return before;
    const content = kept.get(version);
    if (content === undefined) return null;
    const protocol = parseProtocol(content);
    // Of a newer program: not at hand, and nothing that other versions are needed for fails by it.
    if (!protocol.ok) return null;
    const inForce = inForceUnder(protocol.value, version);
    read.set(version, inForce);
    return inForce;
  };
}

function rowFrom(row: { version: string; content: unknown; recorded_at: Date }): ProtocolRow {
  return {
    version: row.version,
    content: row.content as Record<string, unknown>,
    recordedAt: row.recorded_at.toISOString(),
  };
}
