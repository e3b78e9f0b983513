import type { PersonRow } from '@evenfall/api';

/** Somebody whose diary is due back, and since which day (`YYYY-MM-DD`, local). */
export type DiaryDue = Pick<PersonRow, 'id' | 'identity'> & { readonly dueOn: string };

/** The people whose diary is due back on a day, that day included; who has had it longest first. */
export function diariesDue(rows: readonly PersonRow[], today: string): DiaryDue[] {
  return rows
    .flatMap(({ id, identity, latest: { diary } }): DiaryDue[] =>
      diary === null || diary.dueOn > today ? [] : [{ id, identity, dueOn: diary.dueOn }],
    )
    .sort((a, b) => (a.dueOn < b.dueOn ? -1 : a.dueOn > b.dueOn ? 1 : a.id < b.id ? -1 : 1));
}
