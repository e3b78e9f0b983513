/** What signing asks for, and what is left of a class: the values of a protocol's `signing` section. */
export type SigningRules = {
  /** A learner's round stays preliminary until somebody qualified countersigns it. */
  readonly countersignLearners: boolean;
  /** Rounds of a class are deleted at the end of its session, unless teacher and subject keep them. */
  readonly deleteClassAtEnd: boolean;
};

export const DEFAULT_SIGNING_RULES: SigningRules = { countersignLearners: true, deleteClassAtEnd: true };
