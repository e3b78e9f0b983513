export const BREATHING_KINDS = [
  'rest',
  'shallow',
  'fast',
  'deep-and-fast',
  'cheyne-stokes',
  'ataxic',
  'slow-shallow',
  'wheezing',
  'aware',
  'paced',
] as const;
export type BreathingKind = (typeof BREATHING_KINDS)[number];

/** How somebody breathes. For Cheyne-Stokes breathing the rate is that within a cluster. Source: physiology handbook 5. */
export type Breathing = {
  readonly kind: BreathingKind;
  readonly ratePerMinute: number;
  /** Length of a cycle of waxing, waning and pause; null where the kind has none. */
  readonly cycleSeconds: number | null;
};
