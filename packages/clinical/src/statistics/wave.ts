/**
 * The strongest wave in a series: its frequency as a place among the {@link cosinePowers} from 1 (half turns in
 * the whole series), and its power, that of the place and both its neighbours.
 */
export type Wave = { readonly place: number; readonly power: number };

/** The places taken up by a wave lie this far on each side of it. */
export const WAVE_REACH = 1;

/** Slower than two whole turns in the series, a wave cannot be told from wandering. */
const SLOWEST_PLACE = 4;

/**
 * The strongest wave with a period from `shortest` to `longest` values, of a series of `n` with all its n - 1
 * powers; null if the series is too short for any. Whether it stands out is for the caller to judge.
 */
export function strongestWave(
  powers: Float64Array,
  n: number,
  { shortest, longest }: { shortest: number; longest: number },
): Wave | null {
  const first = Math.max(SLOWEST_PLACE, Math.ceil((2 * n) / longest));
  const last = Math.min(n - 1 - WAVE_REACH, Math.floor((2 * n) / shortest));
  let wave: Wave | null = null;
  for (let place = first; place <= last; place++) {
    const power = (powers[place - 2] as number) + (powers[place - 1] as number) + (powers[place] as number);
    if (wave === null || power > wave.power) wave = { place, power };
  }
  return wave;
}

/**
 * The variance that a wave of unknown phase leaves in the mean of `n` values, because its last turn is not
 * whole: a^2 / (4 n^2 sin^2(w / 2)) for amplitude a = root of (2 power / n) and w radians a value.
 */
export function waveVarianceOfMean({ place, power }: Wave, n: number): number {
  return power / (2 * n ** 3 * Math.sin((Math.PI * place) / n / 2) ** 2);
}
