import type { DiaryHandedContent } from '../content/diary.js';
import type { StoredEntry } from '../entry/entry.js';
import { gatherAmendments } from './amendmentTree.js';

/** A diary of a person: out, back (a series names it), or ended because it will not come back. */
export type ChartedDiary = DiaryHandedContent & {
  /** The entry that handed it out. */
  readonly entry: string;
  readonly state: 'out' | 'back' | 'ended';
  /** The series that it came back with. */
  readonly series: readonly string[];
  /** Why it will not come back; null unless it ended so. */
  readonly reason: string | null;
};

/** A diary that is out, with the day from which it is due back (`YYYY-MM-DD`, local). */
export type DueDiary = Pick<ChartedDiary, 'entry' | 'dueOn' | 'from' | 'days' | 'language'>;

/** The diaries of a person that were not handed out in error, the one that is due first first. */
export function chartDiaries(entries: readonly StoredEntry[]): ChartedDiary[] {
  if (!entries.some(({ kind }) => kind === 'diary-handed')) return [];
  const gathered = gatherAmendments(
    entries.filter(({ kind }) =>
      ['diary-handed', 'diary-ended', 'series', 'entered-in-error'].includes(kind),
    ),
  );
  return gathered
    .flatMap(({ original, current, story }): ChartedDiary[] => {
      const newest = current.at(-1);
      if (newest?.kind !== 'diary-handed') return [];
      const names = new Set(story.map(({ id }) => id));
      const series = gathered.flatMap((other) => {
        const standing = other.current.at(-1);
        const isOfThis =
          standing?.kind === 'series' && standing.content.diary !== null && names.has(standing.content.diary);
        return isOfThis ? [other.original.id] : [];
      });
      const ended = gathered
        .flatMap((other) => other.current)
        .filter((entry) => entry.kind === 'diary-ended')
        .find(({ content }) => names.has(content.diary));
      const state = series.length > 0 ? 'back' : ended === undefined ? 'out' : 'ended';
      const reason = state === 'ended' ? (ended?.content.reason ?? null) : null;
      return [{ ...newest.content, entry: original.id, state, series, reason }];
    })
    .sort((a, b) => (a.dueOn < b.dueOn ? -1 : a.dueOn > b.dueOn ? 1 : a.entry < b.entry ? -1 : 1));
}

/** The diaries that are out, the one that is due first first. */
export function diariesOut(entries: readonly StoredEntry[]): DueDiary[] {
  return chartDiaries(entries)
    .filter(({ state }) => state === 'out')
    .map(({ entry, dueOn, from, days, language }) => ({ entry, dueOn, from, days, language }));
}

/** The diaries that are due back on a day (`YYYY-MM-DD`, local), that day included. */
export function dueDiaries(entries: readonly StoredEntry[], today: string): DueDiary[] {
  return diariesOut(entries).filter(({ dueOn }) => dueOn <= today);
}
