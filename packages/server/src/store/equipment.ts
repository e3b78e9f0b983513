import { EQUIPMENT_KINDS, type GaugeReading, readingsWith } from '@evenfall/record';
import { type Kysely, sql } from 'kysely';
import type { Tables } from '../database/schema.js';
import { newestIdentity } from './persons.js';
import { frameOf, type ReadRows, readRows } from './rows.js';

/** The book in which equipment is kept: beside the charts. */
const BOOK = 'care';

/** Everything that was ever said of the place's equipment, in order of recording. */
export async function listEquipment(db: Kysely<Tables>, site: string): Promise<ReadRows> {
  const rows = await db
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', BOOK)
    .where('person', 'is', null)
    .where('kind', 'in', [...EQUIPMENT_KINDS, 'entered-in-error'])
    .orderBy('recorded_at')
    .orderBy('id')
    .execute();
  return readRows(rows);
}

/** Everything that was ever said of gauges, as it was sent, in order of recording: what they are, their logs, their ends. */
export async function gaugeFrames(db: Kysely<Tables>, site: string, gauges: ReadonlySet<string>) {
  if (gauges.size === 0) return [];
  const rows = await db
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', BOOK)
    .where('person', 'is', null)
    .where('kind', 'in', [...EQUIPMENT_KINDS, 'entered-in-error'])
    .orderBy('recorded_at')
    .orderBy('id')
    .execute();
  const about = new Set(gauges);
  return rows.flatMap((row) => {
    const content = row.content as { gauge?: string; equipment?: string };
    const named = [row.id, row.amends, content.gauge, content.equipment];
    if (!named.some((id) => id != null && about.has(id))) return [];
    about.add(row.id);
    return [{ frame: frameOf(row), recordedAt: row.recorded_at.toISOString() }];
  });
}

/** Whether a gauge is known here. */
export async function isGauge(db: Kysely<Tables>, site: string, gauge: string): Promise<boolean> {
  const row = await db
    .selectFrom('entry')
    .select('content')
    .where('site', '=', site)
    .where('book', '=', BOOK)
    .where('id', '=', gauge)
    .where('kind', '=', 'equipment')
    .where('amends', 'is', null)
    .executeTakeFirst();
  return (row?.content as { what?: string } | undefined)?.what === 'gauge';
}

/**
 * The pressures that were read from a gauge, as they stand, in order of reading, and who they are of. Every entry of a
 * round that ever named the gauge is looked at, since an amendment may name another.
 */
export async function readingsOfGauge(db: Kysely<Tables>, site: string, gauge: string) {
  const naming = db
    .selectFrom('entry')
    .select('round')
    .where('site', '=', site)
    .where('book', '=', BOOK)
    .where('kind', '=', 'run')
    .where(sql<string>`content -> 'evidence' ->> 'gauge'`, '=', gauge);
  const rows = await db
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', BOOK)
    .where('kind', 'in', ['run', 'entered-in-error'])
    .where('person', 'is not', null)
    .where((is) => is.or([is('round', 'in', naming), is('kind', '=', 'entered-in-error')]))
    .execute();
  const { entries, unreadable } = readRows(rows);
  const readings = readingsWith(gauge, entries);
  return { readings, persons: await personsIn(db, site, readings), unreadable };
}

/** Who readings are of; a null identity was erased. */
async function personsIn(db: Kysely<Tables>, site: string, readings: readonly GaugeReading[]) {
  const persons = [];
  for (const id of new Set(readings.map(({ person }) => person)))
    persons.push({ id, identity: await newestIdentity(db, { site, book: BOOK, person: id }) });
  return persons;
}
