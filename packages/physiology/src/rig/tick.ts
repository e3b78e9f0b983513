/** The fixed step of a run: 5 ms. */
export const TICK_SECONDS = 0.005;
export const TICKS_PER_SECOND = 200;
