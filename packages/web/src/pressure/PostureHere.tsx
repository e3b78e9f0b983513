import type { RunPlace } from '@evenfall/record';
import type { Round } from '../round/useRound.js';
import { LyingClock } from './LyingClock.js';
import { isToBegin } from './postureWait.js';
import { isLying } from './pressureDraft.js';
import { UprightClock } from './UprightClock.js';

type PostureProps = {
  readonly round: Round;
  readonly place: RunPlace;
  /** Whether something speaks against standing up: then it does not come first. */
  readonly isHeld?: boolean;
  /** Whether the reading is asked for at once: then nothing here asks for minutes of lying first. */
  readonly isAtOnce?: boolean;
  /** As of `UprightClock`. */
  readonly isDueLater?: boolean;
};

/** The clock of the posture in which the next reading is taken, with what begins and stops it. */
export function PostureHere({
  round,
  place,
  isHeld = false,
  isAtOnce = false,
  isDueLater = false,
}: PostureProps) {
  if (place.posture === 'stand')
    return <UprightClock round={round} isHere isHeld={isHeld} isDueLater={isDueLater} />;
  const { lying = null, values } = round.draft.pressure;
  // Who had lain at a reading lies on: only the first one waits for it, and none that is taken at once.
  if (!isLying(place) || (lying === null && (isAtOnce || values.some((one) => isLying(one.place)))))
    return null;
  return (
    <LyingClock
      round={round}
      isHere
      isFirst={!isAtOnce && isToBegin(round.draft, place)}
      isDueLater={isDueLater}
    />
  );
}
