import {
  type ActNowRules,
  isNoneToCome,
  isToLieDown,
  postureLaidDown,
  type RoundReading,
  type StandingDue,
  uprightAsk,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { roundFactsIn } from '../round/facts.js';
import { readingsSoFar } from '../round/standing.js';
import type { Round } from '../round/useRound.js';
import { withStandingStopped, withUpright, withUprightStopped } from './pressureSteps.js';
import { SinceClock } from './SinceClock.js';
import { uprightUntil } from './upright.js';
import { WaitLine } from './WaitLine.js';

export type ClockProps = {
  readonly round: Round;
  /** Whether it can be begun and taken back here; else it is only read. */
  readonly isHere?: boolean;
  /** Whether the arm has to rest for longer than the posture has to last: then that is said, and not when this is due. */
  readonly isDueLater?: boolean;
};

/** As the clock of any posture; `isHeld` where something speaks against standing up, which then does not come first. */
type UprightProps = ClockProps & { readonly isHeld?: boolean };

/** The clock since somebody stood up: begun by a touch, it counts up and says which reading is due. */
export function UprightClock({ round, isHere = false, isHeld = false, isDueLater = false }: UprightProps) {
  const { words, clock, program } = useApp();
  const { upright = null, stoppedUpright = null } = round.draft.pressure;
  const readings = readingsSoFar(round.draft, { ...round, program });
  const { ageMonths } = round.facts;
  const { actNow } = round.inForce.roundRules;
  const isToLie = isToLieDown(readings, ageMonths, actNow);
  return (
    <SinceClock
      since={upright}
      stopped={stoppedUpright}
      until={(since, now) => uprightUntil(since, now, clock.stamp())}
      isHere={isHere}
      isFirst={!isToLie && !isHeld}
      isOver={(seconds) => isNoneToCome(uprightAsk(seconds, readings, ageMonths, actNow))}
      text={{
        begin: words.sentence('pressure.uprightBegin'),
        beginHint: words.sentence(isToLie ? 'postures.toLieDown' : 'pressure.uprightBeginHint'),
        lost: words.sentence('pressure.uprightLost'),
        stop: words.sentence('pressure.uprightBack'),
        lasts: (seconds) => words.sentence('pressure.uprightFor', { seconds }),
        putBack: (seconds) => words.sentence('pressure.uprightPutBack', { seconds }),
      }}
      onSince={(since) => round.change((draft) => withUpright(draft, since))}
      onStop={() => round.change(withUprightStopped)}
    >
      {(seconds) => (
        <>
          {isDueLater && !isToLie ? null : (
            <DueLine seconds={seconds} readings={readings} ageMonths={ageMonths} actNow={actNow} />
          )}
          {isHere ? <FeelsFaint round={round} /> : null}
        </>
      )}
    </SinceClock>
  );
}

/** Whoever feels faint on their feet lies down, before any reading there: that they are unwell is kept, and the cuff waits for nothing. */
function FeelsFaint({ round }: { readonly round: Round }) {
  const { words } = useApp();
  const [, go] = useLocation();
  const { draft, facts, inForce } = round;
  return (
    <div className="buttons buttons-middle">
      <button
        type="button"
        className="button"
        onClick={() => {
          const posture = postureLaidDown(roundFactsIn(draft, facts), inForce.roundRules);
          round.change((was) => ({ ...withStandingStopped(was, posture), unwell: true }));
          go(`/people/${draft.person}/round`);
        }}
      >
        {words.sentence('postures.feelsFaint')}
      </button>
    </div>
  );
}

type DueProps = {
  readonly seconds: number;
  readonly readings: readonly RoundReading[];
  readonly ageMonths: number | null;
  readonly actNow: ActNowRules;
};

/** Which reading on the feet is due, and in how long, and which was missed; that one is due now is announced. */
function DueLine({ seconds, readings, ageMonths, actNow }: DueProps) {
  const { words } = useApp();
  const { due, missed, isLate, isToLieDown: isToLie } = uprightAsk(seconds, readings, ageMonths, actNow);
  if (isToLie) return <p className="small">{words.sentence('postures.toLieDown')}</p>;
  if (missed !== null && isLate)
    return <WaitLine isOver text={words.sentence('postures.missedNow', { minutes: missed })} />;
  return (
    <>
      {missed === null ? null : (
        <p className="small">{words.sentence('postures.missed', { minutes: missed })}</p>
      )}
      <WaitLine isOver={due === null || due.inSeconds === 0} text={dueText(due, words)} />
    </>
  );
}

function dueText(due: StandingDue | null, { sentence }: Words): string {
  if (due === null) return sentence('pressure.uprightNoneDue');
  const { minutes, inSeconds } = due;
  return inSeconds === 0
    ? sentence('pressure.uprightDueNow', { minutes })
    : sentence('pressure.uprightDueIn', { minutes, seconds: Math.ceil(inSeconds) });
}
