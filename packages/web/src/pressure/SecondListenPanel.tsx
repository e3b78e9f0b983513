import type { RunPlace } from '@evenfall/record';
import { useEffect, useRef } from 'react';
import { useApp } from '../app/context.js';
import type { Round } from '../round/useRound.js';
import type { Second } from '../second/useSecond.js';
import { ListenPanel, useBrokenOff } from './ListenPanel.js';
import { ListenTop } from './ListenTop.js';
import { askedOf, type Listening, listened, takenOver, touchesOf, withSecond } from './marks.js';
import { withPressureAt } from './pressureSteps.js';

type SecondListenProps = {
  readonly round: Round;
  readonly place: RunPlace;
  readonly measuring: Listening;
  readonly second: Second;
};

/**
 * The cuff is let down while a second person marks on another device: what has come so far, and the way to go on without
 * them. Once it was taken over, touches here mark.
 */
export function SecondListenPanel({ round, place, measuring, second }: SecondListenProps) {
  const touches = second.is === 'open' ? second.touches : null;
  useBrokenOff(round);
  const change = useRef(round.change);
  change.current = round.change;
  useEffect(() => {
    if (touches === null) return;
    change.current((draft) => {
      const now = draft.pressure.measuring;
      if (now.at !== 'listening') return draft;
      const next = withSecond(now, touches);
      return next === now ? draft : withPressureAt(draft, next);
    });
  }, [touches]);
  return measuring.second?.takenOverAtMs === null ? (
    <Watching round={round} place={place} measuring={measuring} second={second} />
  ) : (
    <ListenPanel round={round} place={place} measuring={measuring} />
  );
}

/** Nothing to touch but the way on: the eyes are on the gauge, and the marks are made elsewhere. */
function Watching({ round, place, measuring, second }: SecondListenProps) {
  const { words, clock } = useApp();
  const touches = touchesOf(measuring);
  const count = touches.length;
  const change = (next: (now: Listening) => ReturnType<typeof listened> | Listening) =>
    round.change((draft) => {
      const now = draft.pressure.measuring;
      return now.at === 'listening' ? withPressureAt(draft, next(now)) : draft;
    });
  const silent = second.is === 'open' ? second.silent : 'unheard';
  return (
    <div className="measure">
      <ListenTop round={round} place={place} firstAtMs={touches[0]?.atMs ?? null} />
      <div className="second-watch">
        <p className="tap-area-says">{words.sentence('second.marks')}</p>
        <p role="status">
          {words.sentence('moments.soFar', { touches: count })}
          {count === 0
            ? null
            : `: ${askedOf(count)
                .map((what) => words.title('mark', what))
                .join(' · ')}`}
        </p>
        <p className="small soft">{words.sentence('second.soFarHere')}</p>
        <p className={silent === null ? undefined : 'notice'} role="alert">
          {silent === null ? null : words.sentence(`second.${silent}`)}
        </p>
      </div>
      <div className="tap-buttons">
        <button
          type="button"
          className={`button button-large${count >= 3 ? ' button-first' : ''}`}
          onClick={() => change(listened)}
        >
          {words.sentence(count === 0 ? 'moments.untimed' : 'moments.readGauge')}
        </button>
        <button
          type="button"
          className="button button-large"
          onClick={() => change((now) => takenOver(now, clock.monotonicMs()))}
        >
          {words.sentence('second.takeOver')}
        </button>
      </div>
    </div>
  );
}
