import { createHash } from 'node:crypto';
import { type Refusal, refusal } from '@evenfall/clinical';
import {
  BACKUP_VERSION,
  type BackupLine,
  backupLine,
  readEntry,
  readFrame,
  refusalsOf,
  unkeepableTexts,
} from '@evenfall/record';
import { type Kysely, sql, type Transaction } from 'kysely';
import type { Tables } from '../database/schema.js';
import { contentHash } from '../store/canonical.js';
import { rowOf } from '../store/rows.js';
import { holdsAnything } from './holdsAnything.js';

/** What a restore did, or why it did nothing. Refusals carry the line of the file. */
export type Restored =
  | { readonly ok: true; readonly lines: Readonly<Record<string, number>> }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** How many rows go in at a time. */
const BATCH_ROWS = 500;

/** Stops a restore and rolls everything back. */
class Refused extends Error {
  readonly refusals: readonly Refusal[];
  constructor(refusals: readonly Refusal[]) {
    super('restore refused');
    this.refusals = refusals;
  }
}

/**
 * Puts a backup into an empty database, all or nothing: every line is read by its schema, every entry by its
 * kind, and the count and hash of the trailer must agree, before anything is kept.
 *
 * Errors: refusals with the line; a database that already holds a site is refused (`contradicts`).
 */
export async function restore(
  db: Kysely<Tables>,
  lines: AsyncIterable<string>,
  invented: boolean,
): Promise<Restored> {
  try {
    const counted = await db.transaction().execute(async (tx) => {
      await sql`lock table site in exclusive mode`.execute(tx);
      await emptied(tx);
      return await new Restoring(tx, invented).all(lines);
    });
    return { ok: true, lines: counted };
  } catch (error) {
    if (error instanceof Refused) return { ok: false, refusals: error.refusals };
    if ((error as NodeJS.ErrnoException).code === 'ERR_ENCODING_INVALID_ENCODED_DATA')
      return { ok: false, refusals: [refusal('', 'contradicts', 'json-line', null)] };
    if (isDangling(error)) return { ok: false, refusals: [refusal('', 'contradicts', 'whole-record', null)] };
    throw error;
  }
}

/** PostgreSQL's foreign_key_violation and unique_violation: something is named that is not there, or stands twice. */
function isDangling(error: unknown): boolean {
  return error instanceof Error && 'code' in error && ['23503', '23505'].includes(String(error.code));
}

/** A new clinic's site makes room for the one in the backup; a record that holds anything is not touched. */
async function emptied(tx: Transaction<Tables>): Promise<void> {
  if (await holdsAnything(tx)) throw new Refused([refusal('', 'contradicts', 'empty-record', null)]);
  // Anybody may have tried to sign in, where there is no account yet.
  await tx.deleteFrom('sign_in_guess').execute();
  await tx.deleteFrom('marking').execute();
  await tx.deleteFrom('marking_guess').execute();
  await tx.deleteFrom('site').execute();
}

/** One restore under way: what was read so far, and what waits to go in. */
class Restoring {
  private readonly tx: Transaction<Tables>;
  private readonly invented: boolean;
  private readonly hash = createHash('sha256');
  private readonly counted: Record<string, number> = {};
  private site: string | null = null;
  private at = 0;
  private ended = false;
  private waiting: ReturnType<Restoring['rowFrom']>[] = [];

  constructor(tx: Transaction<Tables>, invented: boolean) {
    this.tx = tx;
    this.invented = invented;
  }

  async all(lines: AsyncIterable<string>): Promise<Record<string, number>> {
    // An amendment may stand before what it amends; the constraint is looked at once everything is in.
    await sql`set constraints all deferred`.execute(this.tx);
    for await (const text of lines) {
      this.at += 1;
      if (text.trim() === '') continue;
      if (this.ended) this.refuse('', 'contradicts', 'trailer-last', text.slice(0, 40));
      await this.one(text, this.read(text));
    }
    if (!this.ended) this.refuse('', 'missing', 'trailer', null);
    return this.counted;
  }

  private read(text: string): BackupLine {
    let input: unknown;
    try {
      input = JSON.parse(text);
    } catch {
      this.refuse('', 'contradicts', 'json-line', text.slice(0, 40));
    }
    const unkeepable = unkeepableTexts(input);
    if (unkeepable.length > 0)
      throw new Refused(unkeepable.map((refused) => ({ ...refused, line: this.at })));
    const read = backupLine.safeParse(input);
    if (!read.success)
      throw new Refused(refusalsOf(read.error, input).map((refused) => ({ ...refused, line: this.at })));
    return read.data;
  }

