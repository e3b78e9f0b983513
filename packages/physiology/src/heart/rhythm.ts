export const RHYTHM_KINDS = [
  'sinus',
  'ventricular-ectopics',
  'atrial-ectopics',
  'bigeminy',
  'trigeminy',
  'atrial-fibrillation',
  'heart-block',
  'wenckebach',
  'sinus-pauses',
  'alternans',
] as const;
export type RhythmKind = (typeof RHYTHM_KINDS)[number];

/** How much a sinus rhythm varies: the rows of physiology handbook 2.1, two that hardly vary, and one whose intervals know nothing of each other. */
export const VARIATIONS = [
  '25-34',
  '35-44',
  '45-54',
  '55-64',
  '65-74',
  '80-plus',
  'athlete',
  'failure',
  'fixed-fast',
  'independent',
  'none',
] as const;
export type Variation = (typeof VARIATIONS)[number];

/** The rhythm of a heart. What does not belong to its kind is null. */
export type Rhythm = {
  readonly kind: RhythmKind;
  /** Of the sinus node, or of the ventricles where the kind has no sinus rhythm. */
  readonly ratePerMinute: number;
  readonly variation: Variation;
  /** Premature beats in a minute. */
  readonly ectopicsPerMinute: number | null;
  /** Interval before a premature beat as a share of the sinus interval; null is drawn for each. */
  readonly coupling: number | null;
  /** Heard systolic of the weak beats of bigeminy; null follows from the coupling. */
  readonly weakSystolic: number | null;
  /** Difference between strong and weak beats of alternans. */
  readonly alternansMmHg: number | null;
};
