import { mean } from '../statistics/mean.js';
import { HOUR_MS } from './clock.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import { inTimeOrder, type SeriesReading } from './seriesReading.js';

/**
 * Rises around waking, in mmHg; each later minus earlier, so that a rise is positive. Null where its readings are not
 * there. `troughAtEdge` says that the lowest reading is the first or last of the sleep, so that two make its mean.
 */
export type Surge = {
  /** Two hours after waking minus the three readings about the lowest of the sleep (Kario 2003). */
  readonly sleepTrough: number | null;
  /** Two hours after waking minus the two hours before (Sheppard 2015). */
  readonly preWaking: number | null;
  /** Two hours before bed minus the trough. */
  readonly eveningFall: number | null;
  readonly troughAtEdge: boolean;
};

/**
 * Surges of systolic pressure about the main sleep. `bedMs` and `wakeMs` are instants from the person's own diary: by the clock alone
 * nothing of this is computed. Source: out-of-office handbook 10.
 */
export function morningSurge(readings: readonly SeriesReading[], bedMs: number, wakeMs: number): Surge {
  const beside = F.surgeHours.value * HOUR_MS;
  const around = {
    after: [] as number[],
    before: [] as number[],
    evening: [] as number[],
    asleep: [] as number[],
  };
  const inOrder = inTimeOrder(readings);
  for (let k = 0; k < inOrder.length; k++) {
    const { atMs, systolic } = inOrder[k] as SeriesReading;
    if (systolic === null) continue;
    if (atMs >= wakeMs && atMs < wakeMs + beside) around.after.push(systolic);
    if (atMs >= wakeMs - beside && atMs < wakeMs) around.before.push(systolic);
    if (atMs >= bedMs - beside && atMs < bedMs) around.evening.push(systolic);
    if (atMs >= bedMs && atMs < wakeMs) around.asleep.push(systolic);
  }
  const [after, before, evening] = [mean(around.after), mean(around.before), mean(around.evening)];
  const trough = troughOf(around.asleep);
  const minus = (a: number | null, b: number | null) => (a === null || b === null ? null : a - b);
  return {
    sleepTrough: minus(after, trough.mmHg),
    preWaking: minus(after, before),
    eveningFall: minus(evening, trough.mmHg),
    troughAtEdge: trough.atEdge,
  };
}

/** The mean of the lowest value and its neighbours; of the first where several are lowest. */
function troughOf(asleep: readonly number[]): { mmHg: number | null; atEdge: boolean } {
  if (asleep.length === 0) return { mmHg: null, atEdge: false };
  const at = asleep.indexOf(asleep.reduce((a, b) => Math.min(a, b)));
  const around = asleep.slice(Math.max(0, at - 1), at + 2);
  return { mmHg: mean(around), atEdge: at === 0 || at === asleep.length - 1 };
}
