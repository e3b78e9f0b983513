import { lyingDue, ROUND_FIGURES } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { lainUntil } from './lying.js';
import { withLying, withLyingStopped } from './pressureSteps.js';
import { SinceClock } from './SinceClock.js';
import { type ClockProps, UprightClock } from './UprightClock.js';
import { WaitLine } from './WaitLine.js';

/** The clock since somebody lay down: begun by a touch, it counts up and says when they have lain long enough. */
export function LyingClock({
  round,
  isHere = false,
  isFirst = false,
  isDueLater = false,
}: ClockProps & { readonly isFirst?: boolean }) {
  const { words, clock } = useApp();
  const { lying = null, stoppedLying = null } = round.draft.pressure;
  const minutes = ROUND_FIGURES.lyingBeforeMinutes.value;
  return (
    <SinceClock
      since={lying}
      stopped={stoppedLying}
      until={(since, now) => lainUntil(since, now, clock.stamp())}
      isHere={isHere}
      isFirst={isFirst}
      text={{
        begin: words.sentence('postures.lyingBegin'),
        beginHint: words.sentence('postures.lyingBeginHint', { minutes }),
        lost: words.sentence('postures.lyingLost'),
        stop: words.sentence('pressure.uprightBack'),
        lasts: (seconds) => words.sentence('postures.lyingFor', { seconds }),
        putBack: (seconds) => words.sentence('postures.lyingPutBack', { seconds }),
      }}
      onSince={(since) => round.change((draft) => withLying(draft, since))}
      onStop={() => round.change(withLyingStopped)}
    >
      {(gone) => {
        if (isDueLater) return null;
        const seconds = Math.ceil(lyingDue(gone));
        const text =
          seconds === 0
            ? words.sentence('postures.lyingDueNow', { minutes })
            : words.sentence('postures.lyingDueIn', { minutes, seconds });
        return <WaitLine isOver={seconds === 0} text={text} />;
      }}
    </SinceClock>
  );
}

/** The clock of the posture that the person is in, where one was begun: to be read on every page of a round. */
export function PostureClock({ round }: Pick<ClockProps, 'round'>) {
  const { lying = null } = round.draft.pressure;
  return lying === null ? <UprightClock round={round} /> : <LyingClock round={round} />;
}
