/** Two sounds belong together when no more than one beat between them is silent: in bigeminy only every second one taps. */
export const TOGETHER_BEATS = 2;

/** The first sound that another one soon follows, in order of time; where there is none, the first. An early tap alone is not it. */
export function firstOfTwo<Sound extends { readonly beat: number }>(
  heard: readonly Sound[],
): Sound | undefined {
  return heard.find((one, i) => (heard[i + 1]?.beat ?? Infinity) - one.beat <= TOGETHER_BEATS) ?? heard[0];
}
