/** One breath: in, out, and the still end of it. Seconds of the visit. */
export type Breath = {
  readonly index: number;
  readonly startSeconds: number;
  /** To the next breath's start, any pause included. */
  readonly durationSeconds: number;
  readonly inspirationSeconds: number;
  /** Length of in and out without the pause that follows. */
  readonly movingSeconds: number;
  /** Beside the person's usual depth, 1. */
  readonly depth: number;
  readonly isSigh: boolean;
};
