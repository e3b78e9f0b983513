import { DAY_HOURS, DAY_MINUTES } from './clock.js';

/** Waves of an hour: cosine and sine of 24 hours, then of 12 hours. */
export const WAVES_OF_HOUR = 4;

/** The waves of every minute of a day, one minute after the other. */
export const MINUTE_WAVES: Readonly<Float64Array> = minuteWaves();

/** What rounding leaves of a whole minute in hours. */
const NEGLIGIBLE_MINUTES = 1e-9;

/** Writes the waves of an hour (of any day) into a list from a place on; those of whole minutes, as nearly all times are, are known. */
export function fillWaves(into: Float64Array, from: number, hour: number): void {
  const minute = hour * 60;
  const whole = Math.round(minute);
  if (Math.abs(minute - whole) >= NEGLIGIBLE_MINUTES) {
    computeWaves(into, from, hour);
    return;
  }
  const at = (((whole % DAY_MINUTES) + DAY_MINUTES) % DAY_MINUTES) * WAVES_OF_HOUR;
  for (let k = 0; k < WAVES_OF_HOUR; k++) into[from + k] = MINUTE_WAVES[at + k] as number;
}

function computeWaves(into: Float64Array, from: number, hour: number): void {
  for (let j = 0; 2 * j < WAVES_OF_HOUR; j++) {
    const angle = (2 * Math.PI * (j + 1) * hour) / DAY_HOURS;
    into[from + 2 * j] = Math.cos(angle);
    into[from + 2 * j + 1] = Math.sin(angle);
  }
}

function minuteWaves(): Float64Array {
  const waves = new Float64Array(DAY_MINUTES * WAVES_OF_HOUR);
  for (let minute = 0; minute < DAY_MINUTES; minute++) {
    computeWaves(waves, minute * WAVES_OF_HOUR, minute / 60);
  }
  return waves;
}
