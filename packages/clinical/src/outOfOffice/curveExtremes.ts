import { DAY_MINUTES } from './clock.js';
import { MINUTE_WAVES as WAVES, WAVES_OF_HOUR } from './dayWaves.js';

/** Highest and lowest point of a fitted curve on a grid of one minute: hour from local midnight, and value. */
export type CurveExtremes = {
  readonly highest: { readonly hour: number; readonly value: number };
  readonly lowest: { readonly hour: number; readonly value: number };
};

/** Beta and gamma of 24 hours, then of 12 hours; 0 where there is no second harmonic. */
export type WaveSizes = readonly [b1: number, g1: number, b2: number, g2: number];

/** Minutes of a block whose middle says whether it is gone through; divides a day. Source: the fastest that was tried. */
const BLOCK = 16;
const REACH = BLOCK / 2;
/** More than rounding can leave between two ways to one number, beside the sizes of the waves. */
const ROUNDING = 1e-12;

/**
 * The extremes of `mesor + b1 cos + g1 sin + b2 cos + g2 sin` on the minutes of a day, the first of equal ones.
 *
 * No curve is steeper than its amplitudes times their frequencies, so that a block of minutes whose middle lies further
 * from an extreme than that allows cannot hold it and is passed over: the answer is that of all 1440 minutes.
 */
export function curveExtremes(mesor: number, sizes: WaveSizes): CurveExtremes {
  const [b1, g1, b2, g2] = sizes;
  const [day, half] = [Math.hypot(b1, g1), Math.hypot(b2, g2)];
  const most = REACH * ((2 * Math.PI) / DAY_MINUTES) * (day + 2 * half) + ROUNDING * (day + half);
  let highest = Number.NEGATIVE_INFINITY;
  let lowest = Number.POSITIVE_INFINITY;
  for (let middle = REACH; middle < DAY_MINUTES; middle += BLOCK) {
    const wave = waveAt(middle, b1, g1, b2, g2);
    MIDDLES[(middle - REACH) / BLOCK] = wave;
    if (wave > highest) highest = wave;
    if (wave < lowest) lowest = wave;
  }
  const [leastHigh, mostLow] = [highest - most, lowest + most];
  highest = Number.NEGATIVE_INFINITY;
  lowest = Number.POSITIVE_INFINITY;
  let highestAt = 0;
  let lowestAt = 0;
  for (let block = 0; block < MIDDLES.length; block++) {
    const middle = MIDDLES[block] as number;
    if (middle < leastHigh && middle > mostLow) continue;
    for (let minute = block * BLOCK; minute < (block + 1) * BLOCK; minute++) {
      const wave = waveAt(minute, b1, g1, b2, g2);
      if (wave > highest) {
        highest = wave;
        highestAt = minute;
      }
      if (wave < lowest) {
        lowest = wave;
        lowestAt = minute;
      }
    }
  }
  return {
    highest: { hour: highestAt / 60, value: mesor + highest },
    lowest: { hour: lowestAt / 60, value: mesor + lowest },
  };
}

/** Written anew by each call; here so that none has to make it. */
const MIDDLES = new Float64Array(DAY_MINUTES / BLOCK);

function waveAt(minute: number, b1: number, g1: number, b2: number, g2: number): number {
  const at = minute * WAVES_OF_HOUR;
  return (
    b1 * (WAVES[at] as number) +
    g1 * (WAVES[at + 1] as number) +
    b2 * (WAVES[at + 2] as number) +
    g2 * (WAVES[at + 3] as number)
  );
}
