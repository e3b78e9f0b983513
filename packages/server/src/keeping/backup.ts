import { createHash } from 'node:crypto';
import { type AccountRole, BACKUP_VERSION, type BackupLine } from '@evenfall/record';
import { type Kysely, sql, type Transaction } from 'kysely';
import type { Tables } from '../database/schema.js';
import { frameOf } from '../store/rows.js';
import type { Site } from '../store/site.js';

/** How many rows are read at a time, so that memory stays flat whatever the size of the record. */
const PAGE_ROWS = 500;

/**
 * Everything kept, as JSON lines (see `backupLine` of the record package), as it stood at one instant: entries
 * written meanwhile are in whole or not at all. Erased identities are not in it, nor class sessions that are open.
 *
 * @param write takes each line, ending in a newline; awaited, so that a slow disk slows the reading
 */
export async function backUp(
  db: Kysely<Tables>,
  site: Site,
  program: string,
  madeAt: Date,
  write: (line: string) => Promise<void>,
): Promise<Record<string, number>> {
  const hash = createHash('sha256');
  const lines: Record<string, number> = {};
  const put = async (line: BackupLine) => {
    const text = `${JSON.stringify(line)}\n`;
    if (line.line !== 'trailer') {
      hash.update(text);
      lines[line.line] = (lines[line.line] ?? 0) + 1;
    }
    await write(text);
  };
  await db
    .transaction()
    .setIsolationLevel('repeatable read')
    .execute(async (tx) => {
      const header = { program, madeAt: madeAt.toISOString(), site: { ...site } };
      await put({ line: 'header', format: 'evenfall-backup', version: BACKUP_VERSION, ...header });
      await putAgents(tx, site.id, put);
      await putAccounts(tx, site.id, put);
      await putPersons(tx, site.id, put);
      await putProtocols(tx, site.id, put);
      await putEntries(tx, site.id, put);
    });
  await put({ line: 'trailer', lines, sha256: hash.digest('hex') });
  return lines;
}

/**
 * A class session that is open is in no backup: a copy of it would outlive its end. What both agreed to keep is.
 */
const isOver = sql<boolean>`(entry.book <> 'class' or entry.session in (
  select session from entry as ended where ended.site = entry.site and ended.kind = 'class-session-ended'))`;

/** The people of the class book of whom something is kept by agreement, and everybody of the other books. */
function staysOf(table: 'person' | 'identity', column: 'id' | 'person') {
  const of = sql.ref(`${table}.${column}`);
  const book = sql.ref(`${table}.book`);
  const site = sql.ref(`${table}.site`);
  return sql<boolean>`(${book} <> 'class' or ${of} in (
    select person from entry as agreed where agreed.site = ${site} and agreed.kind = 'kept-by-agreement'))`;
}

type Put = (line: BackupLine) => Promise<void>;
type Tx = Transaction<Tables>;

async function putAgents(tx: Tx, site: string, put: Put): Promise<void> {
  for (const row of await tx
    .selectFrom('agent')
    .selectAll()
    .where('site', '=', site)
    .orderBy('id')
    .execute()) {
    await put({ line: 'agent', id: row.id, name: row.name, recordedAt: row.recorded_at.toISOString() });
  }
}

/** Who may sign in; sign-ins themselves are in no backup, so that a restored record opens to nobody by an old cookie. */
async function putAccounts(tx: Tx, site: string, put: Put): Promise<void> {
  for (const row of await tx
    .selectFrom('account')
    .selectAll()
    .where('site', '=', site)
    .orderBy('id')
    .execute()) {
    await put({
      line: 'account',
      id: row.id,
      agent: row.agent,
      signIn: row.sign_in,
      roles: row.roles as AccountRole[],
      phrase: row.phrase,
      isOwnPhrase: row.is_own_phrase,
      recordedAt: row.recorded_at.toISOString(),
      closedAt: row.closed_at?.toISOString() ?? null,
    });
  }
}

async function putPersons(tx: Tx, site: string, put: Put): Promise<void> {
  const persons = await tx
    .selectFrom('person')
    .selectAll()
    .where('site', '=', site)
    .where(staysOf('person', 'id'))
    .orderBy('book')
    .orderBy('id')
    .execute();
  for (const row of persons) {
    await put({
      line: 'person',
      book: row.book as 'care',
      id: row.id,
      recordedAt: row.recorded_at.toISOString(),
    });
  }
  const identities = await tx
    .selectFrom('identity')
    .selectAll()
    .where('site', '=', site)
    .where(staysOf('identity', 'person'))
    .orderBy('book')
    .orderBy('person')
    .orderBy('version')
    .execute();
  for (const row of identities) {
    await put({
      line: 'identity',
      book: row.book as 'care',
      person: row.person,
      version: row.version,
      identity: row.content as Extract<BackupLine, { line: 'identity' }>['identity'],
      recordedAt: row.recorded_at.toISOString(),
    });
  }
}

async function putProtocols(tx: Tx, site: string, put: Put): Promise<void> {
  const rows = await tx
    .selectFrom('protocol')
    .selectAll()
    .where('site', '=', site)
    .orderBy('recorded_at')
    .orderBy('version')
    .execute();
  for (const row of rows) {
    const content = row.content as Record<string, unknown>;
    await put({ line: 'protocol', version: row.version, content, recordedAt: row.recorded_at.toISOString() });
  }
}

/** In order of key: the way back puts amendments in after what they amend. */
async function putEntries(tx: Tx, site: string, put: Put): Promise<void> {
  let after: { book: string; id: string } | null = null;
  for (;;) {
    let page = tx.selectFrom('entry').selectAll().where('site', '=', site).where(isOver);
    if (after !== null) {
      const { book, id } = after;
      page = page.where((is) =>
        is.or([is('book', '>', book), is.and([is('book', '=', book), is('id', '>', id)])]),
      );
    }
    const rows = await page.orderBy('book').orderBy('id').limit(PAGE_ROWS).execute();
    for (const row of rows) {
      await put({ line: 'entry', entry: frameOf(row), recordedAt: row.recorded_at.toISOString() });
    }
    const last = rows.at(-1);
    if (last === undefined || rows.length < PAGE_ROWS) return;
    after = { book: last.book, id: last.id };
  }
}
