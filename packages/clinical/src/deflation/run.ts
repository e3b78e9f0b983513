/** How a pressure was found: by ear, by feel, or off the display of a device. */
export const METHODS = ['auscultation', 'palpation', 'device'] as const;
export type Method = (typeof METHODS)[number];

/** What may be marked while the cuff is let down. A run by device uses the first and the last sound for its two numbers. */
export const MOMENTS = ['first sound', 'muffled', 'last sound', 'pulse back'] as const;
export type MomentOf = (typeof MOMENTS)[number];

/** An instant of a run: what was heard or felt, the gauge then in mmHg, and the time from any zero if it is known. */
export type Moment = {
  readonly what: MomentOf;
  readonly mmHg: number;
  readonly atSeconds: number | null;
};

/** The pulse under the finger: where it was lost while pumping up, where it came back. Null is not known. */
export type Palpated = { readonly lostMmHg: number | null; readonly backMmHg: number | null };

/** The highest pressure of a run and when the letting down began. */
export type Peak = { readonly mmHg: number; readonly atSeconds: number | null };

/**
 * One inflation and deflation of the cuff, as it was done. Only `parseRun` makes one from outside: its moments
 * stand in the order in which they came, their times rise, and the last sound lies below the first.
 *
 * `palpated` is the earlier estimate in auscultation, and the run's own loss of the pulse in palpation.
 * `reinflated` says that the cuff was pumped up again part-way.
 */
export type Run = {
  readonly method: Method;
  readonly gaugeStepMmHg: number;
  readonly pulsePerMinute: number | null;
  readonly palpated: Palpated;
  readonly peak: Peak | null;
  readonly reinflated: boolean;
  readonly moments: readonly Moment[];
};

/** The version of the rules of this folder, as kept beside each value they make. */
export const RUN_RULE = 'run-1';
