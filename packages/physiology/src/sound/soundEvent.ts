export type Phase = 1 | 2 | 3 | 4;

/**
 * One sound at the chest piece, with all that a synthesiser needs to make it. Times are seconds of the visit, exact
 * (not on the tick); levels are dB over a normal listener's threshold in a quiet room.
 */
export type SoundEvent = {
  readonly atSeconds: number;
  /** Index of the beat that made it. */
  readonly beat: number;
  /** Pressure in the cuff at that instant. */
  readonly cuffMmHg: number;
  readonly phase: Phase;
  readonly levelDb: number;
  /** Centre frequency of the tap or thud, this beat's shift included, Hz. */
  readonly centreHz: number;
  /** Quality of the band about it. */
  readonly quality: number;
  readonly durationMs: number;
  /** Level of the click on top of the tap, beside it in dB; null: none. */
  readonly clickDb: number | null;
  /** Level and length of the swish after the tap; null: none. */
  readonly swish: { readonly levelDb: number; readonly durationMs: number } | null;
  /** Phase IV or below the diastolic: low-passed at 120 Hz. */
  readonly isMuffled: boolean;
  /** Loud crack of a collapsing pulse. */
  readonly isPistolShot: boolean;
};

/** One pulse under the finger at the wrist. */
export type FeltPulse = {
  readonly atSeconds: number;
  readonly beat: number;
  /** Beside the person's usual pulse at an open wrist, 1. */
  readonly strength: number;
  /** Stronger than the finger's threshold. One that is not is listed too, for pictures. */
  readonly isFelt: boolean;
};
