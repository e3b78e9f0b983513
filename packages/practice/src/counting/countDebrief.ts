import {
  type CountResult,
  type CountRules,
  countResult,
  DEFAULT_COUNT_RULES,
  UNKNOWN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import { beats, breaths, heartSounds, truth } from '@evenfall/physiology';
import type { Counted, CountNoticed, Exercise } from '../exercise/exercise.js';
import { circumstancesAt, type Replay } from '../exercise/replay.js';
import { countOf } from './countOf.js';
import { COUNTING_FIGURES as F } from './figures.js';
import { ABOUT_SECONDS, type RhythmFound, rhythmOf } from './rhythmOf.js';

/** A count beside what was true of the minute about its window; per minute. `error` is counted minus true. */
export type CountDebrief = {
  readonly startSeconds: number;
  readonly windowSeconds: number;
  readonly result: CountResult;
  readonly truePerMinute: number;
  /** Beats of the heart, where not each of them reaches the wrist; null of breaths. At the apex the same as `truePerMinute`. */
  readonly heartPerMinute: number | null;
  /** Beats to be felt at the wrist in that same minute; null of breaths. */
  readonly wristPerMinute: number | null;
  readonly error: number;
  readonly n: number;
  /** What there was to count in that very window, by the same convention. */
  readonly there: number;
  /** Whether the count is right: no more than one off, for when the clock was started. */
  readonly isRight: boolean;
  /** Each beat or breath from a little before the window to a little after it, seconds of the visit. */
  readonly events: readonly number[];
  readonly rhythm: RhythmFound;
  /** What was noticed with it; null: nothing was said. */
  readonly noticed: CountNoticed | null;
  /** The window that this very person asks for, seconds, and why; null: the one that was counted will do. */
  readonly better: Pick<CountResult, 'nextWindowSeconds' | 'why'>;
};

/** A window may be begun anywhere between two beats: one more or less is nobody's fault. Source: docs/conventions.md section 5. */
const ONE_OFF = 1;
/** Events just past the end of a window are looked at too, for a clock that starts on a beat. */
const BEYOND_SECONDS = 15;
/** So much before and after the window is drawn, seconds. */
const ROOM_SECONDS = 4;

/**
 * What came of a count. A pulse is held against what a practised finger feels at the wrist, or, of one counted at the apex,
 * against the first sounds of the heart.
 */
export function countDebrief(
  { startSeconds, count, noticed }: Counted,
  exercise: Pick<Exercise, 'circumstances' | 'actions'>,
  { person, firstInflationSeconds }: Pick<Replay, 'person' | 'firstInflationSeconds'>,
  rules: CountRules = DEFAULT_COUNT_RULES,
  site: 'wrist' | 'apex' = 'wrist',
): CountDebrief {
  const { windowSeconds, of } = count;
  const middle = startSeconds + windowSeconds / 2;
  const circumstances = circumstancesAt(exercise, middle, firstInflationSeconds);
  const isApex = site === 'apex';
  const known = isApex ? { ...UNKNOWN_CIRCUMSTANCES, site: 'apical' as const } : UNKNOWN_CIRCUMSTANCES;
  const result = countResult(count, known, rules);
  const then = truth(person, circumstances, middle);
  const isPulse = of === 'pulse';
  const truePerMinute = isApex ? then.pulsePerMinute : isPulse ? then.wristPerMinute : then.breathsPerMinute;
  const end = startSeconds + windowSeconds;
  const [from, to] = [Math.max(0, startSeconds - ABOUT_SECONDS), end + ABOUT_SECONDS];
  const about = isApex
    ? heartSounds(person, circumstances, from, to)
        .filter(({ heart }) => heart === 'first')
        .map(({ atSeconds }) => atSeconds)
    : isPulse
      ? beats(person, circumstances, from, to)
          .filter(({ isFelt }) => isFelt)
          .map(({ footSeconds }) => footSeconds)
      : breaths(person, circumstances, from, to).map((one) => one.startSeconds);
  const events = about.filter((one) => one >= startSeconds && one < end + BEYOND_SECONDS);
  const there = countOf(of, events, startSeconds, windowSeconds, count)?.count.n ?? 0;
  const rhythm = rhythmOf(of, person.scenario, about, [startSeconds, end]);
  // Slow or fast breaths are counted for a full minute, however even they are.
  const isFarOut =
    truePerMinute < F.slowBreathsPerMinute.value || truePerMinute > F.fastBreathsPerMinute.value;
  const rhythmFelt = !isPulse && isFarOut ? null : rhythm.ofPerson;
  const { nextWindowSeconds, why } = countResult(count, { ...known, rhythmFelt }, rules);
  return {
    startSeconds,
    windowSeconds,
    result,
    truePerMinute,
    heartPerMinute: isPulse ? then.pulsePerMinute : null,
    wristPerMinute: isPulse ? then.wristPerMinute : null,
    error: result.perMinute - truePerMinute,
    n: count.n,
    there,
    isRight: Math.abs(count.n - there) <= ONE_OFF,
    events: about.filter((one) => one >= startSeconds - ROOM_SECONDS && one < end + ROOM_SECONDS),
    rhythm,
    noticed: noticed ?? null,
    better: { nextWindowSeconds, why },
  };
}
