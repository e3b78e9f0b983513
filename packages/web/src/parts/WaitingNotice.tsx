import { useState } from 'react';
import { useApp, useKept } from '../app/context.js';
import { closingGivenUp, takenBack, whatWaits } from '../round/waiting.js';

const REFUSED = {
  round: 'app.waitingRefused',
  series: 'app.waitingSeriesRefused',
  closing: 'app.closedRefused',
} as const;

/** Says which signed rounds are still only on this device, and lets a hand send them or take one back. */
export function WaitingNotice() {
  const { store, words, sending } = useApp();
  const waiting = useKept(({ kept }) => kept.waiting);
  const [isSending, setSending] = useState(false);
  if (waiting.length === 0) return null;
  const refused = waiting.filter((one) => one.refused !== null);
  const pending = waiting.filter((one) => one.refused === null && one.tries > 0);
  const rounds = pending.filter((one) => whatWaits(one) === 'round').length;
  const series = pending.filter((one) => whatWaits(one) === 'series').length;

  const send = async () => {
    setSending(true);
    await sending.now();
    setSending(false);
  };
  return (
    <div className="notices not-printed" role="status">
      {pending.length > 0 ? (
        <div className="notice">
          {rounds === 0 ? null : <p>{words.sentence('app.waiting', { rounds })}</p>}
          {series === 0 ? null : <p>{words.sentence('app.waitingSeries', { series })}</p>}
          {pending.length === rounds + series ? null : <p>{words.sentence('app.waitingClosed')}</p>}
          <p className="soft small">{words.sentence('app.waitingAgain')}</p>
          <button type="button" className="button" onClick={() => void send()} aria-disabled={isSending}>
            {words.sentence(isSending ? 'app.sending' : 'app.sendNow')}
          </button>
        </div>
      ) : null}
      {refused.map((one) => (
        <div key={one.round} className="notice">
          <p>
            {words.sentence(REFUSED[whatWaits(one)])} {one.refused}
          </p>
          <button
            type="button"
            className="button"
            onClick={() =>
              store.change((state) => ({
                ...state,
                kept:
                  whatWaits(one) === 'closing'
                    ? closingGivenUp(state.kept, one.round)
                    : takenBack(state.kept, one.round),
              }))
            }
          >
            {words.sentence(whatWaits(one) === 'closing' ? 'app.closeAnew' : 'app.takeBack')}
          </button>
        </div>
      ))}
    </div>
  );
}
