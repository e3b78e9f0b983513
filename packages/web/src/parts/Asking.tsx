import type { ReactNode } from 'react';
import { useApp } from '../app/context.js';
import type { Asked } from '../store/known.js';

type AskingProps<T> = {
  readonly asked: Asked<T>;
  readonly again: () => Promise<void>;
  readonly missing?: string;
  readonly children: (value: T) => ReactNode;
};

/**
 * What the server said, or that it is being asked, or why it did not say. What was here once stays shown; what could not be
 * read of it is counted.
 */
export function Asking<T>({ asked, again, missing, children }: AskingProps<T>) {
  const { words } = useApp();
  const isWell = asked.is === 'here' || asked.is === 'asked';
  const leftOut = asked.is === 'here' ? (asked.unreadable ?? 0) : 0;
  return (
    <>
      {asked.is === 'asked' ? <p className="soft">{words.sentence('app.loading')}</p> : null}
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
