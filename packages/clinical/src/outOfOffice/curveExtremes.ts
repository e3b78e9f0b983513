import { DAY_MINUTES } from './clock.js';
import { MINUTE_WAVES as WAVES, WAVES_OF_HOUR } from './dayWaves.js';

/** Highest and lowest point of a fitted curve on a grid of one minute: hour from local midnight, and value. */
export type CurveExtremes = {
  readonly highest: { readonly hour: number; readonly value: number };
  readonly lowest: { readonly hour: number; readonly value: number };
};

/** Beta and gamma of 24 hours, then of 12 hours; 0 where there is no second harmonic. */
export type WaveSizes = {
  readonly b1: number;
  readonly g1: number;
  readonly b2: number;
  readonly g2: number;
};

/** Minutes of a block whose middle says whether it is gone through; divides a day. Source: the fastest that was tried. */
const BLOCK = 16;
const REACH = BLOCK / 2;
const BLOCKS = DAY_MINUTES / BLOCK;
/** Angle that a wave of 24 hours goes in a minute. */
const TURN = (2 * Math.PI) / DAY_MINUTES;
/** More than rounding can leave between two ways to one number, beside the sizes of the waves. */
const ROUNDING = 1e-12;

/**
 * The extremes of `mesor + b1 cos + g1 sin + b2 cos + g2 sin` on the minutes of a day, the first of equal ones.
 *
 * From the middle of a block no curve goes further within it than its slope there times the way, and half of its greatest
 * curvature times the way squared (Taylor). A block that cannot reach an extreme by that is passed over: the answer is
 * that of all 1440 minutes.
 */
export function curveExtremes(mesor: number, { b1, g1, b2, g2 }: WaveSizes): CurveExtremes {
  const day = Math.sqrt(b1 * b1 + g1 * g1);
  const half = Math.sqrt(b2 * b2 + g2 * g2);
  if (half === 0 && day > 0) return extremesOfOne(mesor, b1, g1);
  const bend = ((REACH * TURN) ** 2 / 2) * (day + 4 * half) + ROUNDING * (day + half);
  let mostOfMiddles = Number.NEGATIVE_INFINITY;
  let leastOfMiddles = Number.POSITIVE_INFINITY;
  for (let block = 0, at = 0; block < BLOCKS; block++, at += WAVES_OF_HOUR) {
    const c1 = MIDDLES[at] as number;
    const s1 = MIDDLES[at + 1] as number;
    const c2 = MIDDLES[at + 2] as number;
    const s2 = MIDDLES[at + 3] as number;
    const wave = b1 * c1 + g1 * s1 + b2 * c2 + g2 * s2;
    const slope = TURN * (g1 * c1 - b1 * s1 + 2 * (g2 * c2 - b2 * s2));
    const reach = REACH * Math.abs(slope) + bend;
    MOST[block] = wave + reach;
    LEAST[block] = wave - reach;
    if (wave > mostOfMiddles) mostOfMiddles = wave;
    if (wave < leastOfMiddles) leastOfMiddles = wave;
  }
  let highest = Number.NEGATIVE_INFINITY;
  let lowest = Number.POSITIVE_INFINITY;
  let highestAt = 0;
  let lowestAt = 0;
  for (let block = 0; block < BLOCKS; block++) {
    if ((MOST[block] as number) < mostOfMiddles && (LEAST[block] as number) > leastOfMiddles) continue;
    for (let minute = block * BLOCK; minute < (block + 1) * BLOCK; minute++) {
      const at = minute * WAVES_OF_HOUR;
      const wave =
        b1 * (WAVES[at] as number) +
        g1 * (WAVES[at + 1] as number) +
        b2 * (WAVES[at + 2] as number) +
        g2 * (WAVES[at + 3] as number);
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

/** Of a wave of 24 hours alone. */
function extremesOfOne(mesor: number, b1: number, g1: number): CurveExtremes {
  const highestAt = minuteOfPeak(b1, g1);
  const lowestAt = minuteOfPeak(-b1, -g1);
  return {
    highest: { hour: highestAt / 60, value: mesor + waveOfOne(b1, g1, highestAt) },
    lowest: { hour: lowestAt / 60, value: mesor + waveOfOne(b1, g1, lowestAt) },
  };
}

/** The minute at which it is highest is one of those about its peak: any other is lower by more than rounding can leave. */
function minuteOfPeak(b1: number, g1: number): number {
  const nearest = Math.round(Math.atan2(g1, b1) / TURN) + DAY_MINUTES;
  let highest = Number.NEGATIVE_INFINITY;
  let highestAt = 0;
  for (let about = nearest - 1; about <= nearest + 1; about++) {
    const minute = about % DAY_MINUTES;
    const wave = waveOfOne(b1, g1, minute);
    if (wave < highest || (wave === highest && minute > highestAt)) continue;
    highest = wave;
    highestAt = minute;
  }
  return highestAt;
}

function waveOfOne(b1: number, g1: number, minute: number): number {
  const at = minute * WAVES_OF_HOUR;
  return b1 * (WAVES[at] as number) + g1 * (WAVES[at + 1] as number);
}

/** The waves of the middle of each block, side by side. */
const MIDDLES = new Float64Array(BLOCKS * WAVES_OF_HOUR);
for (let block = 0; block < BLOCKS; block++) {
  const from = (block * BLOCK + REACH) * WAVES_OF_HOUR;
  MIDDLES.set(WAVES.slice(from, from + WAVES_OF_HOUR), block * WAVES_OF_HOUR);
}

/** How high and how low each block can reach; written anew by each call, and here so that none has to make them. */
const MOST = new Float64Array(BLOCKS);
const LEAST = new Float64Array(BLOCKS);
