import type { Flag } from '../contract/flag.js';
import { meanHalfWidth } from '../statistics/meanUncertainty.js';
import { TAP_FIGURES } from './figures.js';
import type { RepairedTaps } from './repair.js';

const FEWEST = TAP_FIGURES.intervalsForRange.value;

export type RateInterval = {
  readonly lowPerMinute: number | null;
  readonly highPerMinute: number | null;
  readonly why: readonly Flag<'too-few-for-range'>[];
};

export function rateInterval(taps: RepairedTaps): RateInterval {
  const values: number[] = [];
  for (let i = 0; i < taps.beatsToNext.length; i++) {
    const beats = taps.beatsToNext[i] as number;
    const interval = (taps.seconds[i + 1] as number) - (taps.seconds[i] as number);
    for (let k = 0; k < beats; k++) values.push(interval / beats);
  }
  if (values.length < FEWEST) {
    const figures = { intervals: values.length, needs: FEWEST };
    return { lowPerMinute: null, highPerMinute: null, why: [{ code: 'too-few-for-range', figures }] };
  }
  const meanSeconds = ((taps.seconds.at(-1) as number) - (taps.seconds[0] as number)) / values.length;
  const perMinute = 60 / meanSeconds;
  const halfWidth = meanHalfWidth(
    values.map((value) => value / meanSeconds),
    0.95,
  );
  return {
    lowPerMinute: perMinute * Math.exp(-halfWidth),
    highPerMinute: perMinute * Math.exp(halfWidth),
    why: [],
  };
}
