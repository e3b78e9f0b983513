/** What else is known of a sign and of the person. Null is "not known": it asks for nothing and promises nothing. */
export type SignCircumstances = {
  readonly ageMonths: number | null;
  /** The pulse felt in the same round, per minute. */
  readonly feltPulsePerMinute: number | null;
  /** Minutes since a hot or cold drink or a smoke. */
  readonly minutesSinceDrinkOrSmoke: number | null;
};

export const UNKNOWN_SIGN_CIRCUMSTANCES: SignCircumstances = {
  ageMonths: null,
  feltPulsePerMinute: null,
  minutesSinceDrinkOrSmoke: null,
};
