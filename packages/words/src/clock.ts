const MINUTES_OF_HOUR = 60;

/** Minutes from midnight as a clock of 24 hours shows them: 510 is `08:30`, the end of the day `24:00`. */
export function clock(minutes: number): string {
  const two = (whole: number) => String(whole).padStart(2, '0');
  return `${two(Math.floor(minutes / MINUTES_OF_HOUR))}:${two(minutes % MINUTES_OF_HOUR)}`;
}
