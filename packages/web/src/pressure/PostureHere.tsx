import type { RunPlace } from '@evenfall/record';
import type { RoundDraft } from '../round/draft.js';
import type { Round } from '../round/useRound.js';
import { LyingClock } from './LyingClock.js';
import { isLying } from './pressureDraft.js';
import { UprightClock } from './UprightClock.js';

type PostureProps = {
  readonly round: Round;
  readonly place: RunPlace;
  /** Whether something speaks against standing up: then it does not come first. */
  readonly isHeld?: boolean;
};

/** The clock of the posture in which the next reading is taken, with what begins and stops it. */
export function PostureHere({ round, place, isHeld = false }: PostureProps) {
  if (place.posture === 'stand') return <UprightClock round={round} isHere isHeld={isHeld} />;
  const { lying = null, values } = round.draft.pressure;
  // Who had lain at a reading lies on: only the first one waits for it.
  if (!isLying(place) || (lying === null && values.some((one) => isLying(one.place)))) return null;
  return <LyingClock round={round} isHere isFirst={isToBegin(round.draft, place)} />;
}

/**
 * Whether the minutes in a posture are begun before the cuff goes up: of standing always, of lying where it is the rest
 * before the standing ones. Elsewhere somebody may have lain in bed all day.
 */
export function isToBegin({ pressure, wanted }: RoundDraft, place: RunPlace): boolean {
  const { upright = null, lying = null, values } = pressure;
  if (place.posture === 'stand') return upright === null;
  const isBaseline = wanted.includes('lying-and-standing') && !values.some((one) => isLying(one.place));
  return isLying(place) && isBaseline && lying === null;
}
