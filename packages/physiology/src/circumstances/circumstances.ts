export const MEASURED_BY = ['known', 'nurse', 'doctor'] as const;
/** Who measures; `known` is somebody who alarms nobody. */
export type MeasuredBy = (typeof MEASURED_BY)[number];

/** Lying is none of them: what it does to a reading went both ways where it was looked at (bedside handbook 3, row 18). */
export const POSTURES = ['sitting', 'standing'] as const;
export type Posture = (typeof POSTURES)[number];

export const CHEST_PIECES = ['light', 'pressed-hard', 'under-cuff'] as const;
export type ChestPiece = (typeof CHEST_PIECES)[number];

/**
 * How a person was prepared and how it is measured: everything that is not the person and not the instrument.
 * Time 0 is when the observer begins; the person has then sat for `restMinutes`. `PROPER` has no fault.
 */
export type Circumstances = {
  readonly restMinutes: number;
  readonly measuredBy: MeasuredBy;
  /** Minutes before time 0 at which the observer came in. */
  readonly observerMinutes: number;
  /** Seconds of the visit at which a cuff was first pumped up; null: not before the run at hand. */
  readonly firstInflationSeconds: number | null;
  readonly posture: Posture;
  /** Minutes on the feet at time 0, while standing. */
  readonly standingMinutes: number;
  readonly arm: 'right' | 'left';
  readonly isTalking: boolean;
  readonly hasLegsCrossed: boolean;
  readonly hasBackUnsupported: boolean;
  readonly hasFullBladder: boolean;
  readonly hadCaffeine: boolean;
  readonly hadNicotine: boolean;
  readonly isCold: boolean;
  /** The middle of the cuff below the heart, cm; above is negative. */
  readonly armBelowHeartCm: number;
  readonly isArmUnsupported: boolean;
  readonly isCuffLoose: boolean;
  readonly isOverSleeve: boolean;
  /** A sleeve rolled up tightly above the cuff. */
  readonly hasTightSleeve: boolean;
  readonly chestPiece: ChestPiece;
  /** Distance of the chest piece from the artery, mm. */
  readonly chestPieceOffMm: number;
  /** Arm raised or fist clenched before pumping up: shortens a gap. */
  readonly wasArmRaised: boolean;
  /** Pumped up again without letting all the air out, or within seconds of a run. */
  readonly wasReinflated: boolean;
  /** Cold or unpractised fingers feel less. */
  readonly fingers: 'practised' | 'beginner';
  /** It was asked for quiet: the place is quieter than it was found. */
  readonly isQuieter: boolean;
};

/** How somebody may come to be measured, besides how they sit: what is only known by asking, looking and feeling. */
export const PREPARATIONS = [
  'hadCaffeine',
  'hadNicotine',
  'isCold',
  'hasTightSleeve',
  'isOverSleeve',
  'isCuffLoose',
] as const satisfies readonly (keyof Circumstances)[];
export type Preparation = Readonly<Record<(typeof PREPARATIONS)[number], boolean>>;

/** Everything as the textbook has it, at rest for good, by somebody who alarms nobody. */
export const PROPER: Circumstances = {
  restMinutes: 5,
  measuredBy: 'known',
  observerMinutes: 5,
  firstInflationSeconds: null,
  posture: 'sitting',
  standingMinutes: 0,
  arm: 'right',
  isTalking: false,
  hasLegsCrossed: false,
  hasBackUnsupported: false,
  hasFullBladder: false,
  hadCaffeine: false,
  hadNicotine: false,
  isCold: false,
  armBelowHeartCm: 0,
  isArmUnsupported: false,
  isCuffLoose: false,
  isOverSleeve: false,
  hasTightSleeve: false,
  chestPiece: 'light',
  chestPieceOffMm: 0,
  wasArmRaised: false,
  wasReinflated: false,
  fingers: 'practised',
  isQuieter: false,
};
