import { type CountOf, median } from '@evenfall/clinical';
import type { BreathingKind, RhythmKind, Scenario } from '@evenfall/physiology';
import { COUNTING_FIGURES as F } from './figures.js';

/** Rhythms of which the beats do not come evenly. */
export const IRREGULAR_RHYTHMS: ReadonlySet<RhythmKind> = new Set([
  'ventricular-ectopics',
  'atrial-ectopics',
  'bigeminy',
  'trigeminy',
  'atrial-fibrillation',
  'wenckebach',
  'sinus-pauses',
]);

/** Breathing that comes in clusters, or without any order. */
const IRREGULAR_BREATHING: ReadonlySet<BreathingKind> = new Set(['cheyne-stokes', 'ataxic']);

/** Seconds on either side of a window that tell what the person has. */
export const ABOUT_SECONDS = 60;

export type RhythmFound = {
  /** What the person has, from the minutes about the window. */
  readonly ofPerson: 'regular' | 'irregular';
  /** What came in the window itself: a short one may look regular. */
  readonly inWindow: 'regular' | 'irregular';
};

/**
 * Whether beats or breaths at these seconds, in order, come evenly. A heart in sinus rhythm that quickens with each breath, and
 * the unequal breaths of somebody at rest, are regular. Every second beat of bigeminy that does not reach the wrist leaves
 * the others evenly spaced.
 *
 * @param window the seconds [from, to) that were counted
 */
export function rhythmOf(
  of: CountOf,
  { rhythm, breathing }: Pick<Scenario, 'rhythm' | 'breathing'>,
  seconds: readonly number[],
  [from, to]: readonly [from: number, to: number],
): RhythmFound {
  const can = of === 'pulse' ? IRREGULAR_RHYTHMS.has(rhythm.kind) : IRREGULAR_BREATHING.has(breathing.kind);
  const within = seconds.filter((one) => one >= from && one < to);
  const [first = to, last = from] = [within[0], within.at(-1)];
  const told = (is: boolean) => (can && is ? 'irregular' : 'regular');
  return {
    ofPerson: told(isUneven(seconds)),
    // A pause that a window cuts at its edge is seen as one, too.
    inWindow: told(isUneven(within, Math.max(first - from, to - last))),
  };
}

/** @param atLeast an interval of which only so much was seen */
function isUneven(seconds: readonly number[], atLeast = 0): boolean {
  const intervals = seconds.slice(1).map((one, k) => one - (seconds[k] as number));
  if (intervals.length < 2) return false;
  const middle = median(intervals) ?? 0;
  if (atLeast > (1 + F.unevenShare.value) * middle) return true;
  return intervals.some((one) => Math.abs(one - middle) > F.unevenShare.value * middle);
}
