import type { ExerciseRow } from '@evenfall/api';
import type { StoredEntry } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { readableIn, readRows } from './rows.js';

/** The book of practice: no chart, ever. */
const BOOK = 'simulated';

type KeptExercise = Extract<StoredEntry, { kind: 'exercise' }>;

/** How many are listed at once: each is read whole. */
const PAGE = 200;

/**
 * What was practised, newest first, without the action logs.
 * @param agent whose alone; null for everybody's
 * @param before the last of the page before; absent for the first page
 * @returns null where there is no such last one
 */
export async function listExercises(
  db: Kysely<Tables>,
  site: string,
  agent: string | null,
  before?: string,
  most = PAGE,
): Promise<{
  readonly exercises: readonly ExerciseRow[];
  readonly unreadable: number;
  readonly next: string | null;
} | null> {
  const all = exercisesOf(db, site, agent).orderBy('recorded_at', 'desc').orderBy('id', 'desc');
  const last = exercisesOf(db, site, agent).where('id', '=', before ?? '');
  if (before !== undefined && (await last.executeTakeFirst()) === undefined) return null;
  const older =
    before === undefined
      ? all
      : all.where(({ eb, refTuple }) =>
          eb(refTuple('recorded_at', 'id'), '<', last.clearSelect().select(['recorded_at', 'id']) as never),
        );
  const rows = await older.limit(most + 1).execute();
  const { entries, unreadable } = readRows(rows.slice(0, most));
  const next = rows.length > most ? (rows[most - 1]?.id ?? null) : null;
  return { exercises: entries.filter(isExercise).map(rowOfExercise), unreadable, next };
}

/** One exercise; null where there is none, or it is another agent's. */
export async function findExercise(
  db: Kysely<Tables>,
  site: string,
  id: string,
  agent: string | null,
): Promise<KeptExercise | null> {
  const found = readableIn(await exercisesOf(db, site, agent).where('id', '=', id).executeTakeFirst());
  return found !== undefined && isExercise(found) ? found : null;
}

function exercisesOf(db: Kysely<Tables>, site: string, agent: string | null) {
  const all = db
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', BOOK)
    .where('kind', '=', 'exercise');
  return agent === null ? all : all.where('agent', '=', agent);
}

function isExercise(entry: StoredEntry): entry is KeptExercise {
  return entry.kind === 'exercise';
}

function rowOfExercise({ id, agent, measuredAt, content }: KeptExercise): ExerciseRow {
  const { scenario, seed, seconds, entered, evidence } = content;
  return {
    id,
    agent,
    measuredAt: measuredAt.at,
    scenario: scenario.id,
    title: scenario.title,
    seed,
    seconds,
    systolic: entered.systolic,
    diastolic: entered.diastolic,
    pulsePerMinute: entered.pulsePerMinute,
    apexPerMinute: entered.apexPerMinute ?? null,
    breathsPerMinute: entered.breathsPerMinute,
    temperatureC: entered.temperatureC ?? null,
    wasShown: evidence.wasShown,
  };
}
