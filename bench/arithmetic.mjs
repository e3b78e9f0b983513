// What a let-down costs of which every sound is worked out: the random numbers, sines and exponentials that the model asks for,
// each measured alone in the same run. Shared by the benches of let-downs and readings; nothing here judges. A reading by ear
// works out only the sounds that it hangs on, and may come closer to this or pass it.
import { cosineOfTurns, exp, keyOf, normalOf } from '../packages/physiology/dist/index.js';

const CALLS = 1_000_000;
const TIMES = 5;
let kept = 0;

/** Nanoseconds of this process's own processor time for one call, the best of some rounds. */
function nanoseconds(work) {
  let least = Number.POSITIVE_INFINITY;
  for (let time = 0; time <= TIMES; time++) {
    const before = process.cpuUsage().user;
    for (let i = 0; i < CALLS; i++) kept += work(i);
    // The first round warms up.
    if (time > 0) least = Math.min(least, ((process.cpuUsage().user - before) * 1000) / CALLS);
  }
  if (!Number.isFinite(kept)) throw new Error('the arithmetic went wrong');
  return least;
}

/**
 * Let-downs a second that the arithmetic alone would allow: of a beat two sines for its
 * interval; of a sound three random numbers (two pressures and a loudness), two sines and two exponentials more; of a run
 * four random numbers for each of its seven slow courses.
 */
export function arithmeticBound(beats, sounds) {
  const key = keyOf(1, 'beat');
  const normal = nanoseconds((i) => normalOf(key, i, 1));
  const power = nanoseconds((i) => exp(-(i % 100) / 20));
  const turn = nanoseconds((i) => cosineOfTurns(i / 77));
  const least = beats * 2 * turn + sounds * (3 * normal + 2 * turn + 2 * power) + 28 * normal;
  return { perSecond: 1e9 / least, normal, power, turn };
}

/** The bound in a line of a bench. */
export function boundLine({ perSecond, normal, turn, power }, got) {
  const each = [normal, turn, power].map((one) => one.toFixed(0)).join(', ');
  return `  random numbers, sines and exponentials alone (${each} ns) would allow ${perSecond.toFixed(0)} a second: ${(100 * (got / perSecond)).toFixed(0)} % of that`;
}
