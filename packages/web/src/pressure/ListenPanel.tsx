import type { RunPlace } from '@evenfall/record';
import { useEffect, useRef } from 'react';
import { useApp } from '../app/context.js';
import type { Round } from '../round/useRound.js';
import { ListenTop } from './ListenTop.js';
import { type Listening, lastTouchUndone, listened, listeningBroken, touched, touchesOf } from './marks.js';
import { withPressureAt } from './pressureSteps.js';
import { TouchArea } from './TouchArea.js';
import { useTouches } from './useTouches.js';

type ListenProps = { readonly round: Round; readonly place: RunPlace; readonly measuring: Listening };

/**
 * The cuff is let down and listened to: a touch anywhere marks a moment. Nothing sounds, nothing vibrates, and no number
 * stands here, since the eyes are on the gauge.
 */
export function ListenPanel({ round, place, measuring }: ListenProps) {
  const { words } = useApp();
  const touches = touchesOf(measuring);
  const change = (next: (listening: Listening) => Listening) =>
    round.change((draft) => {
      const now = draft.pressure.measuring;
      return now.at === 'listening' ? withPressureAt(draft, next(now)) : draft;
    });
  const touch = (atMs: number) => change((now) => touched(now, atMs));
  useTouches(touch);
  useBrokenOff(round);
  const count = touches.length;
  return (
    <div className="measure">
      <ListenTop round={round} place={place} firstAtMs={touches[0]?.atMs ?? null} />
      <TouchArea count={count} touch={touch} valve="moments.valve" />
      <p className="unseen" role="status">
        {words.sentence('moments.soFar', { touches: count })}
      </p>
      <div className="tap-buttons">
        <button
          type="button"
          className={`button button-large${count >= 3 ? ' button-first' : ''}`}
          onClick={() =>
            round.change((draft) => {
              const now = draft.pressure.measuring;
              return now.at === 'listening' ? withPressureAt(draft, listened(now)) : draft;
            })
          }
        >
          {words.sentence(count === 0 ? 'moments.untimed' : 'moments.readGauge')}
        </button>
        <button
          type="button"
          className="button button-large"
          aria-disabled={measuring.touchesMs.length === 0}
          onClick={() => change(lastTouchUndone)}
        >
          {words.sentence('moments.undo')}
        </button>
      </div>
    </div>
  );
}

/** A screen that is hidden or left while the cuff is let down: the times of this run are void. */
export function useBrokenOff({ change }: Round): void {
  const now = useRef(change);
  now.current = change;
  useEffect(() => {
    const breakOff = () =>
      now.current((draft) => {
        const { measuring } = draft.pressure;
        return measuring.at === 'listening' ? withPressureAt(draft, listeningBroken(measuring)) : draft;
      });
    const onHidden = () => {
      if (document.visibilityState === 'hidden') breakOff();
    };
    document.addEventListener('visibilitychange', onHidden);
    return () => {
      document.removeEventListener('visibilitychange', onHidden);
      breakOff();
    };
  }, []);
}
