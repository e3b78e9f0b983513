import { LONGEST_CLASS_SESSION_HOURS, type Stamp } from '@evenfall/record';

const LONGEST_TITLE = 200;

export type SessionWrong = Readonly<Partial<{ title: 'nameMissing' | 'nameLong'; endsBy: 'endsByWrong' }>>;

/** The end of today, as the date control has it: 24:00 is the next day's 00:00. */
export function endOfDay(today: string): string {
  const next = new Date(`${today}T00:00:00Z`);
  next.setUTCDate(next.getUTCDate() + 1);
  return `${next.toISOString().slice(0, 10)}T00:00`;
}

/**
 * Reads what a session is called and by when it is over.
 *
 * @param endsBy a local time as the date control gives it, read by `stampOf`
 * @param now the local time
 */
export function readSession(
  typed: { readonly title: string; readonly endsBy: string },
  { now, stampOf }: { readonly now: Stamp; readonly stampOf: (typed: string) => Stamp | null },
): {
  readonly session: { readonly title: string; readonly endsBy: string } | null;
  readonly wrong: SessionWrong;
} {
  const title = typed.title.trim();
  const ends = stampOf(typed.endsBy);
  const hours = ends === null ? null : (Date.parse(ends.at) - Date.parse(now.at)) / 3_600_000;
  const wrong: { -readonly [K in keyof SessionWrong]: SessionWrong[K] } = {};
  if (title === '') wrong.title = 'nameMissing';
  if (title.length > LONGEST_TITLE) wrong.title = 'nameLong';
  // A day on which the clocks go back has 25 hours: its end is still "today".
  const isToday = typed.endsBy === endOfDay(now.at.slice(0, 10));
  if (hours === null || hours <= 0 || (hours > LONGEST_CLASS_SESSION_HOURS && !isToday))
    wrong.endsBy = 'endsByWrong';
  if (Object.keys(wrong).length > 0 || ends === null) return { session: null, wrong };
  return { session: { title, endsBy: ends.at }, wrong };
}
