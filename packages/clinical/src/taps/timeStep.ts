/** Steps to which tap times may have been rounded, coarsest first. */
const STEPS_SECONDS = [0.1, 0.01, 0.001] as const;

/** Intervals of times as large as an epoch are off by up to a quarter of a microsecond. */
const NEAR_STEPS = 1e-3;

/** The step, in seconds, to which the times seem to have been rounded: 0.1, 0.01 or 0.001; 0 if to none of them. */
export function timeStepSeconds(seconds: readonly number[]): number {
  const first = seconds[0] ?? 0;
  for (const step of STEPS_SECONDS) {
    const isWhole = (time: number) => {
      const steps = (time - first) / step;
      return Math.abs(steps - Math.round(steps)) < NEAR_STEPS;
    };
    if (seconds.every(isWhole)) return step;
  }
  return 0;
}
