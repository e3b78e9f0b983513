import type { PersonRow } from '@evenfall/api';

/** A diary that is due back, whose it is, from which day it was kept and since which it is due (`YYYY-MM-DD`, local). */
export type DiaryDue = Pick<PersonRow, 'id' | 'identity'> & PersonRow['latest']['diaries'][number];

/** The diaries that are due back on a day, that day included, each for itself; the one that is longest due first. */
export function diariesDue(rows: readonly PersonRow[], today: string): DiaryDue[] {
  return rows
    .flatMap(({ id, identity, latest: { diaries } }): DiaryDue[] =>
      diaries.filter(({ dueOn }) => dueOn <= today).map((diary) => ({ id, identity, ...diary })),
    )
    .sort((a, b) => (a.dueOn < b.dueOn ? -1 : a.dueOn > b.dueOn ? 1 : a.entry < b.entry ? -1 : 1));
}
