const MONTHS_IN_A_YEAR = 12;

/** Years as the tables count them: 71 months are 5 years. */
export function completedYears(ageMonths: number): number {
  return Math.floor(ageMonths / MONTHS_IN_A_YEAR);
}

/** Years with their part, as a formula takes them. */
export function yearsOf(ageMonths: number): number {
  return ageMonths / MONTHS_IN_A_YEAR;
}

/** The youngest age in months of somebody of these completed years. */
export function monthsOf(completed: number): number {
  return completed * MONTHS_IN_A_YEAR;
}
