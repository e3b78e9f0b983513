import type { ReactNode } from 'react';
import { useApp, useKept } from '../app/context.js';
import { unsentOf } from '../round/waiting.js';
import type { Asked } from '../store/known.js';

type AskingProps<T> = {
  readonly asked: Asked<T>;
  readonly again: () => Promise<void>;
  readonly missing?: string;
  /**
   * How it is said that the server is away, where what was here once is shown: `whole`, `line` (one line with the rest behind
   * it, none where something waits, which says it), or `not`, beside one that says it.
   */
  readonly away?: 'whole' | 'line' | 'not';
  readonly children: (value: T) => ReactNode;
};

/**
 * What the server said, or that it is being asked, or why it did not say. What was here once stays shown; what could not be
 * read of it is counted.
 */
export function Asking<T>({ asked, again, missing, away = 'whole', children }: AskingProps<T>) {
  const { words } = useApp();
  const isWaiting = useKept(({ kept }) => unsentOf(kept.waiting) !== null);
  const isShort = asked.is === 'unreachable' && asked.value !== null && away !== 'whole';
  const isWell = asked.is === 'here' || asked.is === 'asked' || isShort;
  const leftOut = asked.is === 'here' ? (asked.unreadable ?? 0) : 0;
  return (
    <>
      {asked.is === 'asked' ? <p className="soft">{words.sentence('app.loading')}</p> : null}
      {isShort && away === 'line' && !isWaiting ? (
        <details className="notice-line not-printed">
          <summary>{words.sentence('app.withoutServer')}</summary>
          <div className="notice">
            <p>{words.sentence('app.unreachable')}</p>
            <p className="soft small">{words.sentence('app.unreachableTry')}</p>
            <button type="button" className="button" onClick={() => void again()}>
              {words.sentence('app.tryAgain')}
            </button>
          </div>
        </details>
      ) : null}
      {isWell ? null : (
        <div className="notice" role="alert">
          {asked.is === 'missing' ? (
            <p>{missing ?? words.sentence('app.notFound')}</p>
          ) : (
            <>
              <p>{words.sentence(asked.is === 'unreachable' ? 'app.unreachable' : 'app.failed')}</p>
              <p className="soft small">{words.sentence('app.unreachableTry')}</p>
              <button type="button" className="button" onClick={() => void again()}>
                {words.sentence('app.tryAgain')}
              </button>
            </>
          )}
        </div>
      )}
      {leftOut === 0 ? null : (
        <p className="notice" role="alert">
          {words.sentence('app.unreadable', { entries: leftOut })}
        </p>
      )}
      {asked.value === null ? null : children(asked.value)}
    </>
  );
}
