import { type Refusal, refusal } from '@evenfall/clinical';
import {
  type ClassIdentity,
  type ClassSessionContent,
  classSessionGoneAt,
  type Entry,
  LONGEST_CLASS_SESSION_HOURS,
} from '@evenfall/record';
import { type Kysely, sql } from 'kysely';
import type { Tables } from '../database/schema.js';
import { entryOf } from './rows.js';
import { type Incoming, type Taken, takeEntries } from './takeEntries.js';

/** A day on which the clocks go back has an hour more, and a session begun with it may last until its end. */
const MOST_HOURS_AHEAD = LONGEST_CLASS_SESSION_HOURS + 1;

/** A class session that is open. Instants RFC 3339. */
export type OpenSession = {
  readonly id: string;
  readonly title: string;
  readonly agent: string;
  readonly begunAt: string;
  readonly endsBy: string;
  readonly isOverdue: boolean;
  readonly goneAt: string;
  readonly persons: number;
  readonly rounds: number;
};

/** The sessions that were begun and not ended, oldest first. */
export async function openSessions(db: Kysely<Tables>, site: string, now: Date): Promise<OpenSession[]> {
  const rows = await db
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('kind', 'in', ['class-session', 'class-session-ended'])
    .where('session', 'is not', null)
    .orderBy('recorded_at')
    .orderBy('id')
    .execute();
  const ended = new Set(
    rows.filter(({ kind }) => kind === 'class-session-ended').map(({ session }) => session),
  );
  const begun = rows.filter(({ kind, session }) => kind === 'class-session' && !ended.has(session));
  const counts = await countsOf(db, site);
  return begun.map((row) => {
    const { title, endsBy } = (entryOf(row) as Entry).content as ClassSessionContent;
    const count = counts.get(row.id) ?? { persons: 0, rounds: 0 };
    return {
      id: row.id,
      title,
      agent: row.agent,
      begunAt: row.recorded_at.toISOString(),
      endsBy,
      isOverdue: Date.parse(endsBy) <= now.getTime(),
      goneAt: classSessionGoneAt(endsBy),
      ...count,
    };
  });
}

async function countsOf(db: Kysely<Tables>, site: string) {
  const rows = await db
    .selectFrom('entry')
    .select(['session'])
    .select(sql<number>`count(distinct person)::int`.as('persons'))
    .select(sql<number>`count(distinct round)::int`.as('rounds'))
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('session', 'is not', null)
    .groupBy('session')
    .execute();
  return new Map(rows.map(({ session, persons, rounds }) => [session, { persons, rounds }]));
}

/** An open session with its people; null where none is open under that id. */
export async function readSession(db: Kysely<Tables>, site: string, id: string, now: Date) {
  const session = (await openSessions(db, site, now)).find((one) => one.id === id);
  if (session === undefined) return null;
  const rows = await db
    .selectFrom('entry')
    .innerJoin('identity', (join) =>
      join
        .onRef('identity.site', '=', 'entry.site')
        .onRef('identity.book', '=', 'entry.book')
        .onRef('identity.person', '=', 'entry.person'),
    )
    .select(['entry.person', 'identity.content'])
    .select(sql<number>`count(distinct entry.round)::int`.as('rounds'))
    .where('entry.site', '=', site)
    .where('entry.book', '=', 'class')
    .where('entry.session', '=', id)
    .groupBy(['entry.person', 'identity.content'])
    .orderBy(sql`lower(identity.content ->> 'pseudonym')`)
    .execute();
  const persons = rows.map(({ person, content, rounds }) => ({
    id: person as string,
    classIdentity: content as ClassIdentity,
    rounds,
  }));
  return { session, persons };
}

/**
 * Begins a session: the entry's id is the session's. It is over within a day by this server's clock, so that nothing
 * lingers. Safe to send again; one that was ended meanwhile is then begun anew, with nobody in it.
 */
export async function beginSession(
  db: Kysely<Tables>,
  site: string,
  incoming: Incoming,
  program: string,
  now: Date,
): Promise<Taken> {
  const { entry } = incoming;
  const refusals = ofKind(entry, 'class-session', '/entry');
  if (entry.kind === 'class-session' && !(await isKnownSession(db, site, entry.id)))
    refusals.push(...notAhead(entry.content.endsBy, now));
  if (refusals.length > 0) return { outcome: 'refused', refusals };
  return await takeEntries(db, site, [incoming], program);
}

/** Whether a session is kept under an id: one that is open, or an ended one of which something was kept. */
export async function isKnownSession(db: Kysely<Tables>, site: string, id: string): Promise<boolean> {
  const row = await db
    .selectFrom('entry')
    .select('id')
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('kind', '=', 'class-session')
    .where('id', '=', id)
    .executeTakeFirst();
  return row !== undefined;
}

function notAhead(endsBy: string, now: Date): Refusal[] {
  const hoursAhead = (Date.parse(endsBy) - now.getTime()) / 3_600_000;
  if (hoursAhead > 0 && hoursAhead <= MOST_HOURS_AHEAD) return [];
  const figures = { hoursAhead: MOST_HOURS_AHEAD };
  return [refusal('/entry/content/endsBy', 'out-of-range', 'end-ahead', endsBy, { figures })];
}

/** Refused where an entry is of another kind than its route takes. */
export function ofKind({ kind }: Entry, wanted: Entry['kind'], at: string): Refusal[] {
  return kind === wanted ? [] : [refusal(`${at}/kind`, 'contradicts', 'choice', kind, { choices: [wanted] })];
}

/** Refused where an entry is of another session than the address names. */
export function ofSession({ session }: Entry, wanted: string, at: string): Refusal[] {
  return session === wanted ? [] : [refusal(`${at}/session`, 'contradicts', 'same-session', session)];
}
