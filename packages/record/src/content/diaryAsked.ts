import type { DiaryHandedContent } from './diary.js';

/** What a protocol's rules of readings at home ask of a diary that begins on a day: how long, how often, and back when. */
export function diaryAsked(
  { daysAsked, readingsInSitting }: { readonly daysAsked: number; readonly readingsInSitting: number },
  from: string,
): Pick<DiaryHandedContent, 'days' | 'readingsInSitting' | 'from' | 'dueOn'> {
  const last = new Date(`${from}T00:00:00Z`);
  // The last evening is measured too: it can come back on the day after.
  last.setUTCDate(last.getUTCDate() + daysAsked);
  return {
    days: daysAsked,
    readingsInSitting,
    from,
    dueOn: last.toISOString().slice(0, 'YYYY-MM-DD'.length),
  };
}
