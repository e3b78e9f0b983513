/** The unit of a field that holds a time of day. */
const TIME_OF_DAY = 'minutes from midnight';
const MINUTES_OF_HOUR = 60;

export function isTimeOfDay(unit: string | null): boolean {
  return unit === TIME_OF_DAY;
}

/**
 * Minutes from midnight of a time as it is typed, `8:30`, `08.30`, `0830` or `8`; null where that is no time of day. Three
 * digits are none: `510` could be ten past five, or the 510 minutes that are half past eight.
 */
export function minutesOf(text: string): number | null {
  const [, hour, minute = '0'] =
    /^(\d{1,2}(?=[:.h]|$)|\d{2}(?=\d{2}$))(?:[:.h]?(\d{2}))?$/.exec(text.trim()) ?? [];
  if (hour === undefined || Number(hour) > 24 || Number(minute) >= MINUTES_OF_HOUR) return null;
  const minutes = Number(hour) * MINUTES_OF_HOUR + Number(minute);
  return minutes <= 24 * MINUTES_OF_HOUR ? minutes : null;
}
