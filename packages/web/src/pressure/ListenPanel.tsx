import { inflateTo } from '@evenfall/clinical';
import type { RunPlace } from '@evenfall/record';
import { useEffect, useRef } from 'react';
import { useApp } from '../app/context.js';
import { Dial } from '../parts/Dial.js';
import type { Round } from '../round/useRound.js';
import {
  askedOf,
  type Listening,
  lastTouchUndone,
  listened,
  listeningBroken,
  touched,
  touchesOf,
} from './marks.js';
import { knownAt } from './pressureDraft.js';
import { withPressureAt } from './pressureSteps.js';
import { useTouches } from './useTouches.js';

type ListenProps = { readonly round: Round; readonly place: RunPlace; readonly measuring: Listening };

/** What the next touch is of, by how many there were. */
const NEXT = ['moments.valve', 'moments.first', 'moments.last', 'moments.more'] as const;

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
  const { mmHg } = inflateTo(knownAt(round.draft.pressure, place), round.inForce.runRules.inflation);
  const count = touches.length;
  const says = NEXT[Math.min(count, NEXT.length - 1)] ?? 'moments.more';
  return (
    <div className="measure">
      <div className="listen-top">
        {count === 0 ? (
          <p className="pump-to">
            {mmHg === null
              ? words.sentence('pressure.pumpUnknown')
              : words.sentence('pressure.pumpTo', { mmHg })}
          </p>
        ) : (
          <Dial startedAtMs={touches[0]?.atMs ?? null} windowSeconds={null} />
        )}
      </div>
      <button
        type="button"
        className="tap-area touch-area"
        onClick={(event) => {
          // The press of an assistive tool, which arrives as a click with neither key nor finger.
          if (event.detail === 0) touch(event.timeStamp);
        }}
      >
        <span className="tap-area-says">{words.sentence(says)}</span>
        <span className="small">
          {count === 0
            ? words.sentence('moments.how')
            : askedOf(count)
                .map((what) => words.title('mark', what))
                .join(' · ')}
        </span>
      </button>
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
