import { standingDue } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import type { Round } from '../round/useRound.js';
import { useWakeLock } from '../round/useWakeLock.js';
import { withUpright, withUprightStopped } from './pressureSteps.js';
import { uprightUntil } from './upright.js';
import { useNow } from './useNow.js';
import { WaitLine } from './WaitLine.js';

type UprightProps = {
  readonly round: Round;
  /** Whether it can be begun and taken back here; else it is only read. */
  readonly isHere?: boolean;
};

/** The clock since somebody stood up: begun by a touch, it counts up and says which reading is due. */
export function UprightClock({ round, isHere = false }: UprightProps) {
  const { words, clock, session } = useApp();
  const { upright = null, stoppedUpright = null } = round.draft.pressure;
  const now = useNow(upright !== null || stoppedUpright !== null);
  useWakeLock(upright !== null);
  if (upright === null) {
    const stopped = uprightUntil(stoppedUpright, now, clock.stamp());
    return isHere ? (
      <div className="upright">
        <button
          type="button"
          className="button button-first button-large"
          onClick={({ timeStamp }) => {
            const at = clock.stamp();
            round.change((draft) => withUpright(draft, { since: { session, atMs: timeStamp }, at }));
          }}
        >
          {words.sentence('pressure.uprightBegin')}
        </button>
        <p className="soft small">{words.sentence('pressure.uprightBeginHint')}</p>
        {stopped === null ? null : (
          <div className="buttons buttons-middle">
            <button
              type="button"
              className="button button-quiet"
              onClick={() => round.change((draft) => withUpright(draft, stoppedUpright))}
            >
              {words.sentence('pressure.uprightPutBack', { seconds: Math.floor(stopped.seconds) })}
            </button>
          </div>
        )}
      </div>
    ) : null;
  }
  const stood = uprightUntil(upright, now, clock.stamp());
  return (
    <div className="upright">
      {stood === null ? (
        <p className="small">{words.sentence('pressure.uprightLost')}</p>
      ) : (
        <>
          <p className="upright-time" role="timer">
            {words.sentence('pressure.uprightFor', { seconds: Math.floor(stood.seconds) })}
          </p>
          <DueLine round={round} seconds={stood.seconds} />
        </>
      )}
      {stood === null || stood.byWallClock === null ? null : (
        <p className="soft small">
          {words.sentence(stood.byWallClock === 'sleep' ? 'pressure.uprightSlept' : 'pressure.uprightByWall')}
        </p>
      )}
      {isHere ? (
        <div className="buttons buttons-middle">
          <button
            type="button"
            className="button button-quiet"
            onClick={() => round.change(withUprightStopped)}
          >
            {words.sentence('pressure.uprightBack')}
          </button>
        </div>
      ) : null}
    </div>
  );
}

/** Which reading on the feet is due, and in how long; that it is due now is announced. */
function DueLine({ round, seconds }: { readonly round: Round; readonly seconds: number }) {
  const { words } = useApp();
  const taken = round.draft.pressure.values.flatMap(({ uprightMinutes }) => uprightMinutes ?? []);
  const due = standingDue(seconds, taken);
  if (due === null) return <WaitLine isOver text={words.sentence('pressure.uprightNoneDue')} />;
  const { minutes, inSeconds } = due;
  return (
    <WaitLine
      isOver={inSeconds === 0}
      text={
        inSeconds === 0
          ? words.sentence('pressure.uprightDueNow', { minutes })
          : words.sentence('pressure.uprightDueIn', { minutes, seconds: Math.ceil(inSeconds) })
      }
    />
  );
}
