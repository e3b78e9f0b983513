import { useApp } from '../app/context.js';

/** Before anybody signs in: that signed rounds of a closed account still wait on this device. Nobody is named. */
export function ClosedWaiting() {
  const { words, waitingElsewhere } = useApp();
  const rounds = waitingElsewhere(null)
    .filter(({ isClosed }) => isClosed)
    .reduce((sum, one) => sum + one.rounds, 0);
  return rounds === 0 ? null : (
    <p className="notice">{words.sentence('signIn.closedWaitingHere', { rounds })}</p>
  );
}
