import { type ReactNode, useEffect, useRef } from 'react';
import { useApp } from '../app/context.js';
import { useWakeLock } from '../round/useWakeLock.js';
import type { Elapsed } from './elapsed.js';
import type { Instant, SinceDraft } from './pressureDraft.js';
import { useNow } from './useNow.js';

type SinceProps = {
  readonly since: SinceDraft | null;
  /** One that was stopped and may be put back. */
  readonly stopped: SinceDraft | null;
  readonly until: (since: SinceDraft | null, now: Instant) => Elapsed | null;
  /** Whether it can be begun and taken back here; else it is only read. */
  readonly isHere: boolean;
  /** Whether beginning it is what comes first on its page. */
  readonly isFirst?: boolean;
  readonly text: {
    readonly begin: string;
    readonly beginHint: string;
    readonly lost: string;
    readonly stop: string;
    readonly lasts: (seconds: number) => string;
    readonly putBack: (seconds: number) => string;
  };
  readonly onSince: (since: SinceDraft | null) => void;
  readonly onStop: () => void;
  /** Whether nothing is to come any more: then it is shown only where it can be stopped. */
  readonly isOver?: (seconds: number) => boolean;
  /** What is due, from the seconds that went by. */
  readonly children: (seconds: number) => ReactNode;
};

/** A clock since somebody stood up or lay down: begun by a touch, it counts up until it is stopped. */
export function SinceClock({
  since,
  stopped,
  until,
  isHere,
  isFirst = true,
  text,
  onSince,
  onStop,
  isOver = () => false,
  children,
}: SinceProps) {
  const { words, clock, session } = useApp();
  const now = useNow(since !== null || stopped !== null);
  useWakeLock(since !== null);
  const running = useRef<HTMLDivElement>(null);
  const isBegun = useRef(false);
  // The key that began it is gone then: its reader goes on from the clock.
  useEffect(() => {
    if (since !== null && isBegun.current) running.current?.focus({ preventScroll: true });
    isBegun.current = false;
  }, [since]);
  const begin = (from: SinceDraft | null) => {
    isBegun.current = true;
    onSince(from);
  };
  if (since === null) {
    const lasted = until(stopped, now);
    return isHere ? (
      <div className="upright">
        <button
          type="button"
          className={isFirst ? 'button button-first button-large' : 'button'}
          onClick={({ timeStamp }) => begin({ since: { session, atMs: timeStamp }, at: clock.stamp() })}
        >
          {text.begin}
        </button>
        <p className="soft small">{text.beginHint}</p>
        {lasted === null ? null : (
          <div className="buttons buttons-middle">
            <button type="button" className="button button-quiet" onClick={() => begin(stopped)}>
              {text.putBack(Math.floor(lasted.seconds))}
            </button>
          </div>
        )}
      </div>
    ) : null;
  }
  const gone = until(since, now);
  if (!isHere && gone !== null && isOver(gone.seconds)) return null;
  return (
    <div className="upright" ref={running} tabIndex={-1}>
      {gone === null ? (
        <p className="small">{text.lost}</p>
      ) : (
        <>
          <p className="upright-time" role="timer">
            {text.lasts(Math.floor(gone.seconds))}
          </p>
          {children(gone.seconds)}
        </>
      )}
      {gone === null || gone.byWallClock === null ? null : (
        <p className="soft small">
          {words.sentence(gone.byWallClock === 'sleep' ? 'pressure.uprightSlept' : 'pressure.uprightByWall')}
        </p>
      )}
      {isHere ? (
        <div className="buttons buttons-middle">
          <button type="button" className="button button-quiet" onClick={onStop}>
            {text.stop}
          </button>
        </div>
      ) : null}
    </div>
  );
}
