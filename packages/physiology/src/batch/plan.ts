/** A stretch of letting down at one rate, until the cuff is at `toMmHg`. */
export type Stretch = { readonly mmHgPerSecond: number; readonly toMmHg: number };

/** One inflation and deflation as a plan: at `startSeconds` the cuff is at the peak and begins to fall. */
export type LetDownPlan = {
  readonly startSeconds: number;
  readonly peakMmHg: number;
  /** One rate for the whole way, or stretches from the top down; the last one goes on to 0. Over 0. */
  readonly fall: number | readonly Stretch[];
  /** Sounds under this are not heard, dB over a normal listener's threshold in a quiet room. */
  readonly thresholdDb: number;
  /** Which inflation of the visit this is, from 0: in some people sounds go on to the end in one and not in the next. Left out: 0. */
  readonly run?: number;
};
