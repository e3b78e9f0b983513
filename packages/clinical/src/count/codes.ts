/** What a reader of a count must know. */
export type CountFlagCode =
  | 'very-slow'
  | 'very-fast'
  | 'convention-shifts-rate'
  | 'range-assumes-regular'
  | 'count-apex';

/** Why another window is asked for, or why there is no number. */
export type CountReasonCode =
  | 'none-counted'
  | 'shorter-than-offered'
  | 'fast-for-window'
  | 'slow-on-short-count'
  | 'fast-on-short-count'
  | 'breaths-full-minute'
  | 'irregular'
  | 'irregular-known'
  | 'weak'
  | 'first-set'
  | 'young'
  | 'apical'
  | 'heart-rate-drug'
  | 'disagrees'
  | 'interrupted';
