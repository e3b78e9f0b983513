const DAY_MS = 86_400_000;

/** The date, `YYYY-MM-DD`, of a day counted from 1970-01-01. */
export function dateOfDay(day: number): string {
  return new Date(day * DAY_MS).toISOString().slice(0, 10);
}
