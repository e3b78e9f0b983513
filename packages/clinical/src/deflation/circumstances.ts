/** What the cuff was inflated for before this run: an estimate by feel, or a reading. */
export type PreviousInflation = {
  readonly was: 'estimate' | 'reading';
  /** From its full release to the start of this inflation. */
  readonly secondsSinceRelease: number;
  /** Whether the next was asked for without a wait: a reading very low, or the person unwell. Absent or null where nobody said. */
  readonly isNextAtOnce?: boolean | null;
};

/** What else is known of a run. Null is "not known": it asks for nothing and promises nothing. */
export type RunCircumstances = {
  readonly rhythmFelt: 'regular' | 'irregular' | null;
  readonly previous: PreviousInflation | null;
};

export const UNKNOWN_RUN_CIRCUMSTANCES: RunCircumstances = { rhythmFelt: null, previous: null };
