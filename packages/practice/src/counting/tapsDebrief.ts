import { median } from '@evenfall/clinical';
import { beats, breaths, heartSounds, type Person, truth } from '@evenfall/physiology';
import type { CountedSign, Exercise, Tapped } from '../exercise/exercise.js';
import { circumstancesAt, type Replay } from '../exercise/replay.js';

/** Taps beside what there was to be tapped between the first of them and the last. Times are seconds of the visit. */
export type TapsDebrief = {
  readonly startSeconds: number;
  readonly windowSeconds: number;
  /** Each tap; `isExtra`: one more for a beat or breath that had its tap already. */
  readonly taps: readonly { readonly atSeconds: number; readonly isExtra: boolean }[];
  /** Each beat or breath from a little before the first tap to a little after the last. */
  readonly events: readonly number[];
  /** Those of them that were to be tapped: from that of the first tap to that of the last. */
  readonly wanted: readonly number[];
  /** Those of them that have no tap. */
  readonly missed: readonly number[];
  /** What one tap for each of them gives, a minute; null: fewer than two. */
  readonly herePerMinute: number | null;
  /** Over the minute about it, at the wrist, at the apex or of the chest. */
  readonly truePerMinute: number;
  /** Beats of the heart and beats to be felt at the wrist in that same minute; null of breaths. */
  readonly heartPerMinute: number | null;
  readonly wristPerMinute: number | null;
};

/** So much before and after the taps is drawn, seconds. */
const ROOM_SECONDS = 4;
/** A tap may come before what it is of, by so much of the interval: hands keep time, and then anticipate. */
const EARLY_SHARE = 0.25;

/** What came of taps. Each is of the beat or breath that it follows, or which it comes just before. */
export function tapsDebrief(
  of: CountedSign,
  { startSeconds, seconds }: Tapped,
  exercise: Pick<Exercise, 'circumstances' | 'actions'>,
  { person, firstInflationSeconds }: Pick<Replay, 'person' | 'firstInflationSeconds'>,
): TapsDebrief {
  const windowSeconds = seconds.at(-1) ?? 0;
  const middle = startSeconds + windowSeconds / 2;
  const circumstances = circumstancesAt(exercise, middle, firstInflationSeconds);
  const from = Math.max(0, startSeconds - ROOM_SECONDS);
  const events = eventsOf(of, person, circumstances, from, startSeconds + windowSeconds + ROOM_SECONDS);
  const usual = median(events.slice(1).map((at, k) => at - (events[k] as number))) ?? 0;
  const ownerOf = (at: number) =>
    events.findLastIndex((one, k) => one - EARLY_SHARE * ((events[k + 1] ?? one + usual) - one) <= at);
  const owners = seconds.map((at) => ownerOf(startSeconds + at));
  // A tap before anything came, at the very beginning of a visit, is of nothing.
  const known = owners.filter((one) => one >= 0);
  const [first = 0, last = -1] = [known[0], known.at(-1)];
  const wanted = events.slice(first, last + 1);
  const span = (wanted.at(-1) ?? 0) - (wanted[0] ?? 0);
  const then = truth(person, circumstances, middle);
  return {
    startSeconds,
    windowSeconds,
    taps: seconds.map((at, k) => ({
      atSeconds: startSeconds + at,
      isExtra: owners[k] === -1 || owners.indexOf(owners[k] as number) !== k,
    })),
    events,
    wanted,
    missed: wanted.filter((_, k) => !owners.includes(first + k)),
    herePerMinute: wanted.length < 2 ? null : (60 * (wanted.length - 1)) / span,
    truePerMinute:
      of === 'apex' ? then.pulsePerMinute : of === 'pulse' ? then.wristPerMinute : then.breathsPerMinute,
    heartPerMinute: of === 'breaths' ? null : then.pulsePerMinute,
    wristPerMinute: of === 'breaths' ? null : then.wristPerMinute,
  };
}

function eventsOf(
  of: CountedSign,
  person: Person,
  circumstances: Exercise['circumstances'],
  from: number,
  to: number,
): number[] {
  switch (of) {
    case 'apex':
      return heartSounds(person, circumstances, from, to)
        .filter(({ heart }) => heart === 'first')
        .map(({ atSeconds }) => atSeconds);
    case 'pulse':
      return beats(person, circumstances, from, to)
        .filter(({ isFelt }) => isFelt)
        .map(({ footSeconds }) => footSeconds);
    case 'breaths':
      return breaths(person, circumstances, from, to).map((one) => one.startSeconds);
  }
}
