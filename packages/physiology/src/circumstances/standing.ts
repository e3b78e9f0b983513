/** A level so many minutes after standing up: lying at 0, straight to that of the first minute, on to that of the third. */
export function standingAt(minutes: number, lying: number, one: number, three: number): number {
  if (minutes <= 0) return lying;
  if (minutes <= 1) return lying + (one - lying) * minutes;
  return minutes >= 3 ? three : one + ((three - one) * (minutes - 1)) / 2;
}
