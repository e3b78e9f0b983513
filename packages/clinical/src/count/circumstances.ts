/** Where a pulse is felt or heard. Source: bedside handbook 1.1. */
export const PULSE_SITES = [
  'radial',
  'brachial',
  'carotid',
  'apical',
  'temporal',
  'femoral',
  'popliteal',
  'posterior-tibial',
  'dorsalis-pedis',
  'ulnar',
] as const;
export type PulseSite = (typeof PULSE_SITES)[number];

/** What else is known of a count and of the person. Null is "not known": it asks for nothing and promises nothing. */
export type Circumstances = {
  readonly rhythmFelt: 'regular' | 'irregular' | null;
  readonly strength: 'weak' | 'normal' | 'strong' | null;
  /** Whether this is the first set of signs ever taken on the person. */
  readonly firstOnPerson: boolean | null;
  readonly ageMonths: number | null;
  readonly site: PulseSite | null;
  /** Before or after a drug that acts on heart rate, by the local list. */
  readonly heartRateDrug: boolean | null;
  /** The previous entry, in the same unit. */
  readonly previousPerMinute: number | null;
  /** What a device shows, in the same unit; absent or null where none was looked at. It is kept with no entry. */
  readonly devicePerMinute?: number | null;
};

export const UNKNOWN_CIRCUMSTANCES: Circumstances = {
  rhythmFelt: null,
  strength: null,
  firstOnPerson: null,
  ageMonths: null,
  site: null,
  heartRateDrug: null,
  previousPerMinute: null,
};