  private async one(text: string, line: BackupLine): Promise<void> {
    if (line.line === 'trailer') return await this.end(line);
    this.hash.update(`${text}\n`);
    this.counted[line.line] = (this.counted[line.line] ?? 0) + 1;
    if (line.line === 'header') return await this.begin(line);
    const site = this.site;
    if (site === null) return this.refuse('/line', 'out-of-order', 'header-first', line.line);
    await this.keep(site, line);
  }

  private async begin(line: Extract<BackupLine, { line: 'header' }>): Promise<void> {
    if (this.site !== null) this.refuse('/line', 'repeated', 'header-once', 'header');
    if (line.version > BACKUP_VERSION) {
      throw new Refused([
        refusal('/version', 'unknown-id', 'backup-version-known', line.version, {
          line: this.at,
          figures: { newest: BACKUP_VERSION },
        }),
      ]);
    }
    if (line.site.invented !== this.invented)
      this.refuse('/site/invented', 'contradicts', 'same-purpose', line.site.invented);
    this.site = line.site.id;
    await this.tx
      .insertInto('site')
      .values({ ...line.site })
      .execute();
  }

  private async keep(site: string, line: Exclude<BackupLine, { line: 'header' | 'trailer' }>): Promise<void> {
    const recorded_at = line.recordedAt;
    switch (line.line) {
      case 'agent':
        await this.tx
          .insertInto('agent')
          .values({ site, id: line.id, name: line.name, recorded_at })
          .execute();
        return;
      case 'account':
        await this.tx
          .insertInto('account')
          .values({
            site,
            id: line.id,
            agent: line.agent,
            sign_in: line.signIn,
            roles: JSON.stringify(line.roles),
            phrase: line.phrase,
            is_own_phrase: line.isOwnPhrase,
            pin: null,
            recorded_at,
            closed_at: line.closedAt,
          })
          .execute();
        return;
      case 'person':
        await this.tx
          .insertInto('person')
          .values({ site, book: line.book, id: line.id, recorded_at })
          .execute();
        return;
      case 'identity': {
        const { book, person, version } = line;
        const content = JSON.stringify(line.identity);
        await this.tx
          .insertInto('identity')
          .values({ site, book, person, version, content, recorded_at })
          .execute();
        return;
      }
      case 'protocol': {
        const content = JSON.stringify(line.content);
        await this.tx
          .insertInto('protocol')
          .values({ site, version: line.version, content, recorded_at })
          .execute();
        return;
      }
      case 'entry':
        this.waiting.push(this.rowFrom(site, line));
        if (this.waiting.length >= BATCH_ROWS) await this.flush();
    }
  }

  private rowFrom(site: string, { entry, recordedAt }: Extract<BackupLine, { line: 'entry' }>) {
    const [frame, read] = [readFrame(entry), readEntry(entry)];
    if (!frame.ok || !read.ok) {
      const refusals = read.ok ? [] : read.refusals;
      throw new Refused(
        refusals.map((refused) => ({ ...refused, field: `/entry${refused.field}`, line: this.at })),
      );
    }
    return { ...rowOf(site, frame.value, contentHash(frame.value)), recorded_at: recordedAt };
  }

  private async flush(): Promise<void> {
    if (this.waiting.length === 0) return;
    await this.tx.insertInto('entry').values(this.waiting).execute();
    this.waiting = [];
  }

  private async end(line: Extract<BackupLine, { line: 'trailer' }>): Promise<void> {
    this.ended = true;
    const site = this.site;
    if (site === null) return this.refuse('/line', 'out-of-order', 'header-first', 'trailer');
    const sha256 = this.hash.digest('hex');
    if (sha256 !== line.sha256) this.refuse('/sha256', 'contradicts', 'hash-of-lines', null);
    for (const [name, lines] of Object.entries({ ...this.counted, ...line.lines })) {
      if ((this.counted[name] ?? 0) !== (line.lines[name] ?? 0))
        this.refuse(`/lines/${name}`, 'contradicts', 'count-of-lines', lines);
    }
    await this.flush();
  }

  private refuse(field: string, code: Refusal['code'], expected: string, got: unknown): never {
    throw new Refused([refusal(field, code, expected, got, { line: this.at })]);
  }
}
