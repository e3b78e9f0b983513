/** One beat of the heart as it reaches the upper arm. Times are seconds of the visit; pressures mmHg. */
export type Beat = {
  /** From 0 at the person's origin. */
  readonly index: number;
  /** The electrical beat. */
  readonly rSeconds: number;
  /** The foot of the pulse wave in the artery under the cuff. */
  readonly footSeconds: number;
  /** The interval before this beat. */
  readonly rrSeconds: number;
  /** What a perfect listener would get on this beat with the cuff let down infinitely slowly. */
  readonly systolic: number;
  readonly diastolic: number;
  /** In the artery itself. */
  readonly arterialSystolic: number;
  readonly arterialDiastolic: number;
  /** Strength of the stroke beside the usual one, 1. */
  readonly strokeFactor: number;
  readonly isPremature: boolean;
  /** Whether a practised finger feels it at the wrist with no cuff in the way. */
  readonly isFelt: boolean;
};
