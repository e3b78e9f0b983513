import type { MarkingState, SecondMark } from '@evenfall/api';
import { type Kysely, sql } from 'kysely';
import type { Tables } from '../database/schema.js';
import { newCode } from './code.js';
import { MARKING } from './figures.js';

type Db = Kysely<Tables>;

/** The database's clock, milliseconds since 1970: one for every server process of a place. */
export async function clockMs(db: Db): Promise<number> {
  const { rows } = await sql<{ ms: number }>`
    select (extract(epoch from clock_timestamp()) * 1000)::float8 as ms`.execute(db);
  return rows[0]?.ms ?? Number.NaN;
}

export type Opened = { readonly isNew: boolean; readonly code: string; readonly secondsLeft: number };

/** Opens a marking under a new code; the same one again where its id is open already. What is over is forgotten. */
export async function openMarking(db: Db, site: string, id: string, now: Date): Promise<Opened> {
  await forgetMarkings(db, site, now);
  for (;;) {
    const made = await db
      .insertInto('marking')
      .values({ site, id, code: newCode(), begun_at: now })
      .onConflict((conflict) => conflict.doNothing())
      .returning('code')
      .executeTakeFirst();
    if (made !== undefined) return { isNew: true, code: made.code, secondsLeft: MARKING.lastsMinutes * 60 };
    const there = await db
      .selectFrom('marking')
      .select(['code', 'begun_at'])
      .where('site', '=', site)
      .where('id', '=', id)
      .executeTakeFirst();
    // Else the code stands already: another is drawn.
    if (there !== undefined)
      return { isNew: false, code: there.code, secondsLeft: secondsLeft(there.begun_at, now) };
  }
}

function secondsLeft(begun: Date, now: Date): number {
  return Math.round(MARKING.lastsMinutes * 60 - (now.getTime() - begun.getTime()) / 1000);
}

const oldest = (now: Date) => new Date(now.getTime() - MARKING.lastsMinutes * 60_000);

/** Deletes every marking whose minutes are over. */
export async function forgetMarkings(db: Db, site: string, now: Date): Promise<void> {
  await db.deleteFrom('marking').where('site', '=', site).where('begun_at', '<=', oldest(now)).execute();
}

/** Joins one device by a code; again by the same device changes nothing. `taken` where another one joined before. */
export async function joinMarking(
  db: Db,
  site: string,
  code: string,
  marker: string,
  now: Date,
): Promise<'joined' | 'taken' | 'none'> {
  return await db.transaction().execute(async (tx) => {
    const row = await tx
      .selectFrom('marking')
      .select(['id', 'marker'])
      .where('site', '=', site)
      .where('code', '=', code)
      .where('begun_at', '>', oldest(now))
      .forUpdate()
      .executeTakeFirst();
    if (row === undefined) return 'none';
    if (row.marker !== null) return row.marker === marker ? 'joined' : 'taken';
    // A device that joins another run has left the one before.
    await tx.deleteFrom('marking').where('site', '=', site).where('marker', '=', marker).execute();
    await tx
      .updateTable('marking')
      .set({ marker, heard_at: now, turn: sql<number>`turn + 1` })
      .where('site', '=', site)
      .where('id', '=', row.id)
      .execute();
    return 'joined';
  });
}

/**
 * Keeps the whole list of a device that joined, unless a newer one is kept: sent again, or late, it changes nothing.
 * Answers the newest number that is kept, and when the cuff of the run under way went up; null where the marking is over.
 */
export async function keepMarks(
  db: Db,
  site: string,
  marker: string,
  { version, marks }: { readonly version: number; readonly marks: readonly SecondMark[] },
  now: Date,
): Promise<{ version: number; runAtMs: number | null } | null> {
  const mine = db
    .updateTable('marking')
    .where('site', '=', site)
    .where('marker', '=', marker)
    .where('begun_at', '>', oldest(now));
  await mine
    .set({ marks: JSON.stringify(marks), version, turn: sql<number>`turn + 1` })
    .where('version', '<', version)
    .execute();
  const row = await mine.set({ heard_at: now }).returning(['version', 'run_at_ms']).executeTakeFirst();
  return row === undefined ? null : { version: row.version, runAtMs: row.run_at_ms };
}

/**
 * Says when the cuff went up, by the clock of the place, or (null) that it is down again: one device marks run after run.
 * The minutes count anew from here. Answers whether the marking is still open.
 */
export async function sayRun(
  db: Db,
  site: string,
  id: string,
  runAtMs: number | null,
  now: Date,
): Promise<boolean> {
  const row = await db
    .updateTable('marking')
    .set({ run_at_ms: runAtMs, begun_at: now })
    .where('site', '=', site)
    .where('id', '=', id)
    .where('begun_at', '>', oldest(now))
    .returning('id')
    .executeTakeFirst();
  return row !== undefined;
}

/** A marking as it stands; null where it is over. */
export async function readMarking(db: Db, site: string, id: string, now: Date): Promise<MarkingState | null> {
  const row = await db
    .selectFrom('marking')
    .select(['turn', 'marker', 'marks', 'heard_at'])
    .where('site', '=', site)
    .where('id', '=', id)
    .where('begun_at', '>', oldest(now))
    .executeTakeFirst();
  if (row === undefined) return null;
  return {
    turn: row.turn,
    isJoined: row.marker !== null,
    heardSecondsAgo:
      row.heard_at === null ? null : Math.max(0, Math.round((now.getTime() - row.heard_at.getTime()) / 1000)),
    marks: row.marks as SecondMark[],
  };
}

/** Nobody marks any more: nothing of what was marked stays here. */
export async function endMarking(db: Db, site: string, id: string): Promise<void> {
  await db.deleteFrom('marking').where('site', '=', site).where('id', '=', id).execute();
}
